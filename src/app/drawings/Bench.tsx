// The bench before the fire: the scale with its heap of fruit, and the jars made ready.

import { NARROW_PX, scatter, type Box } from './geometry.ts';
import { SmallJar } from './SmallJar.tsx';

interface BenchProps extends Box {
  jars: number;
  weight: string;
  /** How high it may stand under the words, px. */
  room: number;
}

export function Bench({ w, h, jars, weight, room }: BenchProps) {
  const bench = h - 24;
  const size = Math.min(h * 0.44, room * 1.09, w * 0.42);
  const scaleX = w < NARROW_PX ? 12 : 60;
  return (
    <>
      <rect className="board" x={0} y={bench} width={w} height={18} />
      <Scale x={scaleX} bench={bench} size={size} weight={weight} />
      <Ready from={scaleX + size + 24} to={w - 16} bench={bench} count={jars} height={size * 0.62} />
    </>
  );
}

function Scale({ x, bench, size, weight }: { x: number; bench: number; size: number; weight: string }) {
  const pan = bench - size * 0.42;
  const fruit = scatter(9, 2);
  return (
    <g>
      {fruit.map((dot, i) => {
        const row = i < 5 ? 0 : i < 8 ? 1 : 2;
        const place = i < 5 ? i - 2 : i < 8 ? i - 6 : 0;
        return (
          <circle
            key={i}
            className="fruit"
            cx={x + size / 2 + place * size * 0.155}
            cy={pan - size * (0.085 + row * 0.13)}
            r={size * (0.075 + dot.size * 0.014)}
          />
        );
      })}
      <path
        className="enamel-thin"
        d={`M${x} ${pan} H${x + size} M${x + size * 0.5} ${pan} v${size * 0.08}`}
      />
      <path
        className="scale-body"
        d={`M${x + size * 0.14} ${bench} L${x + size * 0.24} ${pan + size * 0.08} H${x + size * 0.76} L${x + size * 0.86} ${bench} Z`}
      />
      <text
        className="scale-text"
        x={x + size / 2}
        y={bench - size * 0.07}
        textAnchor="middle"
        fontSize={Math.max(17, size * 0.12)}
      >
        {weight}
      </text>
    </g>
  );
}

function Ready({
  from,
  to,
  bench,
  count,
  height,
}: {
  from: number;
  to: number;
  bench: number;
  count: number;
  height: number;
}) {
  const width = Math.min(height * 0.58, (to - from) / Math.max(1, count) - 8);
  if (width < 8) return null;
  return (
    <>
      {Array.from({ length: count }, (_, i) => (
        <SmallJar
          key={i}
          x={to - (i + 1) * (width + 8)}
          y={bench - width * 1.7}
          w={width}
          h={width * 1.7}
          fill={0}
          lid="off"
        />
      ))}
    </>
  );
}
