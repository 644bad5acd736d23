// Which sentence the recognisers agree on best, and how sure that is: the network's scores, with the votes of the classic one where they leave doubt.

import { confidenceOf } from './confidence.ts';
import type { Reading } from './recogniser.ts';
import type { Ranked, SoundReading } from './soundReader.ts';

/** What the classic recogniser picked from the network's best sentences, from the clip as it came and denoised. */
export interface Votes {
  raw: Reading;
  clean: Reading;
}

export interface FusedReading {
  sounds: SoundReading;
  /** Null where it was not asked. */
  votes: Votes | null;
}

/** What the likelihood of the best sentence rests on. */
export interface FusedEvidence {
  /** Natural log for each sound of the sentence: how much better free sounds do. Less than nothing where the price of length outweighs it. */
  lack: number;
  /** Natural log by which it is before the best sentence of another meaning. */
  margin: number;
  /** What it lacks over the 160 ms where it fits worst. */
  weakest: number;
  /** How much better a string of common words would fit, natural log: much, where it was only talk. */
  others: number;
  /** Votes of the classic recogniser for it, less those against it, weighed by how sure it is, 0 to 1: it knows real voices better than the network does. */
  sure: number;
  /** Its number of sounds. */
  sounds: number;
  /** Steps that sound for each of its sounds: a clip that says much more than the sentence, or much less. */
  spare: number;
}

export interface Fused {
  words: string;
  evidence: FusedEvidence;
  /** Natural log by which the network alone would have another meaning: the classic recogniser overruled it. */
  overruled: number;
}

/**
 * Natural log that a vote of the classic recogniser is worth, for each of its two readings: little in a roar, much where
 * it is sure of itself, for it has heard real people and the network mostly machines.
 */
const VOTE = 4;
const SURE_VOTE = 5;
/** So far ahead is as good as any further. */
export const MOST_MARGIN = 12;
const MOST_WEAKEST = 15;
const MOST_OTHERS = 30;
/**
 * Natural log for each sound: a clink or a knock is hardly likelier to be a word than nothing. On the tuning side one in
 * a hundred of what was said is below it, of what the detector lets through in half an hour of kitchen noise nearly all.
 */
const LEAST_OVER_SILENCE = 1.5;
/** So many sentences of the network are put to the classic recogniser. */
const PUT_TO_VOTE = 24;
/** Ahead by so much, fitting so well everywhere, and of so many sounds, the network needs no second opinion: of short words it can be sure and wrong. */
const [PLAIN_MARGIN, PLAIN_WEAKEST, PLAIN_SOUNDS] = [9, 4, 8];

export function fused({ sounds, votes }: FusedReading, meaning: (words: string) => string): Fused | null {
  const voted = (words: string) =>
    votes === null
      ? []
      : [votes.raw.words, votes.clean.words].filter(
          (vote) => vote !== null && meaning(vote) === meaning(words),
        );
  const sure = votes === null ? 0 : confidenceOf(votes, meaning);
  const worth = VOTE + (sounds.knowsVoice ? 0 : SURE_VOTE * sure ** 2);
  const candidates = sounds.ranked
    .map((candidate) => ({ ...candidate, total: candidate.score + worth * voted(candidate.words).length }))
    .sort((a, b) => b.total - a.total);
  const best = candidates[0];
  if (!best || best.score === -Infinity) return null;
  if (sounds.overSilence(best) < LEAST_OVER_SILENCE * best.sounds) return null;
  const other = candidates.find(({ words }) => meaning(words) !== meaning(best.words));
  const given =
    votes === null ? 0 : [votes.raw.words, votes.clean.words].filter((vote) => vote !== null).length;
  const agree = voted(best.words).length;
  const first = sounds.ranked[0]!;
  return {
    words: best.words,
    overruled: meaning(first.words) === meaning(best.words) ? 0 : first.score - best.score,
    evidence: {
      lack: (sounds.free - best.fit) / best.sounds,
      margin: Math.min(MOST_MARGIN, best.total - (other?.total ?? -Infinity)),
      weakest: Math.min(MOST_WEAKEST, sounds.weakest(best.words)),
      others: Math.min(MOST_OTHERS, sounds.otherWords(best)),
      sure: sure * (agree - (given - agree)),
      sounds: best.sounds,
      spare: sounds.sounding / best.sounds,
    },
  };
}

/** The sentences to put to the classic recogniser; none where the network leaves no doubt. */
export function inDoubt(sounds: SoundReading, meaning: (words: string) => string): readonly string[] {
  const seen = fused({ sounds, votes: null }, meaning);
  if (seen === null) return [];
  const plain = fitsPlainly(seen.evidence) && seen.evidence.sounds >= PLAIN_SOUNDS;
  return plain ? [] : sounds.ranked.slice(0, PUT_TO_VOTE).map(({ words }: Ranked) => words);
}

/** Far ahead of every other meaning and fitting everywhere, however short. */
export function isPlain(sounds: SoundReading, meaning: (words: string) => string): boolean {
  const seen = fused({ sounds, votes: null }, meaning);
  return seen !== null && fitsPlainly(seen.evidence);
}

const fitsPlainly = ({ margin, weakest }: FusedEvidence): boolean =>
  margin >= PLAIN_MARGIN && weakest <= PLAIN_WEAKEST;

/**
 * Logistic of the evidence, fitted on the tuning side and on what the detector let through of talk and noise (tests/voice/corpus/MEASURED.md); but for `sure`,
 * which real people's digits asked to be larger, while there was a network that had not heard them.
 */
export const FUSED_WEIGHTS = {
  bias: 0.469,
  lack: -0.579,
  margin: 0.188,
  weakest: -0.198,
  others: -0.093,
  sure: 0.4,
  sounds: 0.056,
  spare: -2.048,
};

export function fusedConfidence(evidence: FusedEvidence, weights = FUSED_WEIGHTS): number {
  const names = Object.keys(evidence) as (keyof FusedEvidence)[];
  const sum = names.reduce((total, name) => total + weights[name] * evidence[name], weights.bias);
  return 1 / (1 + Math.exp(-sum));
}
