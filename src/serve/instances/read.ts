// Which of the three formats of the scheduling literature is this text, and what does it ask?

import type { Project } from '../../core/schedule/index.ts';
import { readJobShop } from './jobShop.ts';
import { readProGenMax } from './proGenMax.ts';
import { readPsplib } from './psplib.ts';

/** Reads a job shop, a PSPLIB .sm or a ProGen/max .sch; throws `Unreadable` with a sentence. */
export function readInstance(text: string): Project {
  if (/PRECEDENCE RELATIONS/i.test(text)) return readPsplib(text);
  if (text.includes('[')) return readProGenMax(text);
  return readJobShop(text);
}
