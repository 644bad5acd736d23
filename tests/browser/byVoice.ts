// A cook who only speaks: says a sentence into the microphone, looks whether the kitchen moved, and says it
// again if it did not, as a person would.

import type { Page } from 'playwright-core';
import { createCatalogue } from '../../src/words/catalogue.ts';
import type { Kitchen } from './harness/kitchen.ts';

/** How long a cook waits before saying it again, ms of wall time. */
const PATIENCE_MS = 9_000;
const MOST_TRIES = 4;
/** So often it looks whether it was understood, or is asked. */
const HEARD_MS = 600;

/** What is asked before it is done, of one batch and one canner. */
const ASKED_FIRST = (['canner.fullBoil', 'canner.boilHolds', 'plate.held', 'seals.allHeld'] as const).map(
  (command) =>
    createCatalogue('en', 'us').text({ key: `dialogue.plain.${command}`, params: { name: 'none' } }),
);

export interface Spoken {
  sentence: string;
  tries: number;
}

export class VoiceCook {
  readonly said: Spoken[] = [];
  /** Every "name: state; name: state" that the page has passed through, in order. */
  readonly passed: string[] = [];
  readonly #kitchen: Kitchen;

  constructor(kitchen: Kitchen) {
    this.#kitchen = kitchen;
  }

  get page(): Page {
    return this.#kitchen.page;
  }

  async states(): Promise<Record<string, string>> {
    const text = await this.page.evaluate(() => document.documentElement.dataset['kitchen'] ?? '');
    if (text !== '' && text !== this.passed.at(-1)) this.passed.push(text);
    return Object.fromEntries(text.split('; ').map((pair) => pair.split(': ') as [string, string]));
  }

  async stateOf(who: string): Promise<string> {
    return (await this.states())[who] ?? 'none';
  }

  /** Waits until somebody is in a state; false when it takes too long. */
  async sees(who: string, state: string, withinMs = PATIENCE_MS): Promise<boolean> {
    const deadline = Date.now() + withinMs;
    while (Date.now() < deadline) {
      if ((await this.stateOf(who)) === state) return true;
      await new Promise((resolve) => setTimeout(resolve, 150));
    }
    return false;
  }

  /** Lets the page finish its sentence: a cook who wants to be heard does not talk over it. */
  async letItFinish(withinMs = 90_000): Promise<void> {
    const quiet = () => document.querySelector('.caption.speaking') === null;
    await this.page.waitForFunction(quiet, undefined, { timeout: withinMs, polling: 100 });
    await new Promise((resolve) => setTimeout(resolve, 450));
  }

  /** The page has asked whether it is so, and waits for a yes. */
  async #isAsked(): Promise<boolean> {
    const [text, speaks] = await this.page.evaluate(() => {
      const caption = document.querySelector('.caption');
      return [caption?.textContent ?? '', caption?.classList.contains('speaking') === true] as const;
    });
    return !speaks && ASKED_FIRST.includes(text.trim());
  }

  /** Waits until the kitchen is where a sentence leads, and says yes where it asks first; false when it takes too long. */
  async #leadsTo(who: string, state: string): Promise<boolean> {
    if (await this.sees(who, state, HEARD_MS)) return true;
    for (let waited = HEARD_MS; waited < PATIENCE_MS; waited += HEARD_MS) {
      if (await this.#isAsked()) {
        await this.#kitchen.say('yes that is right');
        return this.sees(who, state);
      }
      if (await this.sees(who, state, HEARD_MS)) return true;
    }
    return false;
  }

  /** Says a sentence until the kitchen is where it leads. */
  async saysUntil(sentence: string, who: string, state: string): Promise<void> {
    for (let tries = 1; tries <= MOST_TRIES; tries++) {
      await this.letItFinish();
      await this.#kitchen.say(sentence);
      if (await this.#leadsTo(who, state)) {
        this.said.push({ sentence, tries });
        if (process.env['COOK_ALOUD'])
          console.error(`${new Date().toISOString().slice(14, 19)} ${sentence} (${tries}) -> ${state}`);
        return;
      }
    }
    const seen = await this.page.evaluate(() => document.querySelector('.ear-words')?.textContent ?? '');
    throw new Error(
      `After "${sentence}" ${MOST_TRIES} times the ${who} is ${await this.stateOf(who)}, not ${state}; the ear: ${seen}`,
    );
  }
}
