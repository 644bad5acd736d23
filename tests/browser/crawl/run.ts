// npm run crawl -- [--folder dist] [--every 1]: drives the built page through every screen it can show and prints what was measured.

import { mkdtemp, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { everyKitchen, withSix } from './kitchens.ts';
import { DEVICES, looksOf, type Look } from './sizes.ts';
import { openTheatre } from './stage.ts';
import { faultsOf, table, type TableRow } from './table.ts';
import { added, noToll, seenRows, walk } from './walk.ts';

const { values } = parseArgs({
  options: { folder: { type: 'string' }, every: { type: 'string', default: '1' } },
});
const every = Math.max(1, Number(values.every) || 1);
const place = await mkdtemp(join(tmpdir(), 'stovehand-crawl-page-'));
const folder = values.folder ?? join(place, 'page');
if (!values.folder) await build({ logLevel: 'warn', build: { outDir: folder } });

const begun = Date.now();
const say = (what: string) =>
  console.log(`${((Date.now() - begun) / 1000).toFixed(0).padStart(4)} s  ${what}`);
const all = everyKitchen();
const kitchens = all.filter((_, i) => i % every === 0);
say(
  `${all.length} screens of one batch were found by walking the charts; ${kitchens.length} are gone through.`,
);
const theatre = await openTheatre(folder);
const rows: TableRow[] = [];
try {
  const walked = await Promise.all(([100, 200] as const).map(seeAll));
  rows.push(...seenRows(walked.reduce(added)));
} finally {
  await theatre.close();
  await rm(place, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
}
console.log(`\n${table(rows)}\n${faultsOf(rows)}`);
say(
  `done; load ${loadavg()
    .map((load) => load.toFixed(1))
    .join(' ')}`,
);
process.exit(rows.some(({ faults }) => faults.length > 0) ? 1 : 0);

/** Every screen with one batch on the stove, and with six, in one size of text. */
async function seeAll(text: Look['text']) {
  const stage = await theatre.stage(text);
  const toll = noToll();
  const looks = [
    ...looksOf(DEVICES, ['dark', 'bright'], [text], ['right']),
    ...looksOf(DEVICES, ['dark'], [text], ['left']),
  ];
  const both = [...kitchens, ...kitchens.map(withSix)];
  await walk(stage, both, looks, toll, (done) => {
    if (done % 20 === 0)
      say(
        `${text} % text: ${done} of ${both.length} kitchens, ${toll.screens} looks, ${toll.faults.length} faults`,
      );
  });
  return toll;
}
