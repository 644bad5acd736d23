// Which pome fruits are there, and what are they made of?

import type { Fruit } from './fruit.ts';
import { computed, memory, read, repeated } from '../source.ts';

export const pomeFruits: readonly Fruit[] = [
  {
    id: 'apple',
    name: 'apple',
    aliases: ['apples', 'tart apple', 'cooking apple'],
    waterPct: read(85.56, 'USDA SR28 no. 09003, APPLES,RAW,WITH SKIN'),
    solubleSolidsPct: read(13.33, '21 CFR 150.140(b)(1) / 150.110(b)(1), factor 7.5'),
    solubleSolidsRangePct: memory(
      { low: 11, high: 15 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(2.4, 'USDA SR28 no. 09003, APPLES,RAW,WITH SKIN'),
    pH: read({ low: 3.3, high: 4.0 }, 'FDA/CFSAN approximate pH list'),
    refusePct: read(10.0, 'USDA SR28 no. 09003, APPLES,RAW,WITH SKIN'),
    cupG: read(125.0, 'USDA SR28 no. 09003, APPLES,RAW,WITH SKIN; 1 cup, quartered or chopped'),
    pectin: read('high' as const, 'So Easy to Preserve 5th ed. groups I-III: I tart / II ripe'),
    strain: read(
      { butter: 'needed' as const, jam: 'none' as const, with: 'a food mill or sieve', out: 'skins, cores' },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'II',
  },
  {
    id: 'crab-apple',
    name: 'crab apple',
    aliases: ['crab apples', 'crabapple', 'crabapples'],
    waterPct: read(78.94, 'USDA SR28 no. 09077, CRABAPPLES,RAW'),
    solubleSolidsPct: read(15.38, '21 CFR 150.140(b)(1), factor 6.5'),
    solubleSolidsRangePct: memory(
      { low: 13, high: 18 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: memory(2.5, 'not in SR28; a middling value of like fruits'),
    pH: memory({ low: 2.9, high: 3.3 }, 'general literature'),
    refusePct: read(8.0, 'USDA SR28 no. 09077, CRABAPPLES,RAW'),
    cupG: read(110.0, 'USDA SR28 no. 09077, CRABAPPLES,RAW; 1 cup, slices'),
    pectin: read('high' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: read(
      { butter: 'needed' as const, jam: 'none' as const, with: 'a food mill or sieve', out: 'skins, cores' },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'I',
  },
  {
    id: 'pear',
    name: 'pear',
    aliases: ['pears'],
    waterPct: read(83.96, 'USDA SR28 no. 09252, PEARS,RAW'),
    solubleSolidsPct: read(15.38, '21 CFR 150.140(b)(1) / 150.110(b)(1), factor 6.5'),
    solubleSolidsRangePct: memory(
      { low: 11, high: 16 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(3.1, 'USDA SR28 no. 09252, PEARS,RAW'),
    pH: repeated({ low: 3.5, high: 4.6 }, 'FDA-derived list on a gardening forum'),
    refusePct: read(10.0, 'USDA SR28 no. 09252, PEARS,RAW'),
    cupG: read(140.0, 'USDA SR28 no. 09252, PEARS,RAW; 1 cup, slices'),
    pectin: read('low' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: read(
      { butter: 'needed' as const, jam: 'none' as const, with: 'a food mill or sieve', out: 'skins, grit' },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'II',
  },
  {
    id: 'asian-pear',
    name: 'Asian pear',
    aliases: ['asian pears', 'nashi'],
    waterPct: read(88.25, 'USDA SR28 no. 09340, PEARS,ASIAN,RAW'),
    solubleSolidsPct: computed(8.2, '100 - water - fibre of USDA SR28 no. 09340, PEARS,ASIAN,RAW'),
    solubleSolidsRangePct: memory(
      { low: 7.7, high: 13 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(3.6, 'USDA SR28 no. 09340, PEARS,ASIAN,RAW'),
    pH: memory({ low: 4.2, high: 5.0 }, 'extension (4.7 typical on the forum relay list)'),
    refusePct: read(9.0, 'USDA SR28 no. 09340, PEARS,ASIAN,RAW'),
    cupG: null,
    pectin: memory('low' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: memory(
      { butter: 'optional' as const, jam: 'none' as const, with: 'a fine sieve', out: 'grit' },
      'usual practice',
    ),
    jamGroup: 'II',
  },
  {
    id: 'quince',
    name: 'quince',
    aliases: ['quinces'],
    waterPct: read(83.8, 'USDA SR28 no. 09296, QUINCES,RAW'),
    solubleSolidsPct: read(13.33, '21 CFR 150.140(b)(1) / 150.110(b)(1), factor 7.5'),
    solubleSolidsRangePct: memory(
      { low: 11, high: 15 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(1.9, 'USDA SR28 no. 09296, QUINCES,RAW'),
    pH: repeated({ low: 3.12, high: 3.4 }, 'FDA-derived list on a gardening forum'),
    refusePct: read(39.0, 'USDA SR28 no. 09296, QUINCES,RAW'),
    cupG: null,
    pectin: read('high' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: read(
      { butter: 'needed' as const, jam: 'none' as const, with: 'a food mill or sieve', out: 'skins, cores' },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'II',
  },
];
