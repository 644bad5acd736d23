// What was learnt: a batch whose spoonful held has taught this pot on this burner, and the next plan is nearer
// and narrower. What is told in the log, and corrected there, is all there is to it.

import { describe, expect, test } from 'vitest';
import { massNow } from '../../src/core/index.ts';
import type { BatchPlan } from '../../src/core/types.ts';
import { foldLog } from '../../src/kitchen/fold.ts';
import { learnedFrom, stoveOf, withLearned } from '../../src/kitchen/learning.ts';
import { outcomeOf } from '../../src/app/plan/outcome.ts';
import { examples } from '../../src/app/plan/draft.ts';
import { planOf } from '../machines/evening.ts';
import { logbook, type Logbook } from './logbook.ts';

const stove = stoveOf(planOf().request) ?? '';
const relativeWidth = ({ simmerMinutes: { low, likely, high } }: BatchPlan) => (high - low) / likely;

/** An evening at a stove that takes more water than was thought: each weight is below what was expected. */
function weighed(): Logbook {
  const it = logbook();
  it.tell('setup.ready').tell('mash.done').wait(12).tell('pot.rollingBoil');
  for (let reading = 0; reading < 2; reading++) {
    it.wait(7);
    const estimate = it.log.kitchen.batches['plum']?.context.estimate;
    if (!estimate) throw new Error('nothing simmers');
    it.tell('reading.taken', 'plum', { massKg: massNow(estimate, it.now).likely * 0.96 });
  }
  it.tell('pot.thick').tell('skim.done');
  if (it.state() === 'straining') it.tell('strain.done');
  if (it.state() === 'blending') it.tell('blend.done');
  return it.tell('plate.spooned').wait(2);
}

describe('what a batch teaches', () => {
  test('is known once the spoonful held, and not before', () => {
    const it = weighed();
    expect(learnedFrom(it.log.kitchen)).toEqual({});
    const learned = learnedFrom(it.tell('plate.held').log.kitchen);
    expect(Object.keys(learned)).toEqual([stove]);
    expect(learned[stove]?.batches).toBe(1);
    expect(learned[stove]?.logHeat.mean).toBeGreaterThan(0); // the water left faster than was thought
  });

  test('makes the next plan in this pot on this burner narrower, and moves it the right way', () => {
    const learned = learnedFrom(weighed().tell('plate.held').log.kitchen);
    const next = planOf(withLearned(planOf().request, learned));
    expect(relativeWidth(next)).toBeLessThan(0.85 * relativeWidth(planOf()));
    expect(next.simmerMinutes.likely).toBeLessThan(planOf().simmerMinutes.likely);
    expect(next.why.simmerMinutes?.how).toContain('put right by one batch on this stove');
  });

  test('says nothing of another pot, another burner, or one that the cook did not name', () => {
    const learned = learnedFrom(weighed().tell('plate.held').log.kitchen);
    for (const change of [{ pot: { diameterM: 0.24 } }, { burner: { powerW: 3000 } }, { pot: undefined }]) {
      const { request } = planOf(change);
      expect(withLearned(request, learned)).toBe(request);
    }
  });

  test('goes on from batch to batch', () => {
    const it = weighed().tell('plate.held');
    const second = planOf(withLearned(planOf().request, learnedFrom(it.log.kitchen)));
    it.enter({ type: 'batch.planned', at: it.now, batch: 'pear', name: 'pear', plan: second });
    it.toPlate('pear').tell('plate.held', 'pear');
    expect(learnedFrom(it.log.kitchen)[stove]?.batches).toBe(2);
  });

  test('is corrected with the log, and comes back from it', () => {
    const it = weighed().tell('plate.held');
    const entries = JSON.parse(JSON.stringify(it.entries)) as typeof it.entries;
    expect(learnedFrom(foldLog(entries).kitchen)).toEqual(learnedFrom(it.log.kitchen));
    it.enter({ type: 'log.corrected', at: it.now, seq: it.entries.length, how: { kind: 'never' } });
    expect(learnedFrom(it.log.kitchen)).toEqual({});
  });
});

describe('the planning page', () => {
  const draft = { ...examples[0]!.draft, product: 'butter' as const, potDiameterM: 0.28, burnerW: 2000 };

  test('shows the narrower range, and shares the request without what this stove taught', () => {
    const learned = learnedFrom(weighed().tell('plate.held').log.kitchen);
    const [before, after] = [outcomeOf(draft), outcomeOf(draft, learned)];
    if (before.kind !== 'plan' || after.kind !== 'plan') throw new Error('no plan');
    expect(relativeWidth(after.plan)).toBeLessThan(relativeWidth(before.plan));
    expect(after.request).toEqual(before.request);
    expect(after.plan.request.learned).toEqual(learned[stove]);
  });
});
