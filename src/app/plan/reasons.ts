// Every reason a figure can open to: the plan's own, and those that need only the plan and the tables.

import { fruitOf, pectinPerKg } from '../../core/ingredients.ts';
import type { PlanFacts, Why } from '../../core/types.ts';
import { acidChemistry, acidLine } from '../../tables/acid.ts';
import { findFruit } from '../../tables/fruits/index.ts';
import { spreadHeadspace } from '../../tables/jars.ts';
import { sterilising } from '../../tables/process.ts';
import { butterEnd, cookingWater, juiceYield, millLoss, pectinDose, recipes } from '../../tables/recipes.ts';
import { cite } from '../../tables/source.ts';
import { saturationLine, standardAtmosphere } from '../../tables/steam.ts';
import { starzakPeacock } from '../../tables/sucrose.ts';
import type { FigureId } from '../../core/guidance.ts';
import { storage } from '../../tables/storage.ts';
import type { Units } from '../actions.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';
import type { ShownPlan, Word } from './figures.ts';
import { inUnits, sayDuration, sayElevation, sayMass, trim } from './units.ts';

export type ReasonKey = FigureId;

type Reasons = Partial<Record<ReasonKey, Why>>;

/** As the plan's own reasons say it, within a list of sources. */
const own = (word: Word): string => lowerFirst(word('screen.why.own'));

export function reasonsOf(plan: ShownPlan, units: Units, word: Word): Reasons {
  return {
    ...saidIn(units, plan.why),
    ...potReasons(plan, units, word),
    ...jarReasons(plan, units, word),
    ...(plan.facts ? labelReasons(plan, plan.facts, word) : {}),
  };
}

/** A cook who asks how a figure was had does the sum again, in the units of the figure. */
function saidIn(units: Units, reasons: Reasons): Reasons {
  const said = Object.entries(reasons).map(([key, why]) => [
    key,
    { ...why, says: inUnits(why.says, units), how: inUnits(why.how, units) },
  ]);
  return Object.fromEntries(said) as Reasons;
}

/** Between which amounts the sugar may be chosen, and why: beside the field, where the choice is made. */
export function sugarBoundsReason(plan: ShownPlan, units: Units, word: Word): Why {
  const { product, pectin } = plan.request;
  const { sugarPerKg } = recipes[product][pectin];
  const { low, high } = sugarPerKg.value;
  return {
    says: word('screen.why.sugarBounds.says'),
    how: word('screen.why.sugarBounds.how', {
      low: trim(low, 2),
      high: trim(high, 2),
      fruit: sayMass(plan.sugarBoundsKg.high / high, units),
    }),
    source: cite(sugarPerKg),
  };
}

export function solidsBoundsReason(word: Word): Why {
  const { thinBelowPct, mostPct } = butterEnd.value;
  return {
    says: word('screen.why.solidsBounds.says'),
    how: word('screen.why.solidsBounds.how', { low: thinBelowPct, high: mostPct }),
    source: cite(butterEnd),
  };
}

function pectinReason({ request, pectinMassKg }: ShownPlan, units: Units, word: Word): Reasons {
  if (pectinMassKg === undefined) return {};
  const dose = pectinDose[request.pectin];
  return {
    pectin: {
      says: word('screen.why.pectin.says'),
      how: word('screen.why.pectin.how', {
        dose: sayMass(pectinPerKg(dose.value, fruitOf(request)), units),
        fruit: sayMass(1, units),
      }),
      source: cite(dose),
    },
  };
}

function liquidReason({ request, liquidMassKg }: ShownPlan, units: Units, word: Word): Reasons {
  if (liquidMassKg === undefined) return {};
  if (request.liquid)
    return {
      liquid: { says: word('screen.why.liquid.own'), how: sayMass(liquidMassKg, units), source: own(word) },
    };
  const peel = request.product === 'marmalade';
  const water = peel ? cookingWater.citrusMarmalade : cookingWater.prune;
  return {
    liquid: {
      says: word(`screen.why.liquid.${peel ? 'peel' : 'dried'}`),
      how: word('screen.why.liquid.how', {
        water: sayMass(water.value.perKg, units),
        fruit: sayMass(1, units),
      }),
      source: cite(water),
    },
  };
}

