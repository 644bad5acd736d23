// Which fruits are sour enough for a boiling-water canner, which need acid, and which never go?

import { memory, read, repeated } from './source.ts';

export const acidLine = read({ pH: 4.6 }, '21 CFR 114.3: acid food at pH 4.6 or below');
/** Fruit that may come this close to the line is given acid: recipes aim for 4.2. */
export const acidMargin = memory(
  { pH: 0.1 },
  'a margin for the lot and the meter; recipes aim for 4.2 or lower',
);

export const never: Readonly<Record<string, { says: string; source: string }>> = {
  pumpkin: {
    says: 'Pumpkin and squash are not acid enough and too thick for any canner at home',
    source: 'NCHFP: no home canning of pumpkin butter or puree, boiling-water or pressure',
  },
  'white-peach': {
    says: 'White-fleshed peaches and nectarines can lie above pH 4.6, and no tested amount of acid is known',
    source: 'NCHFP / Univ. Wisconsin 2020: freeze only',
  },
  elderberry: {
    says: 'Elderberries were measured at pH 4.9 on average, and they are not in the recipes tested for other berries',
    source: 'Univ. Wisconsin B2909; UMaine',
  },
};

/** Low-acid fruit: a tested dose, or none known here. */
export const acidNeeded: Readonly<Record<string, { tested: boolean; source: string }>> = {
  fig: {
    tested: true,
    source: 'AIB-539 guide 2, figs: 1 Tbsp bottled lemon juice or 1/4 tsp citric acid per pint',
  },
  tomato: {
    tested: true,
    source: 'AIB-539 guide 3: 1 Tbsp bottled lemon juice or 1/4 tsp citric acid per pint',
  },
  'asian-pear': {
    tested: true,
    source: 'USDA sliced pack: 1 Tbsp bottled lemon juice per pint (from memory)',
  },
  banana: {
    tested: false,
    source: 'Univ. California Master Food Preservers list: tested acidified recipe only',
  },
  mango: {
    tested: false,
    source: 'Univ. California Master Food Preservers list: tested acidified recipe only',
  },
  papaya: {
    tested: false,
    source: 'Univ. California Master Food Preservers list: tested acidified recipe only',
  },
  persimmon: {
    tested: false,
    source: 'Univ. California Master Food Preservers list: tested acidified recipe only',
  },
  cantaloupe: { tested: false, source: 'low acid: no plain spread (from memory)' },
  honeydew: { tested: false, source: 'low acid: no plain spread (from memory)' },
  watermelon: { tested: false, source: 'Wisconsin notice on a 2011 botulism investigation (from memory)' },
  'prickly-pear': { tested: false, source: 'tested acidified jelly only (from memory)' },
  mulberry: { tested: false, source: 'pH 3.4 to 5.6 in the literature; no tested dose for so wide a range' },
};

/** 1 Tbsp of bottled lemon juice, or 1/4 tsp of citric acid, to a pint of finished spread. */
export const acidPerLitre = read(
  { lemonMl: 31.25, citricKg: 0.00265 },
  'AIB-539 guides 2 and 3: 1 Tbsp or 1/4 tsp per pint (1/4 tsp weighs about 1.25 g, from memory)',
);

/** Fig jam: 1/2 cup of lemon juice to 4 cups of crushed figs. */
export const figJamLemonMlPerKg = repeated(
  { ml: 129 },
  'HG-56 fig jam: 1/2 cup to 4 cups of crushed figs, a cup taken as the lighter 230 g',
);

/** 244 g a cup. */
export const lemonJuice = read({ kgPerL: 1.031, solubleSolidsPct: 8 }, 'USDA SR28 no. 09152');

/** Strength of bottled lemon juice, and how many acid equivalents a kg of fruit takes to fall by one pH. */
export const acidChemistry = memory(
  { citricKgPerLLemon: 0.05, chargesAtPH4: 1.5, citricKgPerMol: 0.19212, buffer: 0.035, bufferLogSd: 0.35 },
  'buffer capacity of fruit purees 0.02-0.06 eq per kg and pH; general food-science literature',
);
