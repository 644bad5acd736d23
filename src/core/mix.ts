// What does a request put into the pot, with its acid, and what comes of it?

import { acidDose, acidMass } from './acidity.ts';
import { balance, type Balance } from './balance.ts';
import { ingredients } from './ingredients.ts';
import type { BatchRequest } from './request.ts';
import { densityKgPerL } from './sugar-water.ts';
import type { AcidDose } from './types.ts';
import { fillTempC } from '../tables/jars.ts';

export interface Mix {
  pot: Balance;
  acid: AcidDose | null;
  /** What the finished spread fills, hot, before anything sticks to pot and spoon, L. */
  finishedL: number;
}

/** Drier than this no formula for sugar in water holds, and no pot is stirred: it would set as a sweet. */
const DRIEST_PCT = 88;

/** Sugar and fibre together, mass per cent of the finished spread. */
const drynessPct = ({ targetSolidsPct, insolubleKg, targetKg }: Balance): number =>
  targetSolidsPct + (100 * insolubleKg) / targetKg;

/** Volume of the finished spread as it is ladled; fibre takes up about as much room as sugar does. */
export function finishedVolumeL(pot: Balance): number {
  return (
    pot.targetKg /
    densityKgPerL({ solubleSolidsPct: Math.min(DRIEST_PCT, drynessPct(pot)), tempC: fillTempC.value.celsius })
  );
}

/** The acid goes by the volume and the volume by the acid: two rounds settle it to a thousandth. */
export function mixOf(request: BatchRequest): Mix {
  const parts = ingredients(request);
  let acid: AcidDose | null = null;
  let pot = balance(request, parts, acidMass(null));
  for (let round = 0; round < 2; round++) {
    acid = acidDose(request, parts, finishedVolumeL(pot));
    pot = balance(request, parts, acidMass(acid));
  }
  return { pot, acid, finishedL: finishedVolumeL(pot) };
}

/** The end must lie above what is in the pot before heating and below what sets as a sweet; null where it does. */
export function refuseTarget(request: BatchRequest): string | null {
  const { pot } = mixOf(request);
  const { acidKg, preparedKg, startSolidsPct, targetSolidsPct } = pot;
  if (acidKg > preparedKg) return 'That is more acid than fruit: check both amounts.';
  if (drynessPct(pot) > DRIEST_PCT)
    return 'That leaves too little water: take less sugar, or end at fewer solids.';
  if (targetSolidsPct > 1.0001 * startSolidsPct) return null;
  return `Fruit and sugar are at ${startSolidsPct.toFixed(0)} % solids before heating: aim for more than that, or take less sugar.`;
}
