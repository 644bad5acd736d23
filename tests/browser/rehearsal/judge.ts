// What was told in time, late or never? Every prompt that the charts asked for, held against what the page's voice said and when.

import { batchState } from '../../../machines/batch/choices.ts';
import { cannerState } from '../../../machines/canner/choices.ts';
import { emptyKitchen, type Kitchen } from '../../../machines/kitchen/kitchen.ts';
import { foldOne, type Folded } from '../../../src/kitchen/fold.ts';
import { sayable } from '../../../src/sound/sayable.ts';
import { createCatalogue } from '../../../src/words/catalogue.ts';
import type { Acknowledged, Rehearsed, Spoken } from './record.ts';

export type Verdict =
  /** Told to its end while its step lasted. */
  | 'in time'
  /** Its step was over before it had been told, or a kitchen minute went by before its first word. */
  | 'late'
  /** The cook told the next step before it could be said. */
  | 'overtaken'
  /** A newer word about the same took its place while its step lasted. */
  | 'replaced'
  | 'never';

export interface Judged {
  text: string;
  verdict: Verdict;
  /** Kitchen seconds from when it was called for to its first sound; null where it never sounded. */
  afterS: number | null;
}

interface Prompt {
  text: string;
  about: string | null;
  slot: string;
  wall: number;
  kitchen: number;
  /** When its step was over, and whether the cook's own word ended it. */
  over: { wall: number; byCook: boolean };
  /** When a newer word of its slot was called for. */
  replaced: number;
}

/** The voice begins a little before the log has said why, where the disk is busy. */
const BEFORE_MS = 300;
const LATE_S = 60;

export function judged({ entries, spoken }: Rehearsed): Judged[] {
  const prompts = promptsOf(entries);
  const used = new Set<Spoken>();
  return prompts.map((prompt) => {
    const told = spoken.find(
      (one) => !used.has(one) && one.from >= prompt.wall - BEFORE_MS && one.words.includes(prompt.text),
    );
    // What waited for its turn may be said in one breath with the next: a breath serves each of its sentences.
    if (told && told.words === prompt.text) used.add(told);
    const afterS = told ? Math.max(0, (told.kitchenFrom - prompt.kitchen) / 1000) : null;
    const verdict = afterS !== null && afterS > LATE_S ? 'late' : verdictOf(prompt, told);
    return { text: prompt.text, afterS, verdict };
  });
}

function verdictOf({ over, replaced }: Prompt, told: Spoken | undefined): Verdict {
  if (told && (told.to ?? Infinity) <= over.wall) return 'in time';
  // What the cook said while it was being told, or before: nothing went by that the cook did not let go by.
  if (over.byCook) return told ? 'in time' : 'overtaken';
  if (!told) return replaced < over.wall ? 'replaced' : 'never';
  return 'late';
}

function promptsOf(entries: readonly Acknowledged[]): Prompt[] {
  const { text } = createCatalogue('en', 'us');
  let log: Folded = { entries: [], kitchen: emptyKitchen, lastAt: 0 };
  const prompts: Prompt[] = [];
  for (const { entry, wall } of entries) {
    const before = log.kitchen;
    const step = foldOne(log, entry);
    log = step;
    for (const open of prompts)
      if (open.over.wall === Infinity && stateOf(before, open.about) !== stateOf(step.kitchen, open.about))
        open.over = { wall, byCook: entry.source !== 'clock' };
    for (const effect of step.effects) {
      if (effect.type !== 'say') continue;
      for (const older of prompts)
        if (older.slot === effect.slot && older.replaced === Infinity) older.replaced = wall;
      prompts.push({
        text: sayable(text(effect.message)),
        about: effect.about,
        slot: effect.slot,
        wall,
        kitchen: entry.event.at,
        over: { wall: Infinity, byCook: false },
        replaced: Infinity,
      });
    }
  }
  return prompts;
}

function stateOf({ batches, canners }: Kitchen, id: string | null): string {
  const batch = id === null ? undefined : batches[id];
  const canner = id === null ? undefined : canners[id];
  return batch ? batchState(batch) : canner ? cannerState(canner) : '';
}
