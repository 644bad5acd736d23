// Pictures of the pot of fruit: how it boils, how it is stirred, skimmed and measured, and how it burns.

import { scatter, surfacePath } from '../geometry.ts';
import { Arrow, Bubbles, Finger, POT, Scraper, SHEET, Spoon, Steam, Vessel } from './parts.tsx';

export function Simmer() {
  return (
    <>
      <Vessel level={126} surface="simmer" flame="low">
        <Bubbles count={14} size={[4, 8]} top={126} edge />
      </Vessel>
      <Steam x={200} y={58} />
    </>
  );
}

/** Left of the spoon it boils; behind the spoon it has gone flat. */
export function Boil() {
  const level = 122;
  const { left, right, floor } = POT;
  const top = `${surfacePath('rolling', left, 196, level)} H${right}`;
  return (
    <>
      <Vessel level={SHEET.h} flame="high">
        <path className="mass" d={`${top} V${floor} H${left} Z`} />
        <Bubbles count={26} size={[5, 11]} top={level} salt={6} />
        <rect className="mass" x={206} y={level + 2} width={right - 206} height={floor - level} />
        <path className="surface" d={top} />
      </Vessel>
      <Spoon x={200} y={164} lean={24} long={140} />
      <Arrow d="M330 96 H262" head={[246, 96, 180]} />
    </>
  );
}

export function RollingBoil() {
  const level = 118;
  const domes = [88, 136, 264, 312];
  return (
    <>
      <Vessel level={level} surface="rolling" flame="high">
        <Bubbles count={34} size={[7, 17]} top={level - 10} rolling salt={7} />
      </Vessel>
      <g className="domes">
        {domes.map((x, i) => (
          <path key={x} d={`M${x - 22} ${level + 3} a22 ${i % 2 ? 26 : 20} 0 0 1 44 0`} />
        ))}
      </g>
      <Spoon x={200} y={160} lean={20} long={140} />
      <Arrow d="M236 82 q40 -18 74 6" head={[316, 94, 40]} />
      <Steam x={110} y={62} big />
    </>
  );
}

export function Foam() {
  const level = 140;
  return (
    <>
      <Vessel level={level} surface="simmer" flame="low" />
      <g className="foam">
        {scatter(26, 11).map((dot, i) => (
          <circle
            key={i}
            cx={224 + (i % 9) * 13 + dot.x * 6}
            cy={level - 3 - Math.floor(i / 9) * 13 - dot.y * 6}
            r={9 + dot.size * 5}
          />
        ))}
      </g>
      <path
        className="tool"
        d="M96 14 Q88 8 84 18 L186 140 Q204 152 280 148 Q300 146 300 140 Q240 144 200 132 Z"
      />
      <Arrow d="M352 120 V52" head={[352, 34, -90]} />
    </>
  );
}

export function Scorch() {
  const { left, right, floor } = POT;
  const teeth = Array.from({ length: 12 }, (_, i) => `l12 ${-14 - (i % 3) * 8} l12 ${14 + (i % 3) * 8}`).join(
    ' ',
  );
  return (
    <>
      <Vessel level={132} surface="simmer" flame="high">
        <path className="scorch" d={`M${left} ${floor} V${floor - 8} ${teeth} V${floor} Z`} />
        <path className="scorch" d={`M${right - 1} ${floor} h1 Z`} />
      </Vessel>
      <Spoon x={236} y={196} lean={28} long={180} />
      <path
        className="smoke"
        d="M120 122 q-20 -24 0 -46 q22 -22 0 -50 M158 122 q-16 -20 0 -38 q16 -18 0 -42"
      />
    </>
  );
}

