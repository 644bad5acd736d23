// What is wrong with a screen by its measures: too small, too near, out of reach, cut, overlapping, scrolling, too much at a glance.

import type { Box, Seen, Target, Text } from './seen.ts';
import type { Look } from './sizes.ts';

/** Row of the table -> what broke it. */
export type Row = 'targets' | 'gaps' | 'reach' | 'others' | 'big' | 'glance' | 'fit';
export interface Fault {
  row: Row;
  what: string;
}

export interface Measures {
  /** Smallest safety target's shorter side, and its nearest neighbour, mm. */
  targetMm: number;
  gapMm: number;
  /** Farthest safety target's nearest 15 mm, from the thumb's corner, mm. */
  reachMm: number;
  /** Smallest other target's shorter side, CSS px. */
  otherPx: number;
  /** Clock and action, as if their capitals were 0.70 em, CSS px. */
  bigPx: number;
  words: number;
  parts: number;
}

const SAFE_MM = 15;
const GAP_MM = 3;
/** WCAG 2.2, 2.5.8 Target Size (Minimum). */
const OTHER_PX = 24;
/**
 * To the middle of the nearest 15 mm of the target. A phone lies in the hand: from its lower corner on the thumb's
 * side. A tablet is propped, and the hand comes to it from below or from the thumb's side: from the nearer of the two
 * edges. Common practice, no source: the length of a short adult thumb and the ball it turns on.
 */
export const REACH_MM = 75;
/** The face's capitals are 0.656 em high, those the sizes were asked for 0.70 em. */
const CAPITALS = 0.656 / 0.7;
const MOST_PARTS = 3;
const MOST_WORDS = 12;

export function measure(seen: Seen, look: Look): { measures: Measures; faults: Fault[] } {
  const { device } = look;
  const mm = (px: number) => px / device.pxPerMm;
  const guarded = seen.targets.filter((target) => target.guarded);
  const others = seen.targets.filter((target) => !target.guarded);
  const big = seen.texts.filter(({ part }) => part === 'clock' || part === 'act');
  const measures: Measures = {
    targetMm: least(guarded.map((target) => mm(side(target)))),
    gapMm: least(
      guarded.flatMap((one) => seen.targets.filter((two) => two !== one).map((two) => mm(apart(one, two)))),
    ),
    reachMm: device.thumb ? most(guarded.map((target) => reach(target, seen, look))) : 0,
    otherPx: least(others.map(side)),
    bigPx: least(big.map(({ px }) => px * CAPITALS)),
    words: seen.glance?.words ?? 0,
    parts: seen.glance?.parts.length ?? 0,
  };
  const faults: Fault[] = [
    ...guarded
      .filter((target) => mm(side(target)) < SAFE_MM - 0.05)
      .map((target) =>
        fault('targets', `“${target.name}” ${mm(target.w).toFixed(1)} × ${mm(target.h).toFixed(1)} mm`),
      ),
    ...guarded.flatMap((one) =>
      seen.targets
        .filter((two) => two !== one && mm(apart(one, two)) < GAP_MM - 0.02)
        .map((two) => fault('gaps', `“${one.name}” and “${two.name}” ${mm(apart(one, two)).toFixed(1)} mm`)),
    ),
    ...(device.thumb
      ? guarded
          .filter((target) => reach(target, seen, look) > REACH_MM)
          .map((target) => fault('reach', `“${target.name}” ${reach(target, seen, look).toFixed(0)} mm`))
      : []),
    ...others
      .filter((target) => side(target) < OTHER_PX - 0.5)
      .map((target) =>
        fault('others', `“${target.name}” ${target.w.toFixed(0)} × ${target.h.toFixed(0)} px`),
      ),
    ...big
      .filter(({ px }) => px * CAPITALS < device.leastBigPx - 0.5)
      .map(({ words, px }) => fault('big', `“${words}” ${(px * CAPITALS).toFixed(0)} px`)),
    ...glanceFaults(seen),
    ...fitFaults(seen, look),
  ];
  return { measures, faults };
}

