// Corrections with the time at which it really happened: the past is read anew, nothing is erased, and
// a clock that does not count after all says so, whether it runs, has run out, or the jars rest already.

import { describe, expect, test } from 'vitest';
import type { CorrectionCommand, Slots } from '../../machines/dialogue/commands.ts';
import { MAIN_CANNER } from '../../machines/kitchen/kitchen.ts';
import { backdated, correctable, putRight } from '../../src/kitchen/corrections.ts';
import { lastTold } from '../../src/kitchen/fold.ts';
import { wordsForRewrite } from '../../src/kitchen/moves.ts';
import { logbook, MIN, START, type Logbook } from './logbook.ts';

/** The cook puts something right; the keys of what is said are given back. */
function correct(it: Logbook, command: CorrectionCommand, about: string, slots: Slots = {}): string[] {
  const right = putRight(it.log, command, about, slots, it.now);
  if (right.kind === 'refused') return [right.message.key];
  it.enter(right.event);
  return wordsForRewrite(it.before, it.log.kitchen, right.event, () => 'so')
    .filter((effect) => effect.type === 'say')
    .map((effect) => `${effect.urgency}: ${effect.message.key}`);
}

const dropped = (it: Logbook, agoMinutes: number) =>
  correct(it, 'boil.droppedEarlier', MAIN_CANNER, { agoMinutes });
const tooEarly = (it: Logbook) => correct(it, 'boil.saidTooEarly', MAIN_CANNER);

describe('the boil dropped a while ago', () => {
  test('a running clock is void from then, and says so', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(3);
    expect(dropped(it, 2)).toEqual(['danger: kitchen.clockVoid']);
    expect(it.cannerState()).toBe('boilLost');
    expect(it.log.kitchen.canners[MAIN_CANNER]?.context.voids).toEqual([
      { from: it.now - 3 * MIN, to: it.now - 2 * MIN },
    ]);
  });

  test('"it holds", said after it had dropped, does not bring the clock back', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(3).canner('canner.boilHolds').wait(1);
    dropped(it, 2);
    expect(it.cannerState()).toBe('boilLost');
  });

  test('a clock that has run out is opened again while the jars stand in the canner', () => {
    const it = logbook().toLoaded().serve().wait(1);
    expect(it.cannerState()).toBe('standing');
    expect(dropped(it, 3)).toEqual(['danger: kitchen.clockReopened']);
    expect(it.cannerState()).toBe('boilLost');
    expect(it.state()).toBe('processing');
  });

  test('jars that rest already are not safe for the shelf', () => {
    const it = logbook().toLoaded().serve().wait(5).canner('jars.out').wait(10);
    expect(it.state()).toBe('resting');
    expect(dropped(it, 17)).toEqual(['danger: kitchen.notServed']);
    expect(it.state()).toBe('unprocessed');
    expect(it.jars()).not.toContain('processed');
    it.tell('jars.toFridge').tell('jars.putAway');
    expect(it.jars()).not.toContain('onShelf');
  });

  test('what was already in the log stays in it', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(3);
    const before = [...it.entries];
    dropped(it, 2);
    tooEarly(it);
    expect(it.entries.slice(0, before.length)).toEqual(before);
    expect(it.entries.slice(before.length).map(({ event }) => event.type)).toEqual([
      'canner.boilDropped',
      'log.corrected',
    ]);
  });

  test('a time that does not fit is refused with a sentence, and changes nothing', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(3);
    const entries = it.entries.length;
    expect(dropped(it, 4)).toEqual(['kitchen.notThen']); // there was no full boil yet
    expect(dropped(it, 61)).toEqual(['kitchen.tooLongAgo']);
    expect(correct(it, 'boil.droppedEarlier', MAIN_CANNER)).toEqual(['dialogue.count.boil.droppedEarlier']);
    expect(it.entries).toHaveLength(entries);
    expect(it.cannerState()).toBe('fullBoil');
  });

  test('nothing happened before the batch or the canner was there', () => {
    const it = logbook().wait(5);
    const of = (event: object) => backdated(it.log, { ...event, at: START - MIN } as never, it.now);
    expect(of({ type: 'setup.ready', batch: 'plum' })).toMatchObject({
      message: { key: 'kitchen.beforeItBegan' },
    });
    expect(of({ type: 'canner.filled', canner: MAIN_CANNER })).toMatchObject({
      message: { key: 'kitchen.beforeItBegan' },
    });
    expect(of({ type: 'setup.ready', batch: 'quince' })).toMatchObject({
      message: { key: 'kitchen.beforeItBegan' },
    });
  });
});

