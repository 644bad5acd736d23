// The planning page's memory: nothing is lost between draft, request, link and file, and nonsense is told in a sentence.

import { describe, expect, test } from 'vitest';
import { batchRequestSchema, planBatch } from '../../src/core/index.ts';
import { emptyDraft, examples, fromRequest, missing, toRequest } from '../../src/app/plan/draft.ts';
import { figureGroups } from '../../src/app/plan/figures.ts';
import { reasonsOf } from '../../src/app/plan/reasons.ts';
import { inUnits } from '../../src/app/plan/units.ts';
import { fruitsFor } from '../../src/app/plan/FruitField.tsx';
import { outcomeOf } from '../../src/app/plan/outcome.ts';
import { arrivalFromFile, arrivalFromHash, planFileText, planLink } from '../../src/app/plan/share.ts';
import { course } from '../../src/app/drawings/reduction.ts';
import { catalogue } from './fixtures.ts';
import { plan } from './plans.ts';

const full = batchRequestSchema.parse({
  fruit: 'pear',
  product: 'butter',
  fruitMassKg: 3.2,
  sugarMassKg: 0.8,
  acid: { kind: 'bottled-lemon-juice', volumeMl: 45 },
  jar: 'pint',
  elevationM: 1600,
  keep: 'shelf',
  pot: { diameterM: 0.28, heightM: 0.2, emptyMassKg: 1.4 },
  burner: { powerW: 2200, kind: 'gas' },
  targetSolubleSolidsPct: 41,
  measured: { fruitSolubleSolidsPct: 14 },
  prices: { fruitPerKg: 2 },
});

describe('a draft', () => {
  test('without fruit, weight and altitude has no plan and says what is missing', () => {
    expect(outcomeOf(emptyDraft)).toEqual({
      kind: 'waiting',
      missing: ['fruit', 'fruitMassKg', 'elevationM'],
    });
    expect(missing({ ...emptyDraft, fruit: 'fig' })).toEqual(['fruitMassKg', 'elevationM']);
  });

  test('made from a request gives the same request again, with what has no field of its own', () => {
    expect(batchRequestSchema.parse(toRequest(fromRequest(full)))).toEqual(full);
  });

  test.each(examples.map((example) => [example.name, example.draft] as const))(
    'of the September evening (%s) has a plan',
    (_, draft) => {
      expect(outcomeOf(draft).kind).toBe('plan');
    },
  );

  test('pectin goes only into what takes it', () => {
    expect(toRequest({ ...examples[1]!.draft, pectin: 'liquid' })?.pectin).toBe('none');
  });

  test('out of bounds keeps what was typed and puts the sentence beside its field', () => {
    const outcome = outcomeOf({ ...examples[0]!.draft, elevationM: 9000 });
    expect(outcome).toMatchObject({
      kind: 'refused',
      troubles: { elevationM: expect.stringContaining('Everest') },
    });
  });

  test('of pumpkin for the shelf is planned, and refused the shelf with its reasons', () => {
    const outcome = outcomeOf({ ...examples[1]!.draft, fruit: 'pumpkin' });
    expect(outcome).toMatchObject({ kind: 'plan', plan: { shelf: { allowed: false }, process: null } });
  });
});

describe('a plan that travels', () => {
  test('by link comes back the same', () => {
    const link = planLink(full, 'http://localhost:4173/?practice=10#old');
    expect(link).toContain('?practice=10#plan=');
    expect(arrivalFromHash(new URL(link).hash)).toEqual({ kind: 'request', request: full });
  });

  test('by file comes back the same', () => {
    expect(arrivalFromFile(planFileText(full))).toEqual({ kind: 'request', request: full });
  });

  test('leaves at home what the pot taught', () => {
    const factor = { mean: 0, sd: 0.2 };
    const taught = { ...full, learned: { logHeat: factor, logSpit: factor, correlation: 0, batches: 3 } };
    expect(planFileText(taught)).not.toContain('logHeat');
  });

  test('is absent from an ordinary address', () => {
    expect(arrivalFromHash('')).toBeUndefined();
    expect(arrivalFromHash('#controls')).toBeUndefined();
  });

  test.each([
    ['#plan=%7B%22fruit', 'whole link'],
    ['#plan=%E0%A4%A', 'whole link'],
    ['#plan=%7B%7D', 'cannot be used'],
    [`#plan=${encodeURIComponent(JSON.stringify({ ...full, fruitMassKg: -1 }))}`, 'more than nothing'],
    [`#plan=${encodeURIComponent(JSON.stringify({ ...full, fruit: 'gravel' }))}`, 'gravel'],
  ])('spoilt on the way is told in a sentence: %s', (hash, says) => {
    expect(arrivalFromHash(hash)).toMatchObject({ kind: 'refused', says: expect.stringContaining(says) });
  });

  test.each([
    ['not json', 'cannot be read'],
    ['{"kind":"shopping-list"}', 'holds no plan'],
    ['{"kind":"stovehand-plan","version":1,"request":{"fruit":"pear"}}', 'cannot be used'],
  ])('as a stray file is told in a sentence: %s', (text, says) => {
    expect(arrivalFromFile(text)).toMatchObject({ kind: 'refused', says: expect.stringContaining(says) });
  });
});

