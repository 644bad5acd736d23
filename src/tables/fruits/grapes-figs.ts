// What are grapes and figs made of?

import type { Fruit } from './fruit.ts';
import { memory, read } from '../source.ts';

export const grapesAndFigs: readonly Fruit[] = [
  {
    id: 'grape',
    name: 'grape',
    aliases: ['grapes', 'concord grape', 'concord grapes'],
    waterPct: read(81.3, 'USDA SR28 no. 09131, GRAPES,AMERICAN TYPE (SLIP SKN),RAW'),
    solubleSolidsPct: read(14.29, '21 CFR 150.140(b)(1) / 150.110(b)(1), factor 7.0'),
    solubleSolidsRangePct: memory(
      { low: 14, high: 18 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(0.9, 'USDA SR28 no. 09131, GRAPES,AMERICAN TYPE (SLIP SKN),RAW'),
    pH: read({ low: 2.8, high: 3.0 }, 'FDA/CFSAN approximate pH list'),
    refusePct: memory(
      25,
      'stems, seeds and what clings to the skins in a mill; USDA SR28 no. 09131 gives 42 (skins and seeds) for the table',
    ),
    cupG: read(92.0, 'USDA SR28 no. 09131, GRAPES,AMERICAN TYPE (SLIP SKN),RAW; 1 cup'),
    pectin: read('high' as const, 'So Easy to Preserve 5th ed. groups I-III: I (Eastern) / III (Western)'),
    strain: read(
      {
        butter: 'needed' as const,
        jam: 'needed' as const,
        with: 'a food mill or sieve',
        out: 'skins, seeds',
      },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'I',
  },
  {
    id: 'european-grape',
    name: 'European grape',
    aliases: ['european grapes', 'table grape', 'table grapes', 'seedless grapes'],
    waterPct: read(80.54, 'USDA SR28 no. 09132, GRAPES,RED OR GRN (EURO TYPE,SUCH AS THOMPSON SEEDLESS),RAW'),
    solubleSolidsPct: read(14.29, '21 CFR 150.140(b)(1) / 150.110(b)(1), factor 7.0'),
    solubleSolidsRangePct: memory(
      { low: 13.79, high: 22 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(0.9, 'USDA SR28 no. 09132, GRAPES,RED OR GRN (EURO TYPE,SUCH AS THOMPSON SEEDLESS),RAW'),
    pH: read({ low: 2.9, high: 3.82 }, 'FDA/CFSAN approximate pH list'),
    refusePct: read(4.0, 'USDA SR28 no. 09132, GRAPES,RED OR GRN (EURO TYPE,SUCH AS THOMPSON SEEDLESS),RAW'),
    cupG: read(
      151.0,
      'USDA SR28 no. 09132, GRAPES,RED OR GRN (EURO TYPE,SUCH AS THOMPSON SEEDLESS),RAW; 1 cup',
    ),
    pectin: read('middling' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: read(
      {
        butter: 'needed' as const,
        jam: 'none' as const,
        with: 'a food mill or sieve',
        out: 'skins and seeds',
      },
      '21 CFR 150.110(b)(1) (skins, seeds, pits, cores screened out of butter) and MSU 01600550',
    ),
    jamGroup: 'I',
  },
  {
    id: 'fig',
    name: 'fig',
    aliases: ['figs'],
    waterPct: read(79.11, 'USDA SR28 no. 09089, FIGS,RAW'),
    solubleSolidsPct: read(18.18, '21 CFR 150.140(b)(1), factor 5.5'),
    solubleSolidsRangePct: memory(
      { low: 16, high: 22 },
      'refractometer ranges, general food-science literature',
    ),
    fibrePct: read(2.9, 'USDA SR28 no. 09089, FIGS,RAW'),
    pH: read({ low: 5.05, high: 5.98 }, 'FDA/CFSAN approximate pH list'),
    refusePct: read(1.0, 'USDA SR28 no. 09089, FIGS,RAW'),
    cupG: null,
    pectin: read('low' as const, 'So Easy to Preserve 5th ed. groups I-III'),
    strain: memory(
      { butter: 'optional' as const, jam: 'none' as const, with: 'a fine sieve', out: 'skins' },
      'usual practice',
    ),
    jamGroup: 'II',
  },
];
