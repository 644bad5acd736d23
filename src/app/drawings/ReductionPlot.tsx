// The reduction as a plot: weight in the pot against time, the range shaded, the line at which to stop.

import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { BatchPlan } from '../../core/types.ts';
import type { AppProps } from '../actions.ts';
import { sayDuration, sayMass } from '../plan/units.ts';
import { H, PAD, PlotAxis, W } from './PlotAxis.tsx';
import { course, type Course } from './reduction.ts';

interface ReductionPlotProps extends Pick<AppProps, 'catalogue'> {
  plan: BatchPlan;
  units: AppProps['settings']['units'];
}

export function ReductionPlot({ plan, units, catalogue }: ReductionPlotProps) {
  const [fast, likely, slow] = [course(plan, 'low'), course(plan, 'likely'), course(plan, 'high')];
  const end = slow.at(-1)?.minutes ?? 1;
  const x = scaleLinear([0, end * 1.04], [PAD.left, W - PAD.right]);
  const y = scaleLinear([plan.targetMassKg * 0.75, plan.startMassKg], [H - PAD.bottom, PAD.top]);
  const draw = line<Course>(
    (point) => x(point.minutes),
    (point) => y(point.massKg),
  );
  const shade = area<[Course, Course]>()
    .x0(([a]) => x(a.minutes))
    .x1(([, b]) => x(b.minutes))
    .y0(([a]) => y(a.massKg))
    .y1(([, b]) => y(b.massKg));
  const pairs = fast.map((point, i): [Course, Course] => [point, slow[i] ?? point]);
  const hour = (minutes: number) => sayDuration(minutes);
  const target = y(plan.targetMassKg);
  const boil = x(plan.heatMinutes.likely);
  const alt = catalogue.text({
    key: 'screen.plot.alt',
    params: {
      start: sayMass(plan.startMassKg, units),
      target: sayMass(plan.targetMassKg, units),
      low: hour(plan.simmerMinutes.low),
      high: hour(plan.simmerMinutes.high),
      likely: hour(plan.simmerMinutes.likely),
    },
  });
  const last = likely.at(-1);
  return (
    <figure className="plot">
      <figcaption>{catalogue.text({ key: 'screen.plot.title' })}</figcaption>
      <svg viewBox={`0 0 ${W} ${H}`} role="img" aria-label={alt}>
        <path className="plot-range" d={shade(pairs) ?? ''} />
        <PlotAxis x={x} />
        <path className="plot-boil" d={`M${boil} ${PAD.top - 4} V${H - PAD.bottom}`} />
        <text x={boil + 6} y={H - PAD.bottom - 8} className="plot-small">
          {catalogue.text({ key: 'screen.plot.heat' })}
        </text>
        <path className="plot-target" d={`M${PAD.left} ${target} H${W - PAD.right}`} />
        <text x={PAD.left + 4} y={target - 8} className="plot-small">
          {catalogue.text({ key: 'screen.plot.target', params: { mass: sayMass(plan.targetMassKg, units) } })}
        </text>
        <path className="plot-line" d={draw(likely) ?? ''} />
        <text x={x(0) + 4} y={PAD.top - 10} className="plot-small">
          {sayMass(plan.startMassKg, units)}
        </text>
        {last && <circle className="plot-end" cx={x(last.minutes)} cy={y(last.massKg)} r={6} />}
      </svg>
    </figure>
  );
}
