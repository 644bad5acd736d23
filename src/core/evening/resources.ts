// What of the kitchen does each activity take up: hands, eyes, rings, tools, canners?

import type { Demand, Resource } from '../schedule/types.ts';
import type { EveningBatch, Step } from './types.ts';
import { statusOf, units, type Act, type Situation } from './situation.ts';

/** How many pots one cook can keep from catching, with other work in hand. Common practice, no source. */
const POTS_WATCHED = 3;
const AT_HOME = 20;

/** Which resource stands where in the project's list. */
export class Shelf {
  readonly resources: Resource[] = [];
  private readonly places = new Map<string, number>();

  add(name: string, capacity: number, absences: NonNullable<Resource['absences']> = []): void {
    this.places.set(name, this.resources.length);
    this.resources.push(absences.length > 0 ? { capacity, absences } : { capacity });
  }

  demand(name: string, amount = 1): Demand[] {
    const resource = this.places.get(name);
    return resource === undefined ? [] : [{ resource, amount }];
  }
}

export function shelfOf({ request, now }: Situation): Shelf {
  const shelf = new Shelf();
  const { cooks, burners, canners } = request;
  const away = (each: number) =>
    request.absences.flatMap(({ from, to }) =>
      to <= now ? [] : [{ from: Math.max(0, units(from - now)), to: units(to - now), amount: each }],
    );
  shelf.add('hands', cooks, away(1));
  shelf.add('hot', cooks, away(1));
  shelf.add('calls', cooks, away(1));
  shelf.add('eyes', cooks * POTS_WATCHED, away(POTS_WATCHED));
  if (request.absences.length > 0) shelf.add('home', cooks * AT_HOME, away(AT_HOME));
  shelf.add('ring', burners.length);
  shelf.add('large', burners.filter(({ size }) => size === 'large').length);
  shelf.add('mill', request.mills ?? 1);
  shelf.add('blender', request.blenders ?? 1);
  for (const { id } of canners) shelf.add(`canner ${id}`, 1);
  return shelf;
}

/** Pots of 26 cm and more want a large ring. Common practice, no source. */
const LARGE_POT_M = 0.26;
export const wantsLarge = (batch: EveningBatch | undefined): boolean =>
  batch !== undefined &&
  (batch.ring ?? ((batch.plan.request.pot?.diameterM ?? 0.3) >= LARGE_POT_M ? 'large' : 'small')) === 'large';

/** What claims the hands already: who is hot, and in how many units the last of those chains will be over. */
export interface Claims {
  hot: number;
  over: number;
  /** In how many units no pot that is being reduced may call any more; 0: none is. */
  called: number;
  /** How long jars in or for a canner may still wait, in units. */
  patience: (act: Act) => number;
}

/** Work that waits for nobody, and must be out of the way when a hot chain wants the hands. */
export const isErrand = (step: Step): boolean =>
  ['prepare', 'warmJars', 'jarsIn', 'load', 'unload'].includes(step);

export function demandsOf(
  act: Act,
  shelf: Shelf,
  { request, progress }: Situation,
  claims: Claims,
): Demand[] {
  const [first] = act.pieces;
  if (!first) return [];
  const tools = new Set(act.pieces.flatMap((piece) => piece.tools));
  const watched = first.step === 'heat' || first.step === 'simmer' || first.step === 'reduce';
  // Preparing can wait, so it stays out of every hot chain; what is in hand already is let be.
  const outside =
    first.step === 'prepare' ||
    first.step === 'warmJars' ||
    (first.step === 'fill' && first.round > 1) ||
    ((first.step === 'load' || first.step === 'unload') && claims.over <= claims.patience(act));
  // Two minutes of a cooling spoonful are not for another errand, unless another pot is as hot.
  const byHand = first.attention === 'hands' || (first.step === 'cool' && claims.hot < 2);
  const calls = claims.called > 0 && claims.called <= claims.patience(act);
  const large = wantsLarge(request.batches.find(({ id }) => id === first.batches[0]));
  return [
    ...(byHand ? shelf.demand('hands') : []),
    ...(outside && statusOf(progress, first.id) === 'planned' ? shelf.demand('hot') : []),
    ...(isErrand(first.step) && calls && statusOf(progress, first.id) === 'planned'
      ? shelf.demand('calls')
      : []),
    ...(watched ? shelf.demand('eyes') : []),
    ...(byHand ? [] : shelf.demand('home')),
    ...(tools.has('burner') ? [...shelf.demand('ring'), ...(large ? shelf.demand('large') : [])] : []),
    ...(tools.has('mill') ? shelf.demand('mill') : []),
    ...(tools.has('blender') ? shelf.demand('blender') : []),
    ...(first.canner === null ? [] : shelf.demand(`canner ${first.canner}`)),
  ];
}
