// The microphone a second time, as it comes: while the browser's echo canceller learns the room, it takes what the cook
// says over the page away with the page's own voice.

/** Null where it cannot be had beside the first: then a plea for silence is looked for in what the canceller leaves. */
export async function openBare(
  cancelled: MediaStreamTrack,
  wanted: MediaTrackConstraints,
): Promise<MediaStream | null> {
  const { echoCancellation, deviceId } = cancelled.getSettings();
  // Seen to work in Chromium alone, which has this; others may let a second opening change, or end, the first.
  if (!echoCancellation || !('userAgentData' in navigator)) return null;
  const same = deviceId === undefined ? {} : { deviceId: { exact: deviceId } };
  try {
    const audio = { ...wanted, ...same, echoCancellation: false };
    const stream = await navigator.mediaDevices.getUserMedia({ audio });
    const isBare = stream.getAudioTracks()[0]?.getSettings().echoCancellation === false;
    if (isBare && cancelled.getSettings().echoCancellation) return stream;
    for (const track of stream.getTracks()) track.stop();
    console.warn('The microphone is not to be had without the echo canceller beside it.');
  } catch (why) {
    console.warn('The microphone is not to be had without the echo canceller.', why);
  }
  return null;
}
