// Work that waits until what stands now has been painted, and the frame after it: what lets go of a key or lifts a
// finger comes as an event of its own a moment later, and must not find the page at work.

/** Where nothing is painted, in a tab out of sight, it waits no longer than this. Chosen by hand, no source. */
const NOT_PAINTED_MS = 150;

/** Returns a way to call it off. */
export function afterPaint(work: () => void): () => void {
  let painted: ReturnType<typeof setTimeout> | undefined;
  let frame = requestAnimationFrame(() => {
    frame = requestAnimationFrame(() => {
      painted = setTimeout(begin);
    });
  });
  const unpainted = setTimeout(begin, NOT_PAINTED_MS);
  function callOff(): void {
    cancelAnimationFrame(frame);
    clearTimeout(painted);
    clearTimeout(unpainted);
  }
  function begin(): void {
    callOff();
    work();
  }
  return callOff;
}
