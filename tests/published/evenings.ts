// A thousand evenings: a kitchen drawn by chance, the plan for it, and what its pot then really did.

import { batchRequestSchema, planBatch } from '../../src/core/index.ts';
import type { BatchPlan, StoveLearned } from '../../src/core/index.ts';
import type { Hat, Kitchen, Mixture, SimmerTruth } from '../../src/stove/index.ts';
import { anotherEvening, drawFruit, drawKitchen, setUpStove, simmerToWeight } from '../../src/stove/index.ts';

export type Spread = 'butter' | 'jam';

/** Fruit as a market has it: soluble solids (mean, sd of lots) and fibre, mass per cent. */
interface Lot {
  fruit: string;
  solublePct: number;
  sdPct: number;
  insolublePct: number;
}

const FRUITS: readonly [Lot, ...Lot[]] = [
  // 21 CFR 150.140 for the means, refractometer ranges of the literature for the spread, USDA SR28 for fibre.
  { fruit: 'apple', solublePct: 13.3, sdPct: 1, insolublePct: 2.0 },
  { fruit: 'pear', solublePct: 14.5, sdPct: 1.2, insolublePct: 2.6 },
  { fruit: 'plum', solublePct: 14.3, sdPct: 1.4, insolublePct: 1.4 },
  { fruit: 'damson', solublePct: 14.3, sdPct: 1.4, insolublePct: 1.8 },
  { fruit: 'peach', solublePct: 11.8, sdPct: 1, insolublePct: 1.5 },
  { fruit: 'apricot', solublePct: 13, sdPct: 1.2, insolublePct: 2.0 },
];

export interface Evening {
  plan: BatchPlan;
  truth: SimmerTruth;
}

/** Half of the cooks say which kind of burner it is. */
export interface Cook {
  kitchen: Kitchen;
  saysKind: boolean;
  spread: Spread;
}

export function drawCook(from: Hat): Cook {
  const spread = from.between(0, 1) < 0.6 ? 'butter' : 'jam';
  return { spread, saysKind: from.between(0, 1) < 0.5, kitchen: drawKitchen(from, spread) };
}

function request(
  cook: Cook,
  fruit: string,
  preparedKg: number,
  learned: StoveLearned | null,
): BatchPlan['request'] {
  const { pot, burner, elevationM } = cook.kitchen;
  return batchRequestSchema.parse({
    fruit,
    product: cook.spread,
    fruitMassKg: preparedKg,
    measured: { preparedMassKg: preparedKg },
    jar: 'half-pint',
    elevationM,
    keep: 'fridge',
    pot: { diameterM: pot.diameterM, heightM: pot.heightM },
    burner: { powerW: burner.powerW, ...(cook.saysKind ? { kind: burner.kind } : {}) },
    ...(learned ? { learned } : {}),
  });
}

/** What goes into the pot: tonight's fruit, the plan's sugar and acid. */
function inThePot(fruit: Mixture, plan: BatchPlan): Mixture {
  const acidKg = plan.acid?.massKg ?? 0;
  return {
    waterKg: fruit.waterKg + 0.92 * acidKg,
    solubleKg: fruit.solubleKg + 0.08 * acidKg + plan.sugarMassKg,
    insolubleKg: fruit.insolubleKg,
    body: fruit.body,
  };
}

/** One batch cooked by this cook to the weight that the plan asks for. */
export function cookEvening(from: Hat, cook: Cook, learned: StoveLearned | null = null): Evening {
  const fruit = from.oneOf(FRUITS);
  // A pot is filled by half at most (USDA guides: room for the foam).
  const roomKg = 1000 * (Math.PI / 4) * cook.kitchen.pot.diameterM ** 2 * cook.kitchen.pot.heightM;
  const mostKg = Math.min(
    cook.spread === 'butter' ? 4 : 2.5,
    roomKg * (cook.spread === 'butter' ? 0.4 : 0.28),
  );
  const preparedKg = from.between(0.5, 1) * mostKg;
  const plan = planBatch(request(cook, fruit.fruit, preparedKg, learned));
  const contents = inThePot(drawFruit(from, { ...fruit, body: cook.kitchen.body }, preparedKg), plan);
  const stove = setUpStove(anotherEvening(cook.kitchen, from), contents, from.seed());
  return { plan, truth: simmerToWeight(stove, cook.kitchen.habits, plan.targetMassKg) };
}
