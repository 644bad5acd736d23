// Where does each number of a plan come from?

import { acidLine, acidPerLitre } from '../tables/acid.ts';
import { fillTempC, jarVolumeL } from '../tables/jars.ts';
import { plainReasons } from '../tables/reasons.ts';
import { potCling, recipes, shortBoilLoss } from '../tables/recipes.ts';
import { cite } from '../tables/source.ts';
import { standardAtmosphere } from '../tables/steam.ts';
import { burnerEfficiency, burnerKinds, burnerPowerW } from '../tables/stove.ts';
import { gelRise, icumsaDensity, marmaladeRise, starzakPeacock } from '../tables/sucrose.ts';
import { identity } from '../tables/standards.ts';
import { acidClass, acidSource } from './acidity.ts';
import type { Mix } from './mix.ts';
import { efficiencyOf } from './reduction/simmer.ts';
import { feet, thousands } from './process.ts';
import type { BatchRequest } from './request.ts';
import type { BatchPlan, Why, WhyKey } from './types.ts';

/** To a hundredth of a gram: the screen makes the cook's own unit of it, and must come to the figure beside it, also
 *  where a gram decides the last place. */
const kg = (mass: number): string => `${mass.toFixed(5)} kg`;
const pct = (share: number): string => `${share.toFixed(1)} %`;

const own = 'what you entered';

function sugarWhy(request: BatchRequest, { pot }: Mix): Why {
  const { usual, high } = pot.recipe.sugarPerKg.value;
  return {
    says: request.sugarMassKg === undefined ? 'The usual sugar for this much fruit.' : 'The sugar you chose.',
    how: `${kg(pot.sugarKg)} to ${kg(pot.preparedKg)} of prepared fruit; usual ${usual}, at most ${high} to one`,
    source: request.sugarMassKg === undefined ? cite(pot.recipe.sugarPerKg) : own,
  };
}

function acidWhy({ pot, acid }: Mix): Why {
  const needs = acidClass(pot.fruit) === 'acid-needed';
  return {
    says: needs
      ? `${pot.fruit.name} may lie above pH ${acidLine.value.pH}: bottled lemon juice makes it safe.`
      : acid
        ? 'A little acid helps it to set.'
        : 'This fruit needs no acid for safety.',
    how: `pH ${pot.fruit.pH.value.low}-${pot.fruit.pH.value.high}; a tested dose is ${acidPerLitre.value.lemonMl} mL to a litre of spread`,
    source: `${acidSource(pot.fruit)}; ${cite(acidPerLitre)}`,
  };
}

function massWhys(
  request: BatchRequest,
  { pot }: Mix,
): Pick<Record<WhyKey, Why>, 'targetMass' | 'solubleSolids'> {
  const fruitSource =
    request.measured?.fruitSolubleSolidsPct === undefined ? cite(pot.fruit.solubleSolidsPct) : own;
  return {
    targetMass: {
      says: `${kg(pot.startKg - pot.targetKg)} of water boils away; all the sugar and solids stay.`,
      how: `${kg(pot.startKg)} x ${pct(pot.startSolidsPct)} / ${pct(pot.targetSolidsPct)} = ${kg(pot.targetKg)}`,
      source: `soluble-solids balance; fruit at ${pct(pot.fruitSolidsPct)}: ${fruitSource}`,
    },
    solubleSolids: {
      says: pot.shortBoil
        ? 'A minute of hard boil leaves it a little thicker than it went in.'
        : `It is done at ${pct(pot.targetSolidsPct)} solids.`,
      how: pot.shortBoil
        ? `${pct(100 * shortBoilLoss.value.share)} of the pot boils off`
        : 'the end of the boil',
      source: pot.shortBoil
        ? cite(shortBoilLoss)
        : request.targetSolubleSolidsPct === undefined
          ? cite(recipes[request.product][request.pectin].endPct)
          : own,
    },
  };
}

function boilWhy(request: BatchRequest, plan: BatchPlan): Why {
  const rise = (plan.finishTempC - plan.waterBoilsC).toFixed(1);
  const measured = request.measured?.waterBoilsC !== undefined;
  return {
    says:
      request.product === 'butter'
        ? `Only ${rise} C above water: for a butter trust the scale and the plate, not the thermometer.`
        : request.pectin === 'none'
          ? `${rise} C above boiling water in your kitchen.`
          : 'With added pectin a timed minute decides, not the thermometer.',
    how: `water boils at ${plan.waterBoilsC.toFixed(1)} C ${measured ? 'on your thermometer' : `at ${Math.round(request.elevationM)} m`}, plus ${rise} C at ${pct(plan.targetSolubleSolidsPct)}`,
    source: `${measured ? own : cite(standardAtmosphere)}; ${cite(starzakPeacock)}; ${cite(request.product === 'marmalade' ? marmaladeRise : gelRise)}`,
  };
}

