// The mouth follows the noise of the kitchen: by how much, how fast, and never past its floor and ceiling.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelsFor, RISE_DB_PER_DB, speechDb, USUAL_ROOM } from '../../src/sound/levels.ts';
import { createRoomNoise } from '../../src/sound/roomNoise.ts';

const FULL = { speech: 1, sounds: 1 };
const db = (factor: number) => 20 * Math.log10(factor);
const room = (noiseDb: number, voiceDb = -26) => ({ noiseDb, voiceDb });

describe('the level of speech', () => {
  it('rises by half a decibel for each decibel of noise, as people’s voices do', () => {
    for (const noise of [-58, -50, -42, -34])
      expect(speechDb(room(noise + 1)) - speechDb(room(noise))).toBeCloseTo(RISE_DB_PER_DB, 9);
  });

  it('has a floor in a still kitchen and a ceiling beside a roaring one', () => {
    expect(speechDb(room(-90))).toBe(-14);
    expect(speechDb(room(-60))).toBe(-14);
    expect(speechDb(room(-32))).toBeCloseTo(0, 9);
    expect(speechDb(room(-10))).toBe(0);
  });

  it('never falls as the noise rises, whatever the room', () => {
    const level = fc.double({ min: -90, max: 0, noNaN: true });
    fc.assert(
      fc.property(level, level, level, (a, b, voiceDb) => {
        const [quiet, loud] = [Math.min(a, b), Math.max(a, b)];
        const [low, high] = [levelsFor(room(quiet, voiceDb), FULL), levelsFor(room(loud, voiceDb), FULL)];
        expect(high.speech).toBeGreaterThanOrEqual(low.speech);
        expect(high.alarms).toBeGreaterThanOrEqual(low.alarms);
        expect(high.alarms).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('hangs on how far the cook’s voice stands above the noise, not on how the microphone is set', () => {
    expect(speechDb(room(-40, -20))).toBeCloseTo(speechDb(room(-52, -32)), 9);
  });
});

describe('the level of alarms', () => {
  it('stands eight decibels above speech, until both are as loud as they can be', () => {
    const { speech, alarms } = levelsFor(room(-60), FULL);
    expect(db(alarms) - db(speech)).toBeCloseTo(8, 6);
    expect(levelsFor(room(-10), FULL)).toEqual({ speech: 1, sounds: 1, alarms: 1 });
  });

  it('is never wished away: half amplitude at the least', () => {
    const { speech, sounds, alarms } = levelsFor(USUAL_ROOM, { speech: 0.1, sounds: 0.1 });
    expect(alarms).toBe(0.5);
    expect(speech).toBeLessThan(0.05);
    expect(sounds).toBeLessThan(0.05);
  });
});

/** Ten looks a second at a level, from `at` for some seconds. */
function looks(at: number, seconds: number, levelDb: number, speech = false) {
  return Array.from({ length: seconds * 10 }, (_, i) => ({ at: at + i * 100, levelDb, speech }));
}

function noiseAfter(...all: ReturnType<typeof looks>[]): number | null {
  const noise = createRoomNoise();
  for (const look of all.flat()) noise.take(look);
  return noise.noiseDb;
}

describe('the noise of the room', () => {
  it('is not known before there was a moment without speech', () => {
    expect(noiseAfter()).toBeNull();
    expect(noiseAfter(looks(0, 2, -30, true))).toBeNull();
    expect(noiseAfter(looks(0, 2, -90))).toBeNull();
  });

  it('follows an extractor within five seconds, and its end within fifteen', () => {
    const quiet = looks(0, 5, -60);
    expect(noiseAfter(quiet, looks(5000, 5, -35))).toBeGreaterThan(-39);
    const back = noiseAfter(quiet, looks(5000, 10, -35), looks(15_000, 15, -60));
    expect(back).toBeLessThan(-55);
  });

  it('is smooth: no second moves it by more than ten decibels', () => {
    const noise = createRoomNoise();
    let before: number | null = null;
    for (const look of [...looks(0, 3, -70), ...looks(3000, 10, -20)]) {
      noise.take(look);
      if (look.at % 1000 !== 0) continue;
      if (before !== null) expect(Math.abs((noise.noiseDb ?? 0) - before)).toBeLessThan(10);
      before = noise.noiseDb;
    }
  });

  it('does not take the cook’s or the page’s voice for noise, nor what rings on after it', () => {
    const quiet = looks(0, 5, -60);
    expect(noiseAfter(quiet, looks(5000, 10, -20, true))).toBeCloseTo(-60, 6);
    expect(noiseAfter(quiet, looks(5000, 1, -20, true), looks(6000, 0.5, -25))).toBeCloseTo(-60, 6);
  });

  it('shrugs off a lid that clangs', () => {
    expect(noiseAfter(looks(0, 5, -60), looks(5000, 0.2, -5), looks(5200, 1, -60))).toBeLessThan(-55);
  });
});
