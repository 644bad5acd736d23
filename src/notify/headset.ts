// A press on a headset's or keyboard's play button means "listen to me": push-to-talk by Media Session.

export interface HeadsetHost {
  mediaSession: Pick<MediaSession, 'setActionHandler' | 'metadata' | 'playbackState'> | null;
  /** Plays a sound too faint to hear, over and over: browsers give the buttons only to a page that plays. */
  playFaintLoop(): Promise<void>;
  stopFaintLoop(): void;
}

/** "play" and "pause" come from one button by turns; the others are on some remotes instead of it. */
const ACTIONS: readonly MediaSessionAction[] = ['play', 'pause', 'nexttrack', 'previoustrack', 'stop'];

/** Must be called from a gesture. Returns a function that gives the buttons back. */
export function listenToHeadset(
  host: HeadsetHost,
  onPress: () => void,
  onTrouble: (error: unknown) => void,
): () => void {
  const { mediaSession } = host;
  if (mediaSession === null) return () => {};
  const set = (action: MediaSessionAction, handler: (() => void) | null) => {
    try {
      mediaSession.setActionHandler(action, handler);
    } catch {
      // A browser that does not know an action throws; the others still work.
    }
  };
  // Either button must stay live, so the loop goes on and the session stays "playing".
  const stayLive = () =>
    host.playFaintLoop().then(() => void (mediaSession.playbackState = 'playing'), onTrouble);
  const press = () => {
    onPress();
    void stayLive();
  };
  for (const action of ACTIONS) set(action, press);
  void stayLive();
  return () => {
    for (const action of ACTIONS) set(action, null);
    host.stopFaintLoop();
    mediaSession.playbackState = 'none';
  };
}
