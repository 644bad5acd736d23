// What the screens may ask of the rest of the house, and what they need besides the view of the kitchen.

import type { Reading } from '../core/index.ts';
import type { BatchRequest } from '../core/request.ts';
import type { CommandId, TalkCommand } from '../../machines/dialogue/commands.ts';
import type { BatchId, CannerId, JarId } from '../../machines/kitchen/events.ts';
import type { Catalogue, Ear, EarState } from '../kitchen/ports.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';
import type { Room } from '../sound/levels.ts';
import type { LearningEar } from '../voice/learning.ts';
import type { Speech } from './speech.ts';
import type { Locale } from '../words/catalogue.ts';
import type { Choice, KitchenView } from '../kitchen/view.ts';

export type Units = 'us' | 'metric';
export type Theme = 'system' | 'dark' | 'bright';

export interface Settings {
  language: Locale;
  units: Units;
  theme: Theme;
  /** The side the thumb comes from; the controls go there. */
  hand: 'right' | 'left';
  /** Single-letter keys (R, U, H ...). Off for cooks whose dictation software types letters. */
  letterKeys: boolean;
  speech: Speech;
  /** What the microphone test measured in this kitchen; null before it. */
  room: Room | null;
}

/** What the screen asked the cook for, in SI units; whole jars and short ones are counted apart. */
export type Answer =
  | { kind: 'count'; count: number; spare?: number }
  | { kind: 'minutes'; minutes: number }
  | { kind: 'keptBoiling'; keptBoiling: boolean }
  | { kind: 'whose'; batch: BatchId; name: string }
  | { kind: 'jar'; jar: JarId }
  | { kind: 'when'; what: CommandId; agoMinutes: number }
  | ({ kind: 'reading' } & Reading);

/** A batch that came with the page: from a link, or a file the cook opened. */
export type Arrival = { kind: 'request'; request: BatchRequest } | { kind: 'refused'; says: string };

export interface Actions {
  /** Called inside a gesture: unlocks audio and asks for the microphone. */
  start(): void;
  /** Adds this batch to the kitchen and begins to cook it. Called after `start`. */
  plan(request: BatchRequest): void;
  /** The cook tapped or pressed one of the open choices. */
  choose(choice: Choice, answer?: Answer): void;
  talk(command: TalkCommand): void;
  /** Push-to-talk: a touch opens the ear and a second closes it; a key is held. */
  call(how: 'touch' | 'down' | 'up'): void;
  /** Plays one of the kitchen's sounds, for whoever asks what it means. */
  sound(name: SoundName): void;
  /** Says a sentence in the voice as it is set now. */
  tryVoice(): void;
  /** The browser's own voices that do not send words away. */
  localVoices(): Promise<string[]>;
  /** The ear that learns a voice from reading; null where it cannot. */
  learner(): LearningEar | null;
  /** Looks at another batch or canner. */
  focus(on: BatchId | CannerId): void;
  set(patch: Partial<Settings>): void;
  exportLog(): void;
  importLog(file: File): void;
  /** Another tab holds the kitchen; this one takes it. */
  takeOver(): void;
  /** A kitchen without fruit, running `pace` times as fast as the wall clock; pace 1 is real time, 0 leaves practice. */
  practice(pace: number): void;
}

/** The state of the ear as it changes, many times a second, so that only the meter is drawn again. */
export interface EarFeed {
  now(): EarState;
  subscribe(listener: () => void): () => void;
}

export interface AppProps {
  view: KitchenView;
  actions: Actions;
  settings: Settings;
  catalogue: Catalogue;
  ear: EarFeed;
  /** True once a gesture has started sound and microphone on this page. */
  started: boolean;
  arrival?: Arrival | undefined;
}

/** Keeps the last state of an ear for the screen to draw. */
export function earFeed(ear: Pick<Ear, 'onState'>, first: EarState): EarFeed {
  let state = first;
  const listeners = new Set<() => void>();
  ear.onState((next) => {
    state = next;
    for (const listener of listeners) listener();
  });
  return {
    now: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
