// Each jar has its own small life: what "one did not seal" means at hour 8, at hour 20 and at hour 24, and what
// becomes of jars that are kept.

import { describe, expect, test } from 'vitest';
import { jarsMovedBy } from '../../machines/jar/rules.ts';
import type { BatchEvent } from '../../machines/kitchen/events.ts';
import { evening, planOf } from './evening.ts';

const resting = (hours: number) =>
  evening()
    .toResting()
    .wait(hours * 60, 30);
const oneFailed = (hours: number) => resting(hours).listen().tell('seals.failed', { count: 1 });
const count = (jars: string[], state: string) => jars.filter((one) => one === state).length;

describe('"one did not seal"', () => {
  // USDA AIB-539, guide 1: seals are judged after 12 to 24 hours; unsealed jars are processed again within 24.
  test('at hour 8 is too soon to say: the jar goes on resting, and the cook hears when to look again', () => {
    const it = oneFailed(8);
    expect(it.state()).toBe('resting');
    expect(count(it.jars(), 'processed')).toBe(6);
    expect(it.said()).toMatchObject([{ key: 'batch.tooEarlyToJudge', params: { hours: 4 } }]);
  });

  test('at hour 13 all are to be looked at: the others have not been judged yet', () => {
    const it = oneFailed(13);
    expect(it.state()).toBe('checkingSeals');
    expect(it.heard('batch.checkSeals')).toBe(1);
  });

  test('at hour 24 that jar alone is unsealed: the fridge now, or processed again', () => {
    const it = oneFailed(24);
    expect(it.state()).toBe('puttingAway');
    expect([count(it.jars(), 'unsealed'), count(it.jars(), 'sealed')]).toEqual([1, 5]);
    const chilled = oneFailed(24).tell('jars.putAway');
    expect([count(chilled.jars(), 'onShelf'), count(chilled.jars(), 'inFridge')]).toEqual([5, 2]);
    expect(it.tell('jars.emptied').state()).toBe('reheating');
    expect(count(it.jars(), 'onShelf')).toBe(5);
  });

  test('after hour 24 it can only go to the fridge', () => {
    const it = oneFailed(25).tell('jars.emptied');
    expect(it.state()).toBe('puttingAway');
    expect(count(it.tell('jars.putAway').jars(), 'inFridge')).toBe(2);
  });

  const shelved = (hours: number) =>
    resting(13)
      .tell('seals.allHeld')
      .tell('jars.putAway')
      .wait((hours - 13) * 60, 30)
      .listen()
      .tell('seals.failed', { count: 1 });

  test('of a jar on the shelf, within a day of the canner, takes it off again', () => {
    const it = shelved(20);
    expect(it.state()).toBe('puttingAway');
    expect([count(it.jars(), 'unsealed'), count(it.jars(), 'onShelf')]).toEqual([1, 5]);
    expect(shelved(20).tell('jars.emptied').state()).toBe('reheating');
  });

  test('later than that it is not tasted', () => {
    const it = shelved(25);
    expect(it.heard('batch.discard')).toBe(1);
    expect([count(it.jars(), 'discarded'), count(it.jars(), 'onShelf')]).toEqual([1, 5]);
  });
});

describe('what becomes of jars that are kept', () => {
  const kept = () => resting(13).tell('seals.allHeld').tell('jars.putAway').listen();

  test.each([
    ['jars.eaten', 'eaten'],
    ['jars.givenAway', 'givenAway'],
    ['jars.discarded', 'discarded'],
    ['jars.intoFridge', 'inFridge'],
    ['jars.intoFreezer', 'inFreezer'],
  ] as const)('%s: the one that the cook picks, and no other', (type, state) => {
    const it = kept();
    const before = it.context().jars;
    const [, second] = before;
    it.tell(type, { count: 1, jar: second?.id });
    expect(it.context().jars[1]?.state).toBe(state);
    expect(it.context().jars.filter((_, i) => i !== 1)).toEqual(before.filter((_, i) => i !== 1));
    expect(it.heard('batch.jarsMoved')).toBe(1);
    expect(it.state()).toBe('putAway');
  });

  test('without a pick the jar that keeps least is eaten first, a good one is given away', () => {
    const it = kept(); // six on the shelf, the spare one in the fridge
    it.tell('jars.eaten', { count: 1 }).tell('jars.givenAway', { count: 2 });
    expect([count(it.jars(), 'onShelf'), count(it.jars(), 'inFridge')]).toEqual([4, 0]);
    expect(it.said()[0]).toMatchObject({ params: { jars: 1, what: 'eaten', left: 6 } });
  });

  test('more than there are, or a jar that is gone, changes nothing', () => {
    const it = kept().tell('jars.eaten', { count: 8 });
    expect(count(it.jars(), 'eaten')).toBe(0);
    const [first] = it.context().jars;
    it.tell('jars.eaten', { count: 1, jar: first?.id }).tell('jars.givenAway', { count: 1, jar: first?.id });
    expect([count(it.jars(), 'eaten'), count(it.jars(), 'givenAway')]).toEqual([1, 0]);
  });

  test('the short jar in the fridge can be eaten while the others rest', () => {
    const it = resting(2).tell('jars.eaten', { count: 1 });
    expect(it.state()).toBe('resting');
    expect(count(it.jars(), 'processed')).toBe(6);
  });

  test('nothing goes back to the shelf, and nothing resting is moved', () => {
    const it = resting(2);
    const move = (type: string) =>
      jarsMovedBy(it.context().jars, { type, count: 9, at: it.now } as BatchEvent);
    expect(move('jars.intoFreezer')?.map(({ state }) => state)).toEqual(['inFridge']);
    expect(move('jars.discarded')?.map(({ state }) => state)).toEqual(['inFridge']);
    const gone = kept().tell('jars.intoFridge', { count: 6 });
    expect(count(gone.tell('seals.allHeld').tell('jars.putAway').jars(), 'onShelf')).toBe(0);
  });

  test('a freezer batch thaws in the fridge, jar by jar', () => {
    const it = evening(planOf({ keep: 'freezer' }))
      .toFilled(3)
      .tell('jars.putAway');
    it.tell('jars.intoFridge', { count: 1 }).tell('jars.eaten', { count: 1 });
    expect(it.jars()).toEqual(['eaten', 'inFreezer', 'inFreezer', 'inFreezer']);
  });
});
