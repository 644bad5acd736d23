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
import { reductionView } from '../../src/kitchen/reductionView.ts';
import type { ClockView, PotView } from '../../src/kitchen/view.ts';
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

const fixturePot = states['simmering']?.batches[0]?.pot;
if (!fixturePot) throw new Error('The fixtures show no simmering pot.');

/** The pot as the kitchen shows it at this minute of the simmer. */
function potAt(estimate: Estimate, minute: number): { pot: PotView; clock: ClockView; now: number } {
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
      reduction: reductionView(estimate),
    },
  };
}

const draw = (estimate: Estimate, minute: number) =>
  renderToStaticMarkup(
    <RunningPlot fruit="damson" {...potAt(estimate, minute)} units="metric" catalogue={catalogue} />,
  );

describe('the curve of a running pot', () => {
  test('is the estimate’s own: it falls, within its range, from the boil to the late end', () => {
    const { curve, startedAt } = reductionView(fresh);
    expect(startedAt).toBe(NOW);
    expect(curve[0]?.at).toBe(NOW);
    expect(curve.at(-1)!.at).toBeCloseTo(NOW + remainingMinutes(fresh, NOW).high * MIN, 3);
    for (const [i, { at, massKg }] of curve.entries()) {
      expect(massKg).toEqual(massNow(fresh, at));
      expect(massKg.likely).toBeLessThanOrEqual(curve[i - 1]?.massKg.likely ?? Infinity);
    }
  });

  test('is worked out once for an estimate and anew after a reading', () => {
    expect(reductionView(fresh)).toBe(reductionView(fresh));
    expect(reductionView(weighed).curve[0]?.at).toBe(NOW + 10 * MIN);
  });

  test('is empty while the pot stands off the heat', () => {
    expect(reductionView(withHeat(fresh, 'off', NOW + 5 * MIN)).curve).toEqual([]);
  });

  test('ends, at the likely end, at about the weight to stop at', () => {
    const { pot, clock, now } = potAt(fresh, 0);
    const shown = running(pot, clock, now);
    expect(Math.abs((shown?.endKg ?? 0) / plan.targetMassKg - 1)).toBeLessThan(0.01);
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
    expect(Math.abs((reading?.massKg ?? 0) / weighedKg - 1)).toBeLessThan(0.01);
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
