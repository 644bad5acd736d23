// The clips of the corpus: who says what, how fast, how high, in which room; the same list on every machine.

import type { OpenPhrase } from '../../../src/kitchen/ports.ts';
import { between, chance, seedOf } from './chance.ts';
import { echo, respeed } from './kitchen.ts';
import { chatter, nearMisses } from './sayings.ts';
import type { Side, Voice } from './voices.ts';

export const SEED = 20260925;

export interface Clip {
  id: string;
  kind: 'command' | 'near' | 'chatter';
  words: string;
  voice: Voice;
  /** Dry speech in its room, 16 kHz, before any noise. */
  sound(): Float32Array;
}

const isFor = (side: Side) => (_: unknown, index: number) => (index % 2 === 0) === (side === 'tuning');

/**
 * The sentences of one side: of each command every second one of the phrase book, thinned so that commands
 * with numbers do not drown the rest, and half of the sayings.
 */
function sentencesOf(
  side: Side,
  book: readonly OpenPhrase[],
  perCommand: number,
): { kind: Clip['kind']; words: string }[] {
  const commands = new Map<string, OpenPhrase[]>();
  for (const phrase of book) commands.set(phrase.command, [...(commands.get(phrase.command) ?? []), phrase]);
  const spoken = [...commands.values()].flatMap((phrases) => {
    const random = chance(seedOf(`${SEED} ${side} ${phrases[0]?.command}`));
    const mine = phrases.filter(isFor(side));
    const pool = mine.length > 0 ? mine : phrases;
    return Array.from(
      { length: Math.min(perCommand, pool.length) },
      () => pool.splice(Math.floor(random() * pool.length), 1)[0]!,
    );
  });
  return [
    ...spoken.map(({ words }) => ({ kind: 'command' as const, words })),
    ...nearMisses.filter(isFor(side)).map((words) => ({ kind: 'near' as const, words })),
    ...chatter.filter(isFor(side)).map((words) => ({ kind: 'chatter' as const, words })),
  ];
}

/** Each sentence by `voicesEach` of the voices of its side, in turn. */
export function clips(
  side: Side,
  book: readonly OpenPhrase[],
  voices: readonly Voice[],
  perCommand = 2,
  voicesEach = 1,
): Clip[] {
  const mine = voices.filter((voice) => voice.side === side);
  return sentencesOf(side, book, perCommand).flatMap((sentence, index) =>
    Array.from({ length: voicesEach }, (_, turn) => clipOf(sentence, mine[(index + turn) % mine.length]!)),
  );
}

/** One sentence by one voice. */
export function clipOf({ kind, words }: { kind: Clip['kind']; words: string }, voice: Voice): Clip {
  const id = `${voice.name}: ${words}`;
  return {
    id,
    kind,
    words,
    voice,
    sound() {
      const random = chance(seedOf(`${SEED} ${id}`));
      const rate = between(random, 0.88, 1.15);
      const pitch = between(random, 0.85, 1.2);
      const size = between(random, 0.95, 1.06);
      return echo(respeed(voice.say(words, rate, pitch), size), seedOf(`room ${id}`));
    },
  };
}
