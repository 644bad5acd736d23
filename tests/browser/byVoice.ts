// A cook who only speaks: says a sentence into the microphone, looks whether the kitchen moved, and says it
// again if it did not, as a person would.

import type { Page } from 'playwright-core';
import type { Kitchen } from './harness/kitchen.ts';

/** How long a cook waits before saying it again, ms of wall time. */
const PATIENCE_MS = 9_000;
const MOST_TRIES = 4;

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

  /** Says a sentence until the kitchen is where it leads. */
  async saysUntil(sentence: string, who: string, state: string): Promise<void> {
    for (let tries = 1; tries <= MOST_TRIES; tries++) {
      await this.letItFinish();
      await this.#kitchen.say(sentence);
      if (await this.sees(who, state)) {
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
