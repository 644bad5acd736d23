// `npm run robot`: the robot cook cooks four batches by ear and voice alone.
//
//   npm run robot                        before the real page, at six times the pace, to the shelf, for at most 80 minutes
//   npm run robot -- --pace 10 --minutes 20
//   npm run robot -- --air --noise 20    without a page: sound between the two recognisers, up to the shelf; in a quiet
//                                        room, or with the voice so many decibels over the boil
//
// Prints what either says; ends with what became of each batch, and before
// the page with what its recorded sound proves: no two prompts overlap, and the plan spoken is the plan shown.
// `--keep FOLDER` keeps the recording and what was shown.

import { parseArgs } from 'node:util';
import { keep } from './kept.ts';
import { fliteVoice } from '../../voice/corpus/voices.ts';
import { buildPage } from '../../browser/harness/builtPage.ts';
import type { Heard } from '../../browser/harness/recorder.ts';
import { eveningByEar } from './byEar.ts';
import { bySound } from './bySound.ts';
import { robotEvening, type RobotEvening } from './evening.ts';
import { found, overlapping, planShown } from './proof.ts';
import type { Shown } from './shown.ts';
import { eveningAtOneTable } from './table.ts';

const { values } = parseArgs({
  options: {
    pace: { type: 'string', default: '6' },
    night: { type: 'string', default: '900' },
    minutes: { type: 'string', default: '80' },
    air: { type: 'boolean' },
    noise: { type: 'string' },
    keep: { type: 'string' },
  },
});
const SLT_HZ = 170;

const evening = robotEvening({
  impatientWith: 'pear',
  flameDropsAfter: 4,
  calledAway: 10,
  slip: { of: 'the pear is skimmed', says: 'the bear is trimmed' },
  unsealed: 'crab apple',
});
const { cook } = evening;
const wellEnded = values.air ? await throughAir(evening) : await beforeThePage(evening);
const again = cook.said.filter(({ tries }) => tries > 1).length;
console.log(
  `${cook.said.length} things said, ${again} of them more than once; ${cook.heard.length} sentences heard`,
);
for (const [fruit, end] of cook.ends) console.log(`${fruit}: ${end}`);
const spoilt = [...cook.ends.values()].some((end) => end.startsWith('spoilt'));
console.log(wellEnded && !spoilt ? 'every jar is put away' : 'not every batch came to its end');
process.exitCode = wellEnded && !spoilt ? 0 : 1;

async function beforeThePage({ prompts, plans }: RobotEvening): Promise<boolean> {
  await buildPage();
  const { kitchen, shown } = await eveningByEar(
    { plans, cook, prompts },
    { cooking: Number(values.pace), night: Number(values.night) },
    Number(values.minutes),
    () => cook.finished,
    (line) => console.log(line),
  );
  const recording = await kitchen.heardFromPage();
  await kitchen.close();
  if (values.keep !== undefined) await keep(values.keep, recording, shown);
  const proven = await proof(recording, shown);
  return cook.finished && proven;
}

async function proof(recording: Heard, shown: readonly Shown[]): Promise<boolean> {
  const spoken = await found(recording, shown);
  const missing = spoken.filter(({ from }) => from === null);
  const overlaps = overlapping(spoken);
  const plan = planShown(spoken);
  for (const { words } of missing) console.log(`not found in the sound: ${words}`);
  for (const pair of overlaps) console.log(`overlap: ${pair}`);
  for (const told of plan.other) console.log(`spoken otherwise than shown: ${told}`);
  for (const told of plan.notShown) console.log(`no line of the agenda for: ${told}`);
  console.log(
    `${spoken.length} prompts, ${missing.length} not found in the recorded sound, ${overlaps.length} overlaps`,
  );
  console.log(
    `of the plan's sentences ${plan.same.length} as shown, ${plan.other.length} otherwise, ${plan.notShown.length} with no line`,
  );
  return overlaps.length === 0 && plan.other.length === 0;
}

async function throughAir({ prompts, plans }: RobotEvening): Promise<boolean> {
  const noiseDb = values.noise === undefined ? null : Number(values.noise);
  const between = await bySound(prompts, fliteVoice('slt', SLT_HZ), noiseDb);
  let told = 0;
  await eveningAtOneTable(plans, cook, between, undefined, (turns) => {
    for (; told < turns.length; told++) console.log(`${turns[told]!.who}: ${turns[told]!.text}`);
  });
  between.close();
  for (const { said, heard } of between.misheard)
    console.log(`"${said}" was heard as`, JSON.stringify(heard));
  console.log(`${between.misheard.length} of ${between.said} utterances not heard as said`);
  return cook.finished;
}
