// The evening at a glance, under the vessel: who calls next and when, and the next hour and a half of hands, fires and canner.

import { memo } from 'react';
import { scaleTime } from 'd3-scale';
import { area, curveStepAfter } from 'd3-shape';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { EveningView } from '../../kitchen/evening/shownEvening.ts';
import { timeOfPlan } from '../../kitchen/evening/times.ts';
import { fruitHue } from '../drawings/hue.ts';
import type { Box } from '../drawings/geometry.ts';
import { useBox } from '../stove/useBox.ts';
import { useOncePainted } from '../stove/useOncePainted.ts';
import { cannerWord } from '../cannerLabel.ts';
import { nameWithin } from '../stove/names.ts';
import { widthEm } from '../stove/widths.ts';
import { shortOf, type ShortForm, type Stretch } from './short.ts';

interface ShortLineProps {
  /** Null while no plan stands: its place is kept. */
  evening: EveningView | null;
  now: number;
  catalogue: Catalogue;
  onOpen: () => void;
}

const MINUTE_MS = 60_000;
/** It moves on in steps that the eye does not miss: a quarter of a minute is less than a pixel. */
const STEP_MINUTES = 0.25;

export function ShortLine({ evening, now, catalogue, onOpen }: ShortLineProps) {
  if (!evening || evening.plan.tasks.length === 0) return <div className="short-line" />;
  const minute = (now - evening.plan.request.beganAt) / MINUTE_MS;
  const step = Math.floor(minute / STEP_MINUTES) * STEP_MINUTES;
  return <Short evening={evening} minute={step} catalogue={catalogue} onOpen={onOpen} />;
}

interface ShortProps extends Pick<ShortLineProps, 'catalogue' | 'onOpen'> {
  evening: EveningView;
  minute: number;
}

const Short = memo(function Short({ evening, minute, catalogue, onOpen }: ShortProps) {
  const { plan, agenda } = evening;
  const word = (key: string) => catalogue.text({ key });
  const when = (at: number) =>
    at <= minute + STEP_MINUTES ? word('screen.unit.now') : timeOfPlan(plan.request, at);
  const told = agenda
    .map(({ at, step, names, canner }) => {
      const who = names.join(', ') || cannerWord(canner, word);
      return `${when(at)} ${who}, ${word(`screen.evening.step.${step}`)}`;
    })
    .join('; ');
  const [next] = agenda;
  return (
    <div className="short-line">
      {next && (
        <p className="next-call">
          <b>{when(next.at)}</b> <span>{calledWithin(next.names) || cannerWord(next.canner, word)}</span>
        </p>
      )}
      <Picture plan={plan} minute={minute} told={told} />
      <button
        type="button"
        className="short-open"
        aria-haspopup="dialog"
        aria-label={word('screen.go.evening')}
        onClick={onOpen}
      />
    </div>
  );
});

/** Room for a name beside the time of the next call, em. */
const CALL_EM = 3.9;

/** Several pots at once go by the first of them, and how many more. */
function calledWithin([first, ...others]: readonly string[]): string {
  if (first === undefined) return '';
  const more = others.length > 0 ? ` +${others.length}` : '';
  return nameWithin(first, CALL_EM - widthEm(more)) + more;
}

const Picture = memo(function Picture(props: Omit<LanesProps, 'box'>) {
  const drawn = useOncePainted(props);
  const [ref, box] = useBox<HTMLDivElement>('short-line');
  return (
    <div className="short-box" ref={ref}>
      {drawn && <Lanes {...drawn} box={box} />}
    </div>
  );
});

/** Shares of the height: hands first, for they are what the cook has to give. */
const SHARE = { hands: 0.5, fires: 0.18, canner: 0.26 };
const GAP = 0.03;

interface LanesProps {
  plan: EveningView['plan'];
  minute: number;
  /** What it shows, for those who hear the page. */
  told: string;
  box: Box;
}

