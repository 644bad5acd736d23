// One picture of what there is to see, as large as its place: the drawing, its name, and words that teach the same.

import { memo } from 'react';
import type { Catalogue } from '../../../kitchen/ports.ts';
import type { SightId } from '../../../kitchen/sights.ts';
import { useOncePainted } from '../../stove/useOncePainted.ts';
import * as canner from './canner.tsx';
import * as jars from './jars.tsx';
import { SHEET } from './parts.tsx';
import * as plates from './plates.tsx';
import * as pots from './pots.tsx';

const drawings: Record<SightId, () => React.ReactNode> = {
  simmer: pots.Simmer,
  boil: pots.Boil,
  rollingBoil: pots.RollingBoil,
  cannerBoil: canner.CannerBoil,
  boilLost: canner.BoilLost,
  foam: pots.Foam,
  spoonCoats: plates.SpoonCoats,
  plateHeld: plates.PlateHeld,
  plateWrinkled: plates.PlateWrinkled,
  plateRunny: plates.PlateRunny,
  headspace: jars.Headspace,
  wipeRim: jars.WipeRim,
  fingertipTight: jars.FingertipTight,
  waterOverJars: canner.WaterOverJars,
  lidUp: jars.LidUp,
  lidDown: jars.LidDown,
  scorch: pots.Scorch,
  steamBurns: pots.SteamBurns,
  mash: pots.Mash,
  stirIn: pots.StirIn,
  coldPlate: plates.ColdPlate,
  hotJars: jars.HotJars,
  ventedBlender: canner.VentedBlender,
  funnel: jars.Funnel,
  bubblesOut: jars.BubblesOut,
  liftUpright: canner.LiftUpright,
  restStill: jars.RestStill,
  label: jars.Label,
  potDepth: pots.PotDepth,
  stirBottom: pots.StirBottom,
  strain: canner.Strain,
  nickedRim: jars.NickedRim,
  lidAway: canner.LidAway,
  coolStand: canner.CoolStand,
};

interface SightProps {
  sight: SightId;
  catalogue: Catalogue;
  /** The fruit in hand gives the colour. */
  hue?: number;
}

interface StageSightProps {
  sight: SightId;
  /** In the place of the vessel, of the clock, or small beside the caption where the words leave no room. */
  where: 'stage-sight' | 'slot-sight' | 'sight-chip';
  /** What it shows, and what a touch on it does. */
  label: string;
  openLabel: string;
  hue: number;
  onOpen: () => void;
}

/** The picture in the place of the vessel: it takes the room that the words of the glance leave; a touch opens it large. */
export const StageSight = memo(function StageSight({
  sight,
  where,
  label,
  openLabel,
  hue,
  onOpen,
}: StageSightProps) {
  const drawn = useOncePainted(sight);
  const colour = useOncePainted(hue);
  return (
    <div className={`${where} sight`}>
      <button
        type="button"
        className="sight-open"
        aria-haspopup="dialog"
        aria-label={openLabel}
        onClick={onOpen}
      />
      <svg
        className="hued"
        style={colours(colour ?? hue)}
        viewBox={`0 0 ${SHEET.w} ${SHEET.h}`}
        role="img"
        aria-label={label}
      >
        {drawn && <Strokes sight={drawn} />}
      </svg>
    </div>
  );
});

const Strokes = memo(function Strokes({ sight }: { sight: SightId }) {
  const Drawing = drawings[sight];
  return <Drawing />;
});

function colours(hue: number): React.CSSProperties {
  return { '--hue': hue, '--fruit': hue } as React.CSSProperties;
}

/** The colour of what is in the pot where no fruit is in hand: a damson's. */
const DAMSON = 330;

export function Sight({ sight, catalogue, hue = DAMSON }: SightProps) {
  const Drawing = drawings[sight];
  return (
    <figure className="sight hued" style={colours(hue)}>
      <svg
        viewBox={`0 0 ${SHEET.w} ${SHEET.h}`}
        role="img"
        aria-label={catalogue.text({ key: `see.${sight}.alt` })}
      >
        <Drawing />
      </svg>
      <figcaption>{catalogue.text({ key: `see.${sight}` })}</figcaption>
    </figure>
  );
}
