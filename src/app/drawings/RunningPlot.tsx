// The reduction of a pot that is on the stove: what was weighed, where it stands now, and how it is expected to go on.

import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { BatchView, PotView } from '../../kitchen/view.ts';
import type { AppProps } from '../actions.ts';
import { sayDuration, sayMass } from '../plan/units.ts';
import { fruitHue } from './hue.ts';
import { H, PAD, PlotAxis, W } from './PlotAxis.tsx';
import { running, type Running } from './reduction.ts';

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
        <Ahead shown={shown} x={x} y={y} />
        <PlotAxis x={x} />
        <path className="plot-target" d={`M${PAD.left} ${target} H${W - PAD.right}`} />
        <text x={PAD.left + 4} y={target - 8} className="plot-small">
          {text('screen.plot.target', { mass: mass(pot.targetMassKg) })}
        </text>
        <path className="plot-boil" d={`M${x(shown.nowMinute)} ${PAD.top - 4} V${H - PAD.bottom}`} />
        <text x={x(shown.nowMinute) + 6} y={PAD.top - 10} className="plot-small">
          {text('screen.plot.now', { mass: mass(pot.massKg.likely) })}
        </text>
        <path
          className="plot-spread"
          d={`M${x(shown.nowMinute)} ${y(pot.massKg.low)} V${y(pot.massKg.high)}`}
        />
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

/** The curve ahead with its range, and the time within which four batches in five are done. */
function Ahead({ shown, x, y }: { shown: Running; x: Scale; y: Scale }) {
  const { curve, end, endKg } = shown;
  const shade = area<Running['curve'][number]>()
    .x((point) => x(point.minute))
    .y0((point) => y(point.massKg.low))
    .y1((point) => y(point.massKg.high));
  const likely = line<Running['curve'][number]>(
    (point) => x(point.minute),
    (point) => y(point.massKg.likely),
  );
  return (
    <>
      <path className="plot-range" d={shade(curve) ?? ''} />
      <path className="plot-line" d={likely(curve) ?? ''} />
      {end && (
        <>
          <path className="plot-spread" d={`M${x(end.low)} ${y(endKg)} H${x(end.high)}`} />
          <circle className="plot-end" cx={x(end.likely)} cy={y(endKg)} r={6} />
        </>
      )}
    </>
  );
}
