// When is the pot done? By its mass, depth and heat; with added pectin by a timed minute.

import { isTimed } from '../../../machines/batch/rules.ts';
import type { Units } from '../actions.ts';
import type { Figure, Make, ShownPlan } from './figures.ts';
import { sayDepth, sayDuration, sayMass, sayTemp, trim } from './units.ts';

export function aimFigures(plan: ShownPlan, units: Units, figure: Make): (Figure | null)[] {
  return [
    ...(isTimed(plan)
      ? [figure('hardBoilFor', sayDuration(plan.simmerMinutes.likely), 'finishTemp')]
      : stopFigures(plan, units, figure)),
    figure('waterBoils', sayTemp(plan.waterBoilsC, units), 'waterBoils'),
    figure('solids', `${trim(plan.targetSolubleSolidsPct, 1)} %`, 'solubleSolids'),
    figure('standard', plan.standardOfIdentity.says, 'standard'),
  ];
}

function stopFigures(plan: ShownPlan, units: Units, figure: Make): (Figure | null)[] {
  const withPotKg = plan.facts?.targetWithPotKg ?? null;
  return [
    figure('targetMass', sayMass(plan.targetMassKg, units), 'targetMass'),
    withPotKg === null ? null : figure('targetWithPot', sayMass(withPotKg, units), 'targetMass'),
    plan.targetDepthM === null
      ? null
      : figure('targetDepth', sayDepth(plan.targetDepthM, units), 'targetDepth'),
    figure('finishTemp', sayTemp(plan.finishTempC, units), 'finishTemp'),
  ];
}