describe('the full boil was said too early', () => {
  test('the clock never started', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(3);
    expect(tooEarly(it)).toEqual(['danger: kitchen.clockVoid']);
    expect(it.cannerState()).toBe('comingToFullBoil');
    expect(it.canner('canner.fullBoil').cannerState()).toBe('fullBoil');
  });

  test('a clock that has run out is opened again', () => {
    const it = logbook().toLoaded().serve();
    expect(tooEarly(it)).toEqual(['danger: kitchen.clockReopened']);
    expect(it.cannerState()).toBe('comingToFullBoil');
  });

  test('jars that rest already are not safe for the shelf', () => {
    const it = logbook().toLoaded().serve().wait(5).canner('jars.out');
    expect(tooEarly(it)).toEqual(['danger: kitchen.notServed']);
    expect(it.state()).toBe('unprocessed');
  });

  test('of two full boils only the last is taken back', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(2).canner('canner.boilDropped').wait(3);
    it.canner('canner.fullBoil').wait(1);
    expect(tooEarly(it)).toEqual(['danger: kitchen.clockVoid']);
    expect(it.cannerState()).toBe('boilLost');
  });
});

describe('the jars were not out', () => {
  const notOut = (it: Logbook) => {
    it.enter({ type: 'log.corrected', at: it.now, seq: it.entries.length, how: { kind: 'never' } });
    return wordsForRewrite(it.before, it.log.kitchen, it.entries.at(-1)!.event, () => 'so').map((effect) =>
      effect.type === 'say' ? `${effect.urgency}: ${effect.message.key}` : effect.type,
    );
  };

  test('takes nothing from a clock that never ran, nor from one that was served', () => {
    const early = logbook().toLoaded().canner('jars.out');
    expect(notOut(early)).toEqual(['step: kitchen.takenBack', 'step: kitchen.takenBack']);
    const served = logbook().toLoaded().serve().wait(5).canner('jars.out');
    expect(notOut(served)).toEqual(['step: kitchen.takenBack', 'step: kitchen.takenBack']);
    expect(served.cannerState()).toBe('ready');
  });
});

describe('it was the other batch', () => {
  const two = () => logbook(['plum', 'pear']);

  test('the step goes over to it', () => {
    const it = two().tell('setup.ready', 'plum');
    expect(correct(it, 'batch.mixedUp', 'pear', { insteadOf: 'plum' })).toEqual([
      'step: kitchen.putRight',
      'step: kitchen.putRight',
    ]);
    expect([it.state('plum'), it.state('pear')]).toEqual(['settingUp', 'mashing']);
  });

  test('without a name it is the last thing told of another batch', () => {
    const it = two().tell('setup.ready', 'plum');
    correct(it, 'batch.mixedUp', 'pear');
    expect([it.state('plum'), it.state('pear')]).toEqual(['settingUp', 'mashing']);
  });

  test('what the other batch could not have done is refused', () => {
    const it = two().tell('setup.ready', 'plum').tell('mash.done', 'plum');
    expect(correct(it, 'batch.mixedUp', 'pear', { insteadOf: 'plum' })).toEqual(['kitchen.notThen']);
    expect(it.state('plum')).toBe('comingToBoil');
  });

  test('"go back" takes the correction back, and only then the step', () => {
    const it = two().tell('setup.ready', 'plum');
    correct(it, 'batch.mixedUp', 'pear');
    const back = () => {
      const entry = lastTold(it.entries);
      if (entry) it.enter({ type: 'log.corrected', at: it.now, seq: entry.seq, how: { kind: 'never' } });
      return [it.state('plum'), it.state('pear')];
    };
    expect(back()).toEqual(['mashing', 'settingUp']);
    expect(back()).toEqual(['settingUp', 'settingUp']);
    expect(lastTold(it.entries)).toBeNull();
  });
});

