// Where things lie on the stage: heights and levels in pixels from what the kitchen knows.

import { scaleLinear } from 'd3-scale';
import type { PotView } from '../../kitchen/view.ts';

export interface Box {
  w: number;
  h: number;
}

/** Below this width the vessel has no handles and its legend is set smaller. */
export const NARROW_PX = 700;

export interface VesselBox {
  left: number;
  right: number;
  rim: number;
  floor: number;
  wall: number;
}

/** A vessel as wide as the stage, standing on its burner. */
export function vesselBox({ w, h }: Box): VesselBox {
  const wall = w < NARROW_PX ? 9 : 13;
  const handle = w < NARROW_PX ? 4 : 44;
  return {
    left: handle + wall / 2,
    right: w - handle - wall / 2,
    rim: wall,
    floor: h - flameHeight({ w, h }),
    wall,
  };
}

export function flameHeight({ h }: Box): number {
  return Math.min(64, Math.max(36, h * 0.09));
}

/** The pot is drawn a little deeper than what it held at the start, so that the boil has room to rise. */
const ROOM_ABOVE_START = 1.18;

export interface Levels {
  now: { low: number; likely: number; high: number };
  target: number;
}

/** Heights of the surface, of its uncertainty and of the target line, in pixels from the top. */
export function potLevels(pot: PotView, vessel: VesselBox): Levels {
  const byDepth = pot.depthM && pot.startDepthM && pot.targetDepthM;
  const start = byDepth ? (pot.startDepthM ?? 0) : pot.startMassKg;
  const y = scaleLinear([0, Math.max(start, 1e-9) * ROOM_ABOVE_START], [vessel.floor, vessel.rim]).clamp(
    true,
  );
  const now = byDepth && pot.depthM ? pot.depthM : pot.massKg;
  return {
    now: { low: y(now.low), likely: y(now.likely), high: y(now.high) },
    target: y(byDepth ? (pot.targetDepthM ?? 0) : pot.targetMassKg),
  };
}

/** The outline of a pot: open at the top, round at the floor. */
export function potPath({ left, right, rim, floor }: VesselBox): string {
  const r = Math.min(46, (floor - rim) / 4);
  return `M${left} ${rim} V${floor - r} Q${left} ${floor} ${left + r} ${floor} H${right - r} Q${right} ${floor} ${right} ${floor - r} V${rim}`;
}

/** The surface of what is in the pot, from wall to wall: flat, gently moving, or thrown up by a full boil. */
export function surfacePath(
  kind: 'still' | 'simmer' | 'rolling',
  left: number,
  right: number,
  y: number,
): string {
  if (kind === 'still') return `M${left} ${y} H${right}`;
  const step = kind === 'simmer' ? 44 : 62;
  const rise = kind === 'simmer' ? 5 : 17;
  const count = Math.max(2, Math.round((right - left) / step));
  const width = (right - left) / count;
  let path = `M${left} ${y}`;
  for (let i = 0; i < count; i += 1) {
    const up = i % 2 === 0 ? -rise : rise * (kind === 'simmer' ? 1 : 0.25);
    path += ` q${width / 2} ${up * 2} ${width} 0`;
  }
  return path;
}

/** Steady pseudo-random numbers, so that bubbles stay where they are between two drawings. */
export function scatter(count: number, salt: number): { x: number; y: number; size: number }[] {
  const part = (n: number) => {
    const s = Math.sin(n * 12.9898 + salt * 78.233) * 43758.5453;
    return s - Math.floor(s);
  };
  return Array.from({ length: count }, (_, i) => ({ x: part(i + 1), y: part(i + 101), size: part(i + 201) }));
}
