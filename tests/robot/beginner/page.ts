// The page as a beginner has it before them, in Node: what it says, what it shows, and what may be said to it.

import { faceOf } from '../../../src/kitchen/face.ts';
import type { LiveKitchen } from '../../../src/kitchen/live.ts';
import { sightsOf } from '../../../src/kitchen/sights.ts';
import type { Catalogue, Hearing, LogEntry, OpenPhrase } from '../../../src/kitchen/ports.ts';
import type { BatchPlan } from '../../../src/core/types.ts';
import { openPhrases } from '../../../src/words/phrases.en.ts';
import { kitchenAtWork, settle as settleTurns } from '../../kitchen/atWork.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from '../../kitchen/memory.ts';

type Asked = Parameters<typeof openPhrases>;

/** Works the sentences out only when somebody speaks, and without times of day, which this robot never names. */
class LazyEar extends ToldEar {
  #asked: Asked | null = null;

  readonly wait = (...asked: Asked): OpenPhrase[] => {
    this.#asked = asked;
    return [];
  };

  override expect(): void {}

  says(words: string): boolean {
    if (!this.#asked) return false;
    const [open, fruits, bounds] = this.#asked;
    this.phrases = openPhrases(open, fruits, { ...bounds, told: [], clock: [] });
    return this.hear(words);
  }
}

/** What stands on the screen of the thing in hand. */
export interface Screen {
  /** Words of the states and what to do, of batch and canner. */
  lines: string[];
  /** Pictures as their alternative texts, by what they are called. */
  pictures: { name: string; alt: string }[];
}

export interface Page {
  readonly live: LiveKitchen;
  /** Everything said since it was last listened to. */
  heard(): string[];
  /** The last that was said, by one who has yet to listen to the rest. */
  lastSaid(): string;
  screen(): Screen;
  say(words: string): Promise<boolean>;
  wait(ms: number): Promise<void>;
  now(): number;
}

/** People take a breath before they answer. */
const ANSWERS_AFTER_MS = 2000;
const EVENING = Date.UTC(2026, 8, 18, 15);

export async function openPage(
  catalogue: Catalogue,
  onEntry: (entry: LogEntry) => void,
  log = new MemoryLog(),
): Promise<Page> {
  const clock = new HandClock(EVENING);
  const ear = new LazyEar();
  const mouth = new WritingMouth();
  const ports = {
    ...{ clock, ear, mouth, onEntry },
    catalogue: () => catalogue,
    phrases: ear.wait,
    // A day of rest goes by in a few beats, and is no sleep.
    pace: () => 3600,
    practice: true,
  };
  const live = await kitchenAtWork(ports, log);
  let listened = 0;
  const settle = () => settleTurns(6);
  return {
    live,
    heard() {
      const since = mouth.said.slice(listened);
      listened = mouth.said.length;
      return since;
    },
    lastSaid: () => mouth.said.at(-1) ?? '',
    screen: () => screenOf(live, catalogue),
    async say(words) {
      clock.turn(ANSWERS_AFTER_MS);
      await settle();
      const understood = ear.says(words);
      await settle();
      return understood;
    },
    async wait(ms) {
      clock.turn(ms);
      await settle();
    },
    now: () => clock.now(),
  };
}

function screenOf({ view }: LiveKitchen, catalogue: Catalogue): Screen {
  const word = (key: string) => catalogue.text({ key });
  const actors = [...view.batches, ...view.canners];
  // The pictures of a step stand on the page while its words are full; fewer words, no picture by itself.
  const shown = view.showing ? actors.filter(({ id }) => id === view.focus) : [];
  const sights = shown.flatMap((actor) => sightsOf('plan' in actor ? 'batch' : 'canner', faceOf(actor)));
  return {
    lines: view.batches.flatMap(({ detail }) => (detail ? [catalogue.text(detail)] : [])),
    pictures: sights.map((sight) => ({ name: word(`see.${sight}`), alt: word(`see.${sight}.alt`) })),
  };
}

export async function plan(page: Page, wanted: BatchPlan): Promise<void> {
  await page.live.plan(wanted);
  await page.wait(1000);
}

export type { Hearing };