describe('what can be put right', () => {
  const commands = (it: Logbook) =>
    correctable(it.log, it.now)
      .filter(({ command }) => !command.endsWith('.when'))
      .map(({ command, about }) => [command, about]);

  test('nothing, at first', () => expect(commands(logbook())).toEqual([]));

  test('the boil, once it was said, until the next load', () => {
    const it = logbook().toLoaded();
    expect(commands(it)).toEqual([]);
    const boil = [
      ['boil.droppedEarlier', MAIN_CANNER],
      ['boil.saidTooEarly', MAIN_CANNER],
    ];
    expect(commands(it.canner('canner.fullBoil'))).toEqual(boil);
    expect(commands(it.serve().wait(5).canner('jars.out'))).toEqual(boil);
    expect(commands(it.wait(62))).toEqual([]);
  });

  test('the batch, where there is another one', () => {
    const it = logbook(['plum', 'pear']);
    expect(commands(it)).toEqual([]);
    expect(commands(it.tell('setup.ready', 'plum'))).toEqual([['batch.mixedUp', 'pear']]);
  });

  test('not a batch that would not have taken it: it would be refused', () => {
    const it = logbook(['plum', 'pear', 'fig']).tell('setup.ready', 'pear').tell('setup.ready', 'plum');
    expect(commands(it)).toEqual([['batch.mixedUp', 'fig']]);
    expect(commands(it.wait(1).tell('mash.done', 'plum'))).toEqual([['batch.mixedUp', 'pear']]);
    expect(correct(it, 'batch.mixedUp', 'fig', { insteadOf: 'plum' })).toEqual(['kitchen.notThen']);
  });
});

