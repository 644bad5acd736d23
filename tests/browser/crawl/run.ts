// npm run crawl -- [--folder dist] [--every 1] [--from 0] [--drops 100000] [--parts see,keys,rain,paint] [--seed 1] [--keep FILE] [--piece 0 --of 16] [--unguarded FOLDER] [--together FOLDER]: drives the built page through every screen it can show and prints what was measured.

import { mkdtemp, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { crawl, PARTS } from './crawl.ts';
import { foundIn, rowsOf } from './found.ts';
import { faultsOf, table } from './table.ts';

const { values } = parseArgs({
  options: {
    folder: { type: 'string' },
    every: { type: 'string', default: '1' },
    from: { type: 'string', default: '0' },
    parts: { type: 'string', default: PARTS.join(',') },
    drops: { type: 'string', default: '100000' },
    seed: { type: 'string', default: '1' },
    keep: { type: 'string' },
    piece: { type: 'string', default: '0' },
    of: { type: 'string', default: '1' },
    unguarded: { type: 'string' },
    together: { type: 'string' },
  },
});
if (values.together) {
  // What several walks have written down there, pieces of one.
  const rows = rowsOf(foundIn(values.together));
  console.log(`${table(rows)}\n${faultsOf(rows, Infinity)}`);
  process.exit(rows.every(({ faults }) => faults.length === 0) ? 0 : 1);
}
const every = Math.max(1, Number(values.every) || 1);
const drops = Math.max(0, Number(values.drops) || 0);
const place = await mkdtemp(join(tmpdir(), 'stovehand-crawl-page-'));
const folder = values.folder ?? join(place, 'page');
const begun = Date.now();
const say = (what: string) =>
  console.log(`${((Date.now() - begun) / 1000).toFixed(0).padStart(4)} s  ${what}`);
try {
  say('building the page');
  if (!values.folder) await build({ logLevel: 'error', build: { outDir: folder } });
  const rows = await crawl({
    folder,
    unguardedFolder: values.unguarded ?? join(place, 'unguarded'),
    every,
    from: Math.max(0, Number(values.from) || 0),
    parts: PARTS.filter((part) => values.parts.split(',').includes(part)),
    drops,
    seed: Math.max(1, Math.floor(Number(values.seed)) || 1),
    piece: Math.max(0, Number(values.piece) || 0),
    of: Math.max(1, Number(values.of) || 1),
    ...(values.keep && { keep: values.keep }),
    say,
  });
  console.log(`\n${table(rows)}\n${faultsOf(rows)}`);
  say(
    `done; load ${loadavg()
      .map((load) => load.toFixed(1))
      .join(' ')}`,
  );
  process.exitCode = rows.some(({ faults }) => faults.length > 0) ? 1 : 0;
} finally {
  await rm(place, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
}
