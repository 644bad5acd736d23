// Takes what the cook measured in the pot, in the cook's own units: weight, depth or temperature, or a look at it.

import { useState } from 'react';
import type { Message } from '../../../machines/kitchen/effects.ts';
import type { Foretold } from '../../kitchen/view.ts';
import type { Answer, AppProps } from '../actions.ts';
import { shareNames, SHARES, type Share } from '../../kitchen/shares.ts';
import { readDepthM, readMassKg, readTempC, type Read } from '../plan/entry.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';
import { Pick as PickOne } from './Pick.tsx';
import { Sheet } from './Sheet.tsx';

interface ReadingSheetProps extends Pick<AppProps, 'catalogue' | 'settings'> {
  title: string;
  /** What each reading would tell of this pot now. */
  foretold: Foretold | null;
  onAnswer: (answer: Answer) => void;
  onClose: () => void;
}

export function ReadingSheet(props: ReadingSheetProps) {
  const { title, foretold, catalogue, settings, onAnswer, onClose } = props;
  const [typed, setTyped] = useState({ mass: '', depth: '', temp: '' });
  const [share, setShare] = useState<Share | 'unknown'>('unknown');
  const [asked, setAsked] = useState(false);
  const word = (key: string) => catalogue.text({ key });
  const read = {
    mass: readOrNothing(typed.mass, readMassKg, settings.units),
    depth: readOrNothing(typed.depth, readDepthM, settings.units),
    temp: readOrNothing(typed.temp, readTempC, settings.units),
  };
  const answer = toAnswer(read, share);
  const wrong = Object.values(read).some((one) => one !== null && !one.ok);
  const send = (event: React.FormEvent) => {
    event.preventDefault();
    if (answer && !wrong) onAnswer(answer);
    else setAsked(true);
  };
  return (
    <Sheet title={title} closeLabel={word('screen.cancel')} onClose={onClose}>
      <form className="reading" onSubmit={send} noValidate>
        <p>{word('screen.reading.title')}</p>
        {foretold && <p>{catalogue.text(leftNow(foretold))}</p>}
        {(['mass', 'depth', 'temp'] as const).map((what) => (
          <Measured
            key={what}
            label={word(`screen.reading.${what}`)}
            unit={lowerFirst(word(`screen.unit.${what}.${settings.units}`))}
            value={typed[what]}
            tells={foretold && tellsOf(what, foretold, catalogue)}
            trouble={asked || typed[what] !== '' ? troubleOf(read[what], catalogue) : null}
            onChange={(value) => setTyped({ ...typed, [what]: value })}
          />
        ))}
        <PickOne
          name="share"
          under="screen.reading"
          values={['unknown', ...shareNames]}
          now={share}
          word={word}
          onPick={setShare}
          tells={foretold && tellsOf('share', foretold, catalogue)}
        />
        {asked && !answer && !wrong && <p className="trouble">{word('screen.reading.none')}</p>}
        <button type="submit" className="choice main">
          <span className="choice-label">{word('screen.count.done')}</span>
        </button>
      </form>
    </Sheet>
  );
}

type MaybeRead = Read<number> | null;

function readOrNothing(
  text: string,
  read: (text: string, units: AppProps['settings']['units']) => Read<number>,
  units: AppProps['settings']['units'],
): MaybeRead {
  return text.trim() === '' ? null : read(text, units);
}

function toAnswer(
  read: { mass: MaybeRead; depth: MaybeRead; temp: MaybeRead },
  share: Share | 'unknown',
): Answer | null {
  const reading = {
    ...(read.mass?.ok ? { massKg: read.mass.value } : {}),
    ...(read.depth?.ok ? { depthM: read.depth.value } : {}),
    ...(read.temp?.ok ? { tempC: read.temp.value } : {}),
    ...(share === 'unknown' ? {} : { fractionOfStart: SHARES[share] }),
  };
  return Object.keys(reading).length === 0 ? null : { kind: 'reading', ...reading };
}

const measures = { mass: 'massKg', depth: 'depthM', temp: 'tempC', share: 'fractionOfStart' } as const;

const leftNow = ({ leftMinutes: { low, high } }: Foretold): Message => ({
  key: 'screen.reading.left',
  params: { low: Math.round(low), high: Math.round(high) },
});

function tellsOf(what: keyof typeof measures, { by }: Foretold, catalogue: AppProps['catalogue']) {
  const narrowed = by[measures[what]];
  if (narrowed === null) return null;
  if (narrowed === 'little') {
    const better = what === 'depth' && by.massKg !== 'little';
    return catalogue.text({ key: better ? 'screen.reading.little.depth' : 'screen.reading.little' });
  }
  const span = Math.max(1, Math.round(narrowed.spanMinutes));
  return catalogue.text({ key: 'screen.reading.tells', params: { span } });
}

function troubleOf(read: MaybeRead, catalogue: AppProps['catalogue']): string | null {
  return read && !read.ok ? catalogue.text(read.says) : null;
}

interface MeasuredProps {
  label: string;
  unit: string;
  value: string;
  tells: string | null;
  trouble: string | null;
  onChange: (value: string) => void;
}

function Measured({ label, unit, value, tells, trouble, onChange }: MeasuredProps) {
  return (
    <label className={trouble ? 'measured wrong' : 'measured'}>
      <span>
        {label}
        {tells && <span className="tells">{tells}</span>}
      </span>
      <span className="measured-entry">
        <input
          inputMode="decimal"
          autoComplete="off"
          value={value}
          aria-invalid={trouble !== null}
          onChange={(event) => onChange(event.target.value)}
        />
        <span>{unit}</span>
      </span>
      {trouble && <span className="trouble">{trouble}</span>}
    </label>
  );
}
