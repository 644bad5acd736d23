// A cook with a thumb: presses what the screen offers, holding where it asks to be held.

import { errors, type Page } from 'playwright-core';
import { viewWords } from '../../src/words/en.views.ts';
import { SPRAY_MS } from '../../src/app/stove/hold.ts';
import type { Kitchen } from './harness/kitchen.ts';

/** A little more than a guarded button wants to be held, ms. */
const HOLD_MS = 1_100;
const PATIENCE_MS = 15_000;

export class HandCook {
  readonly #kitchen: Kitchen;

  constructor(kitchen: Kitchen) {
    this.#kitchen = kitchen;
  }

  get page(): Page {
    return this.#kitchen.page;
  }

  async startCooking(example: string, product: string): Promise<void> {
    await this.page.getByRole('button', { name: example }).click();
    await this.page.getByRole('radio', { name: product, exact: true }).check();
    await this.page.getByRole('button', { name: 'Start cooking' }).click();
    await this.page.waitForSelector('main.stove');
  }

  async stateOf(who: string): Promise<string> {
    const text = await this.page.evaluate(() => document.documentElement.dataset['kitchen'] ?? '');
    return (
      Object.fromEntries(text.split('; ').map((pair) => pair.split(': ') as [string, string]))[who] ?? 'none'
    );
  }

  async sees(who: string, state: string, withinMs = PATIENCE_MS): Promise<boolean> {
    const deadline = Date.now() + withinMs;
    while (Date.now() < deadline) {
      if ((await this.stateOf(who)) === state) return true;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    return false;
  }

  /** Presses the button of a command, at whoever takes it, and waits for where it leads. */
  async does(command: keyof typeof labels, who: string, state: string): Promise<void> {
    await this.#lookAt(who.startsWith('canner') || command.startsWith('canner.') ? 'Canner' : who);
    const button = this.page.locator('.controls button', { hasText: labels[command] }).first();
    await button.waitFor({ timeout: PATIENCE_MS });
    if ((await button.getAttribute('class'))?.includes('guarded')) await this.#hold(button);
    else await button.click();
    await this.#confirmCount();
    if (!(await this.sees(who, state)))
      throw new Error(`${command}: ${who} is ${await this.stateOf(who)}, not ${state}`);
  }

  /** Holds the yes of the question that is put, if one is; true when it was there. */
  async saysYes(): Promise<boolean> {
    const yes = this.page.locator('.answers .choice').first();
    if (!(await yes.isVisible())) return false;
    return this.#hold(yes);
  }

  async toTheSimmer(): Promise<void> {
    await this.does('setup.ready', 'damson plum', 'mashing');
    await this.does('mash.done', 'damson plum', 'comingToBoil');
    await this.does('pot.rollingBoil', 'damson plum', 'simmering');
  }

  async toTheCanner(): Promise<void> {
    await this.toTheSimmer();
    await this.fromSimmerToTheCanner();
  }

  async fromSimmerToTheCanner(): Promise<void> {
    await this.does('canner.filled', 'canner', 'filled');
    await this.does('canner.heatOn', 'canner', 'heating');
    await this.does('canner.hot', 'canner', 'hot');
    await this.does('pot.thick', 'damson plum', 'skimming');
    await this.does('skim.done', 'damson plum', 'straining');
    await this.does('strain.done', 'damson plum', 'blending');
    await this.does('blend.done', 'damson plum', 'spooning');
    await this.does('plate.held', 'damson plum', 'readyingJars');
    await this.does('jars.ready', 'damson plum', 'filling');
    await this.does('jars.filled', 'damson plum', 'waitingForCanner');
    await this.does('jars.in', 'canner', 'comingToFullBoil');
  }

  /** The process clock's absolute end, kitchen ms, read off what the page remembers. */
  clockEndsAt(): Promise<number> {
    return this.#fact('clockUntil');
  }

  /** When the simmer will likely be done, kitchen ms. */
  simmerEndsAt(): Promise<number> {
    return this.#fact('simmerUntil');
  }

  caption(): Promise<string> {
    return this.page.evaluate(() => document.querySelector('.caption')?.textContent ?? '');
  }

  earWords(): Promise<string> {
    return this.page.evaluate(() => document.querySelector('.ear-words')?.textContent ?? '');
  }

  async #fact(name: string): Promise<number> {
    const text = await this.page.evaluate((key) => document.documentElement.dataset[key] ?? '', name);
    if (text === '') throw new Error(`The page shows no ${name}.`);
    return Number(text);
  }

  async #lookAt(name: string): Promise<void> {
    const plate = this.page.locator('.plate-on-stove', { hasText: name }).first();
    if (await plate.isVisible()) await plate.click();
  }

  /** False where the button is gone by then: the page has moved on by itself. */
  async #hold(button: ReturnType<Page['locator']>): Promise<boolean> {
    // Two touches at once are spray to the guard; a thumb takes a moment from one button to the next.
    await new Promise((resolve) => setTimeout(resolve, SPRAY_MS + 50));
    if (!(await button.isVisible())) return false;
    const box = await button.boundingBox({ timeout: 1_000 }).catch((error: unknown) => {
      if (error instanceof errors.TimeoutError) return null;
      throw error;
    });
    if (!box) return false;
    await this.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await this.page.mouse.down();
    await new Promise((resolve) => setTimeout(resolve, HOLD_MS));
    await this.page.mouse.up();
    return true;
  }

  /** Where the screen asks how many, the number it offers is taken. */
  async #confirmCount(): Promise<void> {
    const sheet = this.page.locator('dialog[open], [role=dialog]').first();
    if (!(await sheet.isVisible().catch(() => false))) return;
    await sheet.locator('button.main').click();
  }
}

type Command = keyof typeof viewWords extends infer Key
  ? Key extends `choice.${infer C}`
    ? C
    : never
  : never;

const labels = Object.fromEntries(
  Object.entries(viewWords).flatMap(([key, label]) =>
    key.startsWith('choice.') ? [[key.slice(7), label]] : [],
  ),
) as Record<Command, string>;
