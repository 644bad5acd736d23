// The rows of the table that are not about sizes: contrast, colour-blind eyes, keys, rain and paint.

import type { Told } from './colourBlind.ts';
import type { Contrast } from './contrast.ts';
import type { Rain } from './droplets.ts';
import type { Keys } from './keyboard.ts';
import { isSlow, isSlowAgain, quantile, sayPress, slowestFirst, type Paint } from './paint.ts';
import type { Shift } from './presses.ts';
import type { TableRow } from './table.ts';

export function contrastRows({ words, least, leastBig, faults }: Contrast): TableRow[] {
  return [
    {
      what: 'contrast, from the pixels',
      must: '>= 7:1; clocks and actions >= 10:1',
      measured: `least ${least.toFixed(1)}:1; clocks and actions ${leastBig.toFixed(1)}:1; ${words} words`,
      faults: words > 0 ? faults : ['no word was measured'],
    },
  ];
}

export function toldRow({ pairs, least, faults }: Told): TableRow {
  return {
    what: 'states told apart, four kinds of colour blindness',
    must: 'words differ, and pictures in lightness',
    measured: `${pairs} pairs, nearest pictures ${least.toFixed(2)} of 255`,
    faults,
  };
}

export function keyRow({ screens, stops, acts, faults }: Keys, what = 'keys alone'): TableRow {
  return {
    what,
    must: 'every target by Tab, its focus seen; every act',
    measured: `${stops} stops in ${screens} screens, ${acts.size} acts`,
    faults,
  };
}

export function rainRows({ droplets, steps, irreversible }: Rain, unguarded: Rain | null): TableRow[] {
  const rows = [
    {
      what: 'ghost touches',
      must: '0 irreversible acts',
      measured: `${irreversible.length} in ${droplets} drops (${steps} steps that undo takes back)`,
      faults: [...new Set(irreversible)],
    },
  ];
  if (!unguarded) return rows;
  const harm = unguarded.irreversible.length;
  const proof = {
    what: 'the same rain with the guard removed',
    must: '> 0: the check can fail',
    measured: `${harm} in ${unguarded.droplets} drops`,
    faults: harm > 0 ? [] : ['rain without a guard did no harm: the check proves nothing'],
  };
  return [...rows, proof];
}

const PAINT_MS = 50;

/** What the eye cannot see; the API counts the fall of a single digit. */
const STILL = 0.001;

/** A press that asks for another screen gets one: the next pot, or the state after the step that was done. */
const asksForAnother = ({ byPress, after }: Shift) => byPress && /^(Arrow|Enter|touch)/.test(after);

export function paintRows({ interactions, shifts, ofNothing }: Paint, load: number): TableRow[] {
  const ms = interactions.map((one) => one.ms);
  const worst = Math.max(0, ...ms);
  const slow = slowestFirst(interactions).filter(({ ms: took }) => isSlow(took));
  const again = slow.filter(isSlowAgain).length;
  const own = shifts.filter(asksForAnother);
  const others = shifts.filter((shift) => !asksForAnother(shift)).toSorted((a, b) => b.value - a.value);
  const sum = (some: readonly Shift[]) => some.reduce((total, { value }) => total + value, 0);
  return [
    {
      what: 'interaction to next paint, 4x slower',
      must: `<= ${PAINT_MS} ms`,
      measured: `half ${quantile(ms, 0.5)} ms, 98 in 100 ${quantile(ms, 0.98)} ms, worst ${worst} ms; ${ms.length} of 16 ms or more; ${slow.length} over it, ${again} of them in two of three tries; load ${load.toFixed(1)}`,
      faults: slow.map(sayPress),
    },
    {
      what: 'the same presses on an empty page with one button',
      must: 'the machine itself: nothing is held to it',
      measured: sayNothing(ofNothing),
      faults: [],
    },
    {
      what: 'layout shift that no press asked for',
      must: `< ${STILL}`,
      measured: `${sum(others).toFixed(4)}; within half a second of a press that turns to another pot or does a step ${sum(own).toFixed(4)}, most ${Math.max(0, ...own.map(({ value }) => value)).toFixed(4)}`,
      faults:
        sum(others) < STILL
          ? []
          : others.map(
              ({ value, after, moved }) => `${value.toFixed(4)} after ${after}: ${moved.join(', ')}`,
            ),
    },
  ];
}

function sayNothing({ presses, interactions }: Paint['ofNothing']): string {
  const ms = interactions.map((one) => one.ms);
  const over = ms.filter(isSlow).length;
  return `half ${quantile(ms, 0.5)} ms, 98 in 100 ${quantile(ms, 0.98)} ms, worst ${Math.max(0, ...ms)} ms; ${over} over ${PAINT_MS} ms; ${ms.length} of ${presses} of 16 ms or more`;
}
