// Do the predicted jars agree with the jars that published recipes say they make?

import { describe, expect, it } from 'vitest';
import { densityKgPerL } from '../../src/core/index.ts';
import { impossibleYields, publishedRecipes, recipesSetAside } from './data/recipes.ts';
import { yieldsOf } from './predictedYields.ts';
import { HALF_PINT_L, holdsToThem } from './yieldErrors.ts';

describe.each([
  ['the yields of published recipes', publishedRecipes],
  ['those that were set aside, alone', recipesSetAside],
  ['the same with those that were set aside', [...publishedRecipes, ...recipesSetAside]],
])('%s', (_, recipes) => {
  it('are at least ten, each with its source', () => {
    expect(recipes.length).toBeGreaterThanOrEqual(10);
    for (const recipe of recipes) expect(`${recipe.source} ${recipe.how}`).toMatch(/\w+.* \w+/);
  });

  holdsToThem(yieldsOf(recipes));
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
