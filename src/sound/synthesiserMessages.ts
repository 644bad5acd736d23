// What the page and the worker of the bundled synthesiser say to each other.

import type { Prompt } from './flite.ts';

export type ToWorker = { kind: 'make'; id: number; prompt: Prompt };

export type FromWorker =
  | { kind: 'loading'; fraction: number }
  | { kind: 'ready' }
  | { kind: 'broken'; says: string }
  | { kind: 'made'; id: number; wav: ArrayBuffer; lastsMs: number; tookMs: number }
  | { kind: 'failed'; id: number; says: string };
