// What does the calculator predict for a published recipe?

import { fruitOf, pectinPerKg } from '../../src/core/ingredients.ts';
import { planBatch } from '../../src/core/index.ts';
import type { BatchRequestInput, Range } from '../../src/core/index.ts';
import { pectinDose, potCling } from '../../src/tables/recipes.ts';
import type { FreshRecipe } from './data/fresh.ts';
import type { PublishedRecipe } from './data/recipes.ts';
import { HALF_PINT_L, type Yielded } from './yieldErrors.ts';

/** The rows count the guide's own pouches of liquid pectin among the rest: what the plan adds by itself is taken off again. */
const besideThePlan = (recipe: PublishedRecipe): number =>
  Math.max(0, recipe.otherKg - (recipe.pectin === 'liquid' ? liquidPectinKg(recipe) : 0));

const liquidPectinKg = ({ fruit, preparedKg, sugarKg }: PublishedRecipe): number =>
  pectinPerKg(pectinDose.liquid.value, fruitOf({ fruit })) * (preparedKg + sugarKg);

function predictedHalfPints(recipe: PublishedRecipe): Range {
  const { fruit, product, pectin, preparedKg, sugarKg } = recipe;
  const massKg = besideThePlan(recipe);
  const { low, likely, high } = planBatch({
    fruit,
    product,
    pectin,
    fruitMassKg: preparedKg,
    ...(recipe.isJuice ? { juiceMassKg: preparedKg } : { measured: { preparedMassKg: preparedKg } }),
    sugarMassKg: sugarKg,
    ...(massKg > 0 ? { liquid: { massKg, solubleSolidsPct: 5 } } : {}),
    acid: 'none',
    ...(product === 'butter' ? { targetSolubleSolidsPct: 43 } : {}),
    jar: 'half-pint',
    elevationM: 0,
    keep: 'fridge',
  }).yieldVolumeL;
  return { low: low / HALF_PINT_L, likely: likely / HALF_PINT_L, high: high / HALF_PINT_L };
}

export const yieldsOf = (recipes: PublishedRecipe[]): Yielded[] =>
  recipes.map((recipe) => ({
    name: `${recipe.name} (${recipe.source})`,
    printed: recipe.halfPints,
    predicted: predictedHalfPints(recipe),
  }));

/** What goes in besides fruit and sugar, stirred together. A recipe without any gets a drop: else the plan adds its own. */
function liquidOf({ parts }: FreshRecipe): { massKg: number; solubleSolidsPct: number } {
  const massKg = parts.reduce((sum, part) => sum + part.kg, 1e-6);
  const solidsKg = parts.reduce((sum, part) => sum + (part.kg * part.solubleSolidsPct) / 100, 0);
  return { massKg, solubleSolidsPct: (100 * solidsKg) / massKg };
}

function requestOf(recipe: FreshRecipe): BatchRequestInput {
  const { fruit, product, pectin, put, sugarKg, fruitSolidsPct } = recipe;
  const fruitMassKg = 'juiceKg' in put ? put.juiceKg : 'boughtKg' in put ? put.boughtKg : put.preparedKg;
  return {
    fruit,
    product,
    pectin,
    fruitMassKg,
    ...('juiceKg' in put ? { juiceMassKg: fruitMassKg } : {}),
    measured: {
      ...('preparedKg' in put ? { preparedMassKg: fruitMassKg } : {}),
      ...(fruitSolidsPct === undefined ? {} : { fruitSolubleSolidsPct: fruitSolidsPct }),
    },
    sugarMassKg: sugarKg,
    liquid: liquidOf(recipe),
    acid: 'none',
    jar: 'half-pint',
    elevationM: 0,
    keep: 'fridge',
  };
}

export function freshYield(recipe: FreshRecipe): Yielded {
  const { yieldVolumeL, targetMassKg } = planBatch(requestOf(recipe));
  const { name, makes, nutsL = 0 } = recipe;
  const weighed = 'kg' in makes;
  const perL = weighed ? (targetMassKg * (1 - potCling.value.share)) / yieldVolumeL.likely : 1 / HALF_PINT_L;
  const beside = weighed ? 0 : nutsL / HALF_PINT_L;
  return {
    name: `${name} (${recipe.publisher})`,
    printed: weighed ? makes.kg : makes.halfPints,
    predicted: {
      low: yieldVolumeL.low * perL + beside,
      likely: yieldVolumeL.likely * perL + beside,
      high: yieldVolumeL.high * perL + beside,
    },
  };
}
