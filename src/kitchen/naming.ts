// What a batch is called, and when its name is said before its sentence.

import { whichCanner } from '../../machines/dialogue/canners.ts';
import type { Effect, Message } from '../../machines/kitchen/effects.ts';
import type { BatchPlan } from '../core/types.ts';
import { isOver, type Actors } from './kitchenView.ts';
import type { Catalogue } from './ports.ts';
import { ownForm } from './ofTwo.ts';
import type { BatchView } from './view.ts';

export const ordinals =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');

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

/**
 * With more than one batch on, a batch's sentence begins with its name; its own words stay with it. Of two canners
 * each is named in what it says, and in what is said of the jars that go into it.
 */
export function named(effect: Effect, actors: Actors, catalogue: Catalogue): Effect {
  if (effect.type !== 'say') return effect;
  const { batches, canners } = actors;
  const message = toldOfTwo(effect.message, effect.about, actors, catalogue);
  const batch = batches.find(({ id }) => id === effect.about);
  const among = batches.filter((one) => !isOver(one)).length > 1;
  const canner = canners.length > 1 && canners.some(({ id }) => id === effect.about);
  if ((!batch || !among) && !canner && message === effect.message) return effect;
  const { key, params = {} } = effect.message;
  const words = catalogue.text(message);
  return {
    ...effect,
    message:
      batch && among
        ? { key: 'kitchen.named', params: { ...params, name: batch.name, words, of: key } }
        : { key: 'kitchen.namedItself', params: { ...params, words, of: key } },
  };
}

/** The same sentence with the canner's number in it, where there are two. */
function toldOfTwo(
  message: Message,
  about: string | null,
  { canners }: Actors,
  catalogue: Catalogue,
): Message {
  if (canners.length < 2) return message;
  const { key, params = {} } = message;
  const ofJars = /^(how\.)?batch\.toTheCanner$/.test(key);
  const meant = canners.find(({ id }) => id === (ofJars ? params['canner'] : about));
  if (!meant) return message;
  const which = whichCanner(meant.name);
  const own = ownForm(key);
  if (own) return { key: own, params: { ...params, which } };
  // What follows a prompt in the same breath has the canner's name before it already.
  return key.startsWith('how.')
    ? message
    : { key: 'two.any', params: { which, words: catalogue.text(message) } };
}

/** The sentence as the machine meant it, without the name before it. */
export function unnamed(say: Extract<Effect, { type: 'say' }>): { message: Message; about: string | null } {
  const { message, about } = say;
  if (!NAMED.has(message.key) || !message.params) return { message, about };
  const { of, words: _, ...params } = message.params;
  return { message: { key: String(of), params }, about };
}

const NAMED = new Set(['kitchen.named', 'kitchen.namedItself']);

/** What somebody is to do now, in words; nothing of nobody. */
export function doingOf(id: string, { batches, canners }: Actors, catalogue: Catalogue): string {
  const actor = [...batches, ...canners].find((one) => one.id === id);
  return actor ? catalogue.text(actor.doing) : '';
}
