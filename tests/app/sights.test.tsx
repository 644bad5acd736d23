// Every picture is drawn, has words that teach the same, is shown at its step, and moves only where motion is wanted.

import { readFileSync } from 'node:fs';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { mainOfBatch } from '../../machines/batch/choices.ts';
import { mainOfCanner } from '../../machines/canner/choices.ts';
import { SeeIt } from '../../src/app/sheets/SeeIt.tsx';
import { Sight } from '../../src/app/drawings/sights/Sight.tsx';
import { sightOnStage, type Scene } from '../../src/app/stove/scene.ts';
import type { BatchFace } from '../../src/kitchen/face.ts';
import { sights, sightsOf } from '../../src/kitchen/sights.ts';
import { sentencesIn, wordsIn } from '../words/grade.ts';
import { catalogue, states } from './fixtures.ts';

const draw = (sight: (typeof sights)[number]) =>
  renderToStaticMarkup(<Sight sight={sight} catalogue={catalogue} />);
const word = (key: string) => catalogue.text({ key });

test('there are at least twenty-four, and no two are alike', () => {
  expect(sights.length).toBeGreaterThanOrEqual(24);
  const shapes = sights.map((sight) => draw(sight).replace(/aria-label="[^"]*"|<figcaption>.*/g, ''));
  expect(new Set(shapes).size).toBe(sights.length);
});

describe.each(sights)('%s', (sight) => {
  test('is a picture with a name and words that stand for it', () => {
    const html = draw(sight);
    expect(html).toContain('role="img"');
    expect((html.match(/<(path|circle|ellipse|rect)/g) ?? []).length).toBeGreaterThanOrEqual(5);
    expect(html).not.toMatch(/NaN|undefined/);
    expect(html).toContain(word(`see.${sight}`));
  });

  test('teaches by its words alone: what is seen, and what it means', () => {
    const alt = word(`see.${sight}.alt`);
    expect(sentencesIn(alt)).toBeGreaterThanOrEqual(2);
    expect(wordsIn(alt)).toBeGreaterThanOrEqual(20);
    expect(wordsIn(word(`see.${sight}.said`))).toBeLessThanOrEqual(16);
  });
});

test('every state of the work that the cook takes part in has a picture, and every picture a state', () => {
  const faces = ['boilingHard', 'softening', 'melting'] satisfies BatchFace[];
  const batch = [...Object.keys(mainOfBatch), ...faces].map((state) => sightsOf('batch', state));
  const canner = Object.keys(mainOfCanner).map((state) => sightsOf('canner', state));
  for (const shown of [...batch, ...canner]) expect(shown.length).toBeGreaterThan(0);
  expect(sights.filter((sight) => ![...batch, ...canner].flat().includes(sight))).toEqual([]);
  expect(sightsOf('batch', 'no such state')).toEqual([]);
});

describe('on the stage', () => {
  const pot = { kind: 'pot' } as Scene;
  const plate = { kind: 'plate' } as Scene;
  const byItself = { sight: 'simmer', asked: false, fresh: false } as const;

  test('a picture that was asked for stands in the place of the vessel', () => {
    expect(sightOnStage({ ...byItself, asked: true }, pot)).toBe('simmer');
  });

  test('one that shows itself gives way to a pot that shows how things are, but not to a mere plate', () => {
    expect(sightOnStage({ ...byItself, fresh: true }, pot)).toBe('simmer');
    expect(sightOnStage(byItself, pot)).toBeNull();
    expect(sightOnStage(byItself, plate)).toBe('simmer');
    expect(sightOnStage(null, plate)).toBeNull();
  });
});

test('under “More” stand the reason, who says so, and the pictures of the step', () => {
  const filling = states['filling']?.batches[0];
  if (!filling) throw new Error('no batch is filling');
  const html = renderToStaticMarkup(
    <SeeIt
      subject={{ kind: 'batch', batch: filling, canner: null, loads: [] }}
      first={null}
      catalogue={catalogue}
    />,
  );
  expect(html).toContain(word('why.batch.filling'));
  expect(html).toContain('AIB-539');
  expect(html).toContain(word('see.headspace.alt'));
});

test('nothing moves where the system asks for no motion', () => {
  const css = readFileSync('src/app/styles/sights.css', 'utf8');
  const [still = ''] = css.split('@media (prefers-reduced-motion: no-preference)');
  expect(still).not.toMatch(/animation:/);
  expect(css).toMatch(/animation: (waft|heave)/);
});
