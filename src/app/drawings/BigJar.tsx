// One jar as large as the stage: the contents, and the headspace that must stay empty above them.

import { NARROW_PX, type Box } from './geometry.ts';

interface BigJarProps extends Box {
  headspace: string;
}

export function BigJar({ w, h, headspace }: BigJarProps) {
  const wall = w < NARROW_PX ? 7 : 10;
  const left = wall;
  const right = w - wall;
  const neckIn = Math.min(70, w * 0.08);
  const shoulder = h * 0.17;
  const floor = h - wall;
  const r = 40;
  const body = `M${left + neckIn} 6 V${shoulder * 0.7} C${left + neckIn} ${shoulder * 0.95} ${left} ${shoulder} ${left} ${shoulder * 1.45} V${floor - r} Q${left} ${floor} ${left + r} ${floor} H${right - r} Q${right} ${floor} ${right} ${floor - r} V${shoulder * 1.45} C${right} ${shoulder} ${right - neckIn} ${shoulder * 0.95} ${right - neckIn} ${shoulder * 0.7} V6`;
  const level = shoulder * 0.62;
  return (
    <>
      <clipPath id="in-jar">
        <path d={`${body} Z`} />
      </clipPath>
      <g clipPath="url(#in-jar)">
        <rect className="mass" x={0} y={level} width={w} height={h} />
        <path className="surface" d={`M0 ${level} H${w}`} />
      </g>
      <path className="glassware" d={body} strokeWidth={wall} />
      <path
        className="thread"
        d={`M${left + neckIn - 10} ${level * 0.42} h16 M${left + neckIn - 10} ${level * 0.8} h16 M${right - neckIn + 10} ${level * 0.42} h-16 M${right - neckIn + 10} ${level * 0.8} h-16`}
      />
      {w >= NARROW_PX && (
        <g className="target">
          <path
            className="bracket"
            d={`M${right - neckIn - 26} 6 h14 M${right - neckIn - 19} 6 V${level} M${right - neckIn - 26} ${level} h14`}
          />
          <text x={right - neckIn - 36} y={level / 2 + 9} textAnchor="end">
            {headspace}
          </text>
        </g>
      )}
    </>
  );
}
