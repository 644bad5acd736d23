// A rehearsal in the real page by ear and voice, from "Start cooking" until an end is reached.

import type { Kitchen } from '../harness/kitchen.ts';
import { EarCook } from './earCook.ts';
import { rehearsedIn, type Rehearsed } from './record.ts';

export interface Ended extends Rehearsed {
  cook: EarCook;
  wallMinutes: number;
  kitchenMinutes: number;
}

/** A cook who wants to be heard lets the page end, and takes a breath. */
const BREATH_MS = 450;
const STEP_MS = 150;

export async function startRehearsal(
  { page }: Kitchen,
  { example, product } = { example: 'Damson plums', product: 'Butter' },
): Promise<void> {
  await page.getByRole('button', { name: example }).click();
  await page.getByRole('radio', { name: product, exact: true }).check();
  await page.getByRole('button', { name: 'Start cooking' }).click();
  await page.waitForSelector('.ear.listening', { timeout: 90_000 });
}

export async function rehearse(
  kitchen: Kitchen,
  isOver: (so: Rehearsed) => boolean,
  mostMinutes: number,
  tell: (line: string) => void = () => {},
): Promise<Ended> {
  const { page } = kitchen;
  const cook = new EarCook();
  const began = Date.now();
  const clock = () => page.evaluate(() => Number(document.documentElement.dataset['now']));
  const kitchenBegan = await clock();
  let so = await rehearsedIn(page);
  let told = 0;
  let voiced = 0;
  while (!isOver(so) && Date.now() - began < mostMinutes * 60_000) {
    so = await rehearsedIn(page);
    const now = await clock();
    const at = `${((Date.now() - began) / 1000).toFixed(0)} s, ${((now - kitchenBegan) / 60_000).toFixed(1)} min`;
    for (const { words, to } of so.spoken.slice(told)) {
      if (to === null) break;
      told += 1;
      tell(`${at}  page: ${words}`);
    }
    cook.listen(so.spoken);
    cook.looksAtClock(now);
    const words = so.entries.filter(({ entry }) => entry.source === 'voice').length;
    if (words > voiced) cook.taken();
    voiced = words;
    const last = so.spoken.at(-1);
    const isQuiet = last === undefined || (last.to !== null && Date.now() - last.to > BREATH_MS);
    const sentence = isQuiet ? cook.wantsToSay(Date.now(), now) : null;
    if (sentence !== null) {
      tell(`${at}      cook: ${sentence}`);
      await kitchen.say(sentence);
    }
    await new Promise((resolve) => setTimeout(resolve, STEP_MS));
  }
  return {
    ...(await rehearsedIn(page)),
    cook,
    wallMinutes: (Date.now() - began) / 60_000,
    kitchenMinutes: ((await clock()) - kitchenBegan) / 60_000,
  };
}
