// The plate test: a cold plate with a spoonful on it and a line drawn through the middle.

import type { Box } from './geometry.ts';

interface PlateProps extends Box {
  spooned: boolean;
  /** How high it may stand under the words, px. */
  room: number;
}

export function Plate({ w, h, spooned, room }: PlateProps) {
  const cx = w / 2;
  const rx = Math.min(w * 0.46, 520);
  const ry = Math.min(h * 0.2, rx * 0.3, room * 0.45);
  const cy = h - ry - 18;
  const dollop = rx * 0.46;
  return (
    <>
      <ellipse className="dish-shadow" cx={cx} cy={cy + 12} rx={rx} ry={ry} />
      <ellipse className="dish" cx={cx} cy={cy} rx={rx} ry={ry} />
      <ellipse className="dish-inner" cx={cx} cy={cy - 2} rx={rx * 0.74} ry={ry * 0.68} />
      {spooned ? (
        <>
          <path
            className="dollop"
            d={`M${cx - dollop} ${cy} C${cx - dollop * 1.05} ${cy - ry * 0.85} ${cx + dollop * 1.05} ${cy - ry * 0.85} ${cx + dollop} ${cy} C${cx + dollop * 0.8} ${cy + ry * 0.5} ${cx - dollop * 0.8} ${cy + ry * 0.5} ${cx - dollop} ${cy} Z`}
          />
          <path
            className="furrow"
            d={`M${cx - dollop * 0.2} ${cy + ry * 0.34} Q${cx - 4} ${cy - ry * 0.1} ${cx + dollop * 0.26} ${cy - ry * 0.62}`}
          />
        </>
      ) : (
        <path className="frost" d={frost(cx, cy, Math.min(ry * 0.5, 34))} />
      )}
    </>
  );
}

/** The six-armed crystal that stands for cold. */
function frost(cx: number, cy: number, size: number): string {
  return [0, 60, 120]
    .map((angle) => {
      const a = (angle * Math.PI) / 180;
      const dx = Math.cos(a) * size * 1.6;
      const dy = Math.sin(a) * size * 0.8;
      return `M${cx - dx} ${cy - dy} L${cx + dx} ${cy + dy}`;
    })
    .join(' ');
}
