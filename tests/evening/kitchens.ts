// Kitchens and heaps of fruit, drawn by chance: what an evening begins with.

import { planBatch } from '../../src/core/index.ts';
import type { EveningBatch, EveningRequest } from '../../src/core/evening/index.ts';
import type { Hat } from '../../src/stove/index.ts';

/** What is made on a September evening; all have a published process in half-pints. */
const SPREADS = [
  ['apple', 'butter'],
  ['pear', 'butter'],
  ['plum', 'butter'],
  ['damson', 'jam'],
  ['plum', 'jam'],
  ['apricot', 'jam'],
  ['blackberry', 'jam'],
  ['crab-apple', 'jelly'],
  ['peach', 'butter'],
] as const;

const NAMES = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

function drawBatch(from: Hat, elevationM: number, taken: Map<string, number>, most: number): EveningBatch {
  const [fruit, product] = from.oneOf<readonly [string, 'butter' | 'jam' | 'jelly']>(SPREADS);
  const count = taken.get(fruit) ?? 0;
  taken.set(fruit, count + 1);
  const burner = {
    powerW: from.between(1600, 2600),
    kind: from.oneOf(['gas', 'electric', 'induction'] as const),
  };
  const powerW = burner.kind === 'gas' ? burner.powerW * 1.8 : burner.powerW;
  const plan = planBatch({
    fruit,
    product,
    fruitMassKg: from.between(1, product === 'butter' ? 2.8 : 1.6),
    jar: 'half-pint',
    jarsPerLoad: most,
    elevationM,
    keep: 'shelf',
    pot: { diameterM: from.between(0.22, 0.3) },
    burner: { ...burner, powerW },
  });
  const name = count === 0 ? fruit : `${NAMES[count] ?? 'last'} ${fruit}`;
  return { id: name.replace(' ', '-'), name, plan };
}

export interface Asked {
  batches: number;
  canners: number;
  cooks?: number;
  latestFinish?: number;
}

/** A kitchen with as many rings as a range has, the canners beside them. */
export function drawEvening(from: Hat, { batches, canners, cooks = 1, latestFinish }: Asked): EveningRequest {
  const elevationM = from.between(0, 1) < 0.6 ? from.between(0, 300) : from.between(300, 1700);
  const taken = new Map<string, number>();
  const most = from.oneOf([8, 9, 10]);
  return {
    beganAt: 0,
    batches: Array.from({ length: batches }, () => drawBatch(from, elevationM, taken, most)),
    cooks,
    absences: [],
    burners: Array.from({ length: from.oneOf([4, 5]) }, (_, i) => ({
      id: `ring ${i + 1}`,
      size: i < 3 ? ('large' as const) : ('small' as const),
    })),
    canners: Array.from({ length: canners }, (_, i) => ({ id: `canner ${i + 1}` })),
    latestFinish: latestFinish ?? null,
  };
}
