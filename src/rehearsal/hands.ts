// What the hands do at the simulated stove: what the cook turns and stirs, and what was told as done.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import {
  emptyJar,
  fillNextJar,
  liftJars,
  loadCanner,
  massKg,
  plateTest,
  stepStove,
  without,
  type Jar,
  type Mixture,
  type Stove,
} from '../stove/index.ts';
import { marked } from './marks.ts';
import { atItsCanner, besideOn, ofAnotherCanner, turned, withBeside, type OfCanner } from './besideIt.ts';
import type { Scene, Truth } from './scene.ts';
import { cannerSurfaceOf, surfaceOf } from './surface.ts';

/** Warm is the smallest flame: it makes up for what the pot loses, and no more. */
export type Heat = 'off' | 'warm' | 'low' | 'high';

/** What a hand can do that nobody need be told of. */
export type Act =
  | { do: 'pot.heat'; heat: Heat }
  | { do: 'pot.takeOff' }
  | { do: 'canner.heat'; heat: Heat }
  | { do: 'pot.stir' }
  | { do: 'pot.lid'; on: boolean }
  | { do: 'plate.freeze' }
  | { do: 'plate.spoon' }
  | { do: 'jars.heat' }
  | { do: 'jar.fill'; care: { wipeRim: boolean; lid: Jar['lid'] } };

/** Dials: low is a simmer under a butter, and just under a simmer for a covered canner. */
const POT_DIAL = { off: 0, warm: 0.05, low: 0.55, high: 1 } as const;
const CANNER_DIAL = { off: 0, warm: 0.1, low: 0.3, high: 1 } as const;
/** Somebody who is told to stir does so for so long. */
const STIR_MS = 30_000;
/** A jar out of simmering water. */
const HOT_GLASS_C = 88;
/** The watcher looks this often. */
const LOOK_S = 10;

/** The stove run on to `at`; an earlier instant changes nothing. */
export function runTo(scene: Scene, at: number): Scene {
  let now = scene;
  while (now.at < at) {
    const next = Math.min(at, now.at + LOOK_S * 1000);
    const hands = { ...now.hands, stir: now.stirsUntil > now.at };
    const stove = stepStove(now.stove, (next - now.at) / 1000, hands);
    now = {
      ...now,
      stove,
      at: next,
      beside: now.beside && besideOn(now.beside, now.stove, (next - now.at) / 1000),
      hands: { ...now.hands, skim: false },
      marks: marked(now.marks, now.stove, stove, next),
    };
  }
  return now;
}

export function act(scene: Scene, done: Act): Scene {
  const { hands, stove } = scene;
  switch (done.do) {
    case 'pot.heat':
      return { ...scene, hands: { ...hands, potDial: POT_DIAL[done.heat] } };
    case 'pot.takeOff': // heat off, and away from a ring that stays hot
      return {
        ...scene,
        hands: { ...hands, potDial: 0 },
        stove: { ...stove, potBurner: { ...stove.potBurner, heatW: 0 } },
      };
    case 'canner.heat':
      return { ...scene, hands: { ...hands, cannerDial: CANNER_DIAL[done.heat] } };
    case 'pot.stir':
      return { ...scene, stirsUntil: scene.at + STIR_MS };
    case 'pot.lid':
      return { ...scene, hands: { ...hands, potLid: done.on } };
    case 'plate.freeze':
      return { ...scene, hands: { ...hands, plate: 'freezer' } };
    case 'plate.spoon': {
      const { value, stove: after } = plateTest(stove);
      return { ...scene, stove: after, plate: { at: scene.at, verdict: value } };
    }
    case 'jars.heat':
      return { ...scene, jarsHot: true, stove: { ...stove, jars: stove.jars.map(heated) } };
    case 'jar.fill':
      return { ...scene, stove: fillNextJar(warmJars(scene), done.care) };
  }
}

const heated = (jar: Jar): Jar =>
  jar.place === 'bench' && jar.filledL === 0 ? { ...jar, glassC: HOT_GLASS_C, contentC: HOT_GLASS_C } : jar;

/** Empty jars stand in hot water until they are filled. */
const warmJars = ({ stove, jarsHot }: Scene): Stove =>
  jarsHot ? { ...stove, jars: stove.jars.map(heated) } : stove;

const CARE = { wipeRim: true, lid: 'fingertip' } as const;

/** What hands go on to do by themselves once this was told, where somebody turns the knobs by the page's word. */
const NEXT: { [Type in KitchenEvent['type']]?: Act } = {
  'mash.done': { do: 'pot.heat', heat: 'high' },
  'heat.on': { do: 'pot.heat', heat: 'high' },
  'pot.rollingBoil': { do: 'pot.heat', heat: 'low' },
  'plate.runny': { do: 'pot.heat', heat: 'low' },
  'pot.thick': { do: 'pot.heat', heat: 'off' },
  'jars.emptied': { do: 'pot.heat', heat: 'high' },
  'pot.more': { do: 'pot.heat', heat: 'high' },
  'canner.hot': { do: 'canner.heat', heat: 'low' },
  'jars.in': { do: 'canner.heat', heat: 'high' },
  'jars.out': { do: 'canner.heat', heat: 'low' },
};

