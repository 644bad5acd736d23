// The open question, where a yes or a no answers it: what it is about, and whether the answer must be guarded.

import type { KitchenView } from '../../kitchen/view.ts';
import type { Subject } from './glance.ts';

/** Where a yes or a no moves what a jar's safety hangs on, it is held like any such choice. */
const YES_NO: Record<string, { guarded: boolean }> = {
  'batch.askIfRollingBoil': { guarded: false },
  'batch.askIfThick': { guarded: false },
  'batch.askIfBoiled': { guarded: false },
  'canner.askIfHot': { guarded: false },
  'canner.askIfFullBoil': { guarded: true },
  'canner.askIfItHolds': { guarded: true },
  'canner.askPlainly': { guarded: true },
  'canner.whileAway': { guarded: true },
  'kitchen.didItSleep': { guarded: false },
  'dialogue.wasThat': { guarded: true },
};

export function yesNo(question: KitchenView['question']): { guarded: boolean } | null {
  if (!question) return null;
  const { key } = question.message;
  if (key.startsWith('dialogue.plain.')) return { guarded: true };
  return YES_NO[key] ?? null;
}

/** Is the question about the thing in view? Where the kitchen does not say, its key tells pot from canner. */
export function isAbout(question: NonNullable<KitchenView['question']>, subject: Subject): boolean {
  const ids = [subject.kind === 'batch' ? subject.batch.id : null, subject.canner?.id ?? null];
  if (question.about) return ids.includes(question.about);
  return question.message.key.startsWith('canner.') ? subject.canner !== null : true;
}
