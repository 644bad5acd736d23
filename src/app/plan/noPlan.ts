// Why there is no plan yet, in a sentence.

import type { Catalogue } from '../../kitchen/ports.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';
import type { Outcome } from './outcome.ts';

/** What must change; which field it is about stands beside the field. */
export function refusal({ troubles }: Extract<Outcome, { kind: 'refused' }>, catalogue: Catalogue): string {
  return troubles.other ?? catalogue.text({ key: 'screen.plan.refused' });
}

/** What is still to be filled in. */
export function wanting({ missing }: Extract<Outcome, { kind: 'waiting' }>, catalogue: Catalogue): string {
  const fields = missing.map((field) => catalogue.text({ key: `screen.plan.missing.${field}` }));
  const what = catalogue.listed(fields.map(lowerFirst));
  return catalogue.text({ key: 'screen.plan.missing', params: { what } });
}
