// The robot cook in front of the real page: hears what comes out of its loudspeaker, speaks into its microphone.

import { RATE_HZ } from '../../browser/harness/soundServer.ts';
import { rms } from '../../browser/harness/reRecognise.ts';
import { launchKitchen, type Kitchen } from '../../browser/harness/kitchen.ts';
import { FRUITS, type RobotEvening } from './evening.ts';
import { openPromptListener } from './listener.ts';
import { takeShown, watchWhatIsShown, type Shown } from './shown.ts';

/** Silence that ends an utterance, ms (the page draws breath for longer); and a step of the robot's world, ms of wall time. */
const PAUSE_MS = 480;
const STEP_MS = 250;
const LOUD_RMS = 0.004;
const MARGIN_MS = 250;
/** Whoever reads along is told this often what is waited for. */
const WAITS_TOLD_MS = 20_000;
/** Jars have rested in silence for so long before the night begins, ms of wall time. */
const BEFORE_NIGHT_MS = 5_000;
/** A touch that is only a gesture: the page may sound from then on. */
const CLEAR_OF_BUTTONS = { x: 400, y: 30 };
const [WEIGHT_POUNDS, WEIGHT_OUNCES] = [
  'Weight of the fruit, as bought, lb',
  'Weight of the fruit, as bought, oz',
];
const POUNDS = 3;
const EXAMPLES: Readonly<Record<string, string>> = {
  'damson plum': 'Damson plums',
  pear: 'Pears',
  'crab apple': 'Crab apples',
};

export interface HeardEvening {
  kitchen: Kitchen;
  /** One line for each thing said by either, with its second. */
  record: string[];
  /** What the page began to say, and what it showed then. */
  shown: Shown[];
}

/** Plans the batches by touch, as on paper beforehand; from then on only sound passes between the two. */
export async function eveningByEar(
  { cook, prompts }: RobotEvening,
  paces: { cooking: number; night: number },
  mostMinutes: number,
  until: () => boolean = () => cook.finished,
  tell: (line: string) => void = () => {},
): Promise<HeardEvening> {
  let pace = paces.cooking;
  const kitchen = await launchKitchen({ open: `/?practice=${pace}&voice=bundled&stove=elsewhere` });
  const listener = await openPromptListener(prompts);
  await watchWhatIsShown(kitchen.page);
  const shown: Shown[] = [];
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
  let restsSince: number | null = null;
  /** For the proof, and whoever reads along: what the page really says; the cook never sees it. */
  async function look(): Promise<void> {
    const news = await takeShown(kitchen.page);
    shown.push(...news);
    for (const { at, words } of news)
      tell(`${((at - began) / 1000).toFixed(0)}    (the page says: ${words})`);
  }
  /** A day of rest goes by faster: the same kitchen, opened anew at another pace. */
  async function atPace(next: number): Promise<void> {
    note('kitchen', `at ${next} times the pace`);
    await look();
    await kitchen.page.goto(`${kitchen.url}/?practice=${next}&voice=bundled&stove=elsewhere`);
    await kitchen.page.waitForSelector('main.stove');
    await kitchen.page.mouse.click(CLEAR_OF_BUTTONS.x, CLEAR_OF_BUTTONS.y);
    await untilItListens(kitchen);
    pace = next;
    heardTo = last = Date.now();
  }
  while (!until() && Date.now() - began < mostMinutes * 60_000) {
    const { samples, startedAt } = await kitchen.heardFromPage(heardTo - MARGIN_MS);
    const wall = Date.now();
    restsSince = cook.resting && samples.every((sample) => Math.abs(sample) < LOUD_RMS) ? (restsSince ?? wall) : null; // prettier-ignore
    const isNight = pace === paces.night;
    if (isNight && !cook.resting) await atPace(paces.cooking);
    else if (!isNight && restsSince !== null && wall - restsSince > BEFORE_NIGHT_MS)
      await atPace(paces.night);
    if (isNight !== (pace === paces.night)) continue;
    cook.passes(((wall - last) / 60_000) * pace, (wall - last) / 60_000);
    last = wall;
    await look();
    if (wall - told >= WAITS_TOLD_MS) {
      told = wall;
      const states = await kitchen.page.evaluate(() => document.documentElement.dataset['kitchen'] ?? '');
      tell(
        `${((wall - began) / 1000).toFixed(0)}    (the cook waits for ${cook.waitsFor}; the page: ${states})`,
      );
    }
    const utterance = firstUtterance(samples);
    if (utterance === 'silence') heardTo = startedAt + (samples.length / RATE_HZ) * 1000;
    if (utterance === 'silence' || utterance === 'unfinished') {
      const over = utterance === 'unfinished';
      const sentence = cook.wantsToSay(over);
      if (sentence !== null) {
        note(over ? 'cook, over the page' : 'cook', sentence);
        await kitchen.say(sentence);
      }
    } else {
      heardTo = startedAt + (utterance.to / RATE_HZ) * 1000;
      const { text, prompts: came } = listener.hear(samples.slice(utterance.from, utterance.to));
      if (text !== '') note('page', `${text}   [${came.map(({ key }) => key).join(' ')}]`);
      cook.hears(came);
    }
    await new Promise((resolve) => setTimeout(resolve, STEP_MS));
  }
  listener.close();
  await look();
  return { kitchen, record, shown };
}

async function planAll(kitchen: Kitchen): Promise<void> {
  const { page } = kitchen;
  const fruits = Object.values(FRUITS);
  for (const [i, fruit] of fruits.entries()) {
    // One kitchen for all of them; what has no button of its own is looked for by its name.
    await page.getByRole('button', { name: EXAMPLES[fruit] ?? 'Pears' }).click();
    if (!EXAMPLES[fruit]) await page.locator('.fruit-field').getByRole('radio', { name: fruit, exact: true }).check(); // prettier-ignore
    await page.getByRole('radio', { name: 'Butter', exact: true }).check();
    // As much as is in the robot's pots.
    await page.getByLabel(WEIGHT_POUNDS).fill(String(POUNDS));
    await page.getByLabel(WEIGHT_OUNCES).fill('8');
    await page.getByRole('button', { name: i === 0 ? 'Start cooking' : 'Add to the stove' }).click();
    await page.waitForSelector('main.stove');
    if (i === fruits.length - 1) break;
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: 'Plan another batch' }).click();
  }
  await untilItListens(kitchen);
}

async function untilItListens({ page }: Kitchen): Promise<void> {
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
