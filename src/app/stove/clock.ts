// How a clock reads from two metres: a few big numerals and one small word.

import type { ClockView } from '../../kitchen/view.ts';

export interface ClockFace {
  /** What is drawn big, e.g. "9:41", "38–55", "11:20". */
  numerals: string;
  /** The small word beside it: the unit, or that it is over. */
  unit: 'min' | 'h' | 'over' | 'minOver' | 'now';
  /** The same in words, for those who hear the page. */
  minutes: { low: number; high: number };
  label: ClockView['label'];
  urgent: boolean;
  /** How much of the time is gone, 0..1; null where it has no sure end. */
  gone: number | null;
  /** It counts down from four digits: as many keep their room when one falls away. */
  fourDigits: boolean;
}

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

export function clockFace(clock: ClockView, now: number): ClockFace {
  switch (clock.kind) {
    case 'until':
      return untilFace(clock, now);
    case 'about':
      return aboutFace(clock, now);
    case 'since':
      return {
        ...spanFace(now - clock.from),
        label: clock.label,
        urgent: false,
        gone: null,
        fourDigits: false,
      };
  }
}

function untilFace(clock: Extract<ClockView, { kind: 'until' }>, now: number): ClockFace {
  const left = clock.until - now;
  const length = Math.max(1, clock.until - clock.from);
  const gone = Math.min(1, Math.max(0, 1 - left / length));
  const face = left >= 0 ? spanFace(ceilToSecond(left)) : overFace(-left);
  const fourDigits = length >= 10 * MINUTE_MS && face.unit !== 'minOver';
  return { ...face, label: clock.label, urgent: clock.urgent, gone, fourDigits };
}

/** After ten minutes the seconds say nothing more, and would not fit. */
const LONG_OVER_MS = 10 * MINUTE_MS;

function overFace(ms: number): Pick<ClockFace, 'numerals' | 'unit' | 'minutes'> {
  const face = spanFace(ms);
  if (ms < LONG_OVER_MS || ms >= HOUR_MS) return { ...face, unit: 'over' };
  return { ...face, numerals: `${Math.floor(ms / MINUTE_MS)}`, unit: 'minOver' };
}

/** A countdown shows the second that is running, so that it reads 0:00 only when the time is up. */
function ceilToSecond(ms: number): number {
  return Math.ceil(ms / 1000) * 1000;
}

function spanFace(ms: number): Pick<ClockFace, 'numerals' | 'unit' | 'minutes'> {
  const span = Math.max(0, ms);
  const minutes = { low: span / MINUTE_MS, high: span / MINUTE_MS };
  if (span >= HOUR_MS) {
    const whole = Math.floor(span / MINUTE_MS);
    return { numerals: `${Math.floor(whole / 60)}:${pad(whole % 60)}`, unit: 'h', minutes };
  }
  const seconds = Math.floor(span / 1000);
  return { numerals: `${Math.floor(seconds / 60)}:${pad(seconds % 60)}`, unit: 'min', minutes };
}

/** Three digits beside two are too wide for a phone, and nobody plans such a range by the minute. */
const LONG_RANGE_MIN = 100;

function aboutFace(clock: Extract<ClockView, { kind: 'about' }>, now: number): ClockFace {
  const low = Math.max(0, Math.floor((clock.until.low - now) / MINUTE_MS));
  const high = Math.max(low, Math.ceil((clock.until.high - now) / MINUTE_MS));
  const rest = { minutes: { low, high }, label: clock.label, urgent: false, gone: null, fourDigits: false };
  if (clock.until.high <= now) return { numerals: '0', unit: 'now', ...rest };
  if (high >= LONG_RANGE_MIN) {
    const hours = (minutes: number) =>
      (Math.round(minutes / 30) / 2).toString().replace(/\.5$/, '½').replace(/^0½/, '½');
    const [from, to] = [hours(low), hours(high)];
    return { numerals: from === to ? from : `${from}–${to}`, unit: 'h', ...rest };
  }
  return { numerals: low === high ? `${low}` : `${low}–${high}`, unit: 'min', ...rest };
}

function pad(n: number): string {
  return n.toString().padStart(2, '0');
}
