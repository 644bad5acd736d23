// What the page and the ear's worker say to each other.

import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';
import type { Reading, VoiceProfile } from './learning.ts';

/** Ten milliseconds of the microphone, 48 kHz: as the browser's echo canceller leaves it, and as it comes, where that is to be had. */
export interface Frame {
  kind: 'frame';
  cancelled: Float32Array<ArrayBuffer>;
  bare: Float32Array<ArrayBuffer> | null;
}

/** What has its place in the stream of sound, and goes to the worker between the frames. */
export type Meanwhile = { kind: 'mask'; speaking: boolean; words: string } | { kind: 'call'; on: boolean };

export type ToWorker =
  /** Load the models; sound comes on the port. */
  | { kind: 'start'; sound: MessagePort }
  | { kind: 'expect'; phrases: readonly OpenPhrase[] }
  | Meanwhile
  /** What is said next is a reading of these words; null: it is a command again. */
  | { kind: 'read'; words: string | null }
  | { kind: 'learn' }
  | { kind: 'use'; profile: VoiceProfile | null };

export type FromWorker =
  | { kind: 'loading'; fraction: number }
  /** Not whole: the network did not come, and the classic recogniser listens alone. */
  | { kind: 'ready'; whole: boolean }
  | { kind: 'broken'; says: string }
  | { kind: 'hearing'; hearing: Hearing }
  | { kind: 'level'; levelDb: number; speech: boolean }
  | { kind: 'reading'; reading: Reading }
  | { kind: 'learnt'; profile: VoiceProfile | null }
  /** False where the profile was learnt on another network; null where there is no network to use it on. */
  | { kind: 'used'; fits: boolean | null };
