// What the canning guides print about process times: minutes at a full boil by product, jar and altitude band.

import type { JarSize, Pectin, Product } from '../../../src/core/types.ts';

/** Top of each band in feet (inclusive; the last band is open) and its minutes. */
export type Bands = readonly (readonly [topFt: number, minutes: number])[];

export interface ProcessRow {
  id: string;
  names: string;
  product: Product;
  pectin: Pectin;
  /** Fruits of ours that the row speaks of. */
  fruits: readonly string[];
  jars: readonly JarSize[];
  bands: Bands;
  source: string;
  how: string;
}

const GUIDE_2 = 'USDA Complete Guide to Home Canning (AIB-539), guide 2';
const GUIDE_7 = 'USDA Complete Guide to Home Canning (AIB-539), guide 7';
const HG_56 = 'USDA Home and Garden Bulletin 56, as kept by the National Center for Home Food Preservation';

const FIVE_TEN_FIFTEEN: Bands = [
  [1000, 5],
  [6000, 10],
  [Infinity, 15],
];
const TEN_FIFTEEN_TWENTY: Bands = [
  [1000, 10],
  [6000, 15],
  [Infinity, 20],
];

// The guides put 4 oz and 8 oz jars in one row.
const SMALL: readonly JarSize[] = ['quarter-pint', 'half-pint'];
const SMALL_AND_PINT: readonly JarSize[] = ['quarter-pint', 'half-pint', 'pint'];

