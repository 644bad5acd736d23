// The robot cook and the kitchen at one table, without the air between them: what the page would speak reaches
// the cook as words, what the cook says reaches the page as a sentence, and a sentence takes as long as to say it.

import { setImmediate as turnOfTheLoop } from 'node:timers/promises';
import type { BatchPlan } from '../../../src/core/types.ts';
import { usualEvening } from '../../../src/kitchen/evening/settings.ts';
import type { LiveKitchen } from '../../../src/kitchen/live.ts';
import type { Ear, Mouth, Utterance } from '../../../src/kitchen/ports.ts';
import { kitchenAtWork } from '../../kitchen/atWork.ts';
import { HandClock, ToldEar } from '../../kitchen/memory.ts';
import { steadyPlanner, type SteadyPlanner } from '../../kitchen/steadyPlanner.ts';
import type { RobotCook } from './cook.ts';
import { plain, type Prompt, type Prompts } from './prompts.ts';

/** Of slow, clear speech: about 150 words a minute. */
const MS_PER_LETTER = 70;
const STEP_MS = 3_000;
const REST_STEP_MS = 60_000;
const HOUR_MS = 3_600_000;

/** One sentence of either side, with when it began and ended, kitchen ms. */
export interface Turn {
  who: 'kitchen' | 'cook';
  text: string;
  from: number;
  to: number;
  urgency?: Utterance['urgency'];
}

class TimedMouth implements Mouth {
  readonly turns: Turn[] = [];
  readonly #clock: HandClock;
  #saying: { turn: Turn; end: (outcome: 'spoken' | 'cut') => void } | null = null;

  constructor(clock: HandClock) {
    this.#clock = clock;
  }

  get speaks(): boolean {
    return this.#saying !== null;
  }

  async unlock() {}
  duck() {}

  speak({ text, urgency }: Utterance): Promise<'spoken' | 'cut'> {
    const from = this.#clock.now();
    const turn: Turn = { who: 'kitchen', text, from, to: from + text.length * MS_PER_LETTER, urgency };
    this.turns.push(turn);
    return new Promise((end) => (this.#saying = { turn, end }));
  }

  /** What has come to its end by now. */
  passes(): string | null {
    if (this.#saying === null || this.#clock.now() < this.#saying.turn.to) return null;
    return this.#end('spoken');
  }

  cut() {
    if (this.#saying) this.#saying.turn.to = this.#clock.now();
    this.#end('cut');
  }

  async sound() {
    return 'played' as const;
  }

  #end(outcome: 'spoken' | 'cut'): string | null {
    const saying = this.#saying;
    this.#saying = null;
    saying?.end(outcome);
    return saying?.turn.text ?? null;
  }
}

export interface Evening {
  turns: Turn[];
  live: LiveKitchen;
  minutes: number;
}

/** What is between the two: what either says reaches the other by this. */
export interface Between {
  ear: Ear;
  toCook(text: string): Promise<readonly Prompt[]>;
  toKitchen(sentence: string): Promise<void>;
}

/** Nothing is between them: every word arrives. */
export function byWords(prompts: Prompts): Between {
  const ear = new ToldEar();
  return {
    ear,
    toCook: async (text) => prompts.promptsIn(plain(text)),
    async toKitchen(sentence) {
      ear.hear(sentence);
    },
  };
}

/** Cooks the batches from set up to put away; throws where an evening does not end. */
export async function eveningAtOneTable(
  plans: readonly BatchPlan[],
  cook: RobotCook,
  { ear, toCook, toKitchen }: Between,
  mostHours = 40,
  onTurn: (turns: readonly Turn[]) => void = () => {},
): Promise<Evening> {
  const start = Date.UTC(2026, 8, 12, 15);
  const clock = new HandClock(start);
  const mouth = new TimedMouth(clock);
  const planner = steadyPlanner();
  const eveningSettings = () => ({ ...usualEvening, canners: cook.canners.length });
  const live = await kitchenAtWork({ clock, ear, mouth, planner, eveningSettings });
  for (const plan of plans) await live.plan(plan);
  const turns = mouth.turns;
  while (!cook.finished) {
    if (clock.now() - start > mostHours * HOUR_MS)
      throw new Error(`Not done: ${JSON.stringify([...cook.ends])}`);
    const stepMs = cook.resting && !mouth.speaks ? REST_STEP_MS : STEP_MS;
    clock.turn(stepMs);
    await settle(planner);
    const heard = mouth.passes();
    await settle(planner);
    if (heard !== null) cook.hears(await toCook(heard));
    cook.passes(stepMs / 60_000, stepMs / 60_000);
    if (heard !== null) onTurn(turns);
    if (mouth.speaks) continue;
    const sentence = cook.wantsToSay();
    if (sentence === null) continue;
    const from = clock.now();
    clock.turn(sentence.length * MS_PER_LETTER);
    turns.push({ who: 'cook', text: sentence, from, to: clock.now() });
    await toKitchen(sentence);
    await settle(planner);
  }
  live.close();
  return { turns, live, minutes: (clock.now() - start) / 60_000 };
}

async function settle(planner: SteadyPlanner): Promise<void> {
  for (let i = 0; i < 6; i++) await turnOfTheLoop();
  await planner.settled();
  await turnOfTheLoop();
}
