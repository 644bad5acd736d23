// Published recipes and the jars they say they make, turned into kilograms by published cup weights.
//
// Left out, because no product of this calculator is meant by them: apple sauce and the peach-pineapple spreads
// without full sugar. Left out as unfit for a test: blueberry-spice jam (5 half-pints, its solids fill more than 6),
// grape jelly from frozen concentrate, tomato marmalade (drained in the making); see also the impossible ones below.

import { jams } from './jams.ts';
import { jelliesAndButters } from './jellies-butters.ts';
import type { PublishedRecipe, Row } from './recipe.ts';
import { setAside } from './set-aside.ts';
import { GUIDE_7, B2909, MSU } from './recipe.ts';

export type { PublishedRecipe } from './recipe.ts';

const whole = (row: Row): PublishedRecipe => ({ isJuice: false, otherKg: 0, ...row });

export const publishedRecipes: PublishedRecipe[] = [...jams, ...jelliesAndButters].map(whole);
export const recipesSetAside: PublishedRecipe[] = setAside.map(whole);

/** Published yields that no pot can give: more jars than the ingredients fill, or a butter far thinner than its standard. */
export const impossibleYields = [
  {
    name: 'grape jelly without pectin, 4 cups juice and 3 1/2 cups sugar',
    halfPints: 8,
    solidsKg: 0.852,
    targetPct: 65,
    source: `${GUIDE_7} (read); ${MSU} 01600889 repeats it`,
  },
  {
    name: 'plum jelly without pectin, 4 cups juice and 3 cups sugar',
    halfPints: 8,
    solidsKg: 0.71,
    targetPct: 65,
    source: `${GUIDE_7} (read); ${MSU} 01600889 repeats it`,
  },
  {
    name: 'blackberry jelly without pectin, 4 cups juice and 3 1/2 cups sugar',
    halfPints: 7,
    solidsKg: 0.79,
    targetPct: 65,
    source: `${GUIDE_7} (read); ${B2909} prints 5 to 6 for 3 cups sugar`,
  },
  {
    name: 'apple butter from 8 lb apples, if it were boiled to 43 %',
    halfPints: 16,
    solidsKg: 1.437,
    targetPct: 43,
    source: 'USDA AIB-539 guide 2 (read): 8 to 9 pints implies about 33 % soluble solids',
  },
] as const;
