// The frame both plots of the reduction share: its size and the axis of time.

import type { ScaleLinear } from 'd3-scale';
import { sayDuration } from '../plan/units.ts';

export const W = 560;
export const H = 240;
export const PAD = { left: 12, right: 14, top: 30, bottom: 34 };

/** Half of the longest label; nearer to the edge than this, the middle of it would be cut. */
const HALF_LABEL = 46;

function anchorAt(at: number, tick: number): 'start' | 'middle' | 'end' {
  if (tick === 0) return 'start';
  return at > W - HALF_LABEL ? 'end' : 'middle';
}

/** Minutes along the foot of the plot. */
export function PlotAxis({ x }: { x: ScaleLinear<number, number> }) {
  return (
    <>
      <path className="plot-axis" d={`M${PAD.left} ${H - PAD.bottom} H${W - PAD.right}`} />
      {x.ticks(4).map((tick) => (
        <g key={tick} className="plot-tick">
          <path d={`M${x(tick)} ${H - PAD.bottom} v6`} />
          <text x={x(tick)} y={H - 9} textAnchor={anchorAt(x(tick), tick)}>
            {sayDuration(tick)}
          </text>
        </g>
      ))}
    </>
  );
}
