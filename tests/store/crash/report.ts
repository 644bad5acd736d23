// What does the page tell the test before it is killed?

import type { StoreTrouble } from '../../../src/kitchen/ports.ts';

export type Report =
  | {
      kind: 'opened';
      entries: number;
      /** Entries that are not what was written under their number. */
      wrong: number[];
      copiesAgree: boolean;
      trouble: StoreTrouble[];
      openMs: number;
      wall: number;
      kitchen: number;
      pace: number;
      lastSeenAt: number | null;
    }
  | { kind: 'acknowledged'; seq: number; ms: number }
  | { kind: 'trouble'; trouble: StoreTrouble[] }
  | { kind: 'broke'; says: string };
