// What goes into the pot: prepared fruit or juice, sugar, water, pectin?

import { findFruit, type Fruit } from '../tables/fruits/index.ts';
import { cookingWater, juiceYield, millLoss, pectinDose, recipes, type Recipe } from '../tables/recipes.ts';
import type { BatchRequest } from './request.ts';

/** What is known before the acid is dosed; masses in kg, solids in mass per cent, spreads as log sd. */
export interface Ingredients {
  fruit: Fruit;
  recipe: Recipe;
  /** Fruit after trimming, or juice, as it goes into the pot. */
  preparedKg: number;
  preparedLogSd: number;
  fruitSolidsPct: number;
  fruitSolidsLogSd: number;
  insolublePct: number;
  sugarKg: number;
  sugarBoundsKg: { low: number; high: number };
  liquidKg: number;
  liquidSolidsPct: number;
  pectinKg: number;
  pectinSolidsPct: number;
}

const CITRUS = ['orange', 'orange-with-peel', 'grapefruit', 'lemon', 'lime', 'tangerine', 'kumquat'];
const FIRM = ['apple', 'crab-apple', 'quince', 'pear', 'asian-pear', 'cranberry'];
export const isCitrus = (fruitId: string): boolean => CITRUS.includes(fruitId);

export function fruitOf(request: Pick<BatchRequest, 'fruit'>): Fruit {
  const fruit = findFruit(request.fruit);
  if (!fruit) throw new RangeError(`I do not know the fruit "${request.fruit}".`);
  return fruit;
}

function milled(request: BatchRequest, fruit: Fruit): boolean {
  if (request.product === 'jelly') return false;
  return fruit.strain.value[request.product === 'butter' ? 'butter' : 'jam'] === 'needed';
}

/** Fruit as it goes into the pot: what was weighed, or what trimming, milling and pressing leave of what was bought. */
function prepared(request: BatchRequest, fruit: Fruit): Pick<Ingredients, 'preparedKg' | 'preparedLogSd'> {
  const trimmedKg =
    request.measured?.preparedMassKg ?? request.fruitMassKg * (1 - fruit.refusePct.value / 100);
  const weighed = request.measured?.preparedMassKg !== undefined;
  if (request.product === 'jelly') {
    if (request.juiceMassKg !== undefined) return { preparedKg: request.juiceMassKg, preparedLogSd: 0.03 };
    const { perKg } = juiceFrom(fruit);
    return { preparedKg: trimmedKg * perKg, preparedLogSd: 0.06 };
  }
  if (weighed) return { preparedKg: trimmedKg, preparedLogSd: 0.03 };
  // What SR28 calls refuse of a slip-skin grape is what the mill keeps back: it is not taken off twice.
  const kept = milled(request, fruit) && fruit.refusePct.value < 25 ? 1 - millLoss.value.share : 1;
  return { preparedKg: trimmedKg * kept, preparedLogSd: milled(request, fruit) ? 0.05 : 0.035 };
}

const juiceFrom = (fruit: Fruit): { perKg: number; solidsShare: number } =>
  (FIRM.includes(fruit.id) ? juiceYield.firm : juiceYield.soft).value;

function fruitSolids(
  request: BatchRequest,
  fruit: Fruit,
): Pick<Ingredients, 'fruitSolidsPct' | 'fruitSolidsLogSd' | 'insolublePct'> {
  const juice = request.product === 'jelly';
  const measured = request.measured?.fruitSolubleSolidsPct;
  const { low, high } = fruit.solubleSolidsRangePct.value;
  return {
    fruitSolidsPct: measured ?? fruit.solubleSolidsPct.value * (juice ? juiceFrom(fruit).solidsShare : 1),
    // The range of a fruit is taken to hold nine lots in ten.
    fruitSolidsLogSd: measured === undefined ? Math.log(high / low) / 3.29 : 0.03,
    insolublePct: juice ? 0.1 : fruit.fibrePct.value,
  };
}

/** Water the recipe asks for where the cook named none. */
function liquidFor(request: BatchRequest, fruit: Fruit, preparedKg: number): { kg: number; pct: number } {
  if (request.liquid) return { kg: request.liquid.massKg, pct: request.liquid.solubleSolidsPct };
  if (fruit.id === 'prune' && request.product !== 'jelly')
    return { kg: cookingWater.prune.value.perKg * preparedKg, pct: 0 };
  const peel = request.product === 'marmalade' && request.pectin === 'none' && isCitrus(fruit.id);
  return { kg: peel ? cookingWater.citrusMarmalade.value.perKg * preparedKg : 0, pct: 0 };
}

/** Where the cook names the end but not the sugar: so much that the mix begins a tenth below that end. */
function sugarThatLeavesABoil(request: BatchRequest, dry: { kg: number; solidsKg: number }): number {
  if (request.targetSolubleSolidsPct === undefined) return Infinity;
  const start = (0.9 * request.targetSolubleSolidsPct) / 100;
  return Math.max(0, (start * dry.kg - dry.solidsKg) / (1 - start));
}

/** kg of added pectin to a kg of what it is to set. */
export const pectinPerKg = (dose: (typeof pectinDose)[keyof typeof pectinDose]['value'], fruit: Fruit) =>
  dose.perKg[fruit.pectin.value === 'high' ? 'high' : 'other'];

export function ingredients(request: BatchRequest): Ingredients {
  const fruit = fruitOf(request);
  const recipe = recipes[request.product][request.pectin];
  const weights = prepared(request, fruit);
  const { usual, low, high } = recipe.sugarPerKg.value;
  const liquid = liquidFor(request, fruit, weights.preparedKg);
  const pectin = pectinDose[request.product === 'butter' ? 'none' : request.pectin].value;
  const solids = fruitSolids(request, fruit);
  const withoutSugar = {
    kg: weights.preparedKg + liquid.kg,
    solidsKg: (weights.preparedKg * solids.fruitSolidsPct + liquid.kg * liquid.pct) / 100,
  };
  const sugarKg =
    request.sugarMassKg ?? Math.min(usual * weights.preparedKg, sugarThatLeavesABoil(request, withoutSugar));
  return {
    fruit,
    recipe,
    ...weights,
    ...solids,
    sugarKg,
    sugarBoundsKg: { low: low * weights.preparedKg, high: high * weights.preparedKg },
    liquidKg: liquid.kg,
    liquidSolidsPct: liquid.pct,
    pectinKg: pectinPerKg(pectin, fruit) * (weights.preparedKg + sugarKg),
    pectinSolidsPct: pectin.solubleSolidsPct,
  };
}

/** The cook's sugar must lie within what the recipe bears; null where it does. */
export function refuseSugar(request: BatchRequest): string | null {
  const { sugarKg, sugarBoundsKg } = ingredients(request);
  if (sugarKg <= sugarBoundsKg.high * 1.000001) return null;
  return `That is too much sugar for this fruit: take at most ${sugarBoundsKg.high.toFixed(2)} kg (${(sugarBoundsKg.high * 2.20462).toFixed(1)} lb).`;
}
