// The evening in one picture: a row for each batch, the canner, the rings and the hands, and where now is.

import { scaleTime } from 'd3-scale';
import type { EveningRequest } from '../../core/evening/types.ts';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { EveningView } from '../../kitchen/evening/shownEvening.ts';
import { timeOfDay, timeOfPlan } from '../../kitchen/evening/times.ts';
import { fruitHue } from '../drawings/hue.ts';
import { rowsOf, type Row, type Stretch } from './rows.ts';

interface TimelineProps {
  evening: EveningView;
  now: number;
  catalogue: Catalogue;
  /** Drawn this wide, in its own units. */
  width?: number;
}

const MINUTE_MS = 60_000;
const LEFT = { wide: 130, narrow: 84 };
/** Below this a picture is a phone's, px. */
const NARROW = 560;
const TOP = 34;
const ROW = 46;
const BAR = 26;

export function Timeline({ evening, now, catalogue, width = 900 }: TimelineProps) {
  const { plan } = evening;
  const rows = rowsOf(plan);
  const instant = (minute: number): number => plan.request.beganAt + minute * MINUTE_MS;
  const ends = rows.flatMap(({ stretches }) => stretches.map(({ to }) => to));
  const last = Math.max(plan.finish.high, ...ends);
  const x = scaleTime([instant(0), instant(last)], [width < NARROW ? LEFT.narrow : LEFT.wide, width - 12]);
  const height = TOP + rows.length * ROW + 8;
  const word = (key: string, params: Record<string, string | number> = {}) => catalogue.text({ key, params });
  const at = (minute: number): number => x(instant(minute));
  return (
    <svg
      className="timeline"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={rows.map((row) => rowWords(row, plan.request, word)).join(' ')}
    >
      <defs>
        <pattern
          id="glances"
          width="9"
          height="9"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path className="glance-line" d="M0 0 V9" />
        </pattern>
      </defs>
      {x.ticks(Math.max(3, Math.round(width / 150))).map((tick) => (
        <g key={tick.getTime()} className="tick">
          <path d={`M${x(tick)} ${TOP - 6} V${height}`} />
          <text x={x(tick)} y={TOP - 12}>
            {timeOfDay(tick.getTime())}
          </text>
        </g>
      ))}
      {rows.map((row, i) => (
        <g
          key={row.id}
          className={`row of-${row.kind}`}
          transform={`translate(0 ${TOP + i * ROW})`}
          style={hue(row, plan)}
        >
          <path className="row-line" d={`M0 ${ROW} H${width}`} />
          <text className="row-name" x="4" y={ROW / 2 + 6}>
            {rowName(row, rows, word)}
          </text>
          {row.stretches.map((stretch) => (
            <Bar key={stretch.id} stretch={stretch} at={at} kind={row.kind} word={word} />
          ))}
        </g>
      ))}
      <path className="now-line" d={`M${x(now)} ${TOP - 8} V${height}`} />
    </svg>
  );
}

interface BarProps {
  stretch: Stretch;
  at: (minute: number) => number;
  kind: Row['kind'];
  word: (key: string) => string;
}

function Bar({ stretch, at, kind, word }: BarProps) {
  const { from, to, earliest, latest, attention, state, step, names } = stretch;
  const [left, right] = [at(from), Math.max(at(to), at(from) + 2)];
  const y = (ROW - BAR) / 2;
  const label = kind === 'batch' ? word(`screen.evening.step.${step}`) : names;
  const room = right - left > label.length * 8.5 + 8;
  return (
    <g className={`stretch ${attention} ${state}`}>
      {latest - earliest > 1 && kind === 'batch' && attention === 'hands' && (
        <path className="may-fall" d={`M${at(earliest)} ${ROW - 6} H${at(latest)}`} />
      )}
      <rect x={left} y={y} width={right - left} height={BAR} rx="3" />
      {attention === 'glances' && (
        <rect className="glances-over" x={left} y={y} width={right - left} height={BAR} rx="3" />
      )}
      {room && (
        <text x={left + 5} y={y + BAR - 8}>
          {label}
        </text>
      )}
      <title>{`${names}: ${word(`screen.evening.step.${step}`)}`}</title>
    </g>
  );
}

function hue(row: Row, plan: EveningView['plan']): React.CSSProperties {
  const batch = plan.request.batches.find(({ id }) => id === row.id);
  const fruit = batch?.plan.request.fruit;
  return { '--hue': fruit ? fruitHue(fruit) : 225 } as React.CSSProperties;
}

function rowName(row: Row, rows: readonly Row[], word: (key: string) => string): string {
  if (row.kind === 'batch') return row.name;
  const many = rows.filter(({ kind }) => kind === row.kind).length > 1;
  return `${word(`screen.evening.row.${row.kind}`)}${many ? ` ${row.number}` : ''}`;
}

/** The same in words, for who does not see it: each stretch of work with its time. */
function rowWords(row: Row, request: EveningRequest, word: (key: string) => string): string {
  if (row.kind !== 'batch') return '';
  const work = row.stretches
    .filter(({ attention, step }) => attention === 'hands' || step === 'heat' || step === 'process')
    .map(({ step, from }) => `${word(`screen.evening.step.${step}`)} ${timeOfPlan(request, from)}`);
  return `${row.name}: ${work.join(', ')}.`;
}
