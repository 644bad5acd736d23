// What the pictures share: the pot, the jar in the hand's height, tools, fingers, steam, and the marks for right and wrong.

import { useId } from 'react';
import { potPath, scatter, surfacePath } from '../geometry.ts';
import { SmallJar } from '../SmallJar.tsx';

/** Every picture is drawn on a sheet of this size. */
export const SHEET = { w: 400, h: 300 } as const;

/** The pot and the canner, cut open. */
export const POT = { left: 56, right: 344, rim: 70, floor: 236, wall: 9 } as const;

type Surface = 'still' | 'simmer' | 'rolling';

type Hue = React.CSSProperties;

/** Water is blue whatever is in the jars; the jars in it keep the colour of their fruit. */
export const WATER_HUE = { '--hue': 225 } as Hue;
export const FRUIT_HUE = { '--hue': 'var(--fruit)' } as Hue;

interface VesselProps {
  level: number;
  surface?: Surface;
  of?: 'mass' | 'water';
  flame?: 'off' | 'low' | 'high' | 'none';
  /** Drawn inside the contents, cut off by the wall. */
  children?: React.ReactNode;
}

export function Vessel({ level, surface = 'still', of = 'mass', flame = 'none', children }: VesselProps) {
  const { left, right, floor, rim, wall } = POT;
  const outline = potPath(POT);
  const id = useId();
  const contents = of === 'water' ? WATER_HUE : FRUIT_HUE;
  return (
    <>
      <clipPath id={id}>
        <path d={`${outline} Z`} />
      </clipPath>
      <g clipPath={`url(#${id})`} className="hued" style={contents}>
        <path className="mass" d={`${surfacePath(surface, left, right, level)} V${floor} H${left} Z`} />
        <path className="surface" d={surfacePath(surface, left, right, level)} />
        {children}
      </g>
      <path className="enamel" d={outline} strokeWidth={wall} />
      <path
        className="enamel"
        strokeWidth={wall}
        strokeLinecap="round"
        d={`M${left - 14} ${rim} h16 M${right - 2} ${rim} h16`}
      />
      {flame !== 'none' && <Fire heat={flame} />}
    </>
  );
}

function Fire({ heat }: { heat: 'off' | 'low' | 'high' }) {
  const top = POT.floor + 12;
  const tall = heat === 'high' ? 38 : 18;
  const step = heat === 'high' ? 24 : 40;
  const count = Math.floor((POT.right - POT.left - 40) / step);
  return (
    <g>
      <path className="burner" d={`M${POT.left + 10} 293 H${POT.right - 10}`} />
      {heat !== 'off' &&
        Array.from({ length: count }, (_, i) => {
          const x = POT.left + 20 + (i + 0.5) * ((POT.right - POT.left - 40) / count);
          const from = Math.max(top, 288 - tall);
          const height = 288 - from;
          return (
            <path
              key={i}
              className="tongue"
              style={{ animationDelay: `${-(i % 5) * 0.23}s` }}
              d={`M${x} ${from} q${height * 0.36} ${height * 0.62} 0 ${height} q${-height * 0.36} ${-height * 0.38} 0 ${-height} Z`}
            />
          );
        })}
    </g>
  );
}

interface BubblesProps {
  count: number;
  /** Least and most radius. */
  size: readonly [number, number];
  top: number;
  rolling?: boolean;
  /** Only along the walls, as in a simmer. */
  edge?: boolean;
  salt?: number;
}

export function Bubbles({ count, size: [least, most], top, rolling, edge, salt = 4 }: BubblesProps) {
  const width = POT.right - POT.left;
  return (
    <g className={rolling ? 'bubbles rolling sight-bubbles' : 'bubbles sight-bubbles'}>
      {scatter(count, salt).map((dot, i) => {
        const across = edge ? (i % 2 === 0 ? 0.04 + dot.x * 0.14 : 0.82 + dot.x * 0.14) : dot.x;
        return (
          <circle
            key={i}
            cx={POT.left + across * width}
            cy={top + 14 + dot.y * (POT.floor - top - 26)}
            r={least + dot.size * (most - least)}
            style={{ animationDelay: `${-dot.size * 2}s` }}
          />
        );
      })}
    </g>
  );
}

/** A spoon whose bowl is at (x, y), its handle rising at an angle from upright, in degrees. */
export function Spoon({
  x,
  y,
  lean = 20,
  long = 150,
}: {
  x: number;
  y: number;
  lean?: number;
  long?: number;
}) {
  return (
    <g transform={`translate(${x} ${y}) rotate(${lean})`}>
      <path className="tool" d={`M-5 -16 L-4 ${-long} Q0 ${-long - 6} 4 ${-long} L5 -16 Z`} />
      <ellipse className="tool" cx={0} cy={0} rx={15} ry={23} />
    </g>
  );
}

