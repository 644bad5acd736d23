// An evening of two canners: one holds this batch's jars, the other stands beside it and is heated all the same.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { coldCanner, handsOff, stepStove, type Stove } from '../stove/index.ts';
import type { BesideIt, Scene } from './scene.ts';

export type OfCanner = Extract<KitchenEvent, { canner: string }>;

export function ofAnotherCanner(scene: Scene, event: KitchenEvent): OfCanner | null {
  return isOfCanner(event) && event.canner !== scene.canner ? event : null;
}

const isOfCanner = (event: KitchenEvent): event is OfCanner =>
  event.type.startsWith('canner.') || ['jars.in', 'jars.out', 'jar.broke'].includes(event.type);

/** The other canner after so many seconds: the same air and fire, and no jar that we know of. */
export function besideOn(beside: BesideIt, stove: Stove, seconds: number): BesideIt {
  const its = { ...stove, canner: beside.canner, cannerBurner: beside.burner, jars: [], mishapsPerHour: 0 };
  const { canner, cannerBurner } = stepStove(its, seconds, { ...handsOff, cannerDial: beside.dial });
  return { ...beside, canner, burner: cannerBurner };
}

/** The canner beside ours, cold when it is first spoken of, with something changed. */
export function withBeside(scene: Scene, id: string, change: (before: BesideIt) => Partial<BesideIt>): Scene {
  const { stove } = scene;
  const cold = { id, canner: coldCanner(stove.air), burner: { ...stove.cannerBurner, heatW: 0 }, dial: 0 };
  const before = scene.beside?.id === id ? scene.beside : cold;
  return { ...scene, beside: { ...before, ...change(before) } };
}

export const turned = (scene: Scene, id: string, dial: number): Scene =>
  withBeside(scene, id, () => ({ dial }));

/** Where this batch's jars are filled for the other canner, or go into it, that one is ours from then on. */
export function atItsCanner(scene: Scene, event: KitchenEvent): Scene {
  const id = goesTo(event, scene);
  if (id === undefined || id === scene.canner) return scene;
  if (scene.canner === null) return { ...scene, canner: id };
  const known = withBeside(scene, id, () => ({}));
  const { beside, stove, hands } = known;
  if (!beside) return scene;
  return {
    ...known,
    canner: id,
    stove: { ...stove, canner: beside.canner, cannerBurner: beside.burner },
    hands: { ...hands, cannerDial: beside.dial },
    beside: { id: scene.canner, canner: stove.canner, burner: stove.cannerBurner, dial: hands.cannerDial },
  };
}

function goesTo(event: KitchenEvent, { canner, batch: { id } }: Scene): string | undefined {
  if (event.type === 'jars.filled' && event.batch === id) return event.into;
  if (event.type === 'jars.in' && event.batch === id) return event.canner;
  return canner === null && isOfCanner(event) ? event.canner : undefined;
}
