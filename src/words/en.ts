// English: every message, its numbers and its quantities.

import { answerWords } from './en.answers.ts';
import { batchWords } from './en.batch.ts';
import { cannerWords } from './en.canner.ts';
import { twoCannersWords } from './en.canners.ts';
import { dialogueWords } from './en.dialogue.ts';
import { eveningWords } from './en.evening.ts';
import { howWords } from './en.how.ts';
import { kitchenWords } from './en.kitchen.ts';
import { rehearsalWords } from './en.rehearsal.ts';
import { screenWords } from './en.screens.ts';
import { sightWords } from './en.sights.ts';
import { soundWords } from './en.sounds.ts';
import { teachWords } from './en.teach.ts';
import { viewWords } from './en.views.ts';
import { whyWords } from './en.why.ts';
import { englishNumber, englishQuantities } from './quantities.en.ts';

export const englishMessages = {
  ...answerWords,
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
  ...screenWords,
  ...rehearsalWords,
} as const satisfies Record<string, string>;

export type MessageKey = keyof typeof englishMessages;

export const english = {
  tag: 'en',
  messages: englishMessages as Readonly<Record<string, string>>,
  quantities: englishQuantities,
  number: englishNumber,
};
