// The corner of a practice kitchen where the simulated stove stands: a button, and the sheet behind it.

import { useReducer, useState, useSyncExternalStore } from 'react';
import type { Message, Urgency } from '../../../machines/kitchen/effects.ts';
import type { KitchenView } from '../../kitchen/view.ts';
import type { AppProps } from '../actions.ts';
import {
  look,
  surfaceOf,
  cannerSurfaceOf,
  type Act,
  type Finding,
  type Heat,
  type Place,
  type Scene,
} from '../../rehearsal/index.ts';
import { Sight } from '../drawings/sights/Sight.tsx';
import type { SightId } from '../../kitchen/sights.ts';
import { Sheet } from '../sheets/Sheet.tsx';
import type { Pacing } from './pacing.ts';
import type { Rehearsal } from './rehearsal.ts';
import { useTelling } from './useTelling.ts';

interface StoveProps extends Pick<AppProps, 'catalogue'> {
  view: KitchenView;
  rehearsal: Rehearsal;
}

export interface CornerProps extends StoveProps, Pick<AppProps, 'ear'> {
  pacing: Pacing | null;
  /** The cook has another stove, and looks at that. */
  elsewhere: boolean;
  say: (message: Message, of: string, urgency: Urgency) => void;
}

export function RehearsalCorner({ view, rehearsal, catalogue, ear, pacing, elsewhere, say }: CornerProps) {
  const [open, setOpen] = useState(false);
  // Whoever can be heard may be across the room, and has no stove to look at; who cooks by hand looks here.
  const listens = useSyncExternalStore(ear.subscribe, () => ear.now().kind === 'listening');
  const [wished, wish] = useState<boolean | null>(null);
  const telling = wished ?? (listens && !elsewhere);
  useTelling(telling, { view, rehearsal, catalogue }, say);
  const word = (key: string) => catalogue.text({ key });
  if (view.batches.length === 0) return null;
  return (
    <>
      <button type="button" className="choice small rehearsal-open" onClick={() => setOpen(true)}>
        {word('rehearse.open')}
        {pacing && <Pace pacing={pacing} pace={view.pace} catalogue={catalogue} />}
      </button>
      {open && (
        <Sheet
          title={word('rehearse.title')}
          closeLabel={word('screen.close')}
          onClose={() => setOpen(false)}
        >
          <label className="field telling">
            <input type="checkbox" checked={telling} onChange={() => wish(!telling)} />{' '}
            {word('rehearse.tell')}
          </label>
          {pacing && <p>{catalogue.text({ key: 'rehearse.time', params: { pace: view.pace } })}</p>}
          <Stove {...{ view, rehearsal, catalogue }} />
        </Sheet>
      )}
    </>
  );
}

/** How time goes now; either word has the room of the longer. */
function Pace({ pacing, pace, catalogue }: { pacing: Pacing; pace: number } & Pick<AppProps, 'catalogue'>) {
  const unhurried = useSyncExternalStore(pacing.subscribe, () => pacing.unhurried);
  return (
    <span className="rehearsal-pace">
      {catalogue.text(
        unhurried ? { key: 'screen.practice.real' } : { key: 'screen.practice.fast', params: { pace } },
      )}
    </span>
  );
}

function Stove({ view, rehearsal, catalogue }: StoveProps) {
  // What a hand does is seen at once, not at the clock's next beat.
  const [, seeAtOnce] = useReducer((acts: number) => acts + 1, 0);
  const scene = rehearsal.at(view.now);
  const word = (key: string) => catalogue.text({ key });
  if (!scene) return <p>{word('rehearse.nothing')}</p>;
  const does = (done: Act) => {
    rehearsal.act(done, view.now);
    seeAtOnce();
  };
  const review = <Review findings={rehearsal.review(view.now)} catalogue={catalogue} />;
  // Once the jars are out, how it went is what the sheet is opened for.
  const isDone = scene.told.some(({ event }) => event.type === 'jars.out' || event.type === 'batch.stopped');
  return (
    <div className="rehearsal">
      {isDone && review}
      <p>{word('rehearse.says')}</p>
      <Vessel
        scene={scene}
        place="pot"
        heat={heatOf(scene.hands.potDial)}
        does={does}
        catalogue={catalogue}
      />
      <Vessel
        scene={scene}
        place="canner"
        heat={heatOf(scene.hands.cannerDial)}
        does={does}
        catalogue={catalogue}
      />
      <Seen scene={scene} place="plate" catalogue={catalogue} />
      <Seen scene={scene} place="jars" catalogue={catalogue} />
      {!isDone && review}
    </div>
  );
}

