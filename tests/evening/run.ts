// `npm run evenings -- --n 1000`: cooks so many evenings of four batches, and of six with two canners; `--batches 4`
// only those, `--slow 1.5` only by a cook so slow.

import type { Asked } from './kitchens.ts';
import { cookEvenings, printed } from './table.ts';

const flag = (name: string, otherwise: number): number => {
  const at = process.argv.indexOf(`--${name}`);
  const value = at < 0 ? otherwise : Number(process.argv[at + 1]);
  if (!Number.isFinite(value) || value < 0) throw new Error(`--${name} wants a number.`);
  return value;
};

const count = flag('n', 200);
const seed = flag('seed', 500_000);
const [batches, slow] = [flag('batches', 0), flag('slow', 0)];
const chances = (slowness: number) => ({ slowness, runny: 0.15, boilDrops: 0.05 });
/** A long run tells how it stands after so many evenings. */
const TOLD_EVERY = 100;

function cook(title: string, asked: Asked, slowness: number): void {
  const headed = (n: number): string =>
    `\n${title}, a cook ${slowness} times as slow as planned, ${n} evenings`;
  const lines = cookEvenings(asked, chances(slowness), count, seed, (done, soFar) => {
    if (done % TOLD_EVERY === 0 && done < count) console.error(printed(headed(done), soFar()));
  });
  console.log(`${printed(headed(count), lines)}\n`);
}

const isWanted = (asked: Asked, slowness: number): boolean =>
  (batches || asked.batches) === asked.batches && (slow || slowness) === slowness;
for (const [title, asked] of [
  ['4 batches, 1 canner', { batches: 4, canners: 1 }],
  ['6 batches, 2 canners', { batches: 6, canners: 2 }],
] as const)
  for (const slowness of [1.5, 1]) if (isWanted(asked, slowness)) cook(title, asked, slowness);
