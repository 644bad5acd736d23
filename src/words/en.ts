// English: every message, its numbers and its quantities.

import { batchWords } from './en.batch.ts';
import { cannerWords } from './en.canner.ts';
import { dialogueWords } from './en.dialogue.ts';
import { kitchenWords } from './en.kitchen.ts';
import { screenWords } from './en.screens.ts';
import { soundWords } from './en.sounds.ts';
import { teachWords } from './en.teach.ts';
import { viewWords } from './en.views.ts';
import { englishNumber, englishQuantities } from './quantities.en.ts';

export const englishMessages = {
  ...batchWords,
  ...cannerWords,
  ...dialogueWords,
  ...kitchenWords,
  ...soundWords,
  ...teachWords,
  ...viewWords,
  ...screenWords,
} as const satisfies Record<string, string>;

export type MessageKey = keyof typeof englishMessages;

export const english = {
  tag: 'en',
  messages: englishMessages as Readonly<Record<string, string>>,
  quantities: englishQuantities,
  number: englishNumber,
};
