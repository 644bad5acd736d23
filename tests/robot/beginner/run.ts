// `npm run beginners -- --n 100`: cooks so many batches with a robot that knows nothing, and prints how they went.

import { parseArgs } from 'node:util';
import { cookBatch, fadedWords, fullWords, type Batch } from './batches.ts';

const { values } = parseArgs({
  options: {
    n: { type: 'string', default: '100' },
    from: { type: 'string', default: '1' },
    faded: { type: 'boolean' },
    verbose: { type: 'boolean' },
  },
});

const cell = (text: string | number, width: number): string => String(text).padEnd(width);

function row(seed: number, batch: Batch): string {
  const safe = Object.keys(batch.points).length;
  return [
    cell(seed, 5),
    cell(batch.name, 24),
    cell(`${batch.altitudeFt} ft`, 9),
    cell(batch.jar, 13),
    cell(batch.keep, 8),
    cell(batch.outcome, 15),
    cell(`${batch.hours.toFixed(1)} h`, 8),
    cell(batch.shelved, 4),
    cell(`${safe - batch.missed.length}/${safe}`, 7),
    batch.missed.join(', ') + (batch.burnt ? ` (burnt ${batch.burnt})` : ''),
  ].join('');
}

const guidance = values.faded ? fadedWords() : fullWords;
const batches: Batch[] = [];
for (let i = 0; i < Number(values.n); i++) {
  const seed = Number(values.from) + i;
  const batch = await cookBatch(seed, guidance);
  batches.push(batch);
  console.log(row(seed, batch));
  if (values.verbose || batch.outcome !== 'putAway') console.log(batch.record.join('\n'));
}
const finished = batches.filter(({ outcome }) => outcome === 'putAway').length;
const missed = batches.reduce((sum, batch) => sum + batch.missed.length, 0);
const points = batches.reduce((sum, batch) => sum + Object.keys(batch.points).length, 0);
const burnt = batches.filter((batch) => batch.burnt !== null).length;
console.log(
  `${finished} of ${batches.length} finished, ${missed} of ${points} safety points missed, ${burnt} burnt`,
);
if (finished < batches.length || missed > 0) process.exitCode = 1;