function potReasons(plan: ShownPlan, units: Units, word: Word): Reasons {
  const acidKg = plan.acid?.massKg ?? 0;
  const parts = {
    sugar: sayMass(plan.sugarMassKg, units),
    acid: sayMass(acidKg, units),
    rest: sayMass(plan.startMassKg - plan.sugarMassKg - acidKg, units),
  };
  const measured = plan.request.measured?.waterBoilsC !== undefined;
  const { targetDepth } = plan.why;
  return {
    ...pectinReason(plan, units, word),
    ...liquidReason(plan, units, word),
    startMass: {
      says: word('screen.why.startMass.says'),
      how: word(`screen.why.startMass.${acidKg > 0 ? 'how' : 'withoutAcid'}`, parts),
      source: [word('screen.why.startMass.sum'), ...fruitSources(plan, word)].join('; '),
    },
    ...(targetDepth ? { startDepth: { ...targetDepth, says: word('screen.why.startDepth.says') } } : {}),
    waterBoils: {
      says: word('screen.why.waterBoils.says'),
      how: measured
        ? word('screen.why.waterBoils.measured')
        : word('screen.why.waterBoils.how', { elevation: sayElevation(plan.request.elevationM, units) }),
      source: measured ? own(word) : `${cite(standardAtmosphere)}; ${cite(saturationLine)}`,
    },
  };
}

/** Where the weight of what goes into the pot comes from: the cook's scale, or what trimming, milling or pressing leaves. */
function fruitSources({ request, steps }: ShownPlan, word: Word): string[] {
  const added = [
    ...(request.product === 'marmalade' ? [cite(cookingWater.citrusMarmalade)] : []),
    ...(request.pectin === 'none' ? [] : [cite(pectinDose[request.pectin])]),
  ];
  if (request.product === 'jelly' && request.juiceMassKg !== undefined) return [own(word), ...added];
  const refuse = findFruit(request.fruit)?.refusePct;
  const weighed = request.measured?.preparedMassKg !== undefined || refuse === undefined;
  const after =
    request.product === 'jelly'
      ? [cite(juiceYield.firm), cite(juiceYield.soft)]
      : steps.strain === 'needed'
        ? [cite(millLoss)]
        : [];
  return [weighed ? own(word) : cite(refuse), ...after, ...added];
}

function fruitPHSource({ request }: ShownPlan, word: Word): string {
  const pH = findFruit(request.fruit)?.pH;
  return pH ? cite(pH) : own(word);
}

function jarReasons(plan: ShownPlan, units: Units, word: Word): Reasons {
  const { process, request } = plan;
  const freezer = request.keep === 'freezer';
  const { minutes, perFt, neededUnderMinutes } = sterilising.value;
  const elevation = sayElevation(request.elevationM, units);
  return {
    headspace: {
      says: word(`screen.why.headspace.${freezer ? 'freezer' : 'says'}`),
      how: freezer ? storage.freezer.value.says : word('screen.why.headspace.how'),
      source: freezer ? cite(storage.freezer) : cite(spreadHeadspace),
    },
    ...(process && {
      sterilise: {
        says: word('screen.why.sterilise.says'),
        how: word('screen.why.sterilise.how', { least: minutes, perFt: String(perFt), elevation }),
        source: cite(sterilising),
      },
      clean: {
        says: word('screen.why.clean.says'),
        how: word('screen.why.clean.how', {
          long: String(process.minutes),
          under: String(neededUnderMinutes),
        }),
        source: cite(sterilising),
      },
    }),
  };
}

function labelReasons(plan: ShownPlan, { bestBy, label, cost }: PlanFacts, word: Word): Reasons {
  const { powerW } = plan.request.burner ?? {};
  const minutes = plan.heatMinutes.likely + plan.simmerMinutes.likely;
  return {
    sugarPer100g: {
      says: word('screen.why.sugarPer100g.says'),
      how: word('screen.why.sugarPer100g.how', { solids: trim(label.solubleSolidsPct, 1) }),
      source: word('screen.why.sugarPer100g.source'),
    },
    fruitPer100g: {
      says: word('screen.why.fruitPer100g.says'),
      how: word('screen.why.fruitPer100g.how'),
      source: fruitSources(plan, word).join('; '),
    },
    pH: {
      says: word('screen.why.pH.says', { line: acidLine.value.pH.toFixed(1) }),
      how: word('screen.why.pH.how'),
      source: [
        plan.request.measured?.fruitPH === undefined ? fruitPHSource(plan, word) : own(word),
        cite(acidChemistry),
        cite(acidLine),
      ].join('; '),
    },
    waterActivity: {
      says: word('screen.why.waterActivity.says'),
      how: word('screen.why.waterActivity.how', { solids: trim(label.solubleSolidsPct, 1) }),
      source: cite(starzakPeacock),
    },
    bestBy: {
      says: word('screen.why.bestBy.says'),
      how: word('screen.why.bestBy.how'),
      source: bestBy.source,
    },
    ...(cost && {
      cost: {
        says: word('screen.why.cost.says'),
        how: word('screen.why.cost.how', {
          burner: powerW === undefined ? word('screen.why.cost.assumed') : `${powerW} W`,
          minutes: sayDuration(minutes),
        }),
        source: word('screen.why.cost.source'),
      },
    }),
  };
}