/** What was told, and the knobs turned as the page then asks: for a rehearsal by voice, with no hand free. */
export function followed(scene: Scene, event: KitchenEvent): Scene {
  const next = NEXT[event.type];
  const then = told(scene, event);
  const other = ofAnotherCanner(then, event);
  if (other) return next ? turnBeside(then, other.canner, next) : then;
  return next ? act(then, next) : then;
}

/** What was told happens at the stove too, as far as it is a thing done with hands. */
export function told(scene: Scene, event: KitchenEvent): Scene {
  const now = atItsCanner(runTo(scene, event.at), event);
  const other = ofAnotherCanner(now, event);
  if (other) return toldBeside(now, other);
  const then = { ...now, told: [...now.told, { event, truth: truthOf(now) }] };
  switch (event.type) {
    case 'setup.ready':
      return act(then, { do: 'plate.freeze' });
    case 'heat.off':
    case 'batch.held':
      return act(then, { do: 'pot.heat', heat: 'off' });
    case 'pot.stirred':
      return act(then, { do: 'pot.stir' });
    case 'skim.done':
      return { ...then, hands: { ...then.hands, skim: true } };
    case 'strain.done':
      return inPot(then, (mix) => ({ ...mix, insolubleKg: 0.75 * mix.insolubleKg }));
    case 'pot.loosened':
      return inPot(then, (mix) => ({ ...mix, waterKg: mix.waterKg + 0.05 * mix.solubleKg }));
    case 'pot.changed':
      return { ...then, stove: { ...then.stove, pot: { ...clean(then.stove.pot) } } };
    case 'plate.spooned':
      return act(then, { do: 'plate.spoon' });
    case 'jars.ready':
      return act(then, { do: 'jars.heat' });
    case 'jars.filled':
      return filled(then, event.full + event.spare);
    case 'canner.heatOn':
      return act(then, { do: 'canner.heat', heat: 'high' });
    case 'canner.off':
      return act(then, { do: 'canner.heat', heat: 'off' });
    case 'canner.waterAdded':
      return {
        ...then,
        stove: { ...then.stove, canner: { ...then.stove.canner, waterKg: then.stove.canner.waterKg + 1 } },
      };
    case 'jars.in':
      return { ...then, stove: loadCanner(then.stove) };
    case 'jars.out':
      return { ...then, stove: liftJars(then.stove) };
    default:
      return then;
  }
}

/** What was told of the other canner is done there: its heat, its water. Its jars are of a batch without a stove. */
function toldBeside(scene: Scene, event: OfCanner): Scene {
  switch (event.type) {
    case 'canner.heatOn':
      return turned(scene, event.canner, CANNER_DIAL.high);
    case 'canner.off':
      return turned(scene, event.canner, CANNER_DIAL.off);
    case 'canner.waterAdded':
      return withBeside(scene, event.canner, ({ canner }) => ({
        canner: { ...canner, waterKg: canner.waterKg + 1 },
      }));
    default:
      return withBeside(scene, event.canner, () => ({}));
  }
}

const turnBeside = (scene: Scene, canner: string, next: Act): Scene =>
  next.do === 'canner.heat' ? turned(scene, canner, CANNER_DIAL[next.heat]) : scene;

function truthOf({ stove, marks, plate }: Scene): Truth {
  const out = stove.jars.filter(
    ({ place, filledL, state }) => place === 'out' && filledL > 0 && state === 'sound',
  );
  const settled = out.length > 0 && out.every(({ seal }) => seal !== 'not yet');
  return {
    pot: surfaceOf(stove),
    canner: cannerSurfaceOf(stove),
    rollingSince: marks.rollingSince,
    cannerFullSince: marks.cannerFullSince,
    massKg: massKg(stove.pot.contents),
    plate: plate?.verdict ?? null,
    lidsUp: settled ? out.filter(({ seal }) => seal !== 'sealed').length : null,
  };
}

const inPot = (scene: Scene, change: (mix: Mixture) => Mixture): Scene => {
  const { pot } = scene.stove;
  return { ...scene, stove: { ...scene.stove, pot: { ...pot, contents: change(pot.contents) } } };
};

/** What is above the burn, in a clean pot: some stays behind with the crust. */
const clean = (pot: Stove['pot']): Stove['pot'] => ({
  ...pot,
  contents: without(pot.contents, 0.08 * (pot.contents.waterKg + pot.contents.solubleKg)),
  scorch: pot.scorch >= 1 ? pot.scorch : 0,
});

/** So many jars stand filled; those that a hand has filled already count. */
function filled(scene: Scene, jars: number): Scene {
  let now = scene;
  while (filledOf(now) < jars) {
    const room = now.stove.jars.some((jar) => jar.place === 'bench' && jar.filledL === 0);
    // More jars than were laid out: another is fetched, as hot as the others.
    const stove = room ? now.stove : { ...now.stove, jars: [...now.stove.jars, another(now)] };
    const next = act({ ...now, stove }, { do: 'jar.fill', care: CARE });
    if (filledOf(next) === filledOf(now)) return next; // the pot is empty
    now = next;
  }
  return now;
}

const another = ({ batch, stove, jarsHot }: Scene): Jar =>
  emptyJar(batch.jarL / 0.93, jarsHot ? HOT_GLASS_C : stove.air.tempC);

export const filledOf = ({ stove }: Scene): number =>
  stove.jars.filter((jar) => jar.place === 'bench' && jar.filledL > 0).length;
