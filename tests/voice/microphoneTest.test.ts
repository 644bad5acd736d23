// What the microphone test makes of rooms and voices.

import { describe, expect, it } from 'vitest';

import { microphoneVerdict, type Look } from '../../src/voice/microphoneTest.ts';

const looks = (count: number, levelDb: number, speech: boolean): Look[] =>
  Array.from({ length: count }, () => ({ levelDb, speech }));

describe('the microphone test', () => {
  it('goes on listening until it has heard the room and a sentence', () => {
    expect(microphoneVerdict([])).toEqual({ kind: 'listening', quietShare: 0, spokenShare: 0 });
    expect(microphoneVerdict(looks(20, -55, false))).toMatchObject({ quietShare: 1, spokenShare: 0 });
  });

  it('finds a voice 20 dB above a quiet room good', () => {
    const verdict = microphoneVerdict([...looks(30, -50, false), ...looks(15, -30, true)]);
    expect(verdict).toMatchObject({ kind: 'good', noiseDb: -50, speechDb: -30 });
  });

  it('takes the room out of the level of the words: equal powers are no decibels apart', () => {
    const both = 10 * Math.log10(2 * 10 ** (-30 / 10));
    const verdict = microphoneVerdict([...looks(30, -30, false), ...looks(15, both, true)]);
    expect(verdict).toMatchObject({ kind: 'loud room', useless: true });
    if (verdict.kind === 'loud room') expect(verdict.snrDb).toBeCloseTo(0, 6);
  });

  it('says that the room is too loud, and whether listening is still of use', () => {
    const at = (db: number) => microphoneVerdict([...looks(30, -30, false), ...looks(15, db, true)]);
    expect(at(-24)).toMatchObject({ kind: 'loud room', useless: false });
    expect(at(-29)).toMatchObject({ kind: 'loud room', useless: true });
    expect(at(-20)).toMatchObject({ kind: 'good' });
  });

  it('tells a weak voice from a loud room, and a voice at the top of the scale', () => {
    expect(microphoneVerdict([...looks(30, -78, false), ...looks(15, -60, true)])).toMatchObject({
      kind: 'too weak',
    });
    expect(microphoneVerdict([...looks(30, -50, false), ...looks(15, -2, true)])).toMatchObject({
      kind: 'too near',
    });
  });

  it('knows a muted microphone by its digital silence', () => {
    expect(microphoneVerdict(looks(25, -90, false))).toEqual({ kind: 'silent' });
  });

  it('lets one clang of a lid decide nothing', () => {
    const calm = [...looks(30, -50, false), ...looks(15, -30, true)];
    expect(
      microphoneVerdict([...calm, { levelDb: -3, speech: true }, { levelDb: -3, speech: false }]),
    ).toMatchObject({
      kind: 'good',
    });
  });
});
