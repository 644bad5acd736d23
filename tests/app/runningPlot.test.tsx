// The plot of a pot on the stove: the estimate's own curve, and the readings as they come.

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { RunningPlot } from '../../src/app/drawings/RunningPlot.tsx';
import { running } from '../../src/app/drawings/reduction.ts';
import {
  batchRequestSchema,
  massNow,
  planBatch,
  remainingMinutes,
  startEstimate,
  withHeat,
  withReading,
  type Estimate,
} from '../../src/core/index.ts';
import { depthOfM } from '../../src/core/reduction/outlook.ts';
import type { PathPoint } from '../../machines/batch/context.ts';
import { reductionView } from '../../src/kitchen/reductionView.ts';
import type { ClockView, PotView } from '../../src/kitchen/view.ts';
import { evening, type Evening } from '../machines/evening.ts';
import { catalogue, NOW, states } from './fixtures.ts';

const MIN = 60_000;
const plan = planBatch(
  batchRequestSchema.parse({
    fruit: 'damson',
    product: 'jam',
    fruitMassKg: 2.4,
    jar: 'half-pint',
    elevationM: 340,
    keep: 'shelf',
    pot: { diameterM: 0.28 },
    burner: { powerW: 2200, kind: 'gas' },
  }),
);
const fresh = startEstimate(plan, NOW);
const weighedKg = massNow(fresh, NOW + 10 * MIN).likely + 0.05;
const weighed = withReading(fresh, { massKg: weighedKg }, NOW + 10 * MIN);

const none: PathPoint[] = [];

const fixturePot = states['simmering']?.batches[0]?.pot;
if (!fixturePot) throw new Error('The fixtures show no simmering pot.');

/** The pot as the kitchen shows it at this minute of the simmer. */
function potAt(
  estimate: Estimate,
  minute: number,
  path: PathPoint[] = none,
): { pot: PotView; clock: ClockView; now: number } {
  const now = NOW + minute * MIN;
  const left = remainingMinutes(estimate, now);
  const at = (minutes: number) => now + minutes * MIN;
  return {
    now,
    clock: {
      kind: 'about',
      label: { key: 'clock.simmering' },
      from: NOW,
      until: { low: at(left.low), likely: at(left.likely), high: at(left.high) },
    },
    pot: {
      ...fixturePot!,
      massKg: massNow(estimate, now),
      startMassKg: plan.startMassKg,
      targetMassKg: plan.targetMassKg,
      readings: estimate.readings,
      reduction: reductionView(estimate, path),
    },
  };
}

function estimateOf(told: Evening): Estimate {
  const { estimate } = told.context();
  if (!estimate) throw new Error('The pot does not simmer.');
  return estimate;
}

const draw = (estimate: Estimate, minute: number) =>
  renderToStaticMarkup(
    <RunningPlot fruit="damson" {...potAt(estimate, minute)} units="metric" catalogue={catalogue} />,
  );

describe('the curve of a running pot', () => {
  test('is the estimate’s own: it falls, within its range, from the boil to the late end', () => {
    const { curve, startedAt } = reductionView(fresh, none);
    expect(startedAt).toBe(NOW);
    expect(curve[0]?.at).toBe(NOW);
    expect(curve.at(-1)!.at).toBeCloseTo(NOW + remainingMinutes(fresh, NOW).high * MIN, 3);
    for (const [i, { at, massKg }] of curve.entries()) {
      expect(massKg).toEqual(massNow(fresh, at));
      expect(massKg.likely).toBeLessThanOrEqual(curve[i - 1]?.massKg.likely ?? Infinity);
    }
  });

  test('is worked out once for an estimate and anew after a reading', () => {
    expect(reductionView(fresh, none)).toBe(reductionView(fresh, none));
    expect(reductionView(weighed, none).curve[0]?.at).toBe(NOW + 10 * MIN);
  });

  test('is empty while the pot stands off the heat', () => {
    expect(reductionView(withHeat(fresh, 'off', NOW + 5 * MIN), none).curve).toEqual([]);
  });

  test('ends, at the likely end, at about the weight to stop at', () => {
    const { pot, clock, now } = potAt(fresh, 0);
    const shown = running(pot, clock, now);
    expect(Math.abs((shown?.endKg ?? 0) / plan.targetMassKg - 1)).toBeLessThan(0.01);
  });
});

