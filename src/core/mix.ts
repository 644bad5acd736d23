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

/** Volume of the finished spread as it is ladled; fibre takes up about as much room as sugar does. */
export function finishedVolumeL(pot: Balance): number {
  const solidsPct = pot.targetSolidsPct + (100 * pot.insolubleKg) / pot.targetKg;
  return (
    pot.targetKg /
    densityKgPerL({ solubleSolidsPct: Math.min(88, solidsPct), tempC: fillTempC.value.celsius })
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

/** A target must lie above what is in the pot before heating; null where it does. */
export function refuseTarget(request: BatchRequest): string | null {
  const asked = request.targetSolubleSolidsPct;
  if (asked === undefined) return null;
  const startPct = mixOf(request).pot.startSolidsPct;
  if (asked > 1.0001 * startPct) return null;
  return `Fruit and sugar are at ${startPct.toFixed(0)} % solids before heating: aim for more than that, or take less sugar.`;
}
