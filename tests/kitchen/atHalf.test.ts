// "Simmered twenty minutes and it is at half": from the cook's words to the pot's estimate.

import { describe, expect, test } from 'vitest';
import { remainingMinutes } from '../../src/core/index.ts';
import { eventOf } from '../../src/kitchen/choices.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { logbook } from './logbook.ts';

const slotsOf = (said: string) =>
  openPhrases([{ command: 'reading.taken' }], ['plum']).find(({ words }) => words === said)!.slots;

describe('a pot that is at half', () => {
  test('is told by voice and moves the minutes that are left', () => {
    const it = logbook().tell('setup.ready').tell('mash.done').wait(12).tell('pot.rollingBoil').wait(20);
    const estimate = () => it.log.kitchen.batches['plum']!.context.estimate!;
    const before = remainingMinutes(estimate(), it.now).likely;
    it.enter(eventOf('reading.taken', 'plum', slotsOf('it is at half'), it.now)!);
    expect(remainingMinutes(estimate(), it.now).likely).toBeLessThan(0.8 * before);
    expect(estimate().readings).toHaveLength(1);
  });

  test('is told by what has gone as by what is left', () => {
    expect(slotsOf('half of it has boiled away')).toEqual(slotsOf('it is down to half'));
    expect(slotsOf('one quarter of it has boiled away')).toEqual(slotsOf('it is at three quarters'));
  });

  test('is nothing to log where nothing was measured', () => {
    expect(eventOf('reading.taken', 'plum', { fruit: 'plum' }, 0)).toBeNull();
  });
});
