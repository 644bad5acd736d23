// The table of what the ear did on a corpus, by noise and by voice.

import type { Clip } from './clips.ts';
import type { Corpus, Tried } from './found.ts';

/** Of some voices alone, if they are named. */
export function tableOf(corpus: Corpus, tried: readonly Tried[], named?: readonly string[]): string {
  const names = corpus.voices.filter((name) => named?.includes(name) ?? true);
  const trials = tried.filter(({ voice }) => names.includes(voice));
  const at = (level: number | null) => trials.filter(({ snrDb }) => snrDb === level);
  const waits = trials.flatMap(({ waitsMs }) => waitsMs).toSorted((a, b) => a - b);
  return [
    `${corpus.list}, ${corpus.clips} clips, ${corpus.open}, voices: ${names.join(', ')}`,
    `${tried.length} trials of ${corpus.clips * corpus.levels.length}${named ? `, ${trials.length} by these voices` : ''}`,
    'noise   commands  correct  asked  asked wrong  missed  wrong | near misses & chatter  acted on  asked | unsafe',
    ...corpus.levels.map((level) => row(level === null ? 'quiet' : `${level} dB`, at(level))),
    ...names.map((name) =>
      row(
        name,
        trials.filter(({ voice }) => voice === name),
      ),
    ),
    `end of words to answer: median ${waits[waits.length >> 1]} ms, p95 ${waits[Math.floor(waits.length * 0.95)]} ms`,
  ].join('\n');
}

function row(name: string, of: readonly Tried[]): string {
  const outcomes = (kinds: Clip['kind'][]) =>
    of.filter(({ kind }) => kinds.includes(kind)).map(({ outcome }) => outcome);
  const share = (list: readonly string[], wanted: string) =>
    `${((100 * list.filter((outcome) => outcome === wanted).length) / Math.max(1, list.length)).toFixed(1)}%`;
  const said = outcomes(['command']);
  const other = outcomes(['near', 'chatter']);
  return [
    name.padEnd(18),
    String(said.length).padEnd(6),
    ...['correct', 'asked', 'asked wrong', 'missed', 'wrong'].map((outcome) =>
      share(said, outcome).padStart(8),
    ),
    '|',
    String(other.length).padEnd(6),
    share(other, 'wrong').padStart(8),
    share(other, 'asked wrong').padStart(8),
    '|',
    String(of.filter(({ unsafe }) => unsafe).length),
  ].join(' ');
}
