// How long does a spread keep, and where?

import { memory, read } from './source.ts';

export const storage = {
  shelf: read(
    {
      months: 12,
      coolestC: 10,
      warmestC: 70 / 1.8 - 32 / 1.8,
      says: '12 months at 50 to 70 F (10 to 21 C), cool, dark and dry; once opened in the fridge, a full-sugar jam a month, others less',
    },
    'NCHFP, storing home-canned jams and jellies',
  ),
  freezer: read(
    {
      months: 12,
      headspaceInches: 1.5,
      says: '12 months in the freezer, with 1 1/2 in (38 mm) of headspace; once thawed and opened a few days in the fridge',
    },
    'NCHFP uncooked jam; AIB-539 guide 1',
  ),
  fridge: read(
    { months: 0.7, says: '3 weeks in the fridge, 2 with little sugar' },
    'NCHFP uncooked jam: 3 weeks, taken for a cooked spread too; NMSU E-314: spreads without sugar 2 to 3',
  ),
  pumpkinFridge: memory({ months: 0.25, says: 'a week in the fridge, or freeze it' }, 'extension advice'),
} as const;
