// npm run paths [-- --folder dist --seconds 1800 --aloud]: walks the real page through every state and every edge of the batch's and the
// canner's charts, and fails if one was not visited or the page was ever not where the charts say.

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { walkAll } from './walkAll.ts';

const { values } = parseArgs({
  options: {
    folder: { type: 'string' },
    aloud: { type: 'boolean', default: false },
    seconds: { type: 'string', default: '1800' },
  },
});
const place = await mkdtemp(join(tmpdir(), 'stovehand-page-'));
const folder = values.folder ?? place;
if (!values.folder) await build({ logLevel: 'warn', build: { outDir: folder } });
const began = Date.now();
const onStep = values.aloud
  ? (says: string) => console.log(`${((Date.now() - began) / 1000).toFixed(1)} ${says}`)
  : () => {};
const { states, edges, steps, batches, wrong } = await walkAll(folder, {
  onStep,
  withinMs: Number(values.seconds) * 1000,
});
await rm(place, { recursive: true, force: true });

const seconds = Math.round((Date.now() - began) / 1000);
const of = (what: { visited: string[]; left: string[] }) =>
  `${what.visited.length} of ${what.visited.length + what.left.length}`;
console.log(`The real page was walked ${steps} steps over ${batches} batches in ${seconds} s.`);
console.log(`States visited: ${of(states)}. Edges visited: ${of(edges)}.`);
for (const left of [...states.left, ...edges.left]) console.log(`NOT VISITED  ${left}`);
for (const says of wrong) console.log(`WRONG  ${says}`);
const whole = states.left.length + edges.left.length + wrong.length === 0;
console.log(
  whole ? 'Every state and every edge was visited, and the page was always where the charts say.' : 'FAILED.',
);
process.exit(whole ? 0 : 1);