export function Mash() {
  const level = 150;
  const fruit: readonly (readonly [number, number, number])[] = [
    [84, 158, 20],
    [120, 196, 24],
    [96, 214, 17],
    [280, 162, 22],
    [316, 200, 20],
    [272, 212, 19],
    [238, 150, 16],
    [160, 152, 17],
  ];
  return (
    <>
      <Vessel level={level}>
        {fruit.map(([x, y, r]) => (
          <ellipse key={`${x} ${y}`} className="fruit" cx={x} cy={y} rx={r * 1.1} ry={r * 0.86} />
        ))}
      </Vessel>
      <path className="tool" d="M188 12 Q200 4 212 12 V112 H188 Z" />
      <path className="rods" d="M194 112 Q150 124 152 176 M206 112 Q250 124 248 176" />
      <rect className="tool" x={128} y={174} width={144} height={20} rx={8} />
      <path className="rods" d="M150 206 v12 M183 206 v12 M217 206 v12 M250 206 v12" />
      <Arrow d="M300 36 V86" head={[300, 104, 90]} />
    </>
  );
}

/** Grains fall in at the right, and are the smaller the deeper they have sunk; on the floor lies none. */
export function StirIn() {
  const level = 116;
  const grains: readonly (readonly [x: number, y: number, side: number])[] = [
    [276, 20, 13],
    [300, 30, 13],
    [286, 48, 13],
    [310, 62, 13],
    [274, 76, 13],
    [298, 92, 13],
    [284, 134, 10],
    [304, 142, 9],
    [266, 152, 7],
    [290, 164, 6],
    [272, 178, 4],
  ];
  return (
    <>
      <Vessel level={level}>
        <path className="swirl" d="M112 186 Q176 224 246 190" />
        <path className="swirl" d="M132 152 Q170 168 204 156" />
      </Vessel>
      {grains.map(([x, y, side]) => (
        <rect
          key={`${x} ${y}`}
          className="grain"
          width={side}
          height={side}
          transform={`translate(${x} ${y}) rotate(${(x * 7 + y) % 90})`}
        />
      ))}
      <Spoon x={166} y={196} lean={-14} long={180} />
      <Arrow d="M214 42 Q160 66 96 44" head={[78, 34, 208]} />
    </>
  );
}

export function PotDepth() {
  const [start, stop] = [104, 168];
  return (
    <>
      <Vessel level={stop} surface="simmer" flame="off" />
      <path
        className="tool"
        d="M190 8 Q200 -2 210 8 V208 Q216 214 216 220 Q216 230 200 230 Q184 230 184 220 Q184 214 190 208 Z"
      />
      <path className="notch" d={`M184 ${start} h32 M184 ${stop} h32`} />
      <path className="target-line" d={`M228 ${start} H${POT.right - 12}`} />
      <g className="target">
        <path d={`M${POT.left + 6} ${stop - 12} l22 12 l-22 12 Z`} />
      </g>
      <Arrow d={`M300 ${start + 6} V${stop - 22}`} head={[300, stop - 6, 90]} />
    </>
  );
}

export function StirBottom() {
  const floor = POT.floor - 8;
  return (
    <>
      <Vessel level={120} surface="simmer" flame="low">
        <path className="swirl" d="M284 222 q44 -6 40 -42 q-6 -26 -34 -16 M272 206 q24 -8 20 -26" />
      </Vessel>
      <Scraper x={214} y={floor} lean={22} long={205} />
      <Arrow d={`M180 ${floor - 8} H112`} head={[94, floor - 8, 180]} />
      <Arrow d={`M252 ${floor - 8} H286`} head={[304, floor - 8, 0]} />
    </>
  );
}

/** The lid is tipped open at the right: there the steam comes out, and the hand holds it from the left. */
export function SteamBurns() {
  return (
    <>
      <g transform="translate(4 64) scale(0.78)">
        <Vessel level={140} surface="rolling" flame="high">
          <Bubbles count={20} size={[6, 14]} top={130} rolling />
        </Vessel>
        <g transform="translate(52 58) rotate(-24)">
          <path className="tool" d="M-10 0 Q144 -50 298 0 V12 H-10 Z" />
          <path className="tool" d="M126 -28 v-20 q0 -10 10 -10 h16 q10 0 10 10 v20 Z" />
        </g>
      </g>
      <path className="danger-zone" d="M276 116 L392 8 V196 L290 132 Z" />
      <Steam x={302} y={112} turn={72} big />
      <Steam x={290} y={94} turn={42} big />
      <Finger x={120} y={30} turn={-58} long={150} />
    </>
  );
}