export const processRows: ProcessRow[] = [
  {
    id: 'apple-butter',
    names: 'apple butter, half-pints or pints',
    product: 'butter',
    pectin: 'none',
    fruits: ['apple'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: `${GUIDE_2}, apple butter table`,
    how: 'read',
  },
  {
    id: 'apple-butter-quart',
    names: 'apple butter, quarts',
    product: 'butter',
    pectin: 'none',
    fruits: ['apple'],
    jars: ['quart'],
    bands: TEN_FIFTEEN_TWENTY,
    source: `${GUIDE_2}, apple butter table`,
    how: 'read',
  },
  {
    id: 'other-butters',
    names: 'butters of fruits without a row of their own take the longest published butter row',
    product: 'butter',
    pectin: 'none',
    fruits: ['pear', 'peach', 'apricot', 'plum', 'grape', 'quince', 'crabapple'],
    jars: SMALL_AND_PINT,
    bands: TEN_FIFTEEN_TWENTY,
    source: `${GUIDE_2}, apple butter table, quart row; Michigan State University Extension 01600550 names the fruits and gives no minutes`,
    how: 'read; the choice of row is the cautious one',
  },
  {
    id: 'jam-long-boil',
    names: 'berry, apricot and peach jam without added pectin',
    product: 'jam',
    pectin: 'none',
    fruits: ['blackberry', 'raspberry', 'strawberry', 'apricot', 'peach', 'plum', 'damson'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: `${GUIDE_7}, making jam without added pectin`,
    how: 'from memory',
  },
  {
    id: 'jam-liquid-pectin',
    names: 'pear-apple jam with liquid pectin',
    product: 'jam',
    pectin: 'liquid',
    fruits: ['pear', 'apple', 'plum'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: GUIDE_7,
    how: 'read',
  },
  {
    id: 'jam-powdered-pectin',
    names: 'blueberry-spice and cherry jam with powdered pectin',
    product: 'jam',
    pectin: 'powdered',
    fruits: ['blueberry', 'sour-cherry', 'strawberry'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: `${GUIDE_7}; ${HG_56}`,
    how: 'read',
  },
  {
    id: 'fig-jam',
    names: 'fig jam with liquid pectin and its lemon juice',
    product: 'jam',
    pectin: 'liquid',
    fruits: ['fig'],
    jars: SMALL,
    bands: FIVE_TEN_FIFTEEN,
    source: HG_56,
    how: 'from memory',
  },
  {
    id: 'jelly-long-boil',
    names: 'jelly without added pectin',
    product: 'jelly',
    pectin: 'none',
    fruits: ['apple', 'blackberry', 'crabapple', 'grape', 'plum'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: `${GUIDE_7}, making jelly without added pectin`,
    how: 'from memory',
  },
  {
    id: 'jelly-powdered-pectin',
    names: 'grape and grape-plum jelly with powdered pectin',
    product: 'jelly',
    pectin: 'powdered',
    fruits: ['grape', 'plum'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: GUIDE_7,
    how: 'read',
  },
  {
    id: 'jelly-liquid-pectin',
    names: 'strawberry-rhubarb jelly with liquid pectin',
    product: 'jelly',
    pectin: 'liquid',
    fruits: ['strawberry', 'rhubarb'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: GUIDE_7,
    how: 'read',
  },
  {
    id: 'added-pectin-jellies',
    names: 'the jellies that the guide lists for packaged pectin',
    product: 'jelly',
    pectin: 'powdered',
    fruits: [
      ...['apple', 'crabapple', 'blackberry', 'boysenberry', 'red currant', 'grape', 'peach', 'plum'],
      ...['raspberry', 'loganberry', 'rhubarb', 'strawberry'],
    ],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: `${GUIDE_7}, jellies and jams with added pectin`,
    how: 'read in a page repeating the published text',
  },
  {
    id: 'added-pectin-jams',
    names: 'the jams that the guide lists for packaged pectin',
    product: 'jam',
    pectin: 'powdered',
    fruits: [
      ...['apricot', 'blackberry', 'boysenberry', 'loganberry', 'raspberry', 'blueberry', 'cherry'],
      ...['red currant', 'gooseberry', 'grape', 'peach', 'pear', 'plum', 'rhubarb', 'strawberry'],
    ],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: `${GUIDE_7}, jellies and jams with added pectin`,
    how: 'read in a page repeating the published text',
  },
  {
    id: 'marmalade-powdered-pectin',
    names: 'cranberry marmalade with powdered pectin',
    product: 'marmalade',
    pectin: 'powdered',
    fruits: ['cranberry'],
    jars: SMALL_AND_PINT,
    bands: FIVE_TEN_FIFTEEN,
    source: HG_56,
    how: 'read',
  },
  {
    id: 'marmalade-citrus',
    names: 'orange and apple marmalade',
    product: 'marmalade',
    pectin: 'none',
    fruits: ['orange', 'apple'],
    jars: SMALL,
    bands: FIVE_TEN_FIFTEEN,
    source: HG_56,
    how: 'from memory',
  },
];

/** Jars that no table gives a time for: jam, jelly and marmalade in quarts, and other butters in quarts. */
export const noProcess: { product: Product; fruit: string; jar: JarSize; source: string }[] = [
  { product: 'jam', fruit: 'strawberry', jar: 'quart', source: `${GUIDE_2} and 7: no quart row` },
  { product: 'jam', fruit: 'plum', jar: 'quart', source: `${GUIDE_2} and 7: no quart row` },
  { product: 'jelly', fruit: 'grape', jar: 'quart', source: `${GUIDE_2} and 7: no quart row` },
  { product: 'marmalade', fruit: 'orange', jar: 'quart', source: `${GUIDE_2} and 7: no quart row` },
  { product: 'butter', fruit: 'pear', jar: 'quart', source: `${GUIDE_2}: only apple butter has a quart row` },
  { product: 'butter', fruit: 'plum', jar: 'quart', source: `${GUIDE_2}: only apple butter has a quart row` },
];

/** Altitudes in metres at, just under and just over each printed edge, with the feet they stand for. */
export const altitudeEdges = [
  { m: -86, ft: -282 },
  { m: 0, ft: 0 },
  { m: 304.5, ft: 999 },
  { m: 304.8, ft: 1000 },
  { m: 304.8001, ft: 1000.0003 },
  { m: 305, ft: 1000.66 },
  { m: 305.1048, ft: 1001 },
  { m: 914.4, ft: 3000 },
  { m: 914.7048, ft: 3001 },
  { m: 1600, ft: 5249.3 },
  { m: 1828.8, ft: 6000 },
  { m: 1828.8001, ft: 6000.0003 },
  { m: 1829, ft: 6000.66 },
  { m: 1829.1048, ft: 6001 },
  { m: 2438.4, ft: 8000 },
  { m: 3048, ft: 10000 },
] as const;

/** Empty jars that go into the short process: minutes at a boil by feet, never shorter than the rule. */
export const steriliseMinutes = [
  [0, 10],
  [999, 10],
  [1000, 11],
  [1999, 11],
  [2000, 12],
  [3000, 13],
  [5280, 15],
  [6000, 16],
  [7500, 17],
  [10000, 20],
] as const;
export const steriliseSource =
  'USDA AIB-539 guide 1: 10 min below 1,000 ft and one more for each 1,000 ft (computed, the reading that is never shorter)';

export function publishedMinutes(bands: Bands, ft: number): number {
  const band = bands.find(([topFt]) => ft <= topFt);
  if (band === undefined) throw new Error(`No band holds ${ft} ft.`);
  return band[1];
}

/** Tables of other services for half-pints of jam and jelly, by whole thousands of feet: none asks for more than ours gives. */
export const otherServices = [
  {
    minutesAt: (thousandFt: number): number => 5 + thousandFt,
    upToFt: 10_000,
    source:
      'Clemson Cooperative Extension, HGIC, Jelly & Jam Recipes: 5 minutes, and one for each 1,000 ft (read)',
  },
  {
    minutesAt: (thousandFt: number): number => 5 + thousandFt,
    upToFt: 2999,
    source:
      'University of Minnesota Extension, Strawberry Jam Without Added Pectin: 5, 6 and 7 minutes (read)',
  },
] as const;
