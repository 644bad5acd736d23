// The canner in cross-section: jars on the rack, water over them, and the boil as it really is.

import type { CannerView } from '../../kitchen/view.ts';
import { Flame } from './Flame.tsx';
import { potPath, scatter, surfacePath, vesselBox, type Box, type VesselBox } from './geometry.ts';
import { SmallJar } from './SmallJar.tsx';

interface CannerPotProps extends Box {
  canner: CannerView;
  /** One for each jar, the hue of what is in it. */
  jarHues: number[];
  heatWord: string;
  coverWord: string;
}

export function CannerPot({ w, h, canner, jarHues, heatWord, coverWord }: CannerPotProps) {
  const vessel = vesselBox({ w, h });
  const jars = jarHues.length;
  const jarHeight = Math.min(150, (vessel.floor - vessel.rim) * 0.34);
  const rack = vessel.floor - 16;
  const jarTop = rack - jarHeight;
  const water = jars > 0 ? jarTop - jarHeight * 0.32 : vessel.floor - (vessel.floor - vessel.rim) * 0.5;
  const surface = { none: 'still', heating: 'simmer', full: 'rolling', lost: 'still' } as const;
  return (
    <>
      <clipPath id="in-canner">
        <path d={`${potPath(vessel)} Z`} />
      </clipPath>
      <g clipPath="url(#in-canner)">
        <path
          className="water"
          d={`${surfacePath(surface[canner.boil], vessel.left, vessel.right, water)} V${vessel.floor} H${vessel.left} Z`}
        />
        <Boil vessel={vessel} top={water} boil={canner.boil} />
        <JarsOnRack vessel={vessel} hues={jarHues} top={jarTop} height={jarHeight} />
        <path className="surface" d={surfacePath(surface[canner.boil], vessel.left, vessel.right, water)} />
        <path className="rack" d={`M${vessel.left} ${rack + 2} H${vessel.right}`} />
      </g>
      {jars > 0 && <Cover x={vessel.right - 24} top={water} bottom={jarTop} />}
      <path className="enamel" d={potPath(vessel)} strokeWidth={vessel.wall} />
      <Flame
        left={vessel.left}
        right={vessel.right}
        top={vessel.floor + vessel.wall}
        bottom={h}
        heat={canner.boil === 'none' ? 'off' : 'high'}
        word={heatWord}
        legend={jars > 0 ? coverWord : ''}
      />
    </>
  );
}

function JarsOnRack({
  vessel,
  hues,
  top,
  height,
}: {
  vessel: VesselBox;
  hues: number[];
  top: number;
  height: number;
}) {
  const count = hues.length;
  if (count === 0) return null;
  const inside = vessel.right - vessel.left - 36;
  const width = Math.min(height * 0.62, inside / count - 8);
  const step = Math.min(inside / count, width * 1.5);
  const first = (vessel.left + vessel.right) / 2 - (step * count) / 2 + (step - width) / 2;
  return (
    <>
      {hues.map((hue, i) => (
        <g key={i} className="hued" style={{ '--hue': hue } as React.CSSProperties}>
          <SmallJar x={first + i * step} y={top} w={width} h={height} fill={1} lid="on" />
        </g>
      ))}
    </>
  );
}

function Boil({ vessel, top, boil }: { vessel: VesselBox; top: number; boil: CannerView['boil'] }) {
  const count = { none: 0, heating: 10, full: 34, lost: 3 }[boil];
  return (
    <g className={boil === 'full' ? 'bubbles rolling' : 'bubbles'}>
      {scatter(count, 5).map((dot, i) => (
        <circle
          key={i}
          cx={vessel.left + dot.x * (vessel.right - vessel.left)}
          cy={top + 10 + dot.y * (vessel.floor - top)}
          r={boil === 'full' ? 6 + dot.size * 14 : 3 + dot.size * 4}
          style={{ animationDelay: `${-dot.size * 2}s` }}
        />
      ))}
    </g>
  );
}

/** The bracket that shows an inch or two of water above the lids. */
function Cover({ x, top, bottom }: { x: number; top: number; bottom: number }) {
  return (
    <g className="target">
      <path className="bracket" d={`M${x - 8} ${top} h16 M${x} ${top} V${bottom} M${x - 8} ${bottom} h16`} />
    </g>
  );
}
