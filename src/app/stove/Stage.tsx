// The ground of the cooking screen: the vessel in hand, as large as the screen allows.

import { memo } from 'react';
import type { Catalogue } from '../../kitchen/ports.ts';
import { BigJar } from '../drawings/BigJar.tsx';
import { Bench } from '../drawings/Bench.tsx';
import { CannerPot } from '../drawings/CannerPot.tsx';
import { fruitHue, WATER_HUE } from '../drawings/hue.ts';
import { Plate } from '../drawings/Plate.tsx';
import { Pot } from '../drawings/Pot.tsx';
import { JarRow } from '../drawings/Row.tsx';
import { NARROW_PX, type Box } from '../drawings/geometry.ts';
import { sayDepth, sayLength, sayMass } from '../plan/units.ts';
import type { Units } from '../actions.ts';
import { potWords } from './potWords.ts';
import type { Scene } from './scene.ts';
import { useBox } from './useBox.ts';
import { useOncePainted } from './useOncePainted.ts';

interface StageProps {
  scene: Scene;
  /** Is there a clock in the glance zone? */
  clock: boolean;
  /** Does the evening stand under it in its short form? */
  planned: boolean;
  /** Do the words above it stand on a plate of their own? */
  warned: boolean;
  catalogue: Catalogue;
  units: Units;
}

/** Drawn anew only when what stands there has changed: a word that is said moves nothing on the stove. */
export const Stage = memo(function Stage(props: StageProps) {
  const drawn = useOncePainted(props);
  const [ref, box] = useBox<HTMLDivElement>('stage');
  return (
    <div className="stage" ref={ref}>
      {drawn && <Scenery {...drawn} box={box} />}
    </div>
  );
});

const Scenery = memo(function Scenery({
  scene,
  clock,
  planned,
  warned,
  catalogue,
  units,
  box,
}: StageProps & { box: Box }) {
  const hue = scene.kind === 'canner' ? WATER_HUE : fruitHue(scene.batch.plan.request.fruit);
  return (
    <svg
      className="hued"
      style={{ '--hue': hue } as React.CSSProperties}
      width={box.w}
      height={box.h}
      role="img"
      aria-label={describe(scene, catalogue, units)}
    >
      <defs>
        <pattern
          id="hatch"
          width="12"
          height="12"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0 V12" className="hatch-line" />
        </pattern>
      </defs>
      <Drawing
        scene={scene}
        box={standing(scene, box, clock)}
        room={warned ? ROOM_PX.warned : planned ? ROOM_PX.planned : ROOM_PX.alone}
        catalogue={catalogue}
        units={units}
      />
    </svg>
  );
});

interface DrawingProps extends Pick<StageProps, 'scene' | 'catalogue' | 'units'> {
  box: Box;
  room: number;
}

function Drawing({ scene, box, room, catalogue, units }: DrawingProps) {
  const word = (key: string, params?: Record<string, string | number>) =>
    catalogue.text(params ? { key, params } : { key });
  switch (scene.kind) {
    case 'pot': {
      const pot = scene.batch.pot;
      if (!pot) return null;
      const aim =
        pot.targetDepthM === null ? sayMass(pot.targetMassKg, units) : sayDepth(pot.targetDepthM, units);
      return (
        <Pot
          {...box}
          pot={pot}
          aim={word('screen.draw.aim', { aim })}
          heatWord={word(`screen.heat.${pot.heat}`)}
        />
      );
    }
    case 'canner':
      return (
        <CannerPot
          {...box}
          canner={scene.canner}
          jarHues={scene.jarHues}
          heatWord={word(`screen.boil.${scene.canner.boil}`)}
          coverWord={word(`screen.draw.cover.${units}`)}
        />
      );
    case 'plate':
      return <Plate {...box} spooned={scene.spooned} room={room} />;
    case 'fill':
      return (
        <BigJar
          {...box}
          headspace={word('screen.draw.headspace', { space: sayLength(scene.batch.plan.headspaceMm, units) })}
        />
      );
    case 'jars':
      return <JarRow {...box} jars={scene.batch.jars} on={scene.on} room={room} />;
    case 'bench':
      return (
        <Bench
          {...box}
          room={room}
          jars={scene.batch.plan.jars.makeReady}
          weight={sayMass(scene.batch.plan.request.fruitMassKg, units)}
        />
      );
  }
}

/** What stands at the foot of a tablet's or a desktop's stage reaches no word above it. Measured on each. */
const ROOM_PX = { alone: 230, planned: 150, warned: 100 };

/** Name and clock of the glance zone on a phone, in CSS pixels. */
const PHONE_SLOT_PX = 182;

/** On a phone, what stands on the bench takes the place of the clock when there is none. */
function standing(scene: Scene, box: Box, clock: boolean): Box {
  const onBench = scene.kind === 'bench' || scene.kind === 'plate';
  return onBench && !clock && box.w < NARROW_PX ? { w: box.w, h: Math.min(box.h, PHONE_SLOT_PX) } : box;
}

/** What the drawing shows, for those who hear the page. */
function describe(scene: Scene, catalogue: Catalogue, units: Units): string {
  if (scene.kind === 'pot' && scene.batch.pot) return potWords(scene.batch.pot, catalogue, units);
  if (scene.kind === 'canner') return catalogue.text({ key: `screen.alt.canner.${scene.canner.boil}` });
  if (scene.kind === 'fill') {
    const space = sayLength(scene.batch.plan.headspaceMm, units);
    return catalogue.text({ key: 'screen.alt.fill', params: { space } });
  }
  return catalogue.text({ key: `screen.alt.${scene.kind}` });
}
