// Every figure of a plan as a line to read: its label, its value in the cook's units, and its reason.

import { boilsHard } from '../../../machines/batch/rules.ts';
import type { BatchPlan, PlanFacts, Range, Why } from '../../core/types.ts';
import { pectinDose } from '../../tables/recipes.ts';
import { storage } from '../../tables/storage.ts';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { Units } from '../actions.ts';
import { aimFigures } from './aim.ts';
import { reasonsOf, type ReasonKey } from './reasons.ts';
import {
  inUnits,
  sayDepth,
  sayDuration,
  sayElevation,
  sayLength,
  sayMass,
  sayTemp,
  sayVolume,
  sayWater,
  trim,
} from './units.ts';

export interface Figure {
  label: string;
  value: string;
  /** A second, quieter reading: the likely value of a range, the other form of an amount. */
  also?: string;
  why?: Why;
}

export interface FigureGroup {
  title: string;
  figures: Figure[];
}

export type Word = (key: string, params?: Record<string, string | number>) => string;

/** A batch that is cooking carries its plan without the facts for label and purse. */
export type ShownPlan = BatchPlan & { facts?: PlanFacts };

export function figureGroups(plan: ShownPlan, units: Units, catalogue: Catalogue): FigureGroup[] {
  const word = wordOf(catalogue);
  const reasons = reasonsOf(plan, units, word);
  const figure: Make = (label, value, key, also) => {
    const why = reasons[key];
    return { label: word(`screen.plan.${label}`), value, ...(also ? { also } : {}), ...(why ? { why } : {}) };
  };
  const group = (title: string, figures: (Figure | null)[]): FigureGroup => ({
    title: word(`screen.plan.group.${title}`),
    figures: figures.filter((one) => one !== null),
  });
  return [
    group('pot', potFigures(plan, units, word, figure)),
    group('aim', aimFigures(plan, units, figure)),
    group('time', timeFigures(plan, word, figure)),
    group('out', outFigures(plan, units, word, figure)),
    group('jars', jarFigures(plan, units, word, figure)),
    ...(plan.facts ? [group('label', labelFigures(plan.facts, units, word, figure))] : []),
  ];
}

export type Make = (label: string, value: string, key: ReasonKey, also?: string) => Figure;

function potFigures(plan: BatchPlan, units: Units, word: Word, figure: Make): (Figure | null)[] {
  const { acid, liquidMassKg } = plan;
  return [
    liquidMassKg === undefined
      ? null
      : figure(plan.request.liquid ? 'ownLiquid' : 'water', sayMass(liquidMassKg, units), 'liquid'),
    figure('sugar', sayMass(plan.sugarMassKg, units), 'sugar'),
    acid
      ? figure('acid', sayAcid(acid, units), 'acid', word(`screen.plan.acid.${acid.kind}`))
      : figure('acid', word('screen.plan.noAcid'), 'acid'),
    ...pectinFigure(plan, units, word, figure),
    figure('startMass', sayMass(plan.startMassKg, units), 'startMass'),
    figure('boilAway', sayMass(plan.startMassKg - plan.targetMassKg, units), 'targetMass'),
    plan.startDepthM === null ? null : figure('startDepth', sayDepth(plan.startDepthM, units), 'startDepth'),
    plan.steps.strain === 'none'
      ? null
      : figure('strain', plan.steps.strainWith ?? plan.steps.strain, 'strain'),
    figure(
      'pots',
      word('screen.plan.pots.value', { count: plan.pots.count }),
      'pots',
      plan.pots.count > 1 ? inUnits(plan.pots.says, units) : undefined,
    ),
  ];
}

/** Pectin is bought by the packet, and what the packet says goes before what is said here. */
function pectinFigure(plan: BatchPlan, units: Units, word: Word, figure: Make): Figure[] {
  if (plan.pectinMassKg === undefined) return [];
  const { packetKg } = pectinDose[plan.request.pectin].value;
  const packets = word('screen.plan.pectin.packets', {
    count: Math.round((10 * plan.pectinMassKg) / packetKg) / 10,
    packet: sayMass(packetKg, units),
  });
  return [figure('pectin', sayMass(plan.pectinMassKg, units), 'pectin', packets)];
}

