// Everything that is on the stove, side by side on one hob line: tap one to look at it.

import { memo } from 'react';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { BatchView, CannerView, ClockView, KitchenView } from '../../kitchen/view.ts';
import type { Actions } from '../actions.ts';
import { cannerLabel } from '../cannerLabel.ts';
import { fruitHue, WATER_HUE } from '../drawings/hue.ts';
import { clockFace } from './clock.ts';
import { short as shortState } from './glance.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';
import { nameWithin } from './names.ts';
import { useOncePainted } from './useOncePainted.ts';

interface RailProps {
  view: KitchenView;
  current: string | null;
  catalogue: Catalogue;
  focus: Actions['focus'];
}

/** A frame behind what is looked at, so that no frame lays out both; but who stands there, and by what name, at once. */
export function Rail(props: RailProps) {
  const drawn = useOncePainted(props);
  return <Plates {...(drawn && called(drawn.view) === called(props.view) ? drawn : props)} />;
}

const called = ({ batches, canners }: KitchenView): string =>
  [...batches, ...canners].map(({ id, name }) => `${id} ${name}`).join();

function Plates({ view, current, catalogue, focus }: RailProps) {
  if (things(view) < 2) return null;
  // A canner that is seen with its batch already stands here all the same, and takes its room.
  const plates = view.batches.length + view.canners.length;
  const crowded = plates > FEW;
  const full = plates > MANY;
  const plate = (thing: BatchView | CannerView, name: string) => ({
    id: thing.id,
    whole: name,
    name: crowded ? nameWithin(name, PLATE_EM) : name,
    short: nameWithin(name, full ? FULL_PLATE_EM : PHONE_PLATE_EM),
    shown: thing.id === current,
    warned: thing.warning !== null,
    focus,
    ...timeOf(thing, view.now, catalogue),
  });
  return (
    <nav
      className={full ? 'rail crowded full' : crowded ? 'rail crowded' : 'rail'}
      aria-label={catalogue.text({ key: 'screen.region.rail' })}
    >
      {view.batches.map((batch) => (
        <Plate key={batch.id} {...plate(batch, batch.name)} {...potIcon(batch)} />
      ))}
      {view.canners.map((canner) => (
        <Plate
          key={canner.id}
          {...plate(canner, cannerLabel(canner.name, catalogue))}
          icon={canner.boil === 'full' ? 'canner boils' : 'canner'}
          hue={WATER_HUE}
          top={null}
        />
      ))}
    </nav>
  );
}

/** More than these stand close together, each with less about it. */
const FEW = 2;
/** More than these, six batches and two canners, leave room for a short name only. */
const MANY = 7;

/** A canner that holds nothing but the one batch is seen with it already. */
function things(view: KitchenView): number {
  const [only, ...others] = view.batches;
  const alone = only && others.length === 0;
  const canners = view.canners.filter(
    (one) => !(alone && one.load.length > 0 && one.load.every((share) => share.batch === only.id)),
  );
  return view.batches.length + canners.length;
}

interface PlateProps {
  id: string;
  /** As it is spoken of; `name` is what there is room for. */
  whole: string;
  name: string;
  /** The same where there is least of it. */
  short: string;
  /** How long, or what it does where no clock runs. */
  time: string;
  numerals: string;
  icon: 'pot' | 'canner' | 'canner boils';
  hue: number;
  /** Where the mass stands in the drawing, px; null where there is a jar and no pot. */
  top: number | null;
  shown: boolean;
  warned: boolean;
  focus: Actions['focus'];
}

/** Each of its props is one word or one number: a second that changes none of them draws nothing. */
const Plate = memo(function Plate({
  id,
  whole,
  name,
  short,
  time,
  numerals,
  icon,
  hue,
  top,
  shown,
  warned,
  focus,
}: PlateProps) {
  return (
    <button
      type="button"
      className={warned ? 'plate-on-stove warned' : 'plate-on-stove'}
      data-name={whole}
      aria-current={shown ? 'true' : undefined}
      onClick={() => focus(id)}
    >
      {icon === 'pot' ? (
        <PotIcon hue={hue} top={top} warned={warned} />
      ) : (
        <CannerIcon hue={hue} boils={icon === 'canner boils'} />
      )}
      <span className="plate-name">{name}</span>
      <span className="plate-short" aria-hidden="true">
        {short}
      </span>
      <span className="plate-clock">{time}</span>
      <span className="plate-numerals" aria-hidden="true">
        {numerals}
      </span>
    </button>
  );
});

function timeOf(thing: BatchView | CannerView, now: number, catalogue: Catalogue) {
  const clock: ClockView | null = thing.clock;
  const face = clock && clockFace(clock, now);
  if (!face) return { time: lowerFirst(catalogue.text(shortState(thing.stateWord))), numerals: '' };
  const unit = lowerFirst(catalogue.text({ key: `screen.unit.${face.unit}` }));
  return { time: `${face.numerals} ${unit}`, numerals: face.numerals };
}

/** Room for a name on a plate in a crowded row, and on a phone, em of the big type. */
const PLATE_EM = 4.3;
const PHONE_PLATE_EM = 3.4;
const FULL_PLATE_EM = 2.9;

function potIcon({ pot, plan }: BatchView): Pick<PlateProps, 'icon' | 'hue' | 'top'> {
  const level = pot && Math.min(1, pot.massKg.likely / pot.startMassKg);
  return {
    icon: 'pot',
    hue: fruitHue(plan.request.fruit),
    top: level === null ? null : Math.round(28 - level * 20),
  };
}

function PotIcon({ hue, top, warned }: Pick<PlateProps, 'hue' | 'top' | 'warned'>) {
  return (
    <svg
      className="icon hued"
      width="40"
      height="34"
      viewBox="0 0 40 34"
      aria-hidden="true"
      style={{ '--hue': hue } as React.CSSProperties}
    >
      {top !== null && <path className="icon-mass" d={`M6 ${top} H34 V28 H6 Z`} />}
      <path
        className="icon-line"
        d={
          top !== null
            ? 'M5 5 V29 H35 V5 M1 8 h4 M35 8 h4'
            : 'M11 3 H29 M12 5 V9 C7 11 7 12 7 15 V30 H33 V15 C33 12 33 11 28 9 V5'
        }
      />
      {warned && <path className="icon-warn" d="M20 8 L29 24 H11 Z" />}
    </svg>
  );
}

function CannerIcon({ hue, boils }: { hue: number; boils: boolean }) {
  return (
    <svg
      className="icon hued"
      width="40"
      height="34"
      viewBox="0 0 40 34"
      aria-hidden="true"
      style={{ '--hue': hue } as React.CSSProperties}
    >
      <path
        className="icon-mass"
        d={boils ? 'M6 13 q3.5 -8 7 0 t7 0 t7 0 t7 0 V29 H6 Z' : 'M6 13 H34 V29 H6 Z'}
      />
      <path className="icon-line" d="M5 3 V30 H35 V3 M10 29 V19 h6 V29 M18 29 V19 h6 V29 M26 29 V19 h5 V29" />
    </svg>
  );
}
