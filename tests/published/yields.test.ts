// Do the predicted jars agree with the jars that published recipes say they make?

import { describe, expect, it } from 'vitest';
import { batchRequestSchema, densityKgPerL, planBatch } from '../../src/core/index.ts';
import type { Range } from '../../src/core/index.ts';
import { impossibleYields, publishedRecipes, recipesSetAside } from './data/recipes.ts';
import type { PublishedRecipe } from './data/recipes.ts';

/** A published half-pint is one US cup of product. */
const HALF_PINT_L = 0.23659;

function predictedHalfPints(recipe: PublishedRecipe): Range {
  const { fruit, product, pectin, preparedKg, sugarKg, otherKg } = recipe;
  const request = batchRequestSchema.parse({
    fruit,
    product,
    pectin,
    fruitMassKg: preparedKg,
    ...(recipe.isJuice ? { juiceMassKg: preparedKg } : { measured: { preparedMassKg: preparedKg } }),
    sugarMassKg: sugarKg,
    ...(otherKg > 0 ? { liquid: { massKg: otherKg, solubleSolidsPct: 5 } } : {}),
    acid: 'none',
    ...(product === 'butter' ? { targetSolubleSolidsPct: 43 } : {}),
    jar: 'half-pint',
    elevationM: 0,
    keep: 'fridge',
  });
  const { low, likely, high } = planBatch(request).yieldVolumeL;
  return { low: low / HALF_PINT_L, likely: likely / HALF_PINT_L, high: high / HALF_PINT_L };
}

/** How far `likely` is from the nearest jar count that the recipe names, as a fraction of it. */
function errorOf(likely: number, published: { low: number; high: number }): number {
  const nearest = Math.min(Math.max(likely, published.low), published.high);
  return Math.abs(likely - nearest) / nearest;
}

const predictionsOf = (recipes: PublishedRecipe[]) =>
  recipes.map((recipe) => {
    const predicted = predictedHalfPints(recipe);
    const inside = predicted.low <= recipe.halfPints.high && predicted.high >= recipe.halfPints.low;
    return { recipe, predicted, inside, error: errorOf(predicted.likely, recipe.halfPints) };
  });
type Predictions = ReturnType<typeof predictionsOf>;

const told = (predictions: Predictions): string =>
  predictions
    .map(({ recipe, predicted, inside, error }) => {
      const { low, likely, high } = predicted;
      const range = `${low.toFixed(1)}..${likely.toFixed(1)}..${high.toFixed(1)}`;
      const says = `${recipe.halfPints.low}-${recipe.halfPints.high}`;
      return `${inside ? 'in ' : 'OUT'} ${(100 * error).toFixed(0).padStart(3)} % ${says.padStart(5)} ${range} ${recipe.id}`;
    })
    .join('\n');

describe.each([
  ['the yields of published recipes', predictionsOf(publishedRecipes)],
  ['those that were set aside, alone', predictionsOf(recipesSetAside)],
  ['the same with those that were set aside', predictionsOf([...publishedRecipes, ...recipesSetAside])],
])('%s', (_, predictions) => {
  it('are at least ten, each with its source', () => {
    expect(predictions.length).toBeGreaterThanOrEqual(10);
    for (const { recipe } of predictions) expect(`${recipe.source} ${recipe.how}`).toMatch(/\w+.* \w+/);
  });

  it('lie inside the predicted range nine times in ten', () => {
    const share = predictions.filter(({ inside }) => inside).length / predictions.length;
    expect(share, told(predictions)).toBeGreaterThanOrEqual(0.9);
  });

  it('are predicted with a median error under 8 %', () => {
    const errors = predictions.map(({ error }) => error).sort((a, b) => a - b);
    const middle = errors.slice(Math.floor((errors.length - 1) / 2), Math.floor(errors.length / 2) + 1);
    const median = middle.reduce((sum, error) => sum + error, 0) / middle.length;
    expect(median, told(predictions)).toBeLessThan(0.08);
  });

  it.each(predictions)(
    '$recipe.name: a range no wider than 20 % either way ($recipe.source)',
    ({ predicted }) => {
      const { low, likely, high } = predicted;
      expect(low).toBeGreaterThanOrEqual(0.8 * likely - 1e-9);
      expect(high).toBeLessThanOrEqual(1.2 * likely + 1e-9);
      expect(low).toBeLessThan(likely);
      expect(high).toBeGreaterThan(likely);
    },
  );
});

describe('published yields that no pot can give', () => {
  // The solids in the pot do not multiply: what they fill at the standard's strength is all there is.
  it.each(impossibleYields)('$name cannot fill $halfPints half-pints ($source)', (row) => {
    const kgPerL = densityKgPerL({ solubleSolidsPct: row.targetPct, tempC: 20 });
    const fillable = row.solidsKg / (row.targetPct / 100) / kgPerL / HALF_PINT_L;
    expect(fillable * 1.2).toBeLessThan(row.halfPints);
  });

  it('the guide makes its 8 pints of apple butter at about 33 % soluble solids (USDA AIB-539 guide 2, read)', () => {
    const kgPerL = densityKgPerL({ solubleSolidsPct: 33, tempC: 20 });
    const fillable = 1.437 / 0.33 / kgPerL / HALF_PINT_L;
    expect(Math.abs(fillable - 16) / 16).toBeLessThan(0.03);
  });
});
