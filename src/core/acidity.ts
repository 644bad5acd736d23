// Is it sour enough for the shelf, how much acid does that take, and how sure is the pH?

import {
  acidChemistry,
  acidLine,
  acidMargin,
  acidNeeded,
  acidPerLitre,
  figJamLemonMlPerKg,
  lemonJuice,
  never,
} from '../tables/acid.ts';
import type { Fruit } from '../tables/fruits/index.ts';
import { cite } from '../tables/source.ts';
import { citricMass, lemonMass, type AcidMass } from './balance.ts';
import type { Ingredients } from './ingredients.ts';
import type { BatchRequest } from './request.ts';
import type { AcidDose, Range } from './types.ts';

/** Fruit by what the shelf asks of it. */
export type AcidClass = 'sour-enough' | 'acid-needed' | 'no-tested-dose' | 'never';

export function acidClass(fruit: Fruit): AcidClass {
  if (never[fruit.id]) return 'never';
  const listed = acidNeeded[fruit.id];
  if (listed) return listed.tested ? 'acid-needed' : 'no-tested-dose';
  return fruit.pH.value.high > acidLine.value.pH - acidMargin.value.pH ? 'acid-needed' : 'sour-enough';
}

/** Where the class comes from. */
export function acidSource(fruit: Fruit): string {
  return never[fruit.id]?.source ?? acidNeeded[fruit.id]?.source ?? cite(fruit.pH);
}

/** mL of bottled lemon juice that the shelf asks for, where it asks for any. */
export function shelfLemonMl(request: BatchRequest, parts: Ingredients, volumeL: number): number {
  if (acidClass(parts.fruit) !== 'acid-needed') return 0;
  const byVolume = acidPerLitre.value.lemonMl * volumeL;
  const figJam = parts.fruit.id === 'fig' && request.product === 'jam';
  return figJam ? Math.max(byVolume, figJamLemonMlPerKg.value.ml * parts.preparedKg) : byVolume;
}

/** 2 Tbsp to 4 cups of fruit helps a fruit that is poor in pectin and acid to set. */
const SET_LEMON_ML_PER_KG = 30;

function usualLemonMl(request: BatchRequest, parts: Ingredients, volumeL: number): number {
  const gel = request.product !== 'butter' && request.pectin === 'none';
  const forSet = gel && parts.fruit.pectin.value === 'low' ? SET_LEMON_ML_PER_KG * parts.preparedKg : 0;
  return Math.max(shelfLemonMl(request, parts, volumeL), forSet);
}

const CITRIC_KG_PER_LEMON_ML = acidPerLitre.value.citricKg / acidPerLitre.value.lemonMl;

const dose = (kind: AcidDose['kind'], lemonMl: number, neededForShelf: boolean): AcidDose =>
  kind === 'citric-acid'
    ? { kind, massKg: lemonMl * CITRIC_KG_PER_LEMON_ML, volumeMl: null, neededForShelf }
    : { kind, massKg: (lemonMl / 1000) * lemonJuice.value.kgPerL, volumeMl: lemonMl, neededForShelf };

/** Bottled lemon juice that would sour as much as this dose, mL. */
export const asLemonMl = (acid: Pick<AcidDose, 'kind' | 'massKg' | 'volumeMl'> | null): number =>
  acid === null
    ? 0
    : acid.kind === 'citric-acid'
      ? acid.massKg / CITRIC_KG_PER_LEMON_ML
      : (acid.volumeMl ?? (acid.massKg / lemonJuice.value.kgPerL) * 1000);

/** The cook's own acid, or what fruit and set ask for. */
export function acidDose(request: BatchRequest, parts: Ingredients, volumeL: number): AcidDose | null {
  const asked = request.acid ?? { kind: 'auto' };
  const needed = acidClass(parts.fruit) === 'acid-needed';
  if (asked.kind === 'none') return null;
  const usual = usualLemonMl(request, parts, volumeL);
  const given = asked.kind === 'auto' ? usual : (givenLemonMl(asked) ?? usual);
  if (given === 0) return null;
  return dose(asked.kind === 'auto' ? 'bottled-lemon-juice' : asked.kind, given, needed);
}

function givenLemonMl(asked: Exclude<BatchRequest['acid'], undefined>): number | undefined {
  if (asked.kind === 'auto' || asked.kind === 'none') return undefined;
  const { kind, massKg } = asked;
  if (kind === 'bottled-lemon-juice' && asked.volumeMl !== undefined) return asked.volumeMl;
  return massKg === undefined ? undefined : asLemonMl({ kind, massKg, volumeMl: null });
}

export const acidMass = (acid: AcidDose | null): AcidMass =>
  acid === null
    ? { kg: 0, solidsKg: 0 }
    : acid.kind === 'citric-acid'
      ? citricMass(acid.massKg)
      : lemonMass(acid.massKg);

/**
 * pH of the finished spread: the fruit's published range, lowered by the acid against the buffer of the fruit.
 * The buffer is known within a third, so the lowering is as uncertain; the range is for looking, not for proving.
 */
export function estimatePH(request: BatchRequest, parts: Ingredients, acid: AcidDose | null): Range {
  const { citricKgPerLLemon, chargesAtPH4, citricKgPerMol, buffer, bufferLogSd } = acidChemistry.value;
  const equivalents = ((asLemonMl(acid) / 1000) * citricKgPerLLemon * chargesAtPH4) / citricKgPerMol;
  const falls = equivalents / (buffer * Math.max(parts.preparedKg, 0.01));
  const measured = request.measured?.fruitPH;
  const { low, high } =
    measured === undefined ? parts.fruit.pH.value : { low: measured - 0.1, high: measured + 0.1 };
  const lowered = (pH: number, share: number): number => Math.max(2, pH - falls * share);
  const spread = Math.exp(1.2816 * bufferLogSd);
  return {
    low: lowered(low, Math.min(spread, 1.5)),
    likely: lowered((low + high) / 2, 1),
    high: lowered(high, 1 / spread),
  };
}

/** Whether the acid that is in reaches the dose the shelf asks for; a hair under it is measuring, not leaving out. */
export const doseReached = (acid: AcidDose | null, neededMl: number): boolean =>
  asLemonMl(acid) >= 0.98 * neededMl;
