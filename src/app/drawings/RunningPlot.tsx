// The reduction of a pot that is on the stove: what was weighed, where it stands now, and how it is expected to go on.

import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { BatchView, PotView } from '../../kitchen/view.ts';
import type { AppProps } from '../actions.ts';
import { sayDuration, sayMass } from '../plan/units.ts';
import { fruitHue } from './hue.ts';
import { H, PAD, PlotAxis, W } from './PlotAxis.tsx';
import { running, type Point, type Running } from './reduction.ts';

interface RunningPlotProps extends Pick<AppProps, 'catalogue'> {
  fruit: string;
  pot: PotView;
  clock: BatchView['clock'];
  now: number;
  units: AppProps['settings']['units'];
}

export function RunningPlot({ fruit, pot, clock, now, units, catalogue }: RunningPlotProps) {
  const shown = running(pot, clock, now);
  if (shown === null) return null;
  const mass = (kg: number) => sayMass(kg, units);
  const text = (key: string, params: Record<string, string | number>) => catalogue.text({ key, params });
  const x = scaleLinear([0, shown.lastMinute * 1.04], [PAD.left, W - PAD.right]);
  const y = scaleLinear([shown.leastKg * 0.95, shown.mostKg], [H - PAD.bottom, PAD.top]);
  const target = y(pot.targetMassKg);
  const nowX = x(shown.nowMinute);
  const nowIsLate = nowX > W / 2;
  const alt = text('screen.plot.running.alt', {
    now: mass(pot.massKg.likely),
    low: mass(pot.massKg.low),
    high: mass(pot.massKg.high),
    minutes: sayDuration(shown.nowMinute),
    target: mass(pot.targetMassKg),
    readings: shown.readings.length,
  });
  return (
    <figure className="plot hued" style={{ '--hue': fruitHue(fruit) } as React.CSSProperties}>
      <figcaption>{catalogue.text({ key: 'screen.plot.title' })}</figcaption>
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={alt}>
        <Course shown={shown} x={x} y={y} />
        <PlotAxis x={x} />
        <path className="plot-target" d={`M${PAD.left} ${target} H${W - PAD.right}`} />
        <text x={PAD.left + 4} y={target - 8} className="plot-small">
          {text('screen.plot.target', { mass: mass(pot.targetMassKg) })}
        </text>
        <path className="plot-boil" d={`M${nowX} ${PAD.top - 4} V${H - PAD.bottom}`} />
        <text
          x={nowX + (nowIsLate ? -6 : 6)}
          y={PAD.top - 10}
          textAnchor={nowIsLate ? 'end' : 'start'}
          className="plot-small"
        >
          {text('screen.plot.now', { mass: mass(pot.massKg.likely) })}
        </text>
        <path className="plot-spread" d={`M${nowX} ${y(pot.massKg.low)} V${y(pot.massKg.high)}`} />
        {shown.readings.map(({ minute, massKg }) => (
          <circle key={minute} className="plot-reading" cx={x(minute)} cy={y(massKg)} r={6} />
        ))}
      </svg>
      {shown.readings.length > 0 && (
        <ol className="plain-list">
          {shown.readings.map(({ minute, massKg }) => (
            <li key={minute}>
              {text('screen.plot.reading', { minutes: sayDuration(minute), mass: mass(massKg) })}
            </li>
          ))}
        </ol>
      )}
    </figure>
  );
}

type Scale = (value: number) => number;

/** The path so far and the curve ahead, with their range, and the time within which four batches in five are done. */
function Course({ shown, x, y }: { shown: Running; x: Scale; y: Scale }) {
  const { path, ahead, end, endKg } = shown;
  const shade = area<Point>()
    .x((point) => x(point.minute))
    .y0((point) => y(point.massKg.low))
    .y1((point) => y(point.massKg.high));
  const likely = line<Point>(
    (point) => x(point.minute),
    (point) => y(point.massKg.likely),
  );
  return (
    <>
      <path className="plot-range" d={shade([...path, ...ahead]) ?? ''} />
      <path className="plot-line" d={likely(path) ?? ''} />
      {ahead.length > 1 && <path className="plot-line ahead" d={likely(ahead) ?? ''} />}
      {end && (
        <>
          <path className="plot-spread" d={`M${x(end.low)} ${y(endKg)} H${x(end.high)}`} />
          <circle className="plot-end" cx={x(end.likely)} cy={y(endKg)} r={6} />
        </>
      )}
    </>
  );
}
