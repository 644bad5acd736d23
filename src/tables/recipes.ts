// In which proportions are fruit, sugar, water and pectin cooked, and to what end?

import { memory, read, type Sourced } from './source.ts';

export interface Recipe {
  /** kg of sugar to a kg of prepared fruit (of juice, for jelly): usual, and what a cook may choose between. */
  sugarPerKg: Sourced<{ usual: number; low: number; high: number }>;
  /** Soluble solids of the finished spread, per cent; null where a short boil ends near where it began. */
  endPct: Sourced<number | null>;
  /** Standard deviation of the logarithm of the finished mass, from where a cook really stops. */
  endLogSd: number;
}

type ProductId = 'butter' | 'jam' | 'jelly' | 'marmalade';
type PectinId = 'none' | 'powdered' | 'liquid';

const toGel = read(65, 'boiled to the jellying point: 21 CFR 150.140(d)(3), .160(d)(3)');
const shortBoil = read(
  null,
  'AIB-539 guide 7: one minute of hard boil with added pectin, no test of doneness',
);

export const recipes: Record<ProductId, Record<PectinId, Recipe>> = {
  butter: {
    none: {
      sugarPerKg: memory(
        { usual: 0.29, low: 0, high: 0.65 },
        'AIB-539 guide 2 apple butter 0.29; 21 CFR 150.110(d) at most 2 parts to 5 of fruit; MSU 01600550 0.61',
      ),
      endPct: memory(43, '21 CFR 150.110(d): butters at least 43 % soluble solids'),
      endLogSd: 0.06,
    },
    powdered: butterTakesNoPectin(),
    liquid: butterTakesNoPectin(),
  },
  jam: {
    none: {
      sugarPerKg: memory(
        { usual: 1, low: 0, high: 2 },
        'AIB-539 guide 7 and HG-56 jams 0.57 to 0.86; 21 CFR 150.160(d)(1) at most 55 parts to 47 or 45',
      ),
      endPct: toGel,
      endLogSd: 0.07,
    },
    powdered: {
      sugarPerKg: read({ usual: 1.25, low: 0, high: 3.5 }, 'HG-56 via NCHFP: strawberry 1.25, cherry 1.09'),
      endPct: shortBoil,
      endLogSd: 0.065,
    },
    liquid: {
      sugarPerKg: read(
        { usual: 1.4, low: 0, high: 3.5 },
        'HG-56 via NCHFP: plum 1.36; AIB-539 pear-apple 2.9',
      ),
      endPct: shortBoil,
      endLogSd: 0.065,
    },
  },
  jelly: {
    none: {
      sugarPerKg: read(
        { usual: 0.8, low: 0, high: 2 },
        'AIB-539 guide 7 table: 3 to 4 cups to 4 cups of juice',
      ),
      endPct: toGel,
      endLogSd: 0.07,
    },
    powdered: {
      sugarPerKg: read({ usual: 1.1, low: 0, high: 3.5 }, 'NCHFP grape jelly: 7 cups to 5 cups of juice'),
      endPct: shortBoil,
      endLogSd: 0.065,
    },
    liquid: {
      sugarPerKg: read(
        { usual: 1.4, low: 0, high: 3.5 },
        'AIB-539 guide 7 strawberry-rhubarb: 6 to 3.5 cups',
      ),
      endPct: shortBoil,
      endLogSd: 0.065,
    },
  },
  marmalade: {
    none: {
      sugarPerKg: memory({ usual: 1.2, low: 0, high: 3 }, 'common practice, no source'),
      endPct: memory(65, 'boiled to the jellying point, as jam'),
      endLogSd: 0.07,
    },
    powdered: {
      sugarPerKg: read(
        { usual: 1, low: 0, high: 3.5 },
        'NCHFP cranberry marmalade: 7 cups to 6 cups of fruit',
      ),
      endPct: shortBoil,
      endLogSd: 0.065,
    },
    liquid: {
      sugarPerKg: memory({ usual: 1.2, low: 0, high: 3.5 }, 'as powdered; common practice, no source'),
      endPct: shortBoil,
      endLogSd: 0.065,
    },
  },
};

function butterTakesNoPectin(): Recipe {
  return {
    sugarPerKg: memory({ usual: 0.29, low: 0, high: 0.65 }, 'as butter; a butter needs no added pectin'),
    endPct: memory(43, '21 CFR 150.110(d)'),
    endLogSd: 0.06,
  };
}

/** A home butter ends between these; below the lower it is a thin puree. */
export const butterEnd = read(
  { thinBelowPct: 33, mostPct: 50 },
  'AIB-539 guide 2 apple butter: the published yield implies 33 %; 21 CFR 150.110(d) asks 43 %',
);

/** Gelled spreads below these solids are reduced-sugar spreads, which the full-sugar rows do not cover. */
export const gelEnd = memory(
  { longBoilLeastPct: 60, shortBoilLeastPct: 50 },
  'Codex 296 and Directive 2001/113/EC ask 60 %; published pectin recipes end from 52 to 66 %',
);

/** Water that boils away while a pectin batch comes to the boil and boils hard for a minute, share of the start. */
export const shortBoilLoss = memory(
  { share: 0.04, logSd: 0.02 },
  'HG-56 yields against what went into the pot',
);

/** Skimmed off, on the spoon, the plate and the wall of the pot: share of the finished mass. */
export const potCling = memory({ share: 0.03, logSd: 0.02 }, 'common practice, no source');

/** kg of pectin to a kg of fruit or juice and sugar, for fruit rich in pectin of its own and for other; its
 *  solids; and what a packet holds: 1 3/4 oz of powder, 3 oz of liquid. */
export const pectinDose = {
  none: memory({ perKg: { high: 0, other: 0 }, solubleSolidsPct: 0, packetKg: 1 }, 'none added'),
  powdered: read(
    { perKg: { high: 0.019, other: 0.021 }, solubleSolidsPct: 90, packetKg: 0.049 },
    'HG-56 via NCHFP: a box to 2.9 kg with strawberries, 2.7 with grape juice, 2.0 with cherries; solids from memory',
  ),
  liquid: read(
    { perKg: { high: 0.033, other: 0.083 }, solubleSolidsPct: 5, packetKg: 0.085 },
    'HG-56 via NCHFP: a pouch to 2.6 kg with plums; AIB-539 guide 7: two to 2.0 kg with rhubarb or with pears; solids from memory',
  ),
} as const;

/** Water cooked with the fruit where the recipe needs it, kg to a kg of prepared fruit. */
export const cookingWater = {
  prune: memory({ perKg: 1.5 }, 'dried fruit is stewed first; common practice, no source'),
  citrusMarmalade: memory({ perKg: 1 }, 'common practice, no source'),
} as const;

/** Juice for jelly: kg from a kg of prepared fruit, and its solids against the fruit's. */
export const juiceYield = {
  firm: read(
    { perKg: 0.65, solidsShare: 0.68 },
    'AIB-539 guide 7: 3 lb apples and 3 cups of water give 4 cups; crab apple juice about 10 %',
  ),
  soft: read({ perKg: 0.65, solidsShare: 0.9 }, 'NCHFP: 3.5 lb grapes and 1 cup of water give 5 cups'),
} as const;

/** What a mill or sieve keeps back of a mash besides the trimmed refuse, share of the prepared fruit. */
export const millLoss = memory(
  { share: 0.06, logSd: 0.03 },
  'skins and cores in the mill; common practice, no source',
);