describe('it really happened at another time', () => {
  const last = (it: Logbook, about: string, slots: Slots) => correct(it, 'last.when', about, slots);
  const told = (it: Logbook, about: string, slots: Slots) => correct(it, 'told.when', about, slots);
  const canner = (it: Logbook) => it.log.kitchen.canners[MAIN_CANNER]?.context;
  /** Minutes past twelve on the cook's own clock. */
  const clockAt = (at: number) => (new Date(at).getHours() * 60 + new Date(at).getMinutes()) % 720;

  test('the last thing told moves to when it was, and what hangs on it moves along', () => {
    const it = logbook().tell('setup.ready').wait(20).tell('mash.done').wait(1);
    expect(last(it, 'plum', { agoMinutes: 10 })).toEqual(['step: dialogue.noted']);
    expect(it.log.kitchen.batches['plum']?.context.heatOnAt).toBe(it.now - 10 * MIN);
  });

  test('"the heat went on at four": named, and by the clock on the wall', () => {
    const it = logbook()
      .tell('setup.ready')
      .wait(20)
      .tell('mash.done')
      .wait(5)
      .tell('pot.rollingBoil')
      .wait(1);
    const four = it.now - 16 * MIN;
    expect(told(it, 'plum', { what: 'heat.on', clock: clockAt(four) })).toEqual(['step: dialogue.noted']);
    expect(it.log.kitchen.batches['plum']?.context.heatOnAt).toBe(four);
    expect(it.state()).toBe('simmering');
  });

  test('a full boil that was later than told moves the end of the clock, and the new end is said', () => {
    const it = logbook().toLoaded().canner('canner.fullBoil').wait(3);
    const until = canner(it)?.clock?.until ?? 0;
    expect(correct(it, 'boil.saidTooEarly', MAIN_CANNER, { agoMinutes: 1 })).toEqual([
      'step: kitchen.clockMoved',
    ]);
    expect(canner(it)?.clock?.until).toBe(until + 2 * MIN);
  });

  test('a finished clock is opened again by it, and says what is still to serve', () => {
    const it = logbook().toLoaded().serve().wait(1);
    expect(it.cannerState()).toBe('standing');
    expect(correct(it, 'boil.saidTooEarly', MAIN_CANNER, { agoMinutes: 5 })).toEqual([
      'danger: kitchen.clockRunsOn',
    ]);
    expect(it.cannerState()).toBe('fullBoil');
    expect(canner(it)?.clock?.from).toBe(it.now - 5 * MIN);
    expect(it.state()).toBe('processing');
  });

  test('jars that rest already, whose time was then not served, are not safe for the shelf', () => {
    const it = logbook().toLoaded().serve().wait(5).canner('jars.out').wait(1);
    expect(told(it, MAIN_CANNER, { what: 'canner.fullBoil', agoMinutes: 5 })).toEqual([
      'danger: kitchen.notServed',
    ]);
    expect(it.state()).toBe('unprocessed');
  });

  test('jars that came out earlier than told have rested longer', () => {
    const it = logbook().toLoaded().serve().wait(5).canner('jars.out').wait(30);
    const restFrom = () => it.log.kitchen.batches['plum']?.context.restFrom;
    expect(restFrom()).toBe(it.now - 30 * MIN);
    // ... but not before they had stood their time in the canner.
    told(it, MAIN_CANNER, { what: 'jars.out', agoMinutes: 32 });
    expect(restFrom()).toBe(it.now - 32 * MIN);
  });

  test('what could not have been then, or would undo a later step, is refused and changes nothing', () => {
    const it = logbook()
      .tell('setup.ready')
      .wait(5)
      .tell('mash.done')
      .wait(10)
      .tell('pot.rollingBoil')
      .wait(5);
    const entries = it.entries.length;
    expect(told(it, 'plum', { what: 'pot.rollingBoil', agoMinutes: 16 })).toEqual(['kitchen.notThen']);
    expect(told(it, 'plum', { what: 'mash.done', agoMinutes: 2 })).toEqual(['kitchen.notThen']);
    expect(told(it, 'plum', { what: 'mash.done', agoMinutes: 61 })).toEqual(['kitchen.tooLongAgo']);
    expect(told(it, 'plum', { what: 'skim.done', agoMinutes: 2 })).toEqual(['kitchen.notThen']);
    expect(told(it, 'plum', { what: 'mash.done' })).toEqual(['kitchen.whenWasIt']);
    expect(last(it, 'plum', {})).toEqual(['kitchen.whenWasIt']);
    expect(last(it, 'plum', { agoMinutes: 21 })).toEqual(['kitchen.beforeItBegan']);
    expect(it.entries).toHaveLength(entries);
  });

  test('only the last thing told is meant by "that was ten minutes ago"', () => {
    const it = logbook(['plum', 'pear']).tell('setup.ready', 'plum').wait(1).tell('setup.ready', 'pear');
    const open = correctable(it.log, it.now).filter(({ command }) => command === 'last.when');
    expect(open.map(({ about, told: what }) => [about, what?.map((one) => one.what)])).toEqual([
      ['pear', ['setup.ready']],
    ]);
  });

  test('"that was at four" is the four o’clock that is just past, never one to come', () => {
    const it = logbook().tell('setup.ready').wait(30).tell('mash.done').wait(1);
    expect(last(it, 'plum', { clock: clockAt(it.now + 5 * MIN) })).toEqual(['kitchen.tooLongAgo']);
    expect(last(it, 'plum', { clock: clockAt(it.now) })).toEqual(
      ['dialogue.noted'].map((key) => `step: ${key}`),
    );
  });
});