function Review({ findings, catalogue }: Pick<AppProps, 'catalogue'> & { findings: Finding[] }) {
  return (
    <section className="review">
      <h3>{catalogue.text({ key: 'rehearse.review' })}</h3>
      <ul>
        {findings.map(({ message, grave }) => (
          <li key={message.key} className={grave ? 'grave' : undefined}>
            {grave && <strong>{catalogue.text({ key: 'rehearse.grave' })} </strong>}
            {catalogue.text(message)}
          </li>
        ))}
      </ul>
    </section>
  );
}

interface SeenProps extends Pick<AppProps, 'catalogue'> {
  scene: Scene;
  place: Place;
}

/** What is to be seen there: told, and drawn where there is a drawing of it. */
function Seen({ scene, place, catalogue }: SeenProps) {
  const sight = drawn(scene, place);
  return (
    <section>
      <h3>{catalogue.text({ key: `rehearse.${place}` })}</h3>
      {sight && <Sight sight={sight} catalogue={catalogue} />}
      <p>
        {look(scene, place)
          .map((message) => catalogue.text(message))
          .join(' ')}
      </p>
    </section>
  );
}

const HEATS: readonly Heat[] = ['off', 'warm', 'low', 'high'];
const heatOf = (dial: number): Heat =>
  dial === 0 ? 'off' : dial < 0.2 ? 'warm' : dial < 0.8 ? 'low' : 'high';

function Vessel(props: SeenProps & { place: 'pot' | 'canner'; heat: Heat; does: (done: Act) => void }) {
  const { scene, place, heat, does, catalogue } = props;
  const word = (key: string) => catalogue.text({ key });
  const [read, setRead] = useState<'scale' | 'spoon' | null>(null);
  return (
    <div>
      <Seen {...props} />
      <fieldset className="field choices-field">
        <legend>{word(`rehearse.heat.${place}`)}</legend>
        <span className="segments">
          {HEATS.map((one) => (
            <label key={one}>
              <input
                type="radio"
                name={`rehearsal-${place}`}
                checked={one === heat}
                onChange={() => does({ do: `${place}.heat`, heat: one })}
              />
              <span>{word(`rehearse.heat.${one}`)}</span>
            </label>
          ))}
        </span>
      </fieldset>
      {place === 'pot' && (
        <p className="examples">
          <button type="button" className="choice small" onClick={() => does({ do: 'pot.stir' })}>
            {word('rehearse.stir')}
          </button>
          {(['scale', 'spoon'] as const).map((tool) => (
            <button key={tool} type="button" className="choice small" onClick={() => setRead(tool)}>
              {word(`rehearse.${tool}`)}
            </button>
          ))}
          <span role="status">
            {read &&
              look(scene, read)
                .map((message) => catalogue.text(message))
                .join(' ')}
          </span>
        </p>
      )}
    </div>
  );
}

/** The picture that looks like it. */
function drawn(scene: Scene, place: Place): SightId | null {
  const surfaces = {
    still: null,
    steaming: null,
    simmer: 'simmer',
    boil: 'boil',
    rolling: 'rollingBoil',
  } as const;
  if (place === 'pot') return scene.stove.pot.scorch > 0.15 ? 'scorch' : surfaces[surfaceOf(scene.stove)];
  if (place === 'canner') {
    const surface = cannerSurfaceOf(scene.stove);
    return surface === 'flat' ? 'boilLost' : surface === 'rolling' ? 'cannerBoil' : null;
  }
  if (place !== 'plate' || scene.plate === null) return null;
  return look(scene, 'plate')[0]?.key === 'sense.plate.held'
    ? 'plateHeld'
    : look(scene, 'plate')[0]?.key === 'sense.plate.runny'
      ? 'plateRunny'
      : null;
}