/** A flat-ended spoon that reaches every part of the floor; its edge is at (x, y). */
export function Scraper({
  x,
  y,
  lean = 20,
  long = 170,
}: {
  x: number;
  y: number;
  lean?: number;
  long?: number;
}) {
  return (
    <g transform={`translate(${x} ${y}) rotate(${lean})`}>
      <path className="tool" d={`M-5 -44 L-4 ${-long} Q0 ${-long - 6} 4 ${-long} L5 -44 Z`} />
      <path className="tool" d="M-20 0 Q-20 -40 -5 -50 H5 Q20 -40 20 0 Z" />
    </g>
  );
}

/** A finger whose tip is at (x, y); it comes from above, turned by so many degrees. */
export function Finger({
  x,
  y,
  turn = 0,
  long = 76,
}: {
  x: number;
  y: number;
  turn?: number;
  long?: number;
}) {
  return (
    <g transform={`translate(${x} ${y}) rotate(${turn})`}>
      <path className="skin" d={`M-17 ${-long} V-18 Q-17 0 0 0 Q17 0 17 -18 V${-long}`} />
      <path className="nail" d="M-9 -12 Q-9 -26 0 -26 Q9 -26 9 -12 Q9 -5 0 -5 Q-9 -5 -9 -12 Z" />
    </g>
  );
}

export function Steam({ x, y, turn = 0, big }: { x: number; y: number; turn?: number; big?: boolean }) {
  const rise = big ? 46 : 30;
  const wave = `q${-rise * 0.34} ${-rise * 0.4} 0 ${-rise * 0.72} q${rise * 0.34} ${-rise * 0.34} 0 ${-rise * 0.72}`;
  return (
    <g className="steam" transform={`translate(${x} ${y}) rotate(${turn})`}>
      <path d={`M-16 0 ${wave} M0 6 ${wave} M16 0 ${wave}`} />
    </g>
  );
}

/** An arrow along a path; the head sits at its end, turned by so many degrees. */
export function Arrow({ d, head: [x, y, turn] }: { d: string; head: readonly [number, number, number] }) {
  return (
    <g className="arrow">
      <path d={d} />
      <path className="head" d="M0 0 L-18 -11 L-18 11 Z" transform={`translate(${x} ${y}) rotate(${turn})`} />
    </g>
  );
}

/** Right: a tick in a ring. Wrong: a cross in a broken square. Two shapes before any colour. */
export function Mark({ x, y, good }: { x: number; y: number; good?: boolean }) {
  return (
    <g className={good ? 'mark good' : 'mark bad'} transform={`translate(${x} ${y})`}>
      {good ? (
        <>
          <circle r={24} />
          <path d="M-11 1 L-3 10 L12 -9" />
        </>
      ) : (
        <>
          <rect x={-23} y={-23} width={46} height={46} />
          <path d="M-11 -11 L11 11 M11 -11 L-11 11" />
        </>
      )}
    </g>
  );
}

/** A distance between two heights: what must stay empty, or what must cover. */
export function Bracket({ x, top, bottom }: { x: number; top: number; bottom: number }) {
  return (
    <g className="target">
      <path
        className="bracket"
        d={`M${x - 10} ${top} h20 M${x} ${top} V${bottom} M${x - 10} ${bottom} h20`}
      />
    </g>
  );
}

/** A clock face; the wedge is the share of the hour that is meant. */
export function Clock({
  x,
  y,
  r,
  share,
  struck,
}: {
  x: number;
  y: number;
  r: number;
  share: number;
  struck?: boolean;
}) {
  const angle = share * 2 * Math.PI;
  const [ex, ey] = [x + r * 0.8 * Math.sin(angle), y - r * 0.8 * Math.cos(angle)];
  return (
    <g className="clock-face">
      <circle cx={x} cy={y} r={r} />
      {share < 1 && (
        <path
          className="wedge"
          d={`M${x} ${y} V${y - r * 0.8} A${r * 0.8} ${r * 0.8} 0 ${share > 0.5 ? 1 : 0} 1 ${ex} ${ey} Z`}
        />
      )}
      <path d={`M${x} ${y} V${y - r * 0.66} M${x} ${y} L${ex} ${ey}`} />
      {struck && (
        <path className="strike" d={`M${x - r * 1.1} ${y + r * 1.1} L${x + r * 1.1} ${y - r * 1.1}`} />
      )}
    </g>
  );
}

/** Jars upright on the rack of the canner; tops at `top`. */
export function RackedJars({ top }: { top: number }) {
  const rack = POT.floor - 14;
  return (
    <g className="hued" style={FRUIT_HUE}>
      {[84, 167, 250].map((x) => (
        <SmallJar key={x} x={x} y={top} w={66} h={rack - top} fill={1} lid="on" />
      ))}
      <path className="rack" d={`M${POT.left + 4} ${rack + 4} H${POT.right - 4}`} />
    </g>
  );
}

export function Drop({ x, y, size = 1 }: { x: number; y: number; size?: number }) {
  return (
    <path
      className="drop"
      transform={`translate(${x} ${y}) scale(${size})`}
      d="M0 -12 Q9 2 9 7 A9 9 0 0 1 -9 7 Q-9 2 0 -12 Z"
    />
  );
}
