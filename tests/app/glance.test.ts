// The primary zone: three things, few words, and never a wrong order.

import { describe, expect, test } from 'vitest';
import { fitsGlance, glance, subjectOf } from '../../src/app/stove/glance.ts';
import { sceneOf } from '../../src/app/stove/scene.ts';
import { widthEm } from '../../src/app/stove/widths.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { screenWords } from '../../src/words/en.screens.ts';
import { mainOfBatch } from '../../machines/batch/choices.ts';
import { mainOfCanner } from '../../machines/canner/choices.ts';
import { catalogue, empty, many, several, states } from './fixtures.ts';

const seen = (name: string) => {
  const view = states[name];
  if (!view) throw new Error(`No state ${name}`);
  const subject = subjectOf(view);
  if (!subject) throw new Error(`Nothing in view in ${name}`);
  return { view, subject, ...glance(view, subject, catalogue) };
};
const words = (text: string) => text.split(/\s+/).filter(Boolean).length;

describe('in every state', () => {
  test.each(Object.keys(states))('%s: at most twelve words, the action in the big type', (name) => {
    const { which, state, face, act } = seen(name);
    const label = face ? catalogue.text(face.label) : '';
    const all = [which, state, face?.numerals ?? '', face?.unit ?? '', label, act].join(' ');
    expect(words(all)).toBeLessThanOrEqual(12);
    expect(act).not.toBe('');
    expect(fitsGlance(act)).toBe(true);
  });
});

describe('every big word', () => {
  const big = Object.keys(screenWords).filter((key) => /^screen\.(act|ask|warn)\./.test(key));
  const spanish = createCatalogue('es', 'metric');
  test.each(big)('%s fits a phone, in either language', (key) => {
    for (const tongue of [catalogue, spanish]) expect(fitsGlance(tongue.text({ key }))).toBe(true);
  });

  test('a warning leaves room for the box around it', () => {
    const warnings = big.filter((key) => key.startsWith('screen.warn.'));
    for (const tongue of [catalogue, spanish])
      for (const key of warnings) expect(widthEm(tongue.text({ key }))).toBeLessThanOrEqual(4.13);
  });

  test('there is one for every state that the machines can be in', () => {
    const needed = [
      ...Object.keys(mainOfBatch).map((state) => `screen.act.batch.${state}`),
      ...Object.keys(mainOfCanner).map((state) => `screen.act.canner.${state}`),
    ];
    expect(needed.filter((key) => !(key in screenWords))).toEqual([]);
  });
});

describe('the action', () => {
  test('of a canner at a full boil is to keep it, not to reach it', () => {
    expect(seen('processing').act).toBe('Keep it boiling');
    expect(seen('cannerLoaded').act).toBe('To full boil');
  });

  test('after a lost boil is to boil it again', () => {
    expect(seen('boilLost')).toMatchObject({ act: 'Boil it again', tone: 'warn' });
  });

  test('gives way to the question that waits', () => {
    expect(seen('askedStillBoiling')).toMatchObject({ act: 'Still full boil?', tone: 'ask' });
  });

  test('stays when the question is about another pot', () => {
    const view = { ...several, question: { message: { key: 'canner.askIfHot' }, urgency: 'step' as const } };
    const subject = subjectOf(view);
    expect(subject && glance(view, subject, catalogue).act).toBe('Let it simmer');
    const named = {
      ...several,
      question: { message: { key: 'batch.askIfThick' }, urgency: 'step' as const, about: 'pear' },
    };
    expect(subject && glance(named, subject, catalogue).act).toBe('Let it simmer');
  });
});

describe('what is in view', () => {
  test('is nothing in an empty kitchen', () => {
    expect(subjectOf(empty)).toBeNull();
  });

  test('is the focus of the kitchen', () => {
    expect(subjectOf({ ...many, focus: 'quince' })).toMatchObject({ kind: 'batch', batch: { id: 'quince' } });
  });

  test('is the fruit, where the canner in focus holds one fruit only', () => {
    const view = states['processing'];
    expect(view && subjectOf({ ...view, focus: 'canner' })).toMatchObject({
      kind: 'batch',
      batch: { id: 'damson' },
    });
  });

  test.each([
    ['settingUp', 'bench'],
    ['simmering', 'pot'],
    ['held', 'pot'],
    ['plateSpooning', 'plate'],
    ['plateCooling', 'plate'],
    ['plateJudging', 'plate'],
    ['readyingJars', 'bench'],
    ['waitingForCanner', 'jars'],
    ['filling', 'fill'],
    ['processing', 'canner'],
    ['boilLost', 'canner'],
    ['resting', 'jars'],
    ['putAway', 'jars'],
  ])('%s is drawn as %s', (name, kind) => {
    const { subject, view } = seen(name);
    expect(sceneOf(subject, view.batches).kind).toBe(kind);
  });
});

test('an unmeasured letter counts as the widest, so that no word is cut', () => {
  expect(widthEm('ø')).toBeGreaterThan(widthEm('e'));
  expect(widthEm('é')).toBe(widthEm('e'));
});
