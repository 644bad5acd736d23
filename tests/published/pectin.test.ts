// Is as much pectin told as published recipes put in?

import { describe, expect, it } from 'vitest';
import { planBatch } from '../../src/core/index.ts';
import { pectinDose } from '../../src/tables/recipes.ts';

const CUP_OF_SUGAR_KG = 0.2;
const CUP_OF_JUICE_KG = 0.249;

interface Row {
  name: string;
  fruit: string;
  pectin: 'powdered' | 'liquid';
  preparedKg?: number;
  juiceKg?: number;
  waterKg?: number;
  cupsOfSugar: number;
  packets: number;
  source: string;
}

const HG_56 = 'USDA Home and Garden Bulletin 56, via NCHFP';
const AIB_539 = 'USDA AIB-539, guide 7';

// Cups of fruit in kg by the weights of the fruit tables.
const rows: readonly Row[] = [
  {
    name: 'strawberry jam, 5 1/2 cups crushed, a box',
    fruit: 'strawberry',
    pectin: 'powdered',
    preparedKg: 1.276,
    cupsOfSugar: 8,
    packets: 1,
    source: HG_56,
  },
  {
    name: 'cherry jam, 4 cups, a box',
    fruit: 'sour-cherry',
    pectin: 'powdered',
    preparedKg: 0.92,
    cupsOfSugar: 5,
    packets: 1,
    source: HG_56,
  },
  {
    name: 'grape jelly, 5 cups of juice, a box',
    fruit: 'grape',
    pectin: 'powdered',
    juiceKg: 5 * CUP_OF_JUICE_KG,
    cupsOfSugar: 7,
    packets: 1,
    source: 'NCHFP, grape jelly with powdered pectin',
  },
  {
    name: 'berry jam, 4 cups crushed, a box',
    fruit: 'blackberry',
    pectin: 'powdered',
    preparedKg: 0.928,
    cupsOfSugar: 4,
    packets: 1,
    source: 'University of Wisconsin B2909, p. 20',
  },
  {
    name: 'blueberry-spice jam, 2 1/2 pints, 1 3/4 oz',
    fruit: 'blueberry',
    pectin: 'powdered',
    preparedKg: 0.74,
    waterKg: 0.177,
    cupsOfSugar: 5.5,
    packets: 1,
    source: AIB_539,
  },
  {
    name: 'plum jam, 4 1/2 cups crushed, 3 oz',
    fruit: 'plum',
    pectin: 'liquid',
    preparedKg: 1.1025,
    cupsOfSugar: 7.5,
    packets: 1,
    source: HG_56,
  },
  {
    name: 'strawberry-rhubarb jelly, 3 1/2 cups of juice, 6 oz',
    fruit: 'rhubarb',
    pectin: 'liquid',
    juiceKg: 0.8575,
    cupsOfSugar: 6,
    packets: 2,
    source: AIB_539,
  },
  {
    name: 'pear-apple jam, 2 cups of pears and 1 of apples, 6 oz',
    fruit: 'pear',
    pectin: 'liquid',
    preparedKg: 0.447,
    cupsOfSugar: 6.5,
    packets: 2,
    source: AIB_539,
  },
];

describe('added pectin', () => {
  it.each(rows)('is within a third of what is published: $name ($source)', (row) => {
    const plan = planBatch({
      fruit: row.fruit,
      product: row.juiceKg === undefined ? 'jam' : 'jelly',
      pectin: row.pectin,
      fruitMassKg: row.juiceKg ?? row.preparedKg ?? 0,
      jar: 'half-pint',
      elevationM: 0,
      keep: 'shelf',
      sugarMassKg: row.cupsOfSugar * CUP_OF_SUGAR_KG,
      ...(row.juiceKg === undefined
        ? { measured: { preparedMassKg: row.preparedKg } }
        : { juiceMassKg: row.juiceKg }),
      ...(row.waterKg === undefined ? {} : { liquid: { massKg: row.waterKg } }),
    });
    const packets = (plan.pectinMassKg ?? 0) / pectinDose[row.pectin].value.packetKg;
    expect(packets / row.packets).toBeGreaterThan(2 / 3);
    expect(packets / row.packets).toBeLessThan(4 / 3);
  });

  it('is named only where it is asked for', () => {
    const plain = {
      fruit: 'plum',
      product: 'jam',
      fruitMassKg: 1,
      jar: 'half-pint',
      elevationM: 0,
      keep: 'shelf',
    } as const;
    expect(planBatch(plain)).not.toHaveProperty('pectinMassKg');
  });
});
