// A long measurement that is to be over at a given time.

/** One after the other; none is begun later than so many minutes after this process. */
export function untilItEnds<T>(list: Iterable<T>, minutes: string): Iterable<T> {
  const endsMs = performance.timeOrigin + 60_000 * Number(minutes);
  if (Number.isNaN(endsMs)) throw new Error(`"${minutes}" is no number of minutes.`);
  return (function* () {
    for (const one of list) {
      if (Date.now() > endsMs) return;
      yield one;
    }
  })();
}