const fault = (row: Row, what: string): Fault => ({ row, what });
const side = ({ w, h }: Box) => Math.min(w, h);
const least = (values: number[]) => Math.min(Infinity, ...values);
const most = (values: number[]) => Math.max(0, ...values);

function apart(a: Box, b: Box): number {
  const dx = Math.max(a.x - (b.x + b.w), b.x - (a.x + a.w), 0);
  const dy = Math.max(a.y - (b.y + b.h), b.y - (a.y + a.h), 0);
  return Math.hypot(dx, dy);
}

/** To the nearest 15 mm square of the target; a page longer than the glass is scrolled to it first. */
function reach(target: Target, { page }: Seen, { device, hand }: Look): number {
  const half = (SAFE_MM * device.pxPerMm) / 2;
  const corner = { x: hand === 'right' ? page.w : 0, y: page.h };
  const x = clamp(corner.x, target.x + half, target.x + target.w - half);
  const y = clamp(corner.y, target.y + half, target.y + target.h - half);
  const across = Math.abs(corner.x - x);
  const up = Math.max(0, corner.y - y);
  const far = device.propped ? Math.min(across, up) : Math.hypot(across, up);
  return far / device.pxPerMm;
}

function clamp(value: number, low: number, high: number): number {
  return low > high ? (low + high) / 2 : Math.min(high, Math.max(low, value));
}

function glanceFaults({ glance }: Seen): Fault[] {
  if (!glance) return [];
  return [
    ...(glance.parts.length > MOST_PARTS
      ? [fault('glance', `${glance.parts.length} parts: ${glance.parts.join(', ')}`)]
      : []),
    ...(glance.words > MOST_WORDS ? [fault('glance', `${glance.words} words`)] : []),
  ];
}

function fitFaults({ page, texts, targets, glance, pictures }: Seen, { text }: Look): Fault[] {
  const scrolls = page.scrollW > page.w + 1 ? [fault('fit', `scrolls sideways, ${page.scrollW} px`)] : [];
  // At its own text size the whole cooking screen is seen at once; at twice that it may go on below.
  const long =
    glance && text === 100 && page.scrollH > page.h + 1
      ? [fault('fit', `scrolls down, ${page.scrollH} px`)]
      : [];
  const cut = texts.filter((one) => one.cut).map(({ words }) => fault('fit', `cut: “${words}”`));
  return [
    ...scrolls,
    ...long,
    ...cut,
    ...overlaps(texts),
    ...drawnOver(texts, pictures),
    ...covered(targets),
  ];
}

/** Letters that stand on other letters. */
function overlaps(texts: Text[]): Fault[] {
  const found: Fault[] = [];
  texts.forEach((a, i) => {
    for (const b of texts.slice(i + 1)) {
      const wide = Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x);
      const high = Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y);
      if (wide > 2 && high > 2 && a.sentence !== b.sentence)
        found.push(
          fault('fit', `“${a.words}” stands on “${b.words}”, ${wide.toFixed(0)} × ${high.toFixed(0)} px`),
        );
    }
  });
  return found;
}

/** A picture that teaches on a word. */
function drawnOver(texts: Text[], pictures: Box[]): Fault[] {
  return pictures.flatMap((picture) =>
    texts
      .filter((text) => {
        const wide = Math.min(text.x + text.w, picture.x + picture.w) - Math.max(text.x, picture.x);
        const high = Math.min(text.y + text.h, picture.y + picture.h) - Math.max(text.y, picture.y);
        return wide > 2 && high > 2;
      })
      .map(({ words }) => fault('fit', `the picture stands on “${words}”`)),
  );
}

function covered(targets: Target[]): Fault[] {
  return targets.flatMap((a, i) =>
    targets
      .slice(i + 1)
      .filter((b) => !(a.ground && b.onTop) && !(b.ground && a.onTop))
      .filter(
        (b) =>
          Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x) > 1 &&
          Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y) > 1,
      )
      .map((b) => fault('fit', `“${a.name}” lies on “${b.name}”`)),
  );
}