describe('the path of a pot through a whole simmer', () => {
  // Ten minutes, a weighing, five minutes, three off the heat, five more and "it is at eight tenths".
  const told = evening(plan).toSimmer();
  const begun = told.now;
  const scaleKg = massNow(estimateOf(told), begun + 10 * MIN).likely + 0.05;
  told.wait(10).tell('reading.taken', { massKg: scaleKg }).wait(5).tell('batch.held').wait(3);
  told.tell('batch.resumed').wait(5).tell('reading.taken', { fractionOfStart: 0.8 }).wait(2);
  const { path } = told.context();
  const estimate = estimateOf(told);

  test('runs unbroken from the rolling boil to where the curve begins', () => {
    expect(path[0]?.at).toBe(begun);
    expect(path.at(-1)?.at).toBe(estimate.at);
    const gaps = path.slice(1).map(({ at }, i) => at - (path[i]?.at ?? 0));
    expect(Math.min(...gaps)).toBe(0); // where a reading changed the belief it steps
    expect(Math.max(...gaps)).toBeLessThanOrEqual(3 * MIN);
    expect(reductionView(estimate, path).curve[0]?.at).toBe(path.at(-1)?.at);
  });

  test('falls while it simmers, steps to the reading, and stands still off the heat', () => {
    const at = (minute: number) => path.filter((point) => point.at === begun + minute * MIN);
    const [before, after] = at(10);
    expect(before?.massKg.likely).toBeLessThan(path[0]?.massKg.likely ?? 0);
    expect(after?.massKg.likely).toBeGreaterThan(before?.massKg.likely ?? 0);
    const width = ({ massKg }: PathPoint) => massKg.high - massKg.low;
    expect(after && before && width(after) < width(before)).toBe(true);
    expect(at(18)[0]?.massKg).toEqual(at(15).at(-1)?.massKg);
  });

  test('is drawn with its range, and each reading stands where it was read', () => {
    const { pot, clock } = potAt(estimate, 0, path);
    const shown = running(pot, clock, told.now);
    expect(shown?.path.slice(0, path.length)).toHaveLength(path.length);
    expect(shown?.path.at(-1)?.minute).toBe(25);
    expect(shown?.ahead[0]).toEqual(shown?.path.at(-1));
    expect(shown?.readings.map(({ minute }) => minute)).toEqual([10, 23]);
    const [weighed, seen] = shown!.readings;
    expect(weighed?.massKg).toBe(scaleKg);
    // Eight tenths is a height.
    const heightM = (massKg: number) => depthOfM(estimate, massKg);
    expect(heightM(seen!.massKg) / heightM(estimate.startMassKg)).toBeCloseTo(0.8, 2);
    const html = renderToStaticMarkup(
      <RunningPlot
        fruit="damson"
        pot={pot}
        clock={clock}
        now={told.now}
        units="metric"
        catalogue={catalogue}
      />,
    );
    expect(html).toContain('class="plot-line ahead"');
    expect(html.match(/class="plot-reading"/g)).toHaveLength(2);
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('goes on level to now while the pot stands off the heat', () => {
    const off = withHeat(estimate, 'off', estimate.at);
    const { pot, clock } = potAt(off, 0, path);
    const shown = running({ ...pot, massKg: massNow(off, told.now) }, clock, told.now);
    expect(shown?.path.at(-1)?.minute).toBe(shown?.nowMinute);
    expect(shown?.path.at(-1)?.massKg).toEqual(massNow(off, told.now));
  });
});

describe('the plot of a running pot', () => {
  test('is not there before the pot first boils', () => {
    const { pot, clock, now } = potAt(fresh, 0);
    expect(running({ ...pot, reduction: null }, clock, now)).toBeNull();
  });

  test('shows each reading at its time, on the plot and in words', () => {
    expect(draw(fresh, 12)).not.toContain('plot-reading');
    const html = draw(weighed, 12);
    expect(html.match(/class="plot-reading"/g)).toHaveLength(1);
    const [reading] = weighed.readings;
    expect(reading?.massKg).toBe(weighedKg);
    expect(html).toContain(`Read after 10 min: about ${Number(reading?.massKg.toFixed(2))} kg in the pot`);
    expect(html).toContain('One reading.');
  });

  test('shows the range, the line to stop at and where it stands now', () => {
    const html = draw(weighed, 12);
    for (const part of ['plot-range', 'plot-line', 'plot-target', 'plot-end'])
      expect(html).toContain(`class="${part}"`);
    expect(html).toContain(`Now ${Number(massNow(weighed, NOW + 12 * MIN).likely.toFixed(2))} kg`);
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
  });

  test('stays whole off the heat and past the late end', () => {
    const off = withHeat(weighed, 'off', NOW + 15 * MIN);
    expect(draw(off, 20)).not.toMatch(/NaN|undefined|plot-end/);
    expect(draw(weighed, 300)).not.toMatch(/NaN|undefined/);
  });
});
