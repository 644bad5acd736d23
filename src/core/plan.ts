// From a request to a plan: quantities, temperatures, times, jars, process and verdict, put together.

import { cautionsOf, potsOf, standardOf, stepsOf, toolsOf } from './advice.ts';
import { finishC, waterBoilsC } from './boil.ts';
import { factsOf } from './facts.ts';
import { cannerFor, jarsFor, yieldOf } from './jars.ts';
import { mixOf, type Mix } from './mix.ts';
import { estimateOf } from './reduction/estimate.ts';
import { remainingMinutes, stirEvery } from './reduction/outlook.ts';
import { atQuantile } from './reduction/quantile.ts';
import { beliefAtBoil, heatMinutes, simmerFor, stoveBelief } from './reduction/prior.ts';
import { bottomM2, LOG_HEAT, thicknessOf, type Simmer } from './reduction/simmer.ts';
import { batchRequestSchema, type BatchRequest, type BatchRequestInput } from './request.ts';
import { headspaceMm, processOf, verdict } from './shelf.ts';
import { densityKgPerL } from './sugar-water.ts';
import type { BatchPlan, FullPlan } from './types.ts';
import { whysOf } from './why.ts';

/** Depth of a mass at these solids in the cook's pot; null where the pot is not known. */
function depthM(request: BatchRequest, massKg: number, solidsPct: number): number | null {
  if (!request.pot) return null;
  const litres = massKg / densityKgPerL({ solubleSolidsPct: solidsPct, tempC: 95 });
  return litres / 1000 / bottomM2(request.pot.diameterM);
}

type Times = Pick<BatchPlan, 'heatMinutes' | 'simmerMinutes' | 'stirEveryMinutes'>;

function timesOf(request: BatchRequest, mix: Mix): Times {
  const { pot } = mix;
  const simmer: Simmer = simmerFor(request, pot, finishC(request, pot.startSolidsPct));
  const stove = stoveBelief(request, request.learned ?? null);
  const estimate = estimateOf(request, pot, 0, null);
  const belief = beliefAtBoil(stove, pot, pot.startKg);
  return {
    heatMinutes: atQuantile(belief, (s) => heatMinutes(simmer, pot, s[LOG_HEAT])),
    simmerMinutes: remainingMinutes(estimate, 0),
    stirEveryMinutes: {
      start: stirEvery(thicknessOf(simmer, pot.startKg), 'low'),
      end: stirEvery(thicknessOf(simmer, pot.targetKg), 'low'),
    },
  };
}

function boilOf(request: BatchRequest, { pot }: Mix): Pick<BatchPlan, 'waterBoilsC' | 'finishTempC'> {
  return { waterBoilsC: waterBoilsC(request), finishTempC: finishC(request, pot.targetSolidsPct) };
}

function masses(request: BatchRequest, { pot, acid }: Mix) {
  return {
    fruitName: pot.fruit.name,
    sugarMassKg: pot.sugarKg,
    sugarBoundsKg: pot.sugarBoundsKg,
    acid,
    ...(pot.pectinKg > 0 && { pectinMassKg: pot.pectinKg }),
    ...(pot.liquidKg > 0 && { liquidMassKg: pot.liquidKg }),
    startMassKg: pot.startKg,
    startSolubleSolidsPct: pot.startSolidsPct,
    targetMassKg: pot.targetKg,
    targetSolubleSolidsPct: pot.targetSolidsPct,
    startDepthM: depthM(request, pot.startKg, pot.startSolidsPct),
    targetDepthM: depthM(request, pot.targetKg, pot.targetSolidsPct),
  };
}

/**
 * The plan of one batch. Takes a request as plain JSON and refuses a bad one with the schema's sentence (a ZodError);
 * pure, so the same request always gives the same plan. Masses in kg, volumes in L, lengths in m, minutes, C.
 */
export function planBatch(asked: BatchRequestInput): FullPlan {
  const request = batchRequestSchema.parse(asked);
  const mix = mixOf(request);
  const out = yieldOf(mix.finishedL, mix.pot.targetLogSd);
  const judged = verdict(request, mix);
  const process = processOf(request, judged);
  const jars = jarsFor(request, out);
  const steps = stepsOf(request, mix);
  const amounts = masses(request, mix);
  const pots = potsOf(request, mix, amounts.startDepthM);
  const plan: BatchPlan = {
    request,
    ...amounts,
    ...boilOf(request, mix),
    ...timesOf(request, mix),
    yieldVolumeL: out.range,
    jars,
    canner: process ? cannerFor(request, jars.makeReady + jars.spare.count) : null,
    process,
    headspaceMm: headspaceMm(request.keep),
    shelf: judged.shelf,
    steps,
    standardOfIdentity: standardOf(request, mix),
    tools: toolsOf(request, { steps, process }),
    cautions: cautionsOf(request, mix, { steps, process, pots }),
    pots,
    why: {},
  };
  return { ...plan, why: whysOf(request, mix, plan), facts: factsOf(request, mix, out, plan) };
}
