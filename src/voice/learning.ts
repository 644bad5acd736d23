// What the page may ask of the ear so that it learns a cook's voice: sentences read aloud for a minute, and what came of them.
//
// No sound is kept: of each reading the worker keeps the network's own numbers until it has learnt, and the
// page gets only the profile, which cannot be turned back into speech.

/** What came of one sentence that the cook was asked to read. */
export type Reading =
  /** It fits the words; `seconds` of speech are now kept for learning. */
  | { kind: 'taken'; words: string; seconds: number }
  /** Something else was said, or the room was too loud: ask for it again. */
  | { kind: 'again'; words: string };

/** How the network is bent towards one voice. Plain JSON, about 40 kB, so that it can be stored. */
export interface VoiceProfile {
  version: 1;
  /** The network it was learnt on; with another one it is of no use and is refused. */
  network: string;
  /** Seconds of reading it was learnt from. */
  seconds: number;
  /** Added to the network's last layer, in thousandths: for each output a bias and a weight for each hidden unit. */
  values: number[];
}

/** What became of the profile that the ear was given: a voice is known once the network that it was learnt on is there. */
export type VoiceKnown = 'none' | 'waiting' | 'known' | 'other network';

/** An ear that can learn a voice; the learning itself is in network/bend.ts. */
export interface LearningEar {
  /** False where the ear has to do without the network: then there is nothing to learn, and the page says so. */
  readonly canLearn: boolean;
  /** The next words are a reading of this sentence and no command. Resolves when they were said; null where stopped. */
  read(words: string): Promise<Reading | null>;
  stopReading(): void;
  /** Learns from all that was read since the start, uses it at once, and gives it for keeping. */
  learn(): Promise<VoiceProfile | null>;
  /** Uses a profile that was kept, or none, as soon as it can. */
  useProfile(profile: VoiceProfile | null): void;
  readonly voice: VoiceKnown;
}

/**
 * Sentences for about a minute that hold every sound of English, mostly in words of the kitchen. No command is
 * among them, so a page that forgets to say it is reading does no harm.
 */
export const READING_SENTENCES: readonly string[] = [
  'one two three four five six seven eight nine ten',
  'zero eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen',
  'the foam rises above the fruit and then it falls again',
  'yes i think the jars were in the water for a while',
  'no we should wash the rubber rings with care',
  'a full boil rolls and churns however hard you stir',
  'the next batch of plums will hold its shape on a cold plate',
  'my usual measure is a pound of sugar with each quart of juice',
  'please stop and say that again so i can hear you',
  'they sealed both lids then wiped the rims and put them on the shelf',
  'why is the thick jam still sticking to the spoon',
  'five pears and eight quinces took us thirty minutes to peel',
  'how long did the damson butter stay on the heat',
  'the vision of a jar of treasure gave them all great pleasure',
];