describe('the figures', () => {
  const valueOf = (units: 'us' | 'metric', label: string) =>
    figureGroups(plan(), units, catalogue)
      .flatMap((group) => group.figures)
      .find((figure) => figure.label === label)?.value;

  test('read in both units without changing the batch', () => {
    expect(valueOf('us', 'Sugar')).toBe('4 lb 8 oz');
    expect(valueOf('metric', 'Sugar')).toBe('2.04 kg');
    expect(valueOf('us', 'The thermometer reads')).toBe('218 °F');
    expect(valueOf('metric', 'The thermometer reads')).toBe('103.3 °C');
    expect(valueOf('us', 'Then boil hard')).toBe('38–57 min');
    expect(valueOf('us', 'Headspace')).toBe('¼ in');
  });

  test('open to their reason wherever the plan gives one', () => {
    const figures = figureGroups(plan(), 'us', catalogue).flatMap((group) => group.figures);
    expect(figures.filter((figure) => figure.why).length).toBeGreaterThanOrEqual(12);
  });

  test('name no process where there is none', () => {
    expect(
      figureGroups(plan({ process: null }), 'us', catalogue).flatMap((group) =>
        group.figures.map((figure) => figure.value),
      ),
    ).toContain('None: in the fridge');
  });
});

describe('the course of the reduction', () => {
  test('begins and ends where the plan does and never rises', () => {
    const points = course(plan(), 'likely');
    expect(points[0]).toEqual({ minutes: 0, massKg: 4.31 });
    expect(points.at(-1)?.minutes).toBeCloseTo(18 + 46, 9);
    expect(points.at(-1)?.massKg).toBeCloseTo(3.4, 9);
    for (let i = 1; i < points.length; i += 1)
      expect(points[i]!.massKg).toBeLessThanOrEqual(points[i - 1]!.massKg);
  });
});

test('a fruit is found by any of its names', () => {
  expect(fruitsFor('damsons').map((fruit) => fruit.id)).toEqual(['damson']);
  expect(fruitsFor('crab').map((fruit) => fruit.id)).toContain('crab-apple');
  expect(fruitsFor('zzz')).toEqual([]);
});

test('a sentence of the calculator is told in the units of the cook', () => {
  const said = 'Two pots, 2.2 kg in each; about 2.81 L; 4.4 C above boiling water.';
  expect(inUnits(said, 'metric')).toBe(said.replace('4.4 C', '4.4 °C'));
  expect(inUnits(said, 'us')).toBe(
    'Two pots, 4 lb 13½ oz in each; about 12 cups; 7.9 °F above boiling water.',
  );
  const how = 'water boils at 98.9 C at 335 m, plus 4.4 C at 65.0 %';
  expect(inUnits(how, 'us')).toBe('water boils at 210 °F at 1,099 ft, plus 7.9 °F at 65.0 %');
  expect(inUnits('0.751 kg of water', 'metric')).toBe('751 g of water');
});

test('no sentence of a plan in pounds speaks of kilograms', () => {
  const plan = planBatch(
    batchRequestSchema.parse({
      fruit: 'apricot',
      product: 'jam',
      fruitMassKg: 6,
      elevationM: 400,
      keep: 'shelf',
      jar: 'half-pint',
    }),
  );
  const sentences = [
    ...Object.values(reasonsOf(plan, 'us', (key) => key)).flatMap(({ says, how }) => [says, how]),
    ...figureGroups(plan, 'us', catalogue).flatMap(({ figures }) => figures.map(({ also }) => also ?? '')),
  ];
  expect(sentences.join(' ')).not.toMatch(/\d (kg|L|C|m)\b/);
});

test('the sum under a figure comes to the figure', () => {
  // By steps of no round size, so that now and then a gram decides the last place.
  const weights = Array.from({ length: 200 }, (_, i) => 0.9 + 0.037 * i);
  for (const fruitMassKg of [...weights, 2.27, 2.722, 3.3, 4.309]) {
    const plan = planBatch(
      batchRequestSchema.parse({
        fruit: 'peach',
        product: 'butter',
        fruitMassKg,
        elevationM: 1676,
        keep: 'shelf',
        jar: 'half-pint',
      }),
    );
    for (const units of ['us', 'metric'] as const) {
      const pot = figureGroups(plan, units, catalogue).flatMap(({ figures }) => figures);
      const by = (label: string) => pot.find((figure) => figure.label === catalogue.text({ key: label }));
      expect(by('screen.plan.boilAway')?.why?.says).toContain(
        `${by('screen.plan.boilAway')?.value} of water`,
      );
      expect(by('screen.plan.startMass')?.value).not.toBe('');
      expect(by('screen.plan.boilAway')?.why?.how).toContain(`${by('screen.plan.startMass')?.value} x`);
      expect(by('screen.plan.targetMass')?.why?.how).toContain(`= ${by('screen.plan.targetMass')?.value}`);
      expect(by('screen.plan.sugar')?.why?.how).toContain(`${by('screen.plan.sugar')?.value} to`);
      const [chance] = /\d+/.exec(by('screen.plan.ready')?.also ?? '') ?? [];
      expect(by('screen.plan.ready')?.why?.says).toContain(`all ${chance} times`);
    }
  }
});

test('of mixed jars only those are named that are filled', () => {
  const plan = planBatch(
    batchRequestSchema.parse({
      fruit: 'damson',
      product: 'jam',
      fruitMassKg: 3,
      elevationM: 335,
      keep: 'shelf',
      jar: 'half-pint',
      alsoJars: ['pint'],
    }),
  );
  const label = catalogue.text({ key: 'screen.plan.mixed' });
  const shown = figureGroups(plan, 'us', catalogue)
    .flatMap(({ figures }) => figures)
    .find((figure) => figure.label === label);
  expect(shown?.value).toMatch(/^\d+ pints/);
  expect(shown?.value).not.toMatch(/\b0 /);
});
