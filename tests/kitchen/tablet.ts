// A device whose clocks, sleep and ticks are in our hands, for the tests of kitchen time.

const SECOND = 1000;
const EVENING = Date.UTC(2026, 8, 18, 17, 30);

/** `truth` is what really went by. */
export function tablet(start = EVENING) {
  let truth = start;
  let wallError = 0;
  let monoLost = 0;
  let everyMs = SECOND;
  let sinceTick = 0;
  const ticks = new Set<() => void>();
  const signs = new Set<() => void>();
  const pass = (ms: number) => {
    for (let left = ms; left > 0;) {
      const step = Math.min(left, everyMs - sinceTick);
      truth += step;
      left -= step;
      sinceTick += step;
      if (sinceTick < everyMs) continue;
      sinceTick = 0;
      ticks.forEach((tick) => tick());
    }
  };
  const keep = <Item>(set: Set<Item>, item: Item) => {
    set.add(item);
    return () => void set.delete(item);
  };
  return {
    sources: {
      wall: () => truth + wallError,
      mono: () => truth - start - monoLost,
      ticker: (_everyMs: number, onTick: () => void) => keep(ticks, onTick),
      signs: (onSign: () => void) => keep(signs, onSign),
    },
    truth: () => truth,
    pass,
    throttle: (ms: number) => void (everyMs = ms),
    setClock: (byMs: number) => void (wallError += byMs),
    sign: () => signs.forEach((sign) => sign()),
    /** No ticks; the monotonic clock runs on or stands still. */
    sleep: (ms: number, monoRuns: boolean) => {
      truth += ms;
      if (!monoRuns) monoLost += ms;
    },
    listeners: () => ticks.size,
  };
}
