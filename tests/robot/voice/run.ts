// `npm run robot`: the robot cook in front of the real page, three batches by ear and voice alone, up to the rest.
//
//   npm run robot                 at six times the pace, for at most an hour of wall time
//   npm run robot -- --pace 10 --minutes 20
//
// The page must be built (`npm run build`). Prints what either says; ends with what became of each batch.

import { parseArgs } from 'node:util';
import { eveningByEar } from './byEar.ts';
import { robotEvening } from './evening.ts';

const { values } = parseArgs({
  options: { pace: { type: 'string', default: '6' }, minutes: { type: 'string', default: '60' } },
});

const { plans, cook, prompts } = robotEvening({
  impatientWith: 'pear',
  flameDropsAfter: 4,
  calledAway: 10,
  slip: { of: 'the pear is skimmed', says: 'the bear is trimmed' },
  unsealed: 'crab apple',
});
const resting = () => cook.finished || cook.resting;
const { kitchen } = await eveningByEar(
  { plans, cook, prompts },
  Number(values.pace),
  Number(values.minutes),
  resting,
  (line) => console.log(line),
);
await kitchen.close();
const again = cook.said.filter(({ tries }) => tries > 1).length;
console.log(
  `${cook.said.length} things said, ${again} of them more than once; ${cook.heard.length} sentences heard`,
);
for (const [fruit, end] of cook.ends) console.log(`${fruit}: ${end}`);
const spoilt = [...cook.ends.values()].some((end) => end.startsWith('spoilt'));
console.log(cook.resting && !spoilt ? 'every jar rests' : 'not every batch came to its rest');
process.exitCode = cook.resting && !spoilt ? 0 : 1;