function timeWhys(request: BatchRequest): Pick<Record<WhyKey, Why>, 'heatMinutes' | 'simmerMinutes'> {
  const kind = request.burner?.kind;
  const source = kind ? cite(burnerEfficiency[kind]) : `${cite(burnerKinds)}; ${cite(burnerEfficiency.gas)}`;
  const burner = request.burner ? `${request.burner.powerW} W` : `${burnerPowerW.value.watts} W assumed`;
  const before = request.learned?.batches ?? 0;
  const taught =
    before === 0 ? '' : `, put right by ${before === 1 ? 'one batch' : `${before} batches`} on this stove`;
  const how = `${burner} x ${efficiencyOf(request.burner).share.toFixed(2)} into the pot${taught}`;
  return {
    heatMinutes: { says: 'From cold to a rolling boil on full heat.', how, source },
    simmerMinutes: {
      says: 'A range, not a number: four batches in five end within it. Each weighing narrows it.',
      how: `${how}, less wall losses, over the latent heat; slower where thick fruit spits`,
      source: `energy balance; ${source}`,
    },
  };
}

function jarWhys(plan: BatchPlan): Partial<Record<WhyKey, Why>> {
  const { jars, yieldVolumeL } = plan;
  return {
    yield: {
      says: `About ${yieldVolumeL.likely.toFixed(2)} L: what is left in the pot, less what sticks to pot, spoon and plate.`,
      how: `mass over density at ${fillTempC.value.celsius} C, less ${pct(100 * potCling.value.share)}; nine in ten lie in the range`,
      source: `${cite(icumsaDensity)}; ${cite(potCling)}`,
    },
    jars: {
      says: `${jars.makeReady} and a ${jars.spare.size} spare hold it all ${Math.min(99, Math.floor(100 * jars.enoughProbability))} times in 100.`,
      how: `${(1000 * jarVolumeL.value[jars.size]).toFixed(0)} mL each at the fill line; the headspace lies above it`,
      source: cite(jarVolumeL),
    },
  };
}

function shelfWhys(request: BatchRequest, plan: BatchPlan): Partial<Record<WhyKey, Why>> {
  const shelf: Why = {
    says: plan.shelf.reasons.join(' '),
    how: 'acid, solids, product, jar and altitude must all be covered by a published table',
    source: plan.process?.source ?? 'USDA AIB-539; NCHFP',
  };
  if (!plan.process) return { shelf };
  return {
    shelf,
    process: {
      says: `${plan.process.minutes} minutes at a full boil. The row of the table: ${plan.process.row}.`,
      how: `band of ${thousands(feet(request.elevationM))} ft, no interpolation${plan.process.presteriliseJars ? '; under 10 minutes the jars must be sterile' : ''}`,
      source: plan.process.source,
    },
  };
}

export function whysOf(request: BatchRequest, mix: Mix, plan: BatchPlan): BatchPlan['why'] {
  const { targetDepth, stirInterval, canner, pots } = plainReasons;
  return {
    sugar: sugarWhy(request, mix),
    acid: acidWhy(mix),
    ...massWhys(request, mix),
    ...(plan.targetDepthM === null ? {} : { targetDepth }),
    finishTemp: boilWhy(request, plan),
    ...timeWhys(request),
    stirInterval,
    ...jarWhys(plan),
    canner,
    ...shelfWhys(request, plan),
    strain: {
      says: plan.steps.strainWith
        ? `Strain with ${plan.steps.strainWith}: ${mix.pot.fruit.strain.value.out || 'skins and seeds'} stay behind.`
        : 'No straining.',
      how: `straining is ${plan.steps.strain}`,
      source: cite(mix.pot.fruit.strain),
    },
    pots: { says: plan.pots.says, ...pots },
    standard: {
      says: plan.standardOfIdentity.says,
      how: `${pct(plan.targetSolubleSolidsPct)} solids`,
      source: cite(identity[request.product]),
    },
  };
}
