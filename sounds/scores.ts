// What each sound is made of: pulses in time, each with its pitch, its partials and its edges.
//
// Alarms follow the burst and pulse tables of IEC 60601-1-8: fundamental 150-1000 Hz, at least four
// harmonic components in 300-4000 Hz within 15 dB of it (as repeated by a loudspeaker maker's guide);
// high 10 pulses of 75-200 ms spaced x = 50-125 ms, with 2x + td between the third and the fourth and
// 0.35-1.30 s between the fifth and the sixth; medium 3 and low 1-2 pulses of 125-250 ms spaced
// 125-250 ms; rise 10-20 % of the pulse (spacings, lengths and rise as a public generator of such
// sounds repeats them; the gaps inside the high burst from memory).
// All sounds keep most of their energy in 500-2,500 Hz, where ISO 7731 asks for it, because hearing
// fails above that first.

import type { SoundName } from '../machines/kitchen/effects.ts';

export interface Pulse {
  /** The moment this pulse reaches 90 % of its height, counted from that moment of the first pulse. */
  atMs: number;
  /** Effective length: from 90 % on the way up to 90 % on the way down. */
  lengthMs: number;
  fromHz: number;
  /** Where the pitch ends; a glide if it differs. */
  toHz: number;
  /** 10 % to 90 % of the height. */
  riseMs: number;
  fallMs: number;
}

export interface Score {
  /** RMS while it sounds, dB below full scale. */
  levelDb: number;
  /** Heights of the fundamental, second, third... partial. */
  partials: readonly number[];
  pulses: readonly Pulse[];
}

/** Four decibels between the steps of urgency: more than the three that a listener reliably hears (from memory). */
export const levelOf = { teaching: -21, step: -17, clock: -13, danger: -9 } as const;

const soft = [1, 0.2, 0.08] as const; // a wooden, quiet colour
const hollow = [1, 0, 0.45] as const; // odd partials only
const bright = [1, 0.75, 0.5, 0.35, 0.22] as const; // five components within 15 dB: an alarm's colour

const note = (atMs: number, lengthMs: number, fromHz: number, toHz = fromHz): Pulse => ({
  atMs,
  lengthMs,
  fromHz,
  toHz,
  riseMs: Math.min(lengthMs * 0.15, 40),
  fallMs: Math.min(lengthMs * 0.25, 45),
});

/** Pulses one after another, `gapMs` apart. */
function row(startMs: number, lengthMs: number, gapMs: number, pitchesHz: readonly number[]): Pulse[] {
  return pitchesHz.map((hz, i) => note(startMs + i * (lengthMs + gapMs), lengthMs, hz));
}

/** Ten pulses: three and two, a breath, three and two again. */
function highBurst(lengthMs: number, gapMs: number, breathMs: number, hz: number): Pulse[] {
  const three = row(0, lengthMs, gapMs, [hz, hz, hz]);
  const twoAt = 3 * lengthMs + 2 * gapMs + (2 * gapMs + lengthMs);
  const two = row(twoAt, lengthMs, gapMs, [hz, hz]);
  const half = [...three, ...two];
  const againAt = twoAt + 2 * lengthMs + gapMs + breathMs;
  const shifted = (byMs: number) => half.map((pulse) => ({ ...pulse, atMs: pulse.atMs + byMs }));
  return [...half, ...shifted(againAt)];
}

export const scores: Record<SoundName, Score> = {
  // One short high drop.
  heard: { levelDb: levelOf.teaching, partials: soft, pulses: [note(0, 60, 1175)] },
  // One long tone that sinks: a hollow "hm?".
  pardon: { levelDb: levelOf.teaching, partials: hollow, pulses: [note(0, 260, 740, 540)] },
  // Three quick steps up.
  step: { levelDb: levelOf.step, partials: soft, pulses: row(0, 75, 45, [587, 740, 880]) },
  // Two tones, the second lifting, as a voice does when it asks.
  question: {
    levelDb: levelOf.step,
    partials: hollow,
    pulses: [note(0, 110, 622), note(180, 320, 740, 1109)],
  },
  // Two equal knocks.
  nudge: { levelDb: levelOf.step, partials: bright, pulses: row(0, 170, 190, [554, 554]) },
  // Four rising, the last one held: it runs.
  'clock-start': {
    levelDb: levelOf.clock,
    partials: soft,
    pulses: [...row(0, 110, 60, [523, 659, 784]), note(510, 600, 1047)],
  },
  // Three falling, slow: it is void.
  'clock-void': {
    levelDb: levelOf.clock,
    partials: bright,
    pulses: row(0, 240, 240, [740, 622, 494]),
  },
  // Three on one high pitch, close together: it is over.
  'time-up': { levelDb: levelOf.clock, partials: bright, pulses: row(0, 150, 130, [880, 880, 880]) },
  // Ten, fast and loud.
  danger: { levelDb: levelOf.danger, partials: bright, pulses: highBurst(110, 70, 500, 784) },
};
