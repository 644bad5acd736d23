// What boils away, and what must be left? The solids balance.

import { lemonJuice } from '../tables/acid.ts';
import { shortBoilLoss, type Recipe } from '../tables/recipes.ts';
import type { Ingredients } from './ingredients.ts';
import type { BatchRequest } from './request.ts';

export interface Balance extends Ingredients {
  acidKg: number;
  startKg: number;
  startSolidsPct: number;
  insolubleKg: number;
  targetKg: number;
  targetSolidsPct: number;
  /** Standard deviation of the logarithm of the mass at which the batch is really done. */
  targetLogSd: number;
  /** How surely the mass at which the plate holds is known: the fruit's solids, and where this product sets. */
  setLogSd: number;
  /** The batch ends after a timed boil, not at a test. */
  shortBoil: boolean;
}

/** A butter or jam is boiled at least this much past what goes into the pot. */
const LEAST_RISE_PCT = 2;

/** Everything in the pot, and the solids in it, with this much acid. */
export function potAtStart(parts: Ingredients, acid: AcidMass): { kg: number; solidsKg: number } {
  return {
    kg: parts.preparedKg + parts.sugarKg + parts.liquidKg + parts.pectinKg + acid.kg,
    solidsKg:
      (parts.preparedKg * parts.fruitSolidsPct +
        parts.liquidKg * parts.liquidSolidsPct +
        parts.pectinKg * parts.pectinSolidsPct) /
        100 +
      parts.sugarKg +
      acid.solidsKg,
  };
}

export interface AcidMass {
  kg: number;
  solidsKg: number;
}
export const lemonMass = (kg: number): AcidMass => ({
  kg,
  solidsKg: (kg * lemonJuice.value.solubleSolidsPct) / 100,
});
export const citricMass = (kg: number): AcidMass => ({ kg, solidsKg: kg });

/** The solids at which this batch ends: the cook's, the recipe's, or what a short boil leaves. */
function endPct(
  request: BatchRequest,
  recipe: Recipe,
  startPct: number,
): { pct: number; shortBoil: boolean } {
  if (request.targetSolubleSolidsPct !== undefined)
    return { pct: request.targetSolubleSolidsPct, shortBoil: false };
  const end = recipe.endPct.value;
  if (end === null) return { pct: startPct / (1 - shortBoilLoss.value.share), shortBoil: true };
  return { pct: Math.max(end, startPct + LEAST_RISE_PCT), shortBoil: false };
}

/**
 * A gel sets within about 1.5 points of its 65 % solids, a butter is called thick within 2 points of its 40
 * (engineering judgement, no source). Printed recipes scatter more: their yields have their own spread.
 */
const SETS_AT_LOG_SD = { butter: 0.05, gel: 0.025 };

/** Solids in, water out: how much must be left in the pot. */
export function balance(request: BatchRequest, parts: Ingredients, acid: AcidMass): Balance {
  const { kg: startKg, solidsKg } = potAtStart(parts, acid);
  const startSolidsPct = (100 * solidsKg) / startKg;
  const end = endPct(request, parts.recipe, startSolidsPct);
  const fruitShare = (parts.preparedKg * parts.fruitSolidsPct) / 100 / solidsKg;
  const solidsLogSd = fruitShare * Math.hypot(parts.fruitSolidsLogSd, parts.preparedLogSd);
  return {
    ...parts,
    acidKg: acid.kg,
    startKg,
    startSolidsPct,
    insolubleKg: (parts.preparedKg * parts.insolublePct) / 100,
    targetKg: (100 * solidsKg) / end.pct,
    targetSolidsPct: end.pct,
    targetLogSd: end.shortBoil
      ? Math.hypot((parts.preparedKg / startKg) * parts.preparedLogSd, parts.recipe.endLogSd)
      : Math.hypot(solidsLogSd, parts.recipe.endLogSd),
    setLogSd: Math.hypot(solidsLogSd, SETS_AT_LOG_SD[request.product === 'butter' ? 'butter' : 'gel']),
    shortBoil: end.shortBoil,
  };
}