/** Small amounts of acid are measured with spoons in a US kitchen: 15 mL a tablespoon, 5 mL a teaspoon. */
function sayAcid(acid: NonNullable<BatchPlan['acid']>, units: Units): string {
  if (acid.volumeMl === null) return `${trim(acid.massKg * 1000, 1)} g`;
  if (units === 'metric') return `${Math.round(acid.volumeMl)} mL`;
  const tablespoons = acid.volumeMl / 14.79;
  return tablespoons >= 1 ? `${trim(tablespoons, 1)} tbsp` : `${trim(tablespoons * 3, 1)} tsp`;
}

function timeFigures(plan: BatchPlan, word: Word, figure: Make): Figure[] {
  const range = (minutes: Range) => sayRange(minutes, sayDuration, word);
  const { start, end } = plan.stirEveryMinutes;
  return [
    figure('heat', range(plan.heatMinutes), 'heatMinutes', likely(plan.heatMinutes, sayDuration, word)),
    figure(
      boilsHard(plan) ? 'hardBoil' : 'simmer',
      range(plan.simmerMinutes),
      'simmerMinutes',
      likely(plan.simmerMinutes, sayDuration, word),
    ),
    figure(
      'stir',
      word('screen.plan.stir.value', { start: trim(start, 0), end: trim(halfMinutes(end), 1) }),
      'stirInterval',
    ),
  ];
}

/** No clock in a kitchen shows a tenth of a minute; rather too soon than too late. */
const halfMinutes = (minutes: number) => Math.max(0.5, Math.floor(minutes * 2) / 2);

function outFigures(plan: ShownPlan, units: Units, word: Word, figure: Make): (Figure | null)[] {
  const { jars } = plan;
  const mixed = plan.facts?.mixedJars ?? [];
  const volume = (litres: number) => sayVolume(litres, units);
  const size = (of: string, count: number) => word(`screen.plan.size.${of}`, { count }).toLowerCase();
  return [
    figure(
      'yield',
      sayRange(plan.yieldVolumeL, volume, word),
      'yield',
      likely(plan.yieldVolumeL, volume, word),
    ),
    figure(
      'jars',
      sayRange(jars.count, (n) => trim(n, 1), word),
      'jars',
      size(jars.size, jars.count.high),
    ),
    figure(
      'ready',
      word('screen.plan.ready.value', {
        count: jars.makeReady,
        size: size(jars.size, jars.makeReady),
        spare: jars.spare.count,
        spareSize: size(jars.spare.size, jars.spare.count),
      }),
      'jars',
      word('screen.plan.enough', { percent: Math.min(99, Math.floor(jars.enoughProbability * 100)) }),
    ),
    mixed.length < 2
      ? null
      : figure(
          'mixed',
          mixed
            .filter(({ count }) => count > 0)
            .map((some) => `${some.count} ${size(some.size, some.count)}`)
            .join(', '),
          'jars',
        ),
  ];
}

function jarFigures(plan: BatchPlan, units: Units, word: Word, figure: Make): (Figure | null)[] {
  const { process, canner } = plan;
  return [
    figure('headspace', sayLength(plan.headspaceMm, units), 'headspace'),
    process
      ? figure('process', `${process.minutes} min`, 'process', sayElevation(plan.request.elevationM, units))
      : figure(
          'process',
          word('screen.plan.noneProcess', {
            where: word(
              `screen.plan.keep.${plan.request.keep === 'shelf' ? 'fridge' : plan.request.keep}`,
            ).toLowerCase(),
          }),
          'shelf',
        ),
    process &&
      (process.presteriliseJars
        ? figure('sterilise', `${process.steriliseMinutes} min`, 'sterilise')
        : figure('clean', word('screen.plan.clean.value'), 'clean')),
    canner &&
      figure(
        'canner',
        word('screen.plan.canner.value', {
          loads: canner.loads,
          jarsPerLoad: canner.jarsPerLoad,
          water: sayWater(canner.waterL, units),
        }),
        'canner',
      ),
    // The late end of the range: a canner that is hot too early waits, jars that are full too early cool.
    canner &&
      figure(
        'cannerOn',
        word('screen.plan.cannerOn.value', { minutes: Math.round(canner.preheatMinutes.high) }),
        'canner',
      ),
  ];
}