const Lanes = memo(function Lanes({ plan, minute, told, box }: LanesProps) {
  const form = shortOf(plan, minute);
  const { beganAt, batches } = plan.request;
  const instant = (at: number) => beganAt + at * MINUTE_MS;
  const time = scaleTime([instant(form.from), instant(form.to)], [NOW_PX, box.w - 2]);
  const x = (at: number) => time(instant(at));
  const hueOf = (name: string | undefined) => {
    const fruit = batches.find((batch) => batch.name === name)?.plan.request.fruit;
    return { '--hue': fruit ? fruitHue(fruit) : 225 } as React.CSSProperties;
  };
  const tops = { fires: box.h * (SHARE.hands + GAP), canner: box.h * (SHARE.hands + SHARE.fires + 2 * GAP) };
  const lane = (rows: readonly Stretch[][], top: number, height: number, kind: 'hands' | 'water') =>
    rows.flatMap((row, i) =>
      row.map((stretch) => (
        <Block
          key={`${kind}${i}${stretch.id}`}
          {...{ stretch, x, kind }}
          ranged={kind === 'hands' && stretch === row.find(({ from }) => from > form.from)}
          y={top + (height / rows.length) * i}
          height={height / rows.length - 1}
          style={hueOf(stretch.names[0])}
        />
      )),
    );
  return (
    <svg width={box.w} height={box.h} role="img" aria-label={told}>
      {time.ticks(6).map((tick) => (
        <path key={tick.getTime()} className="quarter" d={`M${time(tick)} 0 V${box.h}`} />
      ))}
      {form.looks.map(({ from, to }) => (
        <path
          key={from}
          className="look-in"
          d={`M${x(from)} ${box.h * SHARE.hands * 0.5} H${Math.max(x(from), x(to))}`}
        />
      ))}
      <path className="fires" d={fires(form, x, tops.fires, box.h * SHARE.fires)} />
      {lane(form.canners, tops.canner, box.h * SHARE.canner, 'water')}
      {lane(form.hands, 0, box.h * SHARE.hands, 'hands')}
      {form.end !== null && (
        <path className="evening-end" d={`M${x(form.end)} 0 V${box.h} M${x(form.end) + 5} 0 V${box.h}`} />
      )}
      <path className="now" d={`M0 0 H${NOW_PX} L${NOW_PX - 4} ${box.h / 2} L${NOW_PX} ${box.h} H0 Z`} />
    </svg>
  );
});

/** The foot of the arrow that is now. */
const NOW_PX = 8;

function fires(form: ShortForm, x: (at: number) => number, top: number, height: number): string {
  const most = Math.max(form.rings, ...form.fires.map(({ pots }) => pots), 1);
  const drawn = area<{ at: number; pots: number }>()
    .x(({ at }) => x(at))
    .y0(top + height)
    .y1(({ pots }) => top + height - (height * pots) / most)
    .curve(curveStepAfter);
  return drawn(form.fires) ?? '';
}

interface BlockProps {
  stretch: Stretch;
  x: (at: number) => number;
  y: number;
  height: number;
  kind: 'hands' | 'water';
  /** The next one to begin: where its beginning may fall is drawn; all of them would lie on each other. */
  ranged: boolean;
  style: React.CSSProperties;
}

/** Least size of letters, px: less is no word, nor is half of one. On a phone the line is too low for any. */
const LEAST_LETTER_PX = 18;
const INSET_PX = 4;

function Block({ stretch, x, y, height, kind, ranged, style }: BlockProps) {
  const { from, to, earliest, latest, names } = stretch;
  const [left, right] = [x(from), Math.max(x(to), x(from) + 3)];
  const letter = Math.min(30, height * 0.86);
  const name = names.join(' + ');
  const fits = widthEm(name) * letter <= right - left - 2 * INSET_PX;
  const word = fits && letter >= LEAST_LETTER_PX ? name : '';
  const heats = kind === 'water' && names.length === 0;
  return (
    <g className={`block ${kind} ${heats ? 'heats' : ''} hued`} style={style}>
      <rect x={left} y={y} width={right - left} height={height} rx={kind === 'hands' ? 3 : height / 2} />
      {kind === 'hands' && (
        <rect className="whose" x={left} y={y} width={right - left} height={height * 0.16} />
      )}
      {ranged && latest - earliest > 1 && (
        <path
          className="may-begin"
          d={`M${x(earliest)} ${y + height * 0.55} V${y + height} M${x(earliest)} ${y + height * 0.8} H${x(latest)} M${x(latest)} ${y + height * 0.55} V${y + height}`}
        />
      )}
      {word && (
        <text x={left + INSET_PX} y={y + height / 2 + letter * 0.37} fontSize={letter}>
          {word}
        </text>
      )}
    </g>
  );
}
