// A hundred batches for beginners: fruits, products, altitudes and jars drawn by chance, cooked, and judged.

import { batchRequestSchema, planBatch } from '../../../src/core/index.ts';
import type { BatchPlan } from '../../../src/core/types.ts';
import type { Catalogue } from '../../../src/kitchen/ports.ts';
import { hat } from '../../../src/stove/index.ts';
import { createCatalogue } from '../../../src/words/catalogue.ts';
import { Beginner } from './beginner.ts';
import { Bench } from './bench.ts';
import { openPage, plan as planOn } from './page.ts';

type Kind = readonly [fruit: string, product: string];

const KINDS: readonly [Kind, ...Kind[]] = [
  ['damson', 'butter'],
  ['damson', 'jam'],
  ['pear', 'butter'],
  ['crab-apple', 'jelly'],
  ['apple', 'butter'],
  ['plum', 'jam'],
  ['blackberry', 'jam'],
  ['quince', 'jelly'],
  ['apricot', 'jam'],
  ['peach', 'butter'],
  ['fig', 'jam'],
  ['grape', 'jelly'],
  ['orange', 'marmalade'],
  ['rhubarb', 'jam'],
  ['strawberry', 'jam'],
];

export function drawPlan(seed: number): BatchPlan {
  const from = hat(seed * 7919 + 11);
  const [fruit, product] = from.oneOf(KINDS);
  const jar = from.oneOf<string>(['half-pint', 'half-pint', 'quarter-pint', 'pint']);
  const small = fruit === 'fig' || product === 'marmalade';
  return planBatch(
    batchRequestSchema.parse({
      fruit,
      product,
      fruitMassKg: from.between(1.0, 2.2),
      jar: small && jar === 'pint' ? 'half-pint' : jar,
      jarsPerLoad: 14,
      elevationM: from.oneOf([0, 150, 400, 1100, 1700, 2200]),
      keep: from.between(0, 1) < 0.8 ? 'shelf' : from.oneOf<string>(['fridge', 'freezer']),
      pot: { diameterM: from.between(0.24, 0.3) },
      burner: { powerW: from.between(1800, 2600), kind: 'electric' },
    }),
  );
}

/** What safety hangs on in this batch, and whether it was seen to. */
export type Points = Record<string, boolean>;

export interface Batch {
  name: string;
  altitudeFt: number;
  jar: string;
  keep: string;
  outcome: string;
  hours: number;
  shelved: number;
  points: Points;
  missed: string[];
  /** What was being done when it burnt; null where it did not. */
  burnt: string | null;
  record: string[];
}

const HOT_C = 60;
const REST_MS = 12 * 3_600_000;

function pointsOf(bench: Bench, plan: BatchPlan, shelved: number): Points {
  const { done, scene } = bench;
  const out = scene.stove.jars.filter(({ place, state }) => place === 'out' && state === 'sound');
  const at = (type: string): number => scene.told.findLast(({ event }) => event.type === type)?.event.at ?? 0;
  const minutes = plan.process?.minutes ?? 0;
  const served = scene.marks.servedS.filter((_, i) => scene.stove.jars[i]?.place === 'out');
  return {
    ...(plan.acid?.neededForShelf ? { acid: done.acid } : {}),
    ...(plan.steps.blend ? { ventedBlender: done.blended && done.vented } : {}),
    ...(plan.process
      ? {
          hotJars:
            done.jarsHot &&
            done.jarsBoiled >= (plan.process.presteriliseJars ? plan.process.steriliseMinutes : 0),
          headspace: done.headspace,
          rims: done.wiped,
          bands: done.fingertip,
          hotFill: done.coolestC >= HOT_C,
          covered: done.covered,
          // Every jar that stands on the shelf had the published minutes, unbroken.
          served: shelved === 0 || served.every((seconds) => seconds >= minutes * 60 - 10),
          rested: shelved === 0 || at('jars.putAway') - at('jars.out') >= REST_MS,
          sealed: shelved <= out.filter(({ seal }) => seal === 'sealed').length,
        }
      : { notShelved: shelved === 0 }),
  };
}

function burntIn({ scene: { marks, told } }: Bench): string | null {
  const at = marks.burntAt;
  if (at === null) return null;
  return `after ${told.findLast(({ event }) => event.at <= at)?.event.type ?? 'nothing'}`;
}

export interface Guidance {
  catalogue: Catalogue;
}

export async function cookBatch(seed: number, guidance: Guidance): Promise<Batch> {
  const plan = drawPlan(seed);
  const senses = createCatalogue('en', 'us');
  let bench: Bench | null = null;
  const page = await openPage(guidance.catalogue, (entry) => bench?.follow(entry));
  bench = new Bench(plan, seed, page.now(), 1.5, senses);
  await planOn(page, plan);
  const beginner = new Beginner(page, bench);
  const began = page.now();
  const outcome = await beginner.work();
  const [view] = page.live.view.batches;
  const shelved = view?.jars.filter(({ state }) => state === 'onShelf').length ?? 0;
  const points = pointsOf(bench, plan, shelved);
  page.live.close();
  return {
    name: `${plan.fruitName} ${plan.request.product}`,
    altitudeFt: Math.round(plan.request.elevationM / 0.3048),
    jar: plan.request.jar,
    keep: plan.request.keep,
    outcome,
    hours: (page.now() - began) / 3_600_000,
    shelved,
    points,
    missed: Object.entries(points).flatMap(([point, seen]) => (seen ? [] : [point])),
    burnt: burntIn(bench),
    record: beginner.record,
  };
}

/** All the words there are. */
export const fullWords: Guidance = { catalogue: createCatalogue('en', 'us') };

/** Guidance faded before anything was learnt: no picture, no detail, no second sentence, the fewest words there are. */
export function fadedWords(): Guidance {
  const { catalogue } = fullWords;
  const text: Catalogue['text'] = (message) => {
    if (/^(how|look|see)\./.test(message.key)) return ' ';
    try {
      return catalogue.text({ ...message, key: `bare.${message.key}` });
    } catch {
      return catalogue.text(message); // a point of safety: it has no fewer words
    }
  };
  return { catalogue: { ...catalogue, text } };
}
