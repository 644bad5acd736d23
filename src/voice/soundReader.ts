// The second recogniser: our phoneme network, scored against every open sentence at once.

import { commonWords } from './commonWords.en.ts';
import { soundAlikes } from './soundAlikes.en.ts';
import { forwardScores, type Outputs } from './network/forwardScore.ts';
import type { Listened, PhoneNetwork } from './network/phoneNetwork.ts';
import { soundGraph, type SoundGraph } from './network/soundGraph.ts';
import { weakestLack } from './network/weakest.ts';
import { anyWords, wordLoop, type WordLoop } from './network/wordLoop.ts';
import { neighboursOf, replacedIn } from './neighbours.ts';
import type { Dictionary } from './pronunciations.ts';
import { parts, turned } from './turned.en.ts';

/** What the network makes of a clip. */
export interface SoundReading {
  /** The likeliest sentences, the best first. */
  ranked: readonly Ranked[];
  /** Natural log of the best path that need not be a sentence. */
  free: number;
  /** Steps of 40 ms. */
  steps: number;
  /** Steps at which a sound is likelier than the blank: how much was said. */
  sounding: number;
  /** The network has learnt this cook's voice, so the classic recogniser knows it no better. */
  knowsVoice: boolean;
  /** The score of a sentence that is open but not among the best; -Infinity for one that is not open. */
  scoreOf(words: string): number;
  /** Natural log by which a string of common words fits better than the sentence, each word but the first at a price. */
  otherWords(sentence: Ranked): number;
  /** Natural log by which the sentence is likelier than that nothing was said. */
  overSilence(sentence: Ranked): number;
  /** Natural log by which all that is still being said, of whatever sentence, is likelier than that this one is over. */
  unfinished(words: string): number;
  /** How much the sentence lacks where it fits worst, natural log. */
  weakest(words: string): number;
  /** By how much the likeliest sentence that only sounds like this one, or turns it into a question or a no, is ahead of it. */
  rival(words: string): number;
  /** The same of one that says it of a part only, where the sentence says it of all; -Infinity where it does not. */
  part(words: string): number;
  /**
   * The same of a sentence in which a word that carries the fact is another common word that sounds like it. `ahead` is
   * by how much that word must be ahead of it, natural log: so much the other is given beforehand.
   */
  neighbour(words: string, ahead: (word: string) => number): number;
}

export interface Ranked {
  words: string;
  /** Natural log of its probability as it sounds, with the price of its length. */
  fit: number;
  /** The same with how likely it was before it was heard. */
  score: number;
  sounds: number;
}

/** The sentences that were open when a clip came, while others may be opened. */
interface Open {
  graph: SoundGraph;
  places: ReadonlyMap<string, number>;
  priors: readonly number[];
}

/** Natural log, for each sound of a sentence: without it the shorter of two sentences wins too often. */
export const SOUND_PRICE = 2;
const KEPT = 60;
/** Natural log, for each further word of what is no sentence. */
const WORD_PRICE = 3;

export class SoundReader {
  readonly network: PhoneNetwork;
  readonly #dictionary: Dictionary;
  #graph: SoundGraph = soundGraph([], () => []);
  #places: ReadonlyMap<string, number> = new Map();
  #priors: readonly number[] = [];
  readonly #rivals = new Others((words) => this.#graphOf([words, ...soundAlikes(words), ...turned(words)]));
  readonly #parts = new Others((words) => this.#graphOf([words, ...parts(words)]));
  readonly #neighbours = new Others((words) => this.#graphOf([words, ...neighboursOf(words)]));
  /** Without the kitchen's own words, where they are not common: who says "canner" says it to the page. */
  readonly #common: WordLoop;

  constructor(network: PhoneNetwork, dictionary: Dictionary) {
    this.network = network;
    this.#dictionary = dictionary;
    this.#common = wordLoop(commonWords.flatMap((word) => dictionary.of(word)));
  }

  /** `prior` is the natural log of how likely a sentence is before anything is heard; all alike where it is not given. */
  expect(sentences: readonly string[], prior: (words: string) => number = () => 0): void {
    this.#graph = soundGraph(sentences, (word) => this.#dictionary.of(word));
    this.#priors = this.#graph.sentences.map(({ words }) => prior(words));
    this.#places = new Map(this.#graph.sentences.map(({ words }, index) => [words, index]));
  }

