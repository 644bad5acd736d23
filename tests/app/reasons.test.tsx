// Every figure of the plan opens to where it came from: what it says, how it was had, and its source.

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { PlanSheet } from '../../src/app/plan/PlanSheet.tsx';
import { Inputs } from '../../src/app/plan/Inputs.tsx';
import { outcomeOf } from '../../src/app/plan/outcome.ts';
import { examples, fromRequest, toRequest, type Draft } from '../../src/app/plan/draft.ts';
import { figureGroups } from '../../src/app/plan/figures.ts';
import { batchRequestSchema, planBatch, type BatchRequest } from '../../src/core/index.ts';
import { sterilising } from '../../src/tables/process.ts';
import { catalogue, settings } from './fixtures.ts';

type Asked = Partial<BatchRequest>;

const damson: Asked = {
  fruit: 'damson',
  product: 'jam',
  fruitMassKg: 2.4,
  jar: 'half-pint',
  elevationM: 340,
};
const kitchen: Asked = { pot: { diameterM: 0.28 }, burner: { powerW: 2200, kind: 'gas' } };

const planOf = (asked: object) => planBatch(batchRequestSchema.parse({ keep: 'shelf', ...asked }));

/** Every kind of plan that shows a figure of its own. */
const plans: Record<string, object> = {
  'damson jam': { ...damson, ...kitchen },
  'damson jam in an unknown pot': damson,
  'damson jam for the fridge': { ...damson, keep: 'fridge' },
  'damson jam for the freezer': { ...damson, keep: 'freezer' },
  'damson jam with prices': { ...damson, prices: { fruitPerKg: 2, sugarPerKg: 1.2, energyPerKWh: 0.3 } },
  'damson jam with water measured': { ...damson, measured: { waterBoilsC: 98.5 } },
  'damson jam with powdered pectin': { ...damson, pectin: 'powdered' },
  'so many damsons that they need pots': { ...damson, fruitMassKg: 14, ...kitchen },
  'pear butter': { ...damson, ...kitchen, fruit: 'pear', product: 'butter' },
  'pumpkin butter, refused the shelf': { ...damson, fruit: 'pumpkin', product: 'butter' },
  'crab apple jelly': { ...damson, fruit: 'crab-apple', product: 'jelly' },
  'jelly from weighed juice': { ...damson, fruit: 'crab-apple', product: 'jelly', juiceMassKg: 1.1 },
  'orange marmalade': { ...damson, fruit: 'orange', product: 'marmalade' },
  ...Object.fromEntries(examples.map(({ name, draft }) => [`the example ${name}`, toRequest(draft)!])),
};

/** Each figure's markup as the page draws it. */
const figuresIn = (html: string) =>
  [
    ...html.matchAll(
      /<(details|div) class="figure">(.*?)<\/\1>(?=<(?:details|div) class="figure">|<\/section>)/gs,
    ),
  ].map(([, tag, inside]) => ({ tag, inside: inside ?? '' }));

describe.each(Object.entries(plans))('the page of %s', (_, asked) => {
  const plan = planOf(asked);
  const html = renderToStaticMarkup(<PlanSheet plan={plan} units="us" catalogue={catalogue} />);
  const groups = figureGroups(plan, 'us', catalogue).flatMap((group) => group.figures);

  test('draws every figure with its opener, its how and its source', () => {
    const drawn = figuresIn(html);
    expect(drawn).toHaveLength(groups.length);
    for (const { label, value } of groups) expect(value, label).not.toBe('');
    for (const { tag, inside } of drawn) {
      expect(tag, inside).toBe('details');
      // What the line says already is not said again under it.
      expect(inside).toMatch(
        /<div class="why">(<p>[^<]{5,}<\/p>)?<p><b>How<\/b> [^<]{5,}<\/p><p><b>Source<\/b> [^<]{5,}<\/p>/,
      );
      const [, says] = /<div class="why"><p>([^<]*)<\/p>/.exec(inside) ?? [];
      const line = inside.slice(0, inside.indexOf('</summary>'));
      if (says === undefined) expect(line).toMatch(/\.(?: |<)/);
      else expect(line).not.toContain(says);
    }
  });

  test('opens the verdict to its reason, and its minutes to the published row', () => {
    const box = /<div class="verdict .*?<div class="pictures">/s.exec(html)?.[0] ?? '';
    const lines = [...box.matchAll(/<details class="verdict-line">.*?<\/details>/gs)].map(([line]) => line);
    expect(lines).toHaveLength(plan.process ? 2 : 1);
    if (plan.process) expect(lines[0]).toContain(plan.process.source);
    for (const line of lines) expect(line).toMatch(/<b>How<\/b> [^<]{5,}<\/p><p><b>Source<\/b> [^<]{5,}/);
    // No number in the box stands outside an opener, but for the remedy, which is part of the reason above it.
    expect(
      box
        .replace(/<details.*?<\/details>/gs, '')
        .replace(/<b>What would help.*?<\/p>/s, '')
        .replace(/<svg.*?<\/svg>/gs, '')
        .replace(/<[^>]*>/g, ''),
    ).not.toMatch(/\d/);
  });

  test('leaves no gap in any reason', () => {
    for (const { label, why } of groups)
      expect(Object.values(why ?? {}).join(' '), label).not.toMatch(/undefined|NaN|Infinity|null|\{|\}/);
  });
});

