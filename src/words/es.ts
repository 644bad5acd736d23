// Spanish: every message, its numbers and its quantities. What is not translated yet stands in English and says so.

import { answerWords } from './en.answers.ts';
import { reasonWords } from './es.screens.reasons.ts';
import { sightWords } from './es.sights.ts';
import { rehearsalWords } from './es.rehearsal.ts';
import { teachWords } from './es.teach.ts';
import { whyWords } from './es.why.ts';
import type { MessageKey } from './en.ts';
import { batchWords } from './es.batch.ts';
import { cannerWords } from './es.canner.ts';
import { twoCannersWords } from './es.canners.ts';
import { dialogueWords } from './es.dialogue.ts';
import { eveningWords } from './es.evening.ts';
import { howWords } from './es.how.ts';
import { kitchenWords } from './es.kitchen.ts';
import { planWords } from './es.screens.plan.ts';
import { sheetWords } from './es.screens.sheets.ts';
import { stoveWords } from './es.screens.stove.ts';
import { soundWords } from './es.sounds.ts';
import { viewWords } from './es.views.ts';
import { spanishNumber, spanishQuantities } from './quantities.es.ts';

/** Stands before every message that this version has in English only. */
export const IN_ENGLISH = '(en inglés) ';

function inEnglish<Key extends string>(words: Readonly<Record<Key, string>>): Record<Key, string> {
  const entries = Object.entries<string>(words).map(([key, text]) => [key, `${IN_ENGLISH}${text}`]);
  return Object.fromEntries(entries) as Record<Key, string>;
}

export const spanishMessages = {
  ...inEnglish(answerWords),
  ...batchWords,
  ...cannerWords,
  ...dialogueWords,
  ...eveningWords,
  ...howWords,
  ...kitchenWords,
  ...sightWords,
  ...soundWords,
  ...teachWords,
  ...twoCannersWords,
  ...viewWords,
  ...whyWords,
  ...stoveWords,
  ...planWords,
  ...reasonWords,
  ...sheetWords,
  ...rehearsalWords,
} satisfies Record<MessageKey, string>;

export const spanish = {
  tag: 'es',
  messages: spanishMessages as Readonly<Record<string, string>>,
  quantities: spanishQuantities,
  number: spanishNumber,
};
