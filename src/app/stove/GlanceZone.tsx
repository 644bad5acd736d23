// The primary zone: which, how long, what to do. The same three things in the same place in every state.

import type { Catalogue } from '../../kitchen/ports.ts';
import type { CannerView } from '../../kitchen/view.ts';
import { ProcessTape } from '../drawings/ProcessTape.tsx';
import type { ClockFace } from './clock.ts';
import type { Glance } from './glance.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';
import { useBox } from './useBox.ts';

interface GlanceZoneProps {
  glance: Glance;
  canner: CannerView | null;
  now: number;
  catalogue: Catalogue;
  /** What stands in the clock's place while there is none. */
  clockless: React.ReactNode;
}

export function GlanceZone({ glance, canner, now, catalogue, clockless }: GlanceZoneProps) {
  return (
    <section
      className={`glance tone-${glance.tone}`}
      aria-label={catalogue.text({ key: 'screen.region.glance' })}
    >
      <h1 className="which">
        <span className="which-name">{glance.which}</span>{' '}
        <span className="which-state">{lowerFirst(glance.state)}</span>
      </h1>
      <div className="time">
        <Clock face={glance.face} voids={voidsBefore(canner)} catalogue={catalogue} />
        {canner && (canner.voids.length > 0 || canner.clock?.kind === 'until') && (
          <Tape canner={canner} now={now} catalogue={catalogue} />
        )}
        {glance.face === null && clockless}
      </div>
      <p className="act">{glance.act}</p>
    </section>
  );
}

/** The runs that did not count, beside the clock of one that does. */
const voidsBefore = (canner: CannerView | null): number =>
  canner?.clock?.kind === 'until' ? canner.voids.length : 0;

interface ClockProps {
  face: ClockFace | null;
  voids: number;
  catalogue: Catalogue;
}

function Clock({ face, voids, catalogue }: ClockProps) {
  if (!face) return <p className="clock none" />;
  const unit = catalogue.text({ key: `screen.unit.${face.unit}` });
  return (
    <p
      className={`clock ${face.urgent ? 'urgent' : ''} ${face.unit} ${face.fourDigits ? 'four-digits' : ''}`}
      role="timer"
    >
      <span className="numerals">{face.numerals}</span>
      <span className="clock-words">
        <b>{lowerFirst(unit)}</b>{' '}
        <span>
          {lowerFirst(catalogue.text(face.label))}
          {voids > 0 && ' '}
          {voids > 0 && <Voids count={voids} catalogue={catalogue} />}
        </span>
      </span>
    </p>
  );
}

/** In words, for a run on the tape is mostly too short to have its own in it. */
function Voids({ count, catalogue }: { count: number; catalogue: Catalogue }) {
  return (
    <span className="void-word">
      {catalogue.text({ key: 'screen.tape.voids', params: { voids: count } })}
    </span>
  );
}

function Tape({ canner, now, catalogue }: { canner: CannerView; now: number; catalogue: Catalogue }) {
  const [ref, box] = useBox<HTMLDivElement>('tape');
  const clock = canner.clock?.kind === 'until' ? canner.clock : null;
  const alt = catalogue.text({ key: 'screen.tape', params: { voids: canner.voids.length } });
  return (
    <div className="tape-box" ref={ref} role="img" aria-label={alt}>
      <ProcessTape
        {...box}
        now={now}
        clock={clock}
        voids={canner.voids}
        voidWord={catalogue.text({ key: 'screen.tape.void' })}
      />
    </div>
  );
}
