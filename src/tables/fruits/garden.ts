// What are the stalks and vegetables that are preserved as fruit made of?

import type { Fruit } from './fruit.ts';
import { computed, memory, read, repeated } from '../source.ts';

export const gardenFruits: readonly Fruit[] = [
  {
    id: 'rhubarb',
    name: 'rhubarb',
    aliases: ['rhubarb stalks'],
    waterPct: read(93.61, 'USDA SR28 no. 09307, RHUBARB,RAW'),
    solubleSolidsPct: memory(5.7, '21 CFR 101.30(h)(1) reference Brix'),
    solubleSolidsRangePct: memory(
      { low: 4, high: 7 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(1.8, 'USDA SR28 no. 09307, RHUBARB,RAW'),
    pH: repeated({ low: 3.1, high: 3.4 }, 'FDA-derived list on a gardening forum'),
    refusePct: read(25.0, 'USDA SR28 no. 09307, RHUBARB,RAW'),
    cupG: read(122.0, 'USDA SR28 no. 09307, RHUBARB,RAW; 1 cup, diced'),
    pectin: memory('low' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: memory({ butter: 'none' as const, jam: 'none' as const, with: null, out: '' }, 'usual practice'),
    jamGroup: 'I',
  },
  {
    id: 'tomato',
    name: 'tomato',
    aliases: ['tomatoes'],
    waterPct: read(94.52, 'USDA SR28 no. 11529, TOMATOES,RED,RIPE,RAW,YEAR RND AVERAGE'),
    solubleSolidsPct: memory(5.0, '21 CFR 101.30(h)(1) reference Brix'),
    solubleSolidsRangePct: memory(
      { low: 4, high: 6 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(1.2, 'USDA SR28 no. 11529, TOMATOES,RED,RIPE,RAW,YEAR RND AVERAGE'),
    pH: repeated({ low: 4.3, high: 4.9 }, 'FDA-derived list on a gardening forum'),
    refusePct: read(9.0, 'USDA SR28 no. 11529, TOMATOES,RED,RIPE,RAW,YEAR RND AVERAGE'),
    cupG: read(149.0, 'USDA SR28 no. 11529, TOMATOES,RED,RIPE,RAW,YEAR RND AVERAGE; 1 cup,  cherry tomatoes'),
    pectin: memory('low' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: read(
      { butter: 'needed' as const, jam: 'none' as const, with: 'a food mill or sieve', out: 'skins, seeds' },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'I',
  },
  {
    id: 'tomatillo',
    name: 'tomatillo',
    aliases: ['tomatillos'],
    waterPct: read(91.63, 'USDA SR28 no. 11954, TOMATILLOS,RAW'),
    solubleSolidsPct: computed(6.5, '100 - water - fibre of USDA SR28 no. 11954, TOMATILLOS,RAW'),
    solubleSolidsRangePct: memory(
      { low: 5, high: 7 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(1.9, 'USDA SR28 no. 11954, TOMATILLOS,RAW'),
    pH: repeated({ low: 3.83, high: 3.83 }, 'FDA-derived list on a gardening forum'),
    refusePct: memory(5, 'not in SR28; husk only'),
    cupG: read(132.0, 'USDA SR28 no. 11954, TOMATILLOS,RAW; .5 cup, chopped or diced, doubled'),
    pectin: memory('middling' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: memory({ butter: 'none' as const, jam: 'none' as const, with: null, out: '' }, 'usual practice'),
    jamGroup: 'II',
  },
  {
    id: 'pumpkin',
    name: 'pumpkin or winter squash',
    aliases: ['pumpkins', 'winter squash', 'squash'],
    waterPct: read(91.6, 'USDA SR28 no. 11422, PUMPKIN,RAW'),
    solubleSolidsPct: computed(7.9, '100 - water - fibre of USDA SR28 no. 11422, PUMPKIN,RAW'),
    solubleSolidsRangePct: memory(
      { low: 4, high: 10 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(0.5, 'USDA SR28 no. 11422, PUMPKIN,RAW'),
    pH: read({ low: 4.9, high: 5.5 }, 'FDA/CFSAN approximate pH list'),
    refusePct: read(30.0, 'USDA SR28 no. 11422, PUMPKIN,RAW'),
    cupG: read(116.0, 'USDA SR28 no. 11422, PUMPKIN,RAW; 1 cup,  (1" cubes)'),
    pectin: memory('low' as const, 'no group is given for squash'),
    strain: read(
      {
        butter: 'needed' as const,
        jam: 'none' as const,
        with: 'a food mill or sieve',
        out: 'strings and skin',
      },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'II',
  },
];
