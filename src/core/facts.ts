// What does the label say, what does it cost, how long does it keep?

import { storage } from '../tables/storage.ts';
import { cite } from '../tables/source.ts';
import { acidClass, estimatePH } from './acidity.ts';
import { mixedJars, type Yield } from './jars.ts';
import type { Mix } from './mix.ts';
import type { BatchRequest } from './request.ts';
import { waterActivity } from './sugar-water.ts';
import type { BatchPlan, PlanFacts } from './types.ts';

/** kJ of a kWh. */
const J_PER_KWH = 3.6e6;

function costOf(request: BatchRequest, mix: Mix, jars: number, cookMinutes: number): PlanFacts['cost'] {
  const { prices } = request;
  if (!prices) return null;
  const joule = (request.burner?.powerW ?? 2000) * cookMinutes * 60;
  const total =
    prices.fruitPerKg * request.fruitMassKg +
    prices.sugarPerKg * mix.pot.sugarKg +
    prices.acidPerKg * mix.pot.acidKg +
    (prices.lidEach + prices.jarEach) * jars +
    (prices.energyPerKWh * joule) / J_PER_KWH;
  return { total, perJar: total / Math.max(1, jars) };
}

function bestBy({ keep }: BatchRequest, allowed: boolean, mix: Mix): PlanFacts['bestBy'] {
  const lowAcid = ['never', 'no-tested-dose'].includes(acidClass(mix.pot.fruit));
  const cold = lowAcid ? 'pumpkinFridge' : 'fridge';
  const place = keep === 'freezer' || (keep === 'shelf' && allowed) ? keep : cold;
  const { months, says } = storage[place].value;
  return { place, months, says, source: cite(storage[place]) };
}

export function factsOf(
  request: BatchRequest,
  mix: Mix,
  out: Yield,
  plan: Pick<BatchPlan, 'shelf' | 'jars' | 'heatMinutes' | 'simmerMinutes'>,
): PlanFacts {
  const { pot } = mix;
  const emptyKg = request.pot?.emptyMassKg;
  const jars = plan.jars.count.likely + plan.jars.spare.count;
  const sugarsKg = (pot.targetKg * pot.targetSolidsPct) / 100;
  return {
    boilAwayKg: pot.startKg - pot.targetKg,
    targetWithPotKg: emptyKg === undefined ? null : emptyKg + pot.targetKg,
    pH: estimatePH(request, pot, mix.acid),
    waterActivity: waterActivity({ solubleSolidsPct: pot.targetSolidsPct }),
    mixedJars: mixedJars(request, out),
    label: {
      solubleSolidsPct: pot.targetSolidsPct,
      // Nearly all that dissolves is sugar; acids and minerals are a few per cent of it.
      sugarPer100g: (95 * sugarsKg) / pot.targetKg,
      fruitPer100g: (100 * pot.preparedKg) / pot.targetKg,
    },
    cost: costOf(request, mix, jars, plan.heatMinutes.likely + plan.simmerMinutes.likely),
    bestBy: bestBy(request, plan.shelf.allowed, mix),
  };
}
