// What the page and the ear's worker say to each other.

import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';

export type ToWorker =
  /** Load the models; sound comes on the port. */
  | { kind: 'start'; sound: MessagePort }
  | { kind: 'expect'; phrases: readonly OpenPhrase[] }
  | { kind: 'mask'; speaking: boolean; words: string }
  | { kind: 'call'; on: boolean };

export type FromWorker =
  | { kind: 'loading'; fraction: number }
  | { kind: 'ready' }
  | { kind: 'broken'; says: string }
  | { kind: 'hearing'; hearing: Hearing }
  | { kind: 'level'; levelDb: number; speech: boolean };
