// The page that is killed: opens the log, tells what it found, and appends without a pause until the end.

import { KitchenClock } from '../../../src/kitchen/clock.ts';
import { readAnchor, writeAnchor } from '../../../src/kitchen/anchor.ts';
import { browserSources } from '../../../src/kitchen/clock-sources.ts';
import { IdbLines } from '../../../src/store/idb-lines.ts';
import { kitchenLog } from '../../../src/store/open-log.ts';
import { WorkerLines } from '../../../src/store/worker-lines.ts';
import { entryOf } from '../evening.ts';
import type { Report } from './report.ts';

declare global {
  /** Exposed by the test; the only thing that outlives this page. */
  var report: (report: Report) => Promise<void>;
}

const KITCHEN = 'crash';
const PACE = 10;
/** Now and then several entries come at once, as when a cook and a clock speak together. */
const TOGETHER = [1, 1, 3, 1, 2];

/** The same content, in whatever order it was written. */
const same = (a: unknown, b: unknown) => inOrder(a) === inOrder(b);

function inOrder(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

async function cook(): Promise<void> {
  const started = performance.now();
  const log = kitchenLog(KITCHEN);
  const { entries, lastSeenAt, trouble } = await log.open();
  const openMs = performance.now() - started;
  const clock = new KitchenClock({
    sources: browserSources,
    pace: PACE,
    anchor: readAnchor(await log.readNote('anchor')),
    keepAnchor: (anchor) => void log.writeNote('anchor', writeAnchor(anchor)),
    notBefore: lastSeenAt,
  });
  clock.beat((now) => log.seen(now));
  const [database, file] = await Promise.all([new IdbLines(KITCHEN).read(), new WorkerLines(KITCHEN).read()]);
  await report({
    kind: 'opened',
    entries: entries.length,
    wrong: entries.filter((entry, i) => !same(entry, entryOf(i + 1))).map(({ seq }) => seq),
    copiesAgree: same(database, file) && database.lines.length === entries.length + 1,
    trouble,
    openMs,
    wall: Date.now(),
    kitchen: clock.now(),
    pace: PACE,
    lastSeenAt,
  });
  await append(log, entries.length);
}

async function append(log: ReturnType<typeof kitchenLog>, length: number): Promise<never> {
  for (let seq = length + 1, turn = 0; ; turn++) {
    const burst = Array.from({ length: TOGETHER[turn % TOGETHER.length] ?? 1 }, () => seq++);
    const began = performance.now();
    await Promise.all(
      burst.map(async (n) => {
        const { durable, trouble } = await log.append(entryOf(n));
        if (durable) void report({ kind: 'acknowledged', seq: n, ms: performance.now() - began });
        if (trouble.length > 0) void report({ kind: 'trouble', trouble });
      }),
    );
  }
}

void cook().catch((error: unknown) => report({ kind: 'broke', says: String(error) }));
