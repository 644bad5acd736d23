// What may a spread be called: which solids and how much fruit do the standards of identity ask for?

import { memory, read } from './source.ts';

export const identity = {
  butter: memory(
    {
      says: 'the US standard for fruit butter',
      leastPct: 43,
      mostSugarPerKg: 2 / 5,
      mostSugarPerKgGroupI: 2 / 5,
    },
    '21 CFR 150.110(d): 5 parts fruit to 2 of sweetener, 43 %',
  ),
  jam: memory(
    { says: 'the US standard for jam', leastPct: 65, mostSugarPerKg: 55 / 45, mostSugarPerKgGroupI: 55 / 47 },
    '21 CFR 150.160(d): 45 or 47 parts fruit to 55 of sugar, 65 %',
  ),
  jelly: read(
    {
      says: 'the US standard for jelly',
      leastPct: 65,
      mostSugarPerKg: 55 / 45,
      mostSugarPerKgGroupI: 55 / 45,
    },
    '21 CFR 150.140(d): 45 parts juice to 55 of sugar (from memory), 65 %',
  ),
  marmalade: read(
    { says: 'the EU rule for marmalade', leastPct: 60, mostSugarPerKg: 4, mostSugarPerKgGroupI: 4 },
    'Directive 2001/113/EC: 200 g citrus in 1,000 g, 60 %',
  ),
} as const;
