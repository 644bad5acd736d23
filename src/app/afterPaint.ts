// Work that waits until what stands now has been painted.

/** Where nothing is painted, in a tab out of sight, it waits no longer than this. Chosen by hand, no source. */
const NOT_PAINTED_MS = 150;

/** Returns a way to call it off. */
export function afterPaint(work: () => void): () => void {
  let painted: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    painted = setTimeout(begin);
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
