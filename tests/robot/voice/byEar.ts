// The robot cook in front of the real page: hears what comes out of its loudspeaker, speaks into its microphone.

import { RATE_HZ } from '../../browser/harness/soundServer.ts';
import { rms } from '../../browser/harness/reRecognise.ts';
import { launchKitchen, type Kitchen } from '../../browser/harness/kitchen.ts';
import { FRUITS, type RobotEvening } from './evening.ts';
import { openPromptListener } from './listener.ts';

/** Silence that ends an utterance, ms (the page draws breath for longer); and a step of the robot's world, ms of wall time. */
const PAUSE_MS = 480;
const STEP_MS = 250;
const LOUD_RMS = 0.004;
const MARGIN_MS = 250;
/** Whoever reads along is told this often what is waited for. */
const WAITS_TOLD_MS = 20_000;

export interface HeardEvening {
  kitchen: Kitchen;
  /** One line for each thing said by either, with its second. */
  record: string[];
}

/** Plans the batches by touch, as on paper beforehand; from then on only sound passes between the two. */
export async function eveningByEar(
  { cook, prompts }: RobotEvening,
  pace: number,
  mostMinutes: number,
  until: () => boolean = () => cook.finished,
  tell: (line: string) => void = () => {},
): Promise<HeardEvening> {
  const kitchen = await launchKitchen({ open: `/?practice=${pace}&voice=bundled` });
  const listener = await openPromptListener(prompts);
  await planAll(kitchen);
  const record: string[] = [];
  const began = Date.now();
  const note = (who: string, text: string) => {
    const line = `${((Date.now() - began) / 1000).toFixed(0)} ${who}: ${text}`;
    record.push(line);
    tell(line);
  };
  let heardTo = began;
  let last = began;
  let told = began;
  while (!until() && Date.now() - began < mostMinutes * 60_000) {
    const { samples, startedAt } = await kitchen.heardFromPage(heardTo - MARGIN_MS);
    const wall = Date.now();
    cook.passes(((wall - last) / 60_000) * pace, (wall - last) / 60_000);
    last = wall;
    if (wall - told >= WAITS_TOLD_MS) {
      told = wall;
      const states = await kitchen.page.evaluate(() => document.documentElement.dataset['kitchen'] ?? '');
      tell(
        `${((wall - began) / 1000).toFixed(0)}    (the cook waits for ${cook.waitsFor}; the page: ${states})`,
      );
    }
    const utterance = firstUtterance(samples);
    if (utterance === 'silence') {
      heardTo = startedAt + (samples.length / RATE_HZ) * 1000;
      const sentence = cook.wantsToSay();
      if (sentence !== null) {
        note('cook', sentence);
        await kitchen.say(sentence);
      }
    } else if (utterance !== 'unfinished') {
      heardTo = startedAt + (utterance.to / RATE_HZ) * 1000;
      const { text, prompts: came } = listener.hear(samples.slice(utterance.from, utterance.to));
      if (text !== '') note('page', `${text}   [${came.map(({ key }) => key).join(' ')}]`);
      cook.hears(came);
    }
    await new Promise((resolve) => setTimeout(resolve, STEP_MS));
  }
  listener.close();
  return { kitchen, record };
}

async function planAll(kitchen: Kitchen): Promise<void> {
  const { page } = kitchen;
  for (const [i, example] of ['Damson plums', 'Pears', 'Crab apples']
    .slice(0, Object.keys(FRUITS).length)
    .entries()) {
    await page.getByRole('button', { name: example }).click();
    await page.getByRole('radio', { name: 'Butter', exact: true }).check();
    await page.getByRole('button', { name: i === 0 ? 'Start cooking' : 'Add to the stove' }).click();
    await page.waitForSelector('main.stove');
    if (i === 2) break;
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: 'Plan another batch' }).click();
  }
  await page.waitForFunction(() => document.querySelector('.ear.listening') !== null, undefined, {
    timeout: 90_000,
  });
}

/** The first stretch of sound that has ended, in samples. */
export function firstUtterance(
  samples: Float32Array,
): 'silence' | 'unfinished' | { from: number; to: number } {
  const block = RATE_HZ / 50;
  let from = -1;
  let loudTo = -1;
  for (let at = 0; at + block <= samples.length; at += block) {
    if (rms(samples.subarray(at, at + block)) >= LOUD_RMS) {
      if (from < 0) from = at;
      loudTo = at + block;
    } else if (from >= 0 && at - loudTo > (PAUSE_MS / 1000) * RATE_HZ) break;
  }
  if (from < 0) return 'silence';
  const pause = (PAUSE_MS / 1000) * RATE_HZ;
  if (samples.length - loudTo < pause) return 'unfinished';
  const margin = (MARGIN_MS / 1000) * RATE_HZ;
  return { from: Math.max(0, from - margin), to: Math.min(samples.length, loudTo + margin) };
}
