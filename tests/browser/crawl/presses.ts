// What the browser itself says of each press: how long until its paint, and what moved.

/** Where the time went: until the page looked at the event, what it did at once, and the rest until the paint. */
export interface Interaction {
  what: string;
  ms: number;
  waitedMs: number;
  workedMs: number;
}

export interface Shift {
  /** The last thing pressed before it, and where. */
  after: string;
  /** Within half a second of that press, which the Layout Instability definition leaves out of its sum. */
  byPress: boolean;
  value: number;
  /** What moved, and from where to where. */
  moved: string[];
}

interface Watched {
  presses: { what: string; at: number }[];
  byInteraction: Map<number, Omit<Interaction, 'what'> & { at: number }>;
  shifts: Shift[];
  take: (() => void)[];
}

declare global {
  var watched: Watched;
}

export function nowPressing(what: string): void {
  watched.presses.push({ what, at: performance.now() });
}

export function startWatching(): void {
  globalThis.watched = { presses: [], byInteraction: new Map(), shifts: [], take: [] };
  const lastBefore = (at: number) => watched.presses.findLast((press) => press.at <= at)?.what ?? 'nothing';
  const noteEvents = (entries: PerformanceEntryList) => {
    for (const entry of entries as PerformanceEventTiming[]) {
      const { interactionId: id, duration: ms, startTime: at, processingStart, processingEnd } = entry;
      const known = watched.byInteraction.get(id);
      if (id > 0 && ms > (known?.ms ?? 0))
        watched.byInteraction.set(id, {
          at,
          ms,
          waitedMs: processingStart - at,
          workedMs: processingEnd - processingStart,
        });
    }
  };
  const noteShifts = (entries: PerformanceEntryList) => {
    for (const entry of entries as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
      sources: { node: Node | null; previousRect: DOMRectReadOnly; currentRect: DOMRectReadOnly }[];
    })[]) {
      const moved = entry.sources.map(({ node, previousRect: a, currentRect: b }) => {
        const element = node instanceof Element ? node : node?.parentElement;
        const name = element
          ? `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`
          : '?';
        const box = ({ x, y, width, height }: DOMRectReadOnly) =>
          [x, y, width, height].map((v) => Math.round(v)).join(' ');
        return `${name} [${box(a)}] to [${box(b)}]`;
      });
      const { value, hadRecentInput: byPress } = entry;
      watched.shifts.push({ after: lastBefore(entry.startTime), byPress, value, moved });
    }
  };
  const watch = (note: (entries: PerformanceEntryList) => void, options: PerformanceObserverInit) => {
    const observer = new PerformanceObserver((list) => note(list.getEntries()));
    observer.observe(options);
    watched.take.push(() => note(observer.takeRecords()));
  };
  watch(noteEvents, { type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  watch(noteShifts, { type: 'layout-shift' });
}

/** An interaction quicker than 16 ms is not reported: it is left out, which makes the share of slow ones no smaller. */
export function stopWatching(): { interactions: Interaction[]; shifts: Shift[] } {
  for (const take of watched.take) take();
  const { byInteraction, presses, shifts } = watched;
  const interactions = [...byInteraction.values()].map(({ at, ...took }) => ({
    ...took,
    what: presses.findLast((press) => press.at <= at)?.what ?? 'nothing',
  }));
  return { interactions, shifts };
}
