// What a batch is called, and when its name is said before its sentence.

import type { Effect, Message } from '../../machines/kitchen/effects.ts';
import type { BatchPlan } from '../core/types.ts';
import { isOver, type Actors } from './kitchenView.ts';
import type { Catalogue } from './ports.ts';
import type { BatchView } from './view.ts';

export const ordinals = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(
  ' ',
);

/** A batch goes by its fruit; the second one of the same fruit is "second plum". */
export function nameFor(plan: BatchPlan, others: readonly BatchView[]): string {
  const fruit = spoken(plan.fruitName);
  const same = others.filter((batch) => batch.name === fruit || batch.name.endsWith(` ${fruit}`)).length;
  return same === 0 ? fruit : `${ordinals[same] ?? 'last'} ${fruit}`;
}

/** "Apple, tart and ripe" is called apple, "pear (European)" pear. */
function spoken(fruitName: string): string {
  return fruitName
    .toLowerCase()
    .replace(/\s*[,(].*$/, '')
    .trim();
}

/** With more than one batch on, a batch's sentence begins with its name; its own words stay with it. */
export function named(effect: Effect, { batches }: Actors, catalogue: Catalogue): Effect {
  if (effect.type !== 'say') return effect;
  const batch = batches.find(({ id }) => id === effect.about);
  if (!batch || batches.filter((one) => !isOver(one)).length < 2) return effect;
  const { key, params = {} } = effect.message;
  const words = catalogue.text(effect.message);
  return {
    ...effect,
    message: { key: 'kitchen.named', params: { ...params, name: batch.name, words, of: key } },
  };
}

/** The sentence as the machine meant it, without the name before it. */
export function unnamed(say: Extract<Effect, { type: 'say' }>): { message: Message; about: string | null } {
  const { message, about } = say;
  if (message.key !== 'kitchen.named' || !message.params) return { message, about };
  const { of, words: _, ...params } = message.params;
  return { message: { key: String(of), params }, about };
}

/** What somebody is to do now, in words; nothing of nobody. */
export function doingOf(id: string, { batches, canners }: Actors, catalogue: Catalogue): string {
  const actor = [...batches, ...canners].find((one) => one.id === id);
  return actor ? catalogue.text(actor.doing) : '';
}