  /** How well one sentence fits what was heard: natural log for each sound by which free sounds fit better. */
  fitOf(words: string, { outputs }: Listened): { graph: SoundGraph; lack: number } {
    const graph = this.#graphOf([words]);
    const { sentences, free } = forwardScores(outputs, graph);
    const sounds = graph.sentences[0]?.shortest ?? 0;
    return { graph, lack: (free - sentences[0]! - SOUND_PRICE * sounds) / sounds };
  }

  /** A few sentences, each in all its ways. */
  #graphOf(sentences: readonly string[]): SoundGraph {
    return soundGraph(sentences, (word) => this.#dictionary.of(word));
  }

  /** `clip` is 16 kHz; null for one that is too short to hold a word. */
  async read(clip: Float32Array): Promise<SoundReading | null> {
    const open = { graph: this.#graph, places: this.#places, priors: this.#priors };
    const listened = await this.network.listen(clip);
    return listened && this.#reading(listened, open);
  }

  #reading({ outputs }: Listened, { graph, places, priors }: Open): SoundReading {
    const { sentences, unfinished, free } = forwardScores(outputs, graph);
    const fitOf = (index: number) => sentences[index]! + SOUND_PRICE * graph.sentences[index]!.shortest;
    const scoreOf = (index: number) => fitOf(index) + priors[index]!;
    const ranked = graph.sentences
      .map(({ words, shortest }, index) => ({
        words,
        fit: fitOf(index),
        score: scoreOf(index),
        sounds: shortest,
      }))
      .sort((a, b) => b.score - a.score)
      .slice(0, KEPT);
    let words: number | null = null;
    return {
      ranked,
      free,
      steps: outputs.steps,
      sounding: soundingSteps(outputs),
      knowsVoice: this.network.bend !== null,
      scoreOf: (words) => {
        const index = places.get(words);
        return index === undefined ? -Infinity : scoreOf(index);
      },
      otherWords: ({ fit, sounds }) => {
        words ??= anyWords(outputs, this.#common, WORD_PRICE);
        return words - (fit - SOUND_PRICE * sounds);
      },
      overSilence: ({ fit, sounds }) => fit - SOUND_PRICE * sounds - silence(outputs),
      unfinished: (words) => unfinished - (sentences[places.get(words) ?? -1] ?? -Infinity),
      weakest: (words) => weakestLack(outputs, this.#graphOf([words])),
      rival: (words) => lead(outputs, this.#rivals.of(words)),
      part: (words) => lead(outputs, this.#parts.of(words)),
      neighbour: (words, ahead) =>
        lead(outputs, this.#neighbours.of(words), (other) => ahead(replacedIn(words, other))),
    };
  }
}

/** A sentence, the first in its graph, with others that must not pass for it. Kept: such sentences are few and come again. */
class Others {
  readonly #made = new Map<string, SoundGraph>();
  readonly #make: (words: string) => SoundGraph;

  constructor(make: (words: string) => SoundGraph) {
    this.#make = make;
  }

  of(words: string): SoundGraph {
    const graph = this.#made.get(words) ?? this.#make(words);
    this.#made.set(words, graph);
    return graph;
  }
}

/** Natural log by which the likeliest other sentence, with what it is given, is ahead of the first; -Infinity where there is none. */
function lead(outputs: Outputs, graph: SoundGraph, given: (words: string) => number = () => 0): number {
  const { sentences } = forwardScores(outputs, graph);
  const others = graph.sentences.map(({ words }, index) => sentences[index]! + given(words)).slice(1);
  return Math.max(...others) - sentences[0]!;
}

/** Natural log of the path that is all blanks. */
function silence({ steps, logs }: Outputs): number {
  return logs.subarray(0, steps).reduce((sum, log) => sum + log, 0);
}

function soundingSteps({ steps, logs }: Outputs): number {
  let count = 0;
  for (let step = 0; step < steps; step++) if (logs[step]! < Math.log(0.5)) count++;
  return count;
}