function labelFigures(facts: PlanFacts, units: Units, word: Word, figure: Make): (Figure | null)[] {
  const { label, bestBy, cost, pH, waterActivity } = facts;
  return [
    figure('sugarPer100g', `${Math.round(label.sugarPer100g)} g`, 'sugarPer100g'),
    figure('fruitPer100g', `${Math.round(label.fruitPer100g)} g`, 'fruitPer100g'),
    figure(
      'pH',
      sayRange(pH, (value) => value.toFixed(1), word),
      'pH',
    ),
    figure('waterActivity', waterActivity.toFixed(2), 'waterActivity'),
    figure('bestBy', sayBestBy(bestBy.place, units, word), 'bestBy'),
    cost &&
      figure(
        'cost',
        cost.total.toFixed(2),
        'cost',
        word('screen.plan.cost.each', { each: cost.perJar.toFixed(2) }),
      ),
  ];
}

/** How long it keeps, at the temperatures that the cook's own thermometer shows. */
function sayBestBy(place: PlanFacts['bestBy']['place'], units: Units, word: Word): string {
  const { coolestC, warmestC } = storage.shelf.value;
  return word(`screen.plan.bestBy.${place}`, {
    low: sayTemp(Math.round(coolestC), units),
    high: sayTemp(Math.round(warmestC), units),
    room: sayLength(storage.freezer.value.headspaceInches * 25.4, units),
  });
}

/** "5–7 half-pints" */
export function sayJars({ jars }: BatchPlan, catalogue: Catalogue): string {
  const word = wordOf(catalogue);
  const count = sayRange(jars.count, (n) => trim(n, 1), word);
  return `${count} ${word(`screen.plan.size.${jars.size}`, { count: 2 }).toLowerCase()}`;
}

/** "Then simmer 18–40 min" */
export function saySimmer(plan: BatchPlan, catalogue: Catalogue): string {
  const word = wordOf(catalogue);
  const label = word(boilsHard(plan) ? 'screen.plan.hardBoil' : 'screen.plan.simmer').toLowerCase();
  return `${label} ${sayRange(plan.simmerMinutes, sayDuration, word)}`;
}

const wordOf =
  (catalogue: Catalogue): Word =>
  (key, params) =>
    catalogue.text(params ? { key, params } : { key });

function sayRange(range: Range, say: (n: number) => string, word: Word): string {
  const [low, high] = [say(range.low), say(range.high)];
  if (low === high) return low;
  const unit = / [^\d]+$/.exec(high)?.[0] ?? '';
  // "50–126 min", but "50 min–2 h 6 min".
  const alone = (text: string) => !text.slice(0, -unit.length).includes(' ');
  const short =
    unit !== '' && low.endsWith(unit) && alone(low) && alone(high) ? low.slice(0, -unit.length) : low;
  return word('screen.plan.range', { low: short, high });
}

function likely(range: Range, say: (n: number) => string, word: Word): string {
  return word('screen.plan.likely', { likely: say(range.likely) });
}

/** The headline of the verdict. */
export function verdictKey({ request, shelf }: BatchPlan): string {
  if (request.keep !== 'shelf') return `screen.verdict.notShelf.${request.keep}`;
  return shelf.allowed ? 'screen.verdict.shelf' : 'screen.verdict.refused';
}