describe('the bounds beside the fields', () => {
  const drawn = (draft: Draft) =>
    renderToStaticMarkup(
      <Inputs
        draft={draft}
        outcome={outcomeOf(draft)}
        onChange={() => undefined}
        settings={settings}
        catalogue={catalogue}
      />,
    );

  test.each(examples)('of $name open to the recipe they come from', ({ draft }) => {
    const bounds = [...drawn(draft).matchAll(/<details class="bounds">.*?<\/details>/gs)].map(([one]) => one);
    expect(bounds).toHaveLength(draft.product === 'butter' ? 2 : 1);
    expect(bounds[0]).toContain('parts of sugar');
    for (const one of bounds) expect(one).toMatch(/<b>Source<\/b> [^<]{5,}/);
  });
});

describe('what else the cook knows', () => {
  const known = fromRequest(
    batchRequestSchema.parse({
      ...damson,
      ...kitchen,
      keep: 'shelf',
      pot: { diameterM: 0.28, emptyMassKg: 1.5 },
      alsoJars: ['pint'],
      liquid: { massKg: 3.25, solubleSolidsPct: 11.5 },
      jarsPerLoad: 5,
      measured: { fruitSolubleSolidsPct: 15.5, preparedMassKg: 2.2, waterBoilsC: 98.5, fruitPH: 3.3 },
      prices: { fruitPerKg: 2, lidEach: 0.25 },
    }),
  );
  const valuesIn = (units: 'us' | 'metric') =>
    [
      ...renderToStaticMarkup(
        <Inputs
          draft={known}
          outcome={outcomeOf(known)}
          onChange={() => undefined}
          settings={{ ...settings, units }}
          catalogue={catalogue}
        />,
      ).matchAll(/value="([^"]*)"/g),
    ].map(([, value]) => value);

  test('stands in its fields, in the units of the cook', () => {
    expect(valuesIn('metric')).toEqual(
      expect.arrayContaining(['15.5', '98.5', '3.3', '2', '0.25', '200', '500', '3', '250', '11.5', '5']),
    );
    // 98.5 C is 209.3 F; 2 a kilogram is 0.9072 a pound.
    expect(valuesIn('us')).toEqual(expect.arrayContaining(['15.5', '209.3', '3.3', '0.9072', '0.25']));
  });

  test('gives the plan its cost, its weight with the pot and its mixed jars', () => {
    const figures = figureGroups(planOf(toRequest(known)!), 'metric', catalogue).flatMap(
      ({ figures }) => figures,
    );
    const labels = figures.map(({ label }) => label);
    expect(labels).toEqual(
      expect.arrayContaining(['Cost', 'On the scale with the pot', 'In the jars you have', 'Estimated pH']),
    );
    expect(figures.every(({ why }) => why !== undefined)).toBe(true);
    expect(figures).toContainEqual(expect.objectContaining({ label: 'Your liquid', value: '3.25 kg' }));
    expect(figures.find(({ label }) => label === 'Canner')?.value).toContain('loads of up to 5');
  });
});

describe('the reason of', () => {
  const reasonOf = (asked: object, label: string) =>
    figureGroups(planOf(asked), 'us', catalogue)
      .flatMap((group) => group.figures)
      .find((figure) => figure.label === label)?.why;

  test('everything together adds up to what is in the pot', () => {
    const { sugarMassKg, acid, startMassKg } = planOf(damson);
    const figures = figureGroups(planOf(damson), 'metric', catalogue).flatMap((group) => group.figures);
    const how = figures.find((figure) => figure.label === 'Everything together')?.why?.how ?? '';
    const kilograms = [...how.matchAll(/([\d.]+) (kg|g)\b/g)].map(
      ([, n, unit]) => Number(n) / (unit === 'g' ? 1000 : 1),
    );
    expect(kilograms).toHaveLength(acid ? 3 : 2);
    expect(kilograms[0]).toBeCloseTo(sugarMassKg, 2);
    if (acid) expect(kilograms[1]).toBeCloseTo(acid.massKg, 2);
    expect(Math.abs(kilograms.reduce((sum, n) => sum + n, 0) - startMassKg)).toBeLessThan(0.02);
  });

  test('the boiling point of water is the altitude, or the cook’s own thermometer', () => {
    expect(reasonOf(damson, 'Plain water boils at')?.source).toContain('U.S. Standard Atmosphere 1976');
    expect(reasonOf({ ...damson, measured: { waterBoilsC: 98.5 } }, 'Plain water boils at')).toMatchObject({
      source: 'what you entered',
      how: 'Read on your thermometer in boiling water',
    });
  });

  // USDA AIB-539 guide 1: empty jars 10 min, one more for each 1,000 ft.
  test('boiling empty jars names the published rule', () => {
    const low = { ...damson, elevationM: 200 };
    expect(planOf(low).process?.presteriliseJars).toBe(true);
    expect(reasonOf(low, 'Boil the empty jars first')).toMatchObject({
      how: '10 minutes, and one more for each full 1000 ft; you are at 656 ft',
      source: sterilising.source,
    });
  });

  test('the headspace for the freezer says that this is not enough', () => {
    expect(reasonOf({ ...damson, keep: 'freezer' }, 'Headspace')).toMatchObject({
      says: expect.stringContaining('leave more'),
      how: expect.stringContaining('1 1/2 in'),
    });
    expect(reasonOf(damson, 'Headspace')?.source).toContain('AIB-539');
  });

  test('no process is why the jar must not stand on a shelf', () => {
    const pumpkin = { ...damson, fruit: 'pumpkin', product: 'butter' };
    expect(reasonOf(pumpkin, 'Process')?.says).toBe(planOf(pumpkin).shelf.reasons.join(' '));
  });
});
