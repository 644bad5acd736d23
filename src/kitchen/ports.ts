// The ports of the kitchen: what it needs from the world, as small as it can be. Edges fill them.

import type { CommandId, Understood } from '../../machines/dialogue/commands.ts';
import type { Message, SoundName, Urgency } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';

/** Kitchen time in milliseconds since the epoch. Runs faster than the wall in a practice kitchen. */
export interface Clock {
  now(): number;
  /** Calls back at once and then about once a second, from a worker where there is one. Returns a stop function. */
  beat(onBeat: (now: number) => void): () => void;
  /** How far the wall jumped ahead without a sign of sleep, wall ms; null where nothing is in doubt. */
  readonly doubtMs?: number | null;
  /** The cook says whether the device slept meanwhile. */
  settleDoubt?(slept: boolean): void;
}

export type EntrySource = 'voice' | 'touch' | 'keyboard' | 'clock' | 'link' | 'file';

/** One line of the log. `seq` counts from 1 without gaps. */
export interface LogEntry {
  seq: number;
  event: KitchenEvent;
  source: EntrySource;
}

export type StoreTrouble = {
  kind: 'full' | 'refused' | 'corrupt' | 'evicted' | 'older-version' | 'readonly';
  says: string;
};

/** The durable log. `append` resolves only when the entry is on disk in at least one store. */
export interface LogStore {
  /** Everything that survived, in order, with what had to be repaired. Never throws: trouble comes back as data. */
  open(): Promise<{ entries: LogEntry[]; lastSeenAt: number | null; trouble: StoreTrouble[] }>;
  /** `refused` where the log is only looked at: the entry must not act either. */
  append(entry: LogEntry): Promise<{ trouble: StoreTrouble[]; refused?: boolean }>;
  /** A heartbeat, so that the next start knows since when nobody was listening. Cheap, best effort. */
  seen(at: number): void;
  /** The whole log as a file the cook can keep. */
  exportFile(): Promise<Blob>;
  /** The state after entry `seq`, if one was kept of this very log. Only to start quicker: whoever reads it can do without. */
  readSnapshot?(): Promise<{ seq: number; data: unknown } | null>;
  writeSnapshot?(seq: number, data: unknown): Promise<void>;
}

/** A command that may be given now, before it is put into the sentences of a language. */
export interface OpenCommand {
  command: CommandId;
  /** Two batches could mean it and the cook must say which: only sentences that name the fruit. */
  fruitNeeded?: boolean;
  /** The fruits it can be said of now; all fruits in hand where it is left out. */
  fruits?: readonly string[];
}

export interface Interval {
  low: number;
  high: number;
}

/** Keeps the numbers few, for the ear's speed grows with the number of sentences. An empty interval closes a reading. */
export interface NumberBounds {
  /** The most jars anybody could count now. */
  jars: number;
  massKg: Interval;
  depthM: Interval;
  tempC: Interval;
  /** What happened in the last hour and may really have happened at another time, the last first. */
  told?: readonly CommandId[];
  /** The times of day within that hour that a cook may name, minutes past twelve. */
  clock?: readonly number[];
  /** The times of day to come at which a cook may say to leave, minutes past twelve. */
  leave?: readonly number[];
  /** Canners in the kitchen; left out: one. Of two, each is called by its number. */
  canners?: number;
  units: 'us' | 'metric';
}

/** A sentence that may be said now. */
export interface OpenPhrase {
  command: CommandId;
  slots: Understood['slots'];
  /** Lower-case words, numbers spelt out. */
  words: string;
}

/** What came of one stretch of speech. */
export type Hearing =
  | { kind: 'heard'; words: string; understood: Understood; confidence: number; ms: number }
  | { kind: 'unsure'; words: string; understood: Understood; confidence: number; ms: number }
  | { kind: 'nothing'; ms: number };

/** What keeps the ear from listening; `screen.says.ear.` and this tell the cook what to do. */
export type EarTrouble =
  | 'notAllowed'
  | 'notFound'
  | 'inUse'
  /** Browsers hide the microphone from a page that is not secure. */
  | 'insecure'
  | 'notOpened'
  | 'wentAway'
  /** It listened, and failed. */
  | 'stopped'
  /** It cannot listen on this machine. */
  | 'broken';

export type EarState =
  | { kind: 'off' }
  | { kind: 'loading'; fraction: number }
  /** Why, as a key of the catalogue. */
  | { kind: 'refused'; why: EarTrouble }
  | {
      kind: 'listening';
      levelDb: number;
      speech: boolean;
      /** Running level of the room between words, dB below full scale; null until it has been measured. */
      noiseDb?: number | null;
      /** The cook has called: what is said now is meant for the page. */
      called?: boolean;
      /** False: a part of the ear did not come, and it hears less well in noise. */
      whole?: boolean;
    };

export interface Ear {
  /** Must be called from a gesture. Asks for the microphone, loads the models. */
  start(): Promise<void>;
  stop(): void;
  /** The sentences that can be said now; may change at any time. */
  expect(phrases: readonly OpenPhrase[]): void;
  /** While the page itself speaks, what it hears is held against the `words` that it says. */
  mask(speaking: boolean, words?: string): void;
  /** Push-to-talk: the next words are meant for the page, until it is told otherwise or a command was heard. */
  call(on: boolean): void;
  onHearing(listener: (hearing: Hearing) => void): () => void;
  onState(listener: (state: EarState) => void): () => void;
}

export interface Utterance {
  id: number;
  text: string;
  urgency: Urgency;
}

export interface Mouth {
  /** Must be called from a gesture: unlocks audio, loads the synthesiser if the browser has no local voice. */
  unlock(): Promise<void>;
  /** Speaks one utterance to its end; resolves 'failed' rather than throwing, so that a broken voice never stalls the kitchen. */
  speak(utterance: Utterance): Promise<'spoken' | 'cut' | 'failed'>;
  /** Stops what is being said now. */
  cut(): void;
  /** Speaks softly while somebody else speaks, and at full voice again after. */
  duck(on: boolean): void;
  sound(name: SoundName): Promise<'played' | 'failed'>;
}

export interface Catalogue {
  /** The sentence for a message, in the cook's language and units. */
  text(message: Message): string;
  /** Several things in a row, the last with an "and". */
  listed(items: readonly string[]): string;
}

/** Keeps the screen awake and nudges the cook when the page is hidden. */
export interface Reminder {
  keepAwake(on: boolean): void;
  notify(text: string): void;
}
