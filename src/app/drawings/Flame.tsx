// The flame: tall and close for high heat, small for low, a bare burner when it is off. The word stands beside it.

interface FlameProps {
  left: number;
  right: number;
  top: number;
  bottom: number;
  heat: 'off' | 'high' | 'low';
  word: string;
}

export function Flame({ left, right, top, bottom, heat, word }: FlameProps) {
  const room = bottom - top - 6;
  const height = heat === 'high' ? room : room * 0.5;
  const step = heat === 'high' ? 22 : 40;
  const from = left + 46;
  const to = right - 46;
  const count = Math.max(3, Math.round((to - from) / step));
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
        <text x={(left + right) / 2} y={bottom - room / 2 + 3} textAnchor="middle" dominantBaseline="middle">
          {word}
        </text>
      </g>
    </g>
  );
}
