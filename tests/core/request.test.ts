// Is a request read as the cook meant it, and refused in a sentence that says what to do?

import { describe, expect, it } from 'vitest';
import { batchRequestSchema, fruits } from '../../src/core/index.ts';
import { planOf, refusal, september } from './ask.ts';

describe('a request is refused with a sentence', () => {
  it.each([
    ['a negative weight', { fruitMassKg: -2 }, /more than nothing/],
    ['no weight', { fruitMassKg: 0 }, /more than nothing/],
    ['900 lb of fruit', { fruitMassKg: 408.2 }, /900 lb.*at most 100 kg/],
    ['a weight that is not a number', { fruitMassKg: Number.NaN }, /how much fruit/],
    ['a weight without end', { fruitMassKg: Infinity }, /how much fruit|more fruit/],
    [
      'a fruit nobody knows',
      { fruit: 'moonfruit' },
      /do not know the fruit "moonfruit"\. Choose one of: apple/,
    ],
    ['an altitude above Everest', { elevationM: 8850 }, /higher than Everest/],
    ['an altitude below the lowest shore', { elevationM: -500 }, /no kitchen is that low/i],
    ['a product of another trade', { product: 'chutney' }, /butter, jam, jelly or marmalade/],
    ['a jar of another size', { jar: 'gallon' }, /quarter-pint, half-pint, pint or quart/],
    ['less than no sugar', { sugarMassKg: -0.1 }, /less than nothing/],
    ['a mountain of sugar', { sugarMassKg: 40 }, /too much sugar.*take at most 1\.65 kg/],
    ['a target below what goes in', { sugarMassKg: 1, targetSolubleSolidsPct: 34 }, /before heating/],
    [
      'more acid than fruit',
      { fruitMassKg: 0.02, acid: { kind: 'citric-acid', massKg: 0.207 } },
      /more acid than fruit/,
    ],
    [
      'an end without water',
      { product: 'jelly', juiceMassKg: 1, measured: { fruitSolubleSolidsPct: 80 }, sugarMassKg: 1 },
      /too little water/,
    ],
    [
      'a weight lighter than sugar and fibre',
      { fruit: 'passion-fruit', sugarMassKg: 0, targetSolubleSolidsPct: 80 },
      /too little water/,
    ],
    ['pectin in a butter', { pectin: 'powdered' }, /takes no pectin/],
    ['a pot as wide as a bath', { pot: { diameterM: 1.2 } }, /at most 80 cm/],
    ['a burner that cannot boil', { burner: { powerW: 20 } }, /at least 200 W/],
    ['a thermometer that is off', { measured: { waterBoilsC: 120 } }, /check the thermometer/],
    ['an acid of another kind', { acid: 'vinegar' }, /lemon juice, citric acid, no acid/],
  ])('for %s', (_, ask, sentence) => {
    expect(refusal(ask)).toMatch(sentence);
  });

  it('that names every fault at once', () => {
    const parsed = batchRequestSchema.safeParse({ ...september, fruitMassKg: -1, elevationM: 9000 });
    expect(parsed.error?.issues).toHaveLength(2);
  });

  it('even when it is not a request at all', () => {
    for (const nothing of [null, 'plums', 3, []])
      expect(batchRequestSchema.safeParse(nothing).error?.issues[0]?.message).toMatch(/one object/);
  });
});

describe('a request is read', () => {
  it.each(['damson', 'Damsons', 'DAMSON PLUMS', ' damson-plum '])(
    'whatever the cook calls it: "%s"',
    (fruit) => {
      expect(batchRequestSchema.parse({ ...september, fruit }).fruit).toBe('damson');
    },
  );

  it('with acid as a word or as an amount', () => {
    const read = (acid: unknown) => batchRequestSchema.parse({ ...september, acid }).acid;
    expect(read('none')).toEqual({ kind: 'none' });
    expect(read(null)).toEqual({ kind: 'none' });
    expect(read('bottled-lemon-juice')).toMatchObject({ kind: 'bottled-lemon-juice' });
    expect(read({ kind: 'citric-acid', massKg: 0.01 })).toEqual({ kind: 'citric-acid', massKg: 0.01 });
  });

  it('and a quart of jam is not bad input: it is planned, without a process', () => {
    const plan = planOf({ product: 'jam', jar: 'quart' });
    expect(plan.process).toBeNull();
    expect(plan.shelf.reasons.join()).toMatch(
      /No published table gives a time for damson plum jam in quart jars/,
    );
    expect(plan.shelf.remedy).toMatch(/pint/);
  });

  it('with juice alone for a jelly, and with neither fruit nor juice not at all', () => {
    const { fruitMassKg: _, ...noFruit } = september;
    const jelly = batchRequestSchema.parse({ ...noFruit, product: 'jelly', juiceMassKg: 1.3 });
    expect(jelly.fruitMassKg).toBeCloseTo(2, 1);
    for (const product of ['jelly', 'jam'])
      expect(batchRequestSchema.safeParse({ ...noFruit, product }).error?.issues[0]?.message).toMatch(
        /how much fruit/,
      );
  });

  it('the same the second time', () => {
    const once = batchRequestSchema.parse({ ...september, acid: 'auto', fruit: 'Damsons' });
    expect(batchRequestSchema.parse(once)).toEqual(once);
  });
});

describe('the list of fruits', () => {
  it('holds at least forty, each once, and no name stands for two', () => {
    expect(fruits.length).toBeGreaterThanOrEqual(40);
    const names = fruits.flatMap(({ id, name, aliases }) => [
      ...new Set([id, name.toLowerCase(), ...aliases]),
    ]);
    const own = new Map<string, string>();
    for (const { id, name, aliases } of fruits)
      for (const called of new Set([id, name.toLowerCase(), ...aliases])) {
        const plain = called.replace(/-/g, ' ');
        expect(own.get(plain) ?? id, plain).toBe(id);
        own.set(plain, id);
      }
    expect(names.length).toBeGreaterThan(fruits.length);
  });

  it('holds what a cook of the main job asks for', () => {
    const asked = ['apple', 'apricot', 'blackberry', 'cherry', 'fig', 'grape', 'peach', 'pear', 'plum'];
    for (const fruit of [...asked, 'pumpkin', 'raspberry', 'strawberry', 'damson', 'crab apple'])
      expect(refusal({ fruit })).toBeNull();
  });

  it('says which never go to the shelf', () => {
    const never = fruits.filter(({ shelf }) => shelf === 'never').map(({ id }) => id);
    expect(never).toEqual(
      expect.arrayContaining(['pumpkin', 'white-peach', 'elderberry', 'banana', 'cantaloupe']),
    );
    for (const fruit of never)
      for (const product of ['butter', 'jam', 'jelly', 'marmalade'] as const)
        expect(planOf({ fruit, product }).shelf.allowed, `${fruit} ${product}`).toBe(false);
  });
});
