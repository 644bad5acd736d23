// What handbooks and extension bulletins print about boiling: water by altitude, sugar solutions, gelling points.
// Every row says where it was taken from and how: "read", "computed from the named formula" or "from memory".

export interface AltitudeRow {
  elevationM: number;
  boilsC: number;
  source: string;
  how: string;
}

const STEAM_AND_ATMOSPHERE =
  'U.S. Standard Atmosphere 1976 (troposphere) with the Wagner-Pruss / IAPWS saturation line';

/** Boiling water by altitude, to the 0.01 C. */
export const waterBoilsByAltitude: AltitudeRow[] = (
  [
    [0, 99.97],
    [999, 98.96],
    [1001, 98.96],
    [3000, 96.93],
    [5000, 94.9],
    [6000, 93.89],
    [7000, 92.87],
    [9000, 90.83],
  ] as const
).map(([ft, boilsC]) => ({
  elevationM: ft * 0.3048,
  boilsC,
  source: STEAM_AND_ATMOSPHERE,
  how: 'computed from the named formula',
}));

/** Air pressure as printed in a standard-atmosphere table (psia by feet), to be turned into a boiling point. */
export const printedPressurePsia = [
  [0, 14.696],
  [500, 14.43],
  [1000, 14.175],
  [2000, 13.664],
  [3000, 13.173],
  [4000, 12.682],
  [5000, 12.23],
  [6000, 11.778],
  [7000, 11.341],
  [8000, 10.914],
  [9000, 10.506],
  [10000, 10.108],
] as const;
export const printedPressureSource = 'U.S. standard atmosphere table, psia by feet (read)';

/** The international standard atmosphere by metres, in kPa. */
export const isoPressureKPa = [
  [0, 101.325],
  [500, 95.461],
  [1000, 89.875],
  [1500, 84.556],
  [2000, 79.495],
  [2500, 74.683],
  [3000, 70.109],
  [3500, 65.764],
] as const;
export const isoPressureSource =
  'ISO 2533:1975 standard atmosphere, table of pressure by geopotential altitude (from memory)';

export interface RiseRow {
  solubleSolidsPct: number;
  riseC: number;
  source: string;
  how: string;
}

/** Rise above boiling water at sea level of a sucrose solution: a correlation fitted to a century of data. */
export const sucroseBoilingRise: RiseRow[] = (
  [
    [10, 0.17],
    [30, 0.7],
    [43, 1.32],
    [50, 1.82],
    [60, 2.94],
    [65, 3.79],
    [70, 4.99],
    [75, 6.74],
  ] as const
).map(([solubleSolidsPct, riseC]) => ({
  solubleSolidsPct,
  riseC,
  source: 'Starzak & Peacock, water activity coefficient in sucrose solutions (Zuckerindustrie 1997)',
  how: 'computed from the named formula',
}));

/** The same at 5,000 ft, where the rise is a little smaller. */
export const sucroseBoilingRise5000ft: RiseRow[] = (
  [
    [10, 0.16],
    [30, 0.68],
    [43, 1.28],
    [50, 1.77],
    [60, 2.86],
    [65, 3.69],
    [70, 4.86],
    [75, 6.57],
  ] as const
).map(([solubleSolidsPct, riseC]) => ({
  solubleSolidsPct,
  riseC,
  source: 'Starzak & Peacock (1997) at 84.3 kPa',
  how: 'computed from the named formula',
}));

/**
 * Boiling points of the old kitchen literature, where it agrees with the later data.
 * The same table prints 106.5 C at 70 % and 112 C at 80 %: 1.5 and 2.6 C above every modern measurement
 * (the solutions were boiled down in open vessels and inverted), so those two rows are not held against anyone.
 */
export const kitchenBoilingPoints: RiseRow[] = [
  {
    solubleSolidsPct: 60,
    riseC: 3.0,
    source: 'Lowe, Experimental Cookery: a 60 % sugar solution boils at 103.0 C',
    how: 'read',
  },
  {
    solubleSolidsPct: 65,
    riseC: 3.9,
    source: 'Lowe, Experimental Cookery, citing Cruess and McNair: 65 Brix boils at 103.9 C',
    how: 'read',
  },
  {
    solubleSolidsPct: 66,
    riseC: 7.1 / 1.8,
    source: 'maple producers: syrup of 66 Brix boils 7.1 F above boiling water',
    how: 'read',
  },
];

/** Gelling point of jelly and jam without added pectin, by altitude. */
export const gellingPointF = [
  [0, 220],
  [1000, 218],
  [2000, 216],
  [3000, 214],
  [4000, 212],
  [5000, 211],
  [6000, 209],
  [7000, 207],
  [8000, 205],
] as const;
export const gellingPointSource =
  'USDA Complete Guide to Home Canning (AIB-539) guide 7 for 0, 2,000 ... 8,000 ft; ' +
  'Michigan State University Extension, Preserving Food Safely 01600890, prints every 1,000 ft (read)';

/** The rule of another service: 2 F lower for every 1,000 ft, from 220 F at the sea; and one figure of a science museum. */
export const gellingByRuleF = [
  [1000, 218],
  [3000, 214],
  [5000, 210],
  [7000, 206],
] as const;
export const gellingByRuleSource =
  'Colorado State University Extension (read in a page quoting it); at 3,000 ft also the Exploratorium, San Francisco (read)';
