// How the ear does on a clip, and what many clips come to.

import type { Hearing, OpenPhrase } from '../../../src/kitchen/ports.ts';
import { consequenceOf } from '../../../machines/dialogue/commands.ts';
import type { AllReadings } from '../../../src/voice/decide.ts';
import { listenTo } from '../../../src/serve/listenTo.ts';
import { openListener } from '../../../src/voice/openListener.ts';
import { readEarFiles } from '../../../src/serve/earFiles.ts';
import { seedOf } from './chance.ts';
import type { Clip } from './clips.ts';
import type { Tried } from './found.ts';
import { inKitchen } from './kitchen.ts';

export interface Trial {
  clip: Clip;
  snrDb: number | null;
  hearings: Hearing[];
  readings: AllReadings[];
}

export type Outcome = 'correct' | 'asked' | 'asked wrong' | 'missed' | 'wrong' | 'quiet';

export async function trialsOf(
  clips: Iterable<Clip>,
  levels: readonly (number | null)[],
  open: (clip: Clip) => readonly OpenPhrase[],
  done: (trial: Trial) => void,
): Promise<void> {
  let trial: Trial | null = null;
  const listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    level: () => undefined,
    heard(hearing, readings) {
      trial?.hearings.push(hearing);
      if (readings) trial?.readings.push(readings);
    },
  });
  for (const clip of clips) {
    const sound = clip.sound();
    listener.expect(open(clip));
    for (const snrDb of levels) {
      trial = { clip, snrDb, hearings: [], readings: [] };
      await listenTo(listener, inKitchen(sound, snrDb, seedOf(`noise ${snrDb} ${clip.id}`)));
      done(trial);
    }
  }
}

/** What the page would do: acting on any stretch counts, wrong before right, acting before asking. */
export function outcomeOf({ clip, hearings }: Trial, meaning: (words: string) => string): Outcome {
  const right = clip.kind === 'command' ? meaning(clip.words) : null;
  const acted = hearings.filter((hearing) => hearing.kind === 'heard');
  if (acted.some((hearing) => meaning(hearing.words) !== right)) return 'wrong';
  if (acted.length > 0) return 'correct';
  const asked = hearings.find((hearing) => hearing.kind === 'unsure');
  if (asked) return meaning(asked.words) === right ? 'asked' : 'asked wrong';
  return clip.kind === 'command' ? 'missed' : 'quiet';
}

/** Whether an outcome was a wrong action that a jar's safety hangs on. */
export function endangers({ hearings }: Trial, outcome: Outcome): boolean {
  return (
    outcome === 'wrong' &&
    hearings.some(
      (hearing) => hearing.kind === 'heard' && consequenceOf(hearing.understood.command) === 'safety',
    )
  );
}

/** What is written down of a trial. */
export function triedIn(trial: Trial, outcome: Outcome): Tried {
  const { clip, snrDb, hearings } = trial;
  return {
    id: clip.id,
    kind: clip.kind,
    voice: clip.voice.name,
    snrDb,
    outcome,
    unsafe: endangers(trial, outcome),
    waitsMs: hearings.map(({ ms }) => ms),
    heard: hearings.flatMap((hearing) => {
      if (hearing.kind === 'nothing') return [];
      const { kind, words, understood, confidence } = hearing;
      return [{ kind, words, understood, confidence }];
    }),
  };
}
