// Goes through every kitchen in every look and measures what stands there: the rows of the table about what is seen.

import { violations } from './axe.ts';
import { measure, REACH_MM, type Fault, type Measures, type Row } from './geometry.ts';
import { see, type Seen } from './seen.ts';
import { sayLook, type Look } from './sizes.ts';
import type { Stage } from './stage.ts';
import type { TableRow } from './table.ts';

/** What one walk has come to; walks in several browsers are added up. */
export interface Toll {
  screens: number;
  axeRuns: number;
  axeRules: number;
  faults: (Fault | { row: 'axe' | 'place'; what: string })[];
  worst: Measures;
  /** Where each of the three things stood first, by look and thing. */
  places: Map<string, Place>;
  /** The furthest from there that it was seen, px. */
  wander: number;
}

interface Place {
  x: number;
  y: number;
  /** The screen and look in which it stood there first. */
  first: string;
}

export function noToll(): Toll {
  const worst = {
    targetMm: Infinity,
    gapMm: Infinity,
    reachMm: 0,
    otherPx: Infinity,
    bigPx: Infinity,
    words: 0,
    parts: 0,
  };
  return { screens: 0, axeRuns: 0, axeRules: 0, faults: [], worst, places: new Map(), wander: 0 };
}

/** One screen in one look; axe is asked only where it is told to be: it takes longer than all the rest. */
export async function lookAt(
  stage: Stage,
  name: string,
  look: Look,
  toll: Toll,
  asksAxe = true,
): Promise<void> {
  await stage.turnTo(look);
  const seen = await see(stage.page);
  const where = `${name} (${sayLook(look)})`;
  const { measures, faults } = measure(seen, look);
  toll.screens += 1;
  toll.faults.push(...faults.map(({ row, what }) => ({ row, what: `${where}: ${what}` })));
  toll.worst = worse(toll.worst, measures);
  notePlaces(toll, seen, look, where);
  if (!asksAxe) return;
  const { found, rules } = await violations(stage.page);
  toll.axeRuns += 1;
  toll.axeRules = Math.max(toll.axeRules, rules);
  toll.faults.push(...found.map((what) => ({ row: 'axe' as const, what: `${where}: ${what}` })));
}

function worse(a: Measures, b: Measures): Measures {
  return {
    targetMm: Math.min(a.targetMm, b.targetMm),
    gapMm: Math.min(a.gapMm, b.gapMm),
    reachMm: Math.max(a.reachMm, b.reachMm),
    otherPx: Math.min(a.otherPx, b.otherPx),
    bigPx: Math.min(a.bigPx, b.bigPx),
    words: Math.max(a.words, b.words),
    parts: Math.max(a.parts, b.parts),
  };
}

/** Rounding of a layout, not a move. */
const STILL_PX = 1.5;

function notePlaces(toll: Toll, { glance }: Seen, look: Look, where: string): void {
  for (const [part, { x, y }] of Object.entries(glance?.places ?? {})) {
    notePlace(toll, `${look.device.name} ${look.text} ${look.hand} ${part}`, { x, y, first: where });
  }
}

function notePlace(toll: Toll, key: string, { x, y, first: where }: Place): void {
  const first = toll.places.get(key);
  if (!first) {
    toll.places.set(key, { x, y, first: where });
    return;
  }
  const moved = Math.hypot(x - first.x, y - first.y);
  toll.wander = Math.max(toll.wander, moved);
  if (moved > STILL_PX)
    toll.faults.push({
      row: 'place',
      what: `${where}: ${key} is ${moved.toFixed(0)} px from where it is in ${first.first}`,
    });
}

/** What stood still within each of two walks must stand in one place in both. */
export function added(a: Toll, b: Toll): Toll {
  const both: Toll = {
    screens: a.screens + b.screens,
    axeRuns: a.axeRuns + b.axeRuns,
    axeRules: Math.max(a.axeRules, b.axeRules),
    faults: [...a.faults, ...b.faults],
    worst: worse(a.worst, b.worst),
    places: new Map(a.places),
    wander: Math.max(a.wander, b.wander),
  };
  for (const [key, place] of b.places) notePlace(both, key, place);
  return both;
}

export function seenRows(toll: Toll): TableRow[] {
  const { worst } = toll;
  const of = (...rows: (Row | 'axe' | 'place')[]) =>
    toll.faults.filter(({ row }) => rows.includes(row)).map(({ what }) => what);
  return [
    {
      what: 'accessibility (axe)',
      must: '0 violations',
      measured: `${of('axe').length} in ${toll.axeRuns} screens, up to ${toll.axeRules} rules`,
      faults: of('axe'),
    },
    {
      what: 'targets that safety hangs on',
      must: '>= 15 mm',
      measured: `smallest ${worst.targetMm.toFixed(1)} mm`,
      faults: of('targets'),
    },
    {
      what: 'gaps beside them',
      must: '>= 3 mm',
      measured: `smallest ${worst.gapMm.toFixed(1)} mm`,
      faults: of('gaps'),
    },
    {
      what: 'reach of the thumb to them',
      must: `<= ${REACH_MM} mm`,
      measured: `farthest ${worst.reachMm.toFixed(0)} mm`,
      faults: of('reach'),
    },
    {
      what: 'all other targets',
      must: '>= 24 px (WCAG 2.2, 2.5.8)',
      measured: `smallest ${worst.otherPx.toFixed(0)} px`,
      faults: of('others'),
    },
    {
      what: 'clock and action, at capitals of 0.70 em',
      must: '>= 121 px phone, 103 px tablet',
      measured: `smallest ${worst.bigPx.toFixed(0)} px`,
      faults: of('big'),
    },
    {
      what: 'at a glance',
      must: '<= 3 things, <= 12 words',
      measured: `${worst.parts} things, ${worst.words} words`,
      faults: of('glance'),
    },
    {
      what: 'the same place in every state',
      must: '0 px',
      measured: `moved by ${toll.wander.toFixed(1)} px at most`,
      faults: of('place'),
    },
    {
      what: 'nothing cut, overlapping or scrolling sideways',
      must: '0 in 100 and 200 % text',
      measured: `${of('fit').length} in ${toll.screens} screens`,
      faults: of('fit'),
    },
  ];
}
