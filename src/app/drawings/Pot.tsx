// The pot in cross-section: what is in it, how it boils, how far it must still go, and the flame under it.

import type { PotView } from '../../kitchen/view.ts';
import { Flame } from './Flame.tsx';
import {
  NARROW_PX,
  potLevels,
  potPath,
  scatter,
  surfacePath,
  vesselBox,
  type Box,
  type VesselBox,
} from './geometry.ts';

interface PotProps extends Box {
  pot: PotView;
  /** What the target line says, e.g. "stop at 2.9 in". */
  aim: string;
  heatWord: string;
}

export function Pot({ w, h, pot, aim, heatWord }: PotProps) {
  const vessel = vesselBox({ w, h });
  const levels = potLevels(pot, vessel);
  const top = levels.now.likely;
  const { left, right, floor } = vessel;
  return (
    <>
      <clipPath id="in-pot">
        <path d={`${potPath(vessel)} Z`} />
      </clipPath>
      <g clipPath="url(#in-pot)">
        <path className="mass" d={`${surfacePath(pot.surface, left, right, top)} V${floor} H${left} Z`} />
        {pot.surface !== 'still' && <Bubbles vessel={vessel} top={top} rolling={pot.surface === 'rolling'} />}
        <LevelRange vessel={vessel} low={levels.now.low} high={levels.now.high} />
        {pot.scorchRisk !== 'none' && <Scorch vessel={vessel} high={pot.scorchRisk === 'high'} />}
        <path className="surface" d={surfacePath(pot.surface, left, right, top)} />
        {pot.foam && <Foam vessel={vessel} top={top} />}
      </g>
      <TargetLine vessel={vessel} y={levels.target} />
      <path className="enamel" d={potPath(vessel)} strokeWidth={vessel.wall} />
      <Rim vessel={vessel} handles={w >= NARROW_PX} />
      <Flame
        left={left}
        right={right}
        top={floor + vessel.wall}
        bottom={h}
        heat={pot.heat}
        word={heatWord}
        legend={aim}
      />
    </>
  );
}

function Rim({ vessel: { left, right, rim, wall }, handles }: { vessel: VesselBox; handles: boolean }) {
  const y = rim + 58;
  return (
    <g className="enamel" strokeWidth={wall}>
      <path
        d={`M${left - wall / 2} ${rim} h${wall * 1.8} M${right + wall / 2} ${rim} h${-wall * 1.8}`}
        strokeLinecap="round"
      />
      {handles && (
        <path
          d={`M${left} ${y} h-18 q-18 0 -18 18 v22 q0 18 18 18 h18 M${right} ${y} h18 q18 0 18 18 v22 q0 18 -18 18 h-18`}
        />
      )}
    </g>
  );
}

function Bubbles({ vessel, top, rolling }: { vessel: VesselBox; top: number; rolling: boolean }) {
  const depth = vessel.floor - top;
  const dots = scatter(rolling ? 26 : 14, rolling ? 7 : 3);
  return (
    <g className={rolling ? 'bubbles rolling' : 'bubbles'}>
      {dots.map((dot, i) => (
        <circle
          key={i}
          cx={vessel.left + dot.x * (vessel.right - vessel.left)}
          cy={top + 12 + dot.y * depth * (rolling ? 0.96 : 0.5)}
          r={(rolling ? 7 : 3) + dot.size * (rolling ? 13 : 5)}
          style={{ animationDelay: `${-dot.size * 2}s` }}
        />
      ))}
    </g>
  );
}

function LevelRange({
  vessel: { left, right },
  low,
  high,
}: {
  vessel: VesselBox;
  low: number;
  high: number;
}) {
  const height = Math.max(0, low - high);
  if (height < 3) return null;
  return <rect className="hatch" x={left} width={right - left} y={high} height={height} fill="url(#hatch)" />;
}

function Foam({ vessel: { left, right }, top }: { vessel: VesselBox; top: number }) {
  const count = Math.round((right - left) / 26);
  return (
    <g className="foam">
      {scatter(count, 11).map((dot, i) => (
        <circle
          key={i}
          cx={left + ((i + 0.5) / count) * (right - left)}
          cy={top - 6 - dot.y * 9}
          r={9 + dot.size * 9}
        />
      ))}
    </g>
  );
}

/** Scorching starts on the floor of the pot: jagged dark teeth that grow from it. */
function Scorch({ vessel: { left, right, floor }, high }: { vessel: VesselBox; high: boolean }) {
  const count = Math.round((right - left) / 28);
  const step = (right - left) / count;
  const rise = high ? 30 : 14;
  const teeth = Array.from(
    { length: count },
    (_, i) => `L${left + (i + 0.5) * step} ${floor - rise} L${left + (i + 1) * step} ${floor - 4}`,
  );
  return <path className="scorch" d={`M${left} ${floor} ${teeth.join(' ')} L${right} ${floor} Z`} />;
}

function TargetLine({ vessel: { left, right }, y }: { vessel: VesselBox; y: number }) {
  return (
    <g className="target">
      <path d={`M${left} ${y - 13} l24 13 l-24 13 Z M${right} ${y - 13} l-24 13 l24 13 Z`} />
      <path className="target-line" d={`M${left + 30} ${y} H${right - 30}`} />
    </g>
  );
}
