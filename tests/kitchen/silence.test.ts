// A clock that nobody vouches for: each silence is written down as not confirmed, and the question comes back with
// stronger words, a louder sound and a louder voice, until somebody has looked.

import { beforeEach, describe, expect, test, vi } from 'vitest';
import { cannerState } from '../../machines/canner/choices.ts';
import { MAIN_CANNER } from '../../machines/kitchen/kitchen.ts';
import { foldLog } from '../../src/kitchen/fold.ts';
import type { Utterance } from '../../src/kitchen/ports.ts';
import { kitchenAtWork, settle } from './atWork.ts';
import { logbook } from './logbook.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from './memory.ts';

vi.setConfig({ testTimeout: 60_000 });

const SECOND = 1000;

/** Writes down how urgently each sentence was said, and the sounds between them. */
class UrgentMouth extends WritingMouth {
  readonly heard: { at: number; what: string; urgency?: Utterance['urgency'] }[] = [];

  override speak(utterance: Utterance) {
    this.heard.push({ at: clock.now(), what: utterance.text, urgency: utterance.urgency });
    return super.speak(utterance);
  }

  override async sound(name: Parameters<WritingMouth['sound']>[0]) {
    this.heard.push({ at: clock.now(), what: `*${name}*` });
    return super.sound(name);
  }
}

let clock: HandClock;
let log: MemoryLog;
let ear: ToldEar;
let mouth: UrgentMouth;
let startedAt: number;

async function passes(ms: number) {
  for (let left = ms; left > 0; left -= SECOND) {
    clock.turn(SECOND);
    await settle();
  }
}

const canner = () => {
  const snapshot = foldLog(log.entries).kitchen.canners[MAIN_CANNER];
  if (!snapshot) throw new Error('There is no canner.');
  return snapshot;
};

/** What was heard from then on, in whole seconds after the clock started. */
const heardSince = (from: number) =>
  mouth.heard
    .filter(({ at }) => at >= from)
    .map(({ at, what, urgency }) => [
      Math.round((at - startedAt) / SECOND),
      what,
      ...(urgency ? [urgency] : []),
    ]);

beforeEach(async () => {
  // Ten minutes in the canner, so one question half-way; the cook has just said "full boil".
  const book = logbook().toLoaded().canner('canner.fullBoil');
  clock = new HandClock(book.now);
  log = new MemoryLog([...book.entries]);
  ear = new ToldEar();
  mouth = new UrgentMouth();
  startedAt = canner().context.clock?.from ?? 0;
  await kitchenAtWork({ clock, ear, mouth }, log);
  await settle();
});

describe('nobody answers whether the canner boils', () => {
  test('the question comes back, from a nudge to a danger', async () => {
    const { nextCheckAt } = canner().context;
    await passes((nextCheckAt ?? 0) - clock.now() + 100 * SECOND);
    const asked = heardSince(nextCheckAt ?? 0);
    const due = ((nextCheckAt ?? 0) - startedAt) / SECOND;
    const words = expect.stringMatching(/Still at a full boil\?/);
    expect(asked.map(([second, ...what]) => [Number(second) - due, ...what])).toEqual([
      [0, words, 'clock'],
      [20, '*nudge*'],
      [20, words, 'clock'],
      [45, '*danger*'],
      [45, words, 'danger'],
      [90, '*danger*'],
      [90, words, 'danger'],
    ]);
  });

  test('the time is served and not confirmed: no jar comes out, and it is asked plainly, as a danger', async () => {
    const { clock: run } = canner().context;
    await passes((run?.until ?? 0) - clock.now() + 5 * SECOND);
    expect(cannerState(canner())).toBe('unsureOfTheBoil');
    expect(canner().context).toMatchObject({ lastConfirmedAt: null, silences: 1 });
    expect(heardSince(run?.until ?? 0).at(-1)).toEqual([
      expect.any(Number),
      expect.stringMatching(/^Time is up, unchecked\./),
      'danger',
    ]);
    expect(ear.hear('the full boil is holding')).toBe(true);
    await settle();
    expect(cannerState(canner())).toBe('standing');
    expect(canner().context.silences).toBe(0);
  });
});
