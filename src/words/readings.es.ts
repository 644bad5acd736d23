// How a weight, a depth, a temperature or "a la mitad" is said in Spanish; numbers are kept to what the bounds allow.

import type { Interval, NumberBounds } from '../kitchen/ports.ts';
import { shareNames, SHARES, type Share } from '../kitchen/shares.ts';
import type { Filling } from './pattern.ts';
import { KG_PER_OUNCE, M_PER_INCH, toFahrenheit } from './quantities.ts';
import { spanishQuantities as say } from './quantities.es.ts';

export function weights({ units, massKg }: NumberBounds): Filling[] {
  return steps(massKg, units === 'us' ? KG_PER_OUNCE : 0.1).map((kg) => ({
    words: say.massKg(kg, units),
    slots: { massKg: kg },
  }));
}

export function depths({ units, depthM }: NumberBounds): Filling[] {
  return steps(depthM, units === 'us' ? M_PER_INCH / 4 : 0.005).map((m) => ({
    words: say.depthM(m, units),
    slots: { depthM: m },
  }));
}

export function temperatures({ units, tempC }: NumberBounds): Filling[] {
  const degrees =
    units === 'us'
      ? steps({ low: toFahrenheit(tempC.low), high: toFahrenheit(tempC.high) }, 1).map(
          (f) => ((f - 32) * 5) / 9,
        )
      : steps(tempC, 1);
  return degrees.map((c) => ({ words: say.tempC(c, units), slots: { tempC: c } }));
}

const shareWords: Record<Share, string> = {
  threeQuarters: 'tres cuartos',
  twoThirds: 'dos tercios',
  half: 'la mitad',
  third: 'un tercio',
  quarter: 'un cuarto',
};

/** What there is left of its height at the start. */
export function shares(): Filling[] {
  return shareNames.map((share) => ({ words: shareWords[share], slots: { fractionOfStart: SHARES[share] } }));
}

/** The whole multiples of the step within the interval. */
function steps({ low, high }: Interval, step: number): number[] {
  const first = Math.max(1, Math.ceil(low / step - 1e-9));
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
}
