// npm run answering [-- --folder dist --times 4]: a cook asks the real page by voice, through the sound card, and it is
// timed from the end of the words at the microphone to the first sound of the answer.

import { mkdtemp, rm } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { VoiceCook } from './byVoice.ts';
import { launchKitchen } from './harness/kitchen.ts';
import { soundsAfter, wordsEndOf } from './harness/promptness.ts';
import { yardstickOf, yardstickTold, type Yardstick } from './harness/yardstick.ts';

const MEDIAN_MUST_MS = 500;
const MOST_MUST_MS = 900;
const WITHIN_MS = 2_000;
const ROOM_DB = -62;
/** Each is answered by a sentence, and moves no batch. */
const QUESTIONS = [
  'what is headspace',
  'how long',
  'what is next',
  'status of all batches',
  'what is a rolling boil',
  'switch to pear',
  'how long for the pear',
  'help',
  'what is the plan',
  'switch to crab apple',
  'say that again',
];

const { values } = parseArgs({
  options: { folder: { type: 'string' }, times: { type: 'string', default: '4' } },
});
const place = await mkdtemp(join(tmpdir(), 'stovehand-answering-'));
const folder = values.folder ?? join(place, 'page');
if (!values.folder) await build({ logLevel: 'warn', build: { outDir: folder } });

const kitchen = await launchKitchen({
  folder,
  open: '/?practice=1&voice=bundled',
  viewport: { width: 820, height: 1180 },
  soundBuffer: null, // what a cook's browser takes: a larger one is 100 ms of the answer's time
});
const times: number[] = [];
const yardsticks: Yardstick[] = [];
let silent = 0;
try {
  const { page } = kitchen;
  await plan('Damson plums', 'Start cooking');
  for (const fruit of ['Pears', 'Crab apples']) {
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: 'Plan another batch' }).click();
    await plan(fruit, 'Add to the stove');
  }
  await page.waitForSelector('.ear.listening', { timeout: 90_000 });
  kitchen.room(ROOM_DB);
  await kitchen.heardByMicrophone(); // from here on, so that nothing is opened while it is timed
  const cook = new VoiceCook(kitchen);
  for (let turn = 0; turn < Number(values.times); turn++) {
    yardsticks.push(await yardstickOf(page));
    for (const question of QUESTIONS) {
      await page.keyboard.press('q');
      await cook.letItFinish();
      const after = await soundsAfter(kitchen, await wordsEndOf(kitchen, question), WITHIN_MS);
      if (after === null) silent++;
      else if (after > 0) times.push(after);
      const heard = await page.locator('.ear-words').textContent();
      console.error(
        `${question}: ${after === null ? 'no answer' : `${Math.round(after)} ms`}; the strip: ${heard}`,
      );
    }
  }
} finally {
  await kitchen.close();
  await rm(place, { recursive: true });
}

async function plan(fruit: string, button: string): Promise<void> {
  const { page } = kitchen;
  await page.getByRole('button', { name: fruit }).click();
  await page.getByRole('radio', { name: 'Butter', exact: true }).check();
  await page.getByRole('button', { name: button }).click();
  await page.waitForSelector('main.stove');
}

times.sort((a, b) => a - b);
const share = (part: number) =>
  Math.round(times[Math.min(times.length - 1, Math.floor(part * times.length))] ?? NaN);
console.log(
  `${times.length} answers, load ${loadavg()[0]!.toFixed(1)}: after the end of the words ${share(0.5)} ms in the middle, ` +
    `${share(0.95)} at 95 %, ${share(1)} at most; ${silent} without an answer within ${WITHIN_MS / 1000} s`,
);
console.log(yardstickTold(yardsticks));
process.exitCode = share(0.5) < MEDIAN_MUST_MS && share(0.95) < MOST_MUST_MS ? 0 : 1;
