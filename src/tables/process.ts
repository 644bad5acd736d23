// How many minutes at a full boil do the published tables give, for which product, fruit, jar and altitude?

import type { JarId } from './jars.ts';
import { memory, read, repeated, type Sourced } from './source.ts';

export interface ProcessRow {
  says: string;
  product: 'butter' | 'jam' | 'jelly' | 'marmalade';
  fruits: readonly string[];
  jars: readonly JarId[];
  /** Bands by altitude: feet at the top, inclusive and unrounded, and minutes. */
  bands: readonly (readonly [topFt: number, minutes: number])[];
  source: Sourced<null>;
}

/** No row is validated above this. */
export const highestRowFt = memory({ feet: 10_000 }, 'no published row is validated above 10,000 ft');

const fiveTenFifteen = [
  [1000, 5],
  [6000, 10],
  [10_000, 15],
] as const;
const tenFifteenTwenty = [
  [1000, 10],
  [6000, 15],
  [10_000, 20],
] as const;

/** 4 oz and 8 oz jars share a row. */
const small = ['quarter-pint', 'half-pint'] as const;
const smallAndPint = ['quarter-pint', 'half-pint', 'pint'] as const;

const plums = ['plum', 'damson', 'greengage'];
const cherries = ['sour-cherry', 'cherry'];
const brambles = ['blackberry', 'boysenberry', 'loganberry', 'raspberry', 'strawberry', 'gooseberry'];
const otherBerries = ['blueberry', 'cranberry', 'black-currant', 'red-currant'];
const grapes = ['grape', 'european-grape'];
const citrus = ['orange', 'orange-with-peel', 'grapefruit', 'lemon', 'lime', 'tangerine', 'kumquat'];

export const processRows: readonly ProcessRow[] = [
  {
    says: 'apple butter in half-pints or pints',
    product: 'butter',
    fruits: ['apple'],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: read(null, 'USDA AIB-539 guide 2, apple butter table'),
  },
  {
    says: 'apple butter in quarts',
    product: 'butter',
    fruits: ['apple'],
    jars: ['quart'],
    bands: tenFifteenTwenty,
    source: read(null, 'USDA AIB-539 guide 2, apple butter table'),
  },
  {
    // Not fig, tomato or Asian pear: the puree row leaves the first two out, and no table names the third.
    says: 'the longest published butter row, because this fruit has no butter row of its own',
    product: 'butter',
    fruits: [
      ...['pear', 'peach', 'nectarine', 'apricot', 'quince', 'crab-apple', 'prune'],
      ...[...plums, ...cherries, ...brambles, ...otherBerries, ...grapes, 'rhubarb', 'pineapple'],
    ],
    jars: smallAndPint,
    bands: tenFifteenTwenty,
    source: read(
      null,
      'USDA AIB-539 guide 2, apple butter table, quart row; MSU 01600550 names the fruits and gives no minutes',
    ),
  },
  {
    says: 'jam, by the long boil and with added pectin',
    product: 'jam',
    fruits: [
      ...['apple', 'crab-apple', 'pear', 'apricot', 'peach', 'nectarine'],
      ...[...plums, ...cherries, ...brambles, ...otherBerries, ...grapes],
    ],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: read(
      null,
      'USDA AIB-539 guide 7, pear-apple and blueberry-spice jam; HG-56 via NCHFP, cherry jam; other fruits from memory',
    ),
  },
  {
    says: 'rhubarb and pineapple jam',
    product: 'jam',
    fruits: ['rhubarb', 'pineapple'],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: memory(null, 'HG-56 via NCHFP'),
  },
  {
    says: 'fig jam, tomato jam and quince preserves, in half-pints only',
    product: 'jam',
    fruits: ['fig', 'tomato', 'quince'],
    jars: small,
    bands: fiveTenFifteen,
    source: memory(null, 'HG-56 via NCHFP'),
  },
  {
    says: 'jelly without added pectin, and grape, grape-plum and strawberry-rhubarb jelly',
    product: 'jelly',
    fruits: ['apple', 'crab-apple', 'strawberry', 'rhubarb', 'blackberry', ...plums, ...grapes],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: read(
      null,
      'USDA AIB-539 guide 7, grape-plum and strawberry-rhubarb jelly; NCHFP grape jelly; other fruits from memory',
    ),
  },
  {
    says: 'berry, cherry and quince jelly',
    product: 'jelly',
    fruits: ['quince', 'boysenberry', 'loganberry', 'raspberry', 'gooseberry', ...otherBerries, ...cherries],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: memory(null, 'HG-56 via NCHFP'),
  },
  {
    says: 'peach jelly with added pectin',
    product: 'jelly',
    fruits: ['peach'],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: repeated(null, 'USDA AIB-539 guide 7, jellies and jams with added pectin'),
  },
  {
    says: 'cranberry marmalade',
    product: 'marmalade',
    fruits: ['cranberry'],
    jars: smallAndPint,
    bands: fiveTenFifteen,
    source: read(null, 'HG-56 (1982) via NCHFP'),
  },
  {
    says: 'citrus, apple and tomato marmalade, in half-pints only',
    product: 'marmalade',
    fruits: [...citrus, 'apple', 'tomato'],
    jars: small,
    bands: fiveTenFifteen,
    source: memory(null, 'HG-56 via NCHFP'),
  },
];

/** A butter with hardly any sugar, whatever its fruit: longer than any butter row, in the jars its fruit has a row for. */
export const leanButter: Pick<ProcessRow, 'says' | 'bands' | 'source'> = {
  says: 'the row for butter with hardly any sugar, the longest of all',
  bands: [
    [1000, 15],
    [6000, 20],
    [10_000, 25],
  ],
  source: memory(
    null,
    'NCHFP, reduced-sugar apple butter (half-pints); AIB-539 guide 2, fruit purees (pints and quarts)',
  ),
};

/** Empty jars are boiled 10 min, and one more for each full 1,000 ft: the reading that is never shorter. */
export const sterilising = read(
  { minutes: 10, perFt: 1000, neededUnderMinutes: 10 },
  'USDA AIB-539 guide 1: 10 min below 1,000 ft, one more for each 1,000 ft; needed where the process is under 10 min',
);

/** Below these, a spread is a reduced-sugar one: kg of sugar to a kg of prepared fruit. */
export const leastSugarPerKg = memory(
  { butterOwnRow: 0.1, gel: 0.4 },
  'apple butter 0.29 and the least sweet published jam 0.57, jelly 0.6; low-sugar spreads take no 5-minute row',
);
