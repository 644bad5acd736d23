// The sounds as a family: heard by old ears, urgency audible, none taken for another.
// Everything is measured in the files that the page plays.

import { describe, expect, it } from 'vitest';
import { meanings, soundNames } from '../../sounds/meanings.ts';
import type { SoundName, Urgency } from '../../machines/kitchen/effects.ts';
import { distance, envelope, portrait, portraitOf, readSound, shareWithin } from './meter.ts';

const loudest = (name: SoundName) => Math.max(...portraitOf(name).pulses.map((pulse) => pulse.levelDb));
const ofUrgency = (urgency: Urgency) => soundNames.filter((name) => meanings[name].urgency === urgency);

describe.each(soundNames)('the sound "%s"', (name) => {
  const recording = readSound(name);

  it('has most of its energy in 500-2,500 Hz (ISO 7731:2003: danger signals lie there; from memory)', () => {
    expect(shareWithin(recording, 500, 2500)).toBeGreaterThan(0.75);
  });

  it('keeps enough below 1,500 Hz for ears that have lost the heights (ISO 7731:2003; from memory)', () => {
    expect(shareWithin(recording, 0, 1500)).toBeGreaterThan(0.4);
  });

  it('never touches full scale', () => {
    const peak = recording.samples.reduce((max, sample) => Math.max(max, Math.abs(sample)), 0);
    expect(peak).toBeLessThan(0.95);
    expect(peak).toBeGreaterThan(0.1);
  });

  it('begins and ends in silence', () => {
    for (const edge of [recording.samples.slice(0, 20), recording.samples.slice(-20)])
      expect(Math.max(...edge.map(Math.abs))).toBeLessThan(0.002);
  });

  it('has no click: its envelope never rises by more than a quarter of its height in a millisecond', () => {
    const env = envelope(recording);
    const top = Math.max(...env);
    const steps = [...env].slice(1).map((value, i) => Math.abs(value - env[i]!));
    expect(Math.max(...steps)).toBeLessThan(0.25 * top);
  });

  it('is over within three seconds', () => {
    expect(recording.samples.length / recording.sampleRateHz).toBeLessThan(3);
  });
});

describe('urgency can be heard', () => {
  const ladder: Urgency[] = ['teaching', 'step', 'clock', 'danger'];

  it.each(ladder.slice(1).map((urgency, i) => [ladder[i]!, urgency] as const))(
    'every %s sound is at least 2.5 dB(A) below every %s sound',
    (lower, higher) => {
      const gap = Math.min(...ofUrgency(higher).map(loudest)) - Math.max(...ofUrgency(lower).map(loudest));
      expect(gap).toBeGreaterThan(2.5);
    },
  );

  it('danger has the most pulses and the fastest beat of all alarms', () => {
    const alarms = soundNames.filter((name) => meanings[name].alarm !== null);
    const beat = (name: SoundName) => {
      const [first, second] = portraitOf(name).pulses;
      return second!.from - first!.from;
    };
    for (const other of alarms.filter((name) => name !== 'danger')) {
      expect(beat('danger')).toBeLessThan(beat(other));
      expect(portraitOf('danger').pulses.length).toBeGreaterThan(portraitOf(other).pulses.length);
    }
  });
});

describe('no two sounds can be confused', () => {
  // 1 is one difference that nobody misses (a pulse more, a tenth of a second off the beat, a major third,
  // half an octave of colour, twice the length); we ask for more than one and a half of them.
  const ENOUGH = 1.5;
  const pairs = soundNames.flatMap((a, i) => soundNames.slice(i + 1).map((b) => [a, b] as const));

  it.each(pairs)('%s and %s', (a, b) => {
    expect(distance(portraitOf(a), portraitOf(b))).toBeGreaterThan(ENOUGH);
  });

  it('the measure fails two copies of one sound, also when one of them is louder', () => {
    const step = readSound('step');
    const louder = { ...step, samples: step.samples.map((sample) => sample * 1.5) };
    expect(distance(portrait(step), portrait(readSound('step')))).toBe(0);
    expect(distance(portrait(step), portrait(louder))).toBeLessThan(0.05);
  });

  it('the measure fails a sound and its shadow a quarter tone lower', () => {
    const step = readSound('step');
    const lower = { ...step, sampleRateHz: step.sampleRateHz / 2 ** (1 / 24) };
    expect(distance(portrait(step), portrait(lower))).toBeLessThan(ENOUGH);
  });
});
