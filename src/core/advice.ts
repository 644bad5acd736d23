// Which tools, steps, pots and cautions go with this batch, and does it meet the standard of its name?

import { batchLimits, goodDepthM, potFill, potLimitKg } from '../tables/stove.ts';
import { cautions } from '../tables/cautions.ts';
import { identity } from '../tables/standards.ts';
import { tools } from '../tables/tools.ts';
import { isCitrus } from './ingredients.ts';
import type { Mix } from './mix.ts';
import type { BatchRequest } from './request.ts';
import type { BatchPlan } from './types.ts';

export function stepsOf(request: BatchRequest, mix: Mix): BatchPlan['steps'] {
  const { strain } = mix.pot.fruit;
  // The juice of a jelly is strained before the batch begins.
  const need =
    request.product === 'jelly' ? 'none' : strain.value[request.product === 'butter' ? 'butter' : 'jam'];
  return {
    strain: need,
    strainWith: need === 'none' ? null : (strain.value.with ?? 'a food mill or sieve'),
    blend: request.product === 'butter',
  };
}

/** 21 CFR 150 asks for solids and for a share of fruit; a home kitchen may do otherwise, but not under the name. */
export function standardOf(request: BatchRequest, mix: Mix): BatchPlan['standardOfIdentity'] {
  const { targetSolidsPct, sugarKg, preparedKg, fruit } = mix.pot;
  const rule = identity[request.product].value;
  const mostSugar = (fruit.jamGroup === 'I' ? rule.mostSugarPerKgGroupI : rule.mostSugarPerKg) * preparedKg;
  const solid = targetSolidsPct >= rule.leastPct - 1e-9;
  const fruity = sugarKg <= mostSugar * 1.001;
  const at = `${targetSolidsPct.toFixed(0)} % solids`;
  if (solid && fruity)
    return { meets: true, says: `Meets ${rule.says}: ${at}, at least ${rule.leastPct} %.` };
  if (!solid) return { meets: false, says: `${at}: ${rule.says} asks for at least ${rule.leastPct} %.` };
  return {
    meets: false,
    says: `More sugar than ${rule.says} allows: at most ${mostSugar.toFixed(2)} kg to this much fruit.`,
  };
}

/** Depth by which a batch is too much for one pot: 0.12 m, or half the height of the wall. */
function depthLimitM(request: BatchRequest): number {
  const byHeight = request.pot?.heightM === undefined ? Infinity : potFill.value.most * request.pot.heightM;
  return Math.min(goodDepthM.value.most, byHeight);
}

export function potsOf(request: BatchRequest, mix: Mix, startDepthM: number | null): BatchPlan['pots'] {
  const { butter, gel, says: tooMuch } = potLimitKg.value;
  const { jellyJuiceL, says: tooJuicy } = batchLimits.value;
  const limitKg = request.product === 'butter' ? butter : gel;
  const juiceL = request.product === 'jelly' ? mix.pot.preparedKg / 1.05 : 0;
  const needs = [
    { share: mix.pot.targetKg / limitKg, why: tooMuch },
    { share: juiceL / jellyJuiceL, why: tooJuicy },
    { share: (startDepthM ?? 0) / depthLimitM(request), why: goodDepthM.value.says },
  ];
  const worst = needs.reduce((most, need) => (need.share > most.share ? need : most));
  const count = Math.max(1, Math.ceil(worst.share - 1e-9));
  if (count === 1) return { count, says: 'One pot is enough.' };
  const kg = (mix.pot.startKg / count).toFixed(1);
  return { count, says: `Cook it in ${count} pots, or one after another, ${kg} kg in each: ${worst.why}.` };
}

export function toolsOf(
  request: BatchRequest,
  { steps, process }: Pick<BatchPlan, 'steps' | 'process'>,
): string[] {
  const juicing = request.product === 'jelly' && request.juiceMassKg === undefined;
  return [
    ...tools.always,
    ...(steps.strainWith ? [steps.strainWith.replace(/^a /, '')] : []),
    ...(steps.blend ? tools.blending : []),
    ...(request.product === 'butter' ? [] : tools.gelling),
    ...(juicing ? tools.juicing : []),
    ...(process ? tools.canning : []),
  ];
}

/** Burns and spoilage: the usual cautions, only those that this batch calls for. */
export function cautionsOf(
  request: BatchRequest,
  mix: Mix,
  plan: Pick<BatchPlan, 'steps' | 'process' | 'pots'>,
): string[] {
  const { product } = request;
  const fruit = mix.pot.fruit.id;
  const calledFor: readonly (readonly [keyof typeof cautions, boolean])[] = [
    ['boilingSugar', true],
    ['potMetal', true],
    ['hotBlending', plan.steps.blend],
    ['juiceFirst', product === 'jelly' && request.juiceMassKg === undefined],
    ['bottledAcid', mix.acid?.neededForShelf === true],
    ['altitudeNotThermometer', request.measured?.waterBoilsC !== undefined && plan.process !== null],
    ['hotJars', plan.process !== null],
    ['rhubarbLeaves', fruit === 'rhubarb'],
    ['marmaladePeel', product === 'marmalade' && !isCitrus(fruit) && fruit !== 'cranberry'],
  ];
  const says = calledFor.filter(([, called]) => called).map(([name]) => cautions[name].value);
  return plan.pots.count > 1 ? [...says, plan.pots.says] : says;
}
