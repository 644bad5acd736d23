// Work that can be done beforehand, once the page has nothing else to do.

/** Where the browser does not tell when that is. Chosen by hand, no source. */
const NOT_TOLD_MS = 1_000;

/** Returns a way to call it off. */
export function whenIdle(work: () => void): () => void {
  if (typeof requestIdleCallback === 'undefined') {
    const timer = setTimeout(work, NOT_TOLD_MS);
    return () => clearTimeout(timer);
  }
  const waits = requestIdleCallback(work);
  return () => cancelIdleCallback(waits);
}
