// Everything that is on the stove, side by side on one hob line: tap one to look at it.

import type { Catalogue } from '../../kitchen/ports.ts';
import type { BatchView, CannerView, ClockView, KitchenView } from '../../kitchen/view.ts';
import type { Actions } from '../actions.ts';
import { fruitHue } from '../drawings/hue.ts';
import { clockFace } from './clock.ts';
import { short as shortState } from './glance.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';

interface RailProps {
  view: KitchenView;
  current: string | null;
  catalogue: Catalogue;
  focus: Actions['focus'];
}

export function Rail({ view, current, catalogue, focus }: RailProps) {
  const count = things(view);
  if (count < 2) return null;
  return (
    <nav
      className={count > FEW ? 'rail crowded' : 'rail'}
      aria-label={catalogue.text({ key: 'screen.region.rail' })}
    >
      {view.batches.map((batch) => (
        <Plate
          key={batch.id}
          thing={batch}
          name={batch.name}
          current={current}
          now={view.now}
          catalogue={catalogue}
          focus={focus}
        >
          <PotIcon batch={batch} />
        </Plate>
      ))}
      {view.canners.map((canner) => (
        <Plate
          key={canner.id}
          thing={canner}
          name={catalogue.text({ key: 'screen.which.canner' })}
          current={current}
          now={view.now}
          catalogue={catalogue}
          focus={focus}
        >
          <CannerIcon canner={canner} />
        </Plate>
      ))}
    </nav>
  );
}

/** More than these stand close together, each with less about it. */
const FEW = 2;

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
  thing: BatchView | CannerView;
  name: string;
  current: string | null;
  now: number;
  catalogue: Catalogue;
  focus: Actions['focus'];
  children: React.ReactNode;
}

function Plate({ thing, name, current, now, catalogue, focus, children }: PlateProps) {
  const clock: ClockView | null = thing.clock;
  const face = clock && clockFace(clock, now);
  const unit = face && lowerFirst(catalogue.text({ key: `screen.unit.${face.unit}` }));
  const state = lowerFirst(catalogue.text(shortState(thing.stateWord)));
  return (
    <button
      type="button"
      className={thing.warning ? 'plate-on-stove warned' : 'plate-on-stove'}
      aria-current={thing.id === current ? 'true' : undefined}
      onClick={() => focus(thing.id)}
    >
      {children}
      <span className="plate-name">{name}</span>
      <span className="plate-short" aria-hidden="true">
        {shortName(name)}
      </span>
      <span className="plate-clock">{face ? `${face.numerals} ${unit}` : state}</span>
      <span className="plate-numerals" aria-hidden="true">
        {face ? face.numerals : ''}
      </span>
    </button>
  );
}

const LETTERS = 8;

/** The first word of a name, cut like on a jar's lid where it is long. */
function shortName(name: string): string {
  const first = name.split(' ')[0] ?? name;
  return first.length > LETTERS ? `${first.slice(0, LETTERS - 2)}.` : first;
}

function PotIcon({ batch }: { batch: BatchView }) {
  const level = batch.pot ? Math.min(1, batch.pot.massKg.likely / batch.pot.startMassKg) : 0;
  const top = 28 - level * 20;
  return (
    <svg
      className="icon hued"
      width="40"
      height="34"
      viewBox="0 0 40 34"
      aria-hidden="true"
      style={{ '--hue': fruitHue(batch.plan.request.fruit) } as React.CSSProperties}
    >
      {batch.pot && <path className="icon-mass" d={`M6 ${top} H34 V28 H6 Z`} />}
      <path
        className="icon-line"
        d={
          batch.pot
            ? 'M5 5 V29 H35 V5 M1 8 h4 M35 8 h4'
            : 'M11 3 H29 M12 5 V9 C7 11 7 12 7 15 V30 H33 V15 C33 12 33 11 28 9 V5'
        }
      />
      {batch.warning && <path className="icon-warn" d="M20 8 L29 24 H11 Z" />}
    </svg>
  );
}

function CannerIcon({ canner }: { canner: CannerView }) {
  return (
    <svg
      className="icon hued"
      width="40"
      height="34"
      viewBox="0 0 40 34"
      aria-hidden="true"
      style={{ '--hue': 225 } as React.CSSProperties}
    >
      <path
        className="icon-mass"
        d={canner.boil === 'full' ? 'M6 13 q3.5 -8 7 0 t7 0 t7 0 t7 0 V29 H6 Z' : 'M6 13 H34 V29 H6 Z'}
      />
      <path className="icon-line" d="M5 3 V30 H35 V3 M10 29 V19 h6 V29 M18 29 V19 h6 V29 M26 29 V19 h5 V29" />
    </svg>
  );
}
