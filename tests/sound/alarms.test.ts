// The alarms against the burst and pulse tables of IEC 60601-1-8, measured in the rendered files.
// Fundamental, components and their 15 dB: as a loudspeaker maker's guide repeats the standard.
// Pulse counts, lengths, spacings and rise: as public generators of such sounds repeat it.
// The gaps within the high-priority burst: from memory.

import { describe, expect, it } from 'vitest';
import { meanings, soundNames } from '../../sounds/meanings.ts';
import { portraitOf, type MeasuredPulse } from './meter.ts';

const alarms = soundNames.filter((name) => meanings[name].alarm !== null);
const lengthsMs = (pulses: MeasuredPulse[]) => pulses.map((pulse) => pulse.to - pulse.from);
const spacingsMs = (pulses: MeasuredPulse[]) => pulses.slice(1).map((pulse, i) => pulse.from - pulses[i]!.to);
const within = (values: number[], low: number, high: number) => {
  for (const value of values) {
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  }
};

describe.each(alarms)('the alarm "%s"', (name) => {
  const pulses = portraitOf(name).pulses;

  it('has a fundamental between 150 and 1,000 Hz', () => {
    within(
      pulses.map((pulse) => pulse.startHz),
      150,
      1000,
    );
  });

  it('has at least four harmonic components between 300 and 4,000 Hz within 15 dB', () => {
    for (const pulse of pulses) {
      expect(pulse.components.length).toBeGreaterThanOrEqual(4);
      for (const hz of pulse.components) {
        const order = hz / pulse.startHz;
        expect(Math.abs(order - Math.round(order))).toBeLessThan(0.02);
      }
    }
  });

  it('rises in 10-20 % of the pulse', () => {
    // The meter's own window of 8 ms lengthens a rise by about 2 ms.
    for (const pulse of pulses)
      within([pulse.riseMs - 2], 0.1 * (pulse.to - pulse.from), 0.2 * (pulse.to - pulse.from));
  });

  it('has no two pulses more than 10 dB apart', () => {
    const levels = pulses.map((pulse) => pulse.levelDb);
    expect(Math.max(...levels) - Math.min(...levels)).toBeLessThan(10);
  });
});

describe('bursts by priority', () => {
  it('high: ten pulses of 75-200 ms, three and two, twice', () => {
    const pulses = portraitOf('danger').pulses;
    expect(meanings.danger.alarm).toBe('high');
    expect(pulses).toHaveLength(10);
    within(lengthsMs(pulses), 75, 200);
    const gaps = spacingsMs(pulses);
    const x = gaps[0]!;
    within(
      [0, 1, 3, 5, 6, 8].map((i) => gaps[i]!),
      50,
      125,
    );
    const afterThree = 2 * x + lengthsMs(pulses)[0]!;
    within([gaps[2]!, gaps[7]!], afterThree - 10, afterThree + 10);
    within([gaps[4]!], 350, 1300);
  });

  it.each(['clock-void', 'time-up'] as const)(
    'medium: %s has three pulses of 125-250 ms, 125-250 ms apart',
    (name) => {
      const pulses = portraitOf(name).pulses;
      expect(meanings[name].alarm).toBe('medium');
      expect(pulses).toHaveLength(3);
      within(lengthsMs(pulses), 125, 250);
      within(spacingsMs(pulses), 125, 250);
    },
  );

  it('low: nudge has two pulses of 125-250 ms, 125-250 ms apart', () => {
    const pulses = portraitOf('nudge').pulses;
    expect(meanings.nudge.alarm).toBe('low');
    expect(pulses).toHaveLength(2);
    within(lengthsMs(pulses), 125, 250);
    within(spacingsMs(pulses), 125, 250);
  });
});
