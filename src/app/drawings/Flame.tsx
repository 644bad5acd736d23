// The flame: tall and close for high heat, small for low, a bare burner when it is off. The word stands beside it.

import { NARROW_PX } from './geometry.ts';

interface FlameProps {
  left: number;
  right: number;
  top: number;
  bottom: number;
  heat: 'off' | 'high' | 'low';
  word: string;
  /** What the mark in the drawing above stands for, at the end of the hob line. */
  legend: string;
}

export function Flame({ left, right, top, bottom, heat, word, legend }: FlameProps) {
  const room = bottom - top - 6;
  const height = heat === 'high' ? room : room * 0.5;
  const step = heat === 'high' ? 22 : 40;
  const letter = right - left < NARROW_PX ? 8.5 : 10;
  const from = left + 26 + word.length * letter;
  const to = legend === '' ? right - 30 : right - 26 - legend.length * letter;
  const count = Math.max(2, Math.round((to - from) / step));
  const width = heat === 'high' ? 15 : 11;
  const tongues = Array.from({ length: count }, (_, i) => from + ((i + 0.5) / count) * (to - from));
  return (
    <g className={`flame ${heat}`}>
      <path className="burner" d={`M${left + 20} ${bottom - 3} H${right - 20}`} />
      {heat !== 'off' &&
        tongues.map((x, i) => (
          <path
            key={x}
            className="tongue"
            style={{ animationDelay: `${-(i % 5) * 0.23}s` }}
            d={`M${x} ${bottom - 6 - height} q${width} ${height * 0.62} 0 ${height} q${-width} ${-height * 0.38} 0 ${-height} Z`}
          />
        ))}
      <g className="plate-word">
        <text x={left + 8} y={bottom - room / 2 + 3} dominantBaseline="middle">
          {word}
        </text>
        <text x={right - 8} y={bottom - room / 2 + 3} textAnchor="end" dominantBaseline="middle">
          {legend}
        </text>
      </g>
    </g>
  );
}
