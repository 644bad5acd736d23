// One step of a kitchen in time: a fruit pot on its burner, a canner on its own, a row of jars, a plate in the freezer.

import type { Burner } from './burner.ts';
import { stepBurner } from './burner.ts';
import type { Canner } from './canner.ts';
import { atFullBoil, stepCanner } from './canner.ts';
import type { Jar } from './jars.ts';
import { JAR_WARMS_S, shock, stepJar } from './jars.ts';
import type { Air, Pot } from './pot.ts';
import { stepPot } from './pot.ts';
import { drawUniform } from './random.ts';

/** Everything that is true of the kitchen, as plain data. */
export interface Stove {
  /** Seconds since the kitchen was set up. */
  seconds: number;
  /** What chance will bring next. */
  seed: number;
  air: Air;
  pot: Pot;
  potBurner: Burner;
  canner: Canner;
  cannerBurner: Burner;
  jars: Jar[];
  plateC: number;
  /** Soluble solids at which this fruit really holds on a cold plate, mass per cent. Nobody in the kitchen knows. */
  setsAtPct: number;
  /** How often, in an hour, a draught or a turned knob lets the canner's flame down. */
  mishapsPerHour: number;
  /** Seconds that the present mishap still lasts. */
  mishapS: number;
}

/** What hands do during a step. Dials run from 0 to 1. */
export interface Hands {
  potDial: number;
  potLid: boolean;
  stir: boolean;
  skim: boolean;
  cannerDial: number;
  cannerLid: boolean;
  plate: 'freezer' | 'bench';
}

export const handsOff: Hands = {
  potDial: 0,
  potLid: false,
  stir: false,
  skim: false,
  cannerDial: 0,
  cannerLid: true,
  plate: 'freezer',
};

/** No physics step is longer than this; longer ones are cut up. */
const LONGEST_STEP_S = 10;
const FREEZER_C = -18;
const PLATE_S = 420; // a china plate is cold through in about a quarter of an hour (common practice, no source)
const MISHAP_S = 90;
const JAR_GLASS_J_PER_K = 170; // a 200 g half-pint jar, 840 J/kg/K
const PRODUCT_J_PER_L_K = 3700;

function mishap(stove: Stove, dtS: number): Stove {
  if (stove.mishapsPerHour === 0) return stove;
  const drawn = drawUniform(stove.seed);
  const strikes = drawn.value < 1 - Math.exp((-stove.mishapsPerHour * dtS) / 3600);
  const mishapS = strikes ? MISHAP_S : Math.max(0, stove.mishapS - dtS);
  return { ...stove, seed: drawn.seed, mishapS };
}

function jarsIn(stove: Stove): Jar[] {
  return stove.jars.filter((jar) => jar.place === 'canner');
}

function jarJPerK(jar: Jar): number {
  return JAR_GLASS_J_PER_K + PRODUCT_J_PER_L_K * jar.filledL;
}

/** Heat that the jars take from the canner's water, W; as much as their warming needs. */
function jarsDrawW(stove: Stove): number {
  return jarsIn(stove).reduce(
    (sum, jar) => sum + (jarJPerK(jar) * (stove.canner.tempC - jar.contentC)) / JAR_WARMS_S,
    0,
  );
}

/** A cold canner on an unlit burner, and no jars: nothing happens there. */
function canningCornerRests(stove: Stove, hands: Hands): boolean {
  const cold = Math.abs(stove.canner.tempC - stove.air.tempC) < 0.1;
  return cold && hands.cannerDial === 0 && stove.cannerBurner.heatW < 1 && stove.jars.length === 0;
}

function stepCanningCorner(stove: Stove, dtS: number, hands: Hands): Stove {
  if (canningCornerRests(stove, hands)) return stove;
  const dial = stove.mishapS > 0 ? hands.cannerDial * 0.1 : hands.cannerDial;
  const cannerBurner = stepBurner(stove.cannerBurner, dtS, dial, stove.canner.tempC + 10);
  const canner = stepCanner(
    stove.canner,
    dtS,
    {
      intoW: cannerBurner.heatW,
      jarsDrawW: jarsDrawW(stove),
      lid: hands.cannerLid,
      jarsIn: jarsIn(stove).length > 0,
    },
    stove.air,
  );
  let seed = stove.seed;
  const jars = stove.jars.map((jar) => {
    const tempC = jar.place === 'canner' ? canner.tempC : stove.air.tempC;
    const stepped = stepJar(jar, dtS, { tempC, fullBoil: atFullBoil(canner), seed });
    seed = stepped.seed;
    return stepped.jar;
  });
  return { ...stove, seed, cannerBurner, canner, jars };
}

function stepShort(stove: Stove, dtS: number, hands: Hands): Stove {
  const struck = mishap(stove, dtS);
  const potBurner = stepBurner(struck.potBurner, dtS, hands.potDial, struck.pot.wallC);
  const touch = { stir: hands.stir, skim: hands.skim, lid: hands.potLid };
  const pot = stepPot(struck.pot, dtS, potBurner.heatW, touch, struck.air);
  const aroundPlateC = hands.plate === 'freezer' ? FREEZER_C : struck.air.tempC;
  const plateC = aroundPlateC + (struck.plateC - aroundPlateC) * Math.exp(-dtS / PLATE_S);
  const cooked = { ...struck, seconds: struck.seconds + dtS, potBurner, pot, plateC };
  return stepCanningCorner(cooked, dtS, hands);
}

/** The kitchen `dtSeconds` later, if the hands do this all the while. Pure: the same in, the same out. */
export function stepStove(state: Stove, dtSeconds: number, hands: Hands): Stove {
  const steps = Math.max(1, Math.ceil(dtSeconds / LONGEST_STEP_S));
  let now = state;
  for (let i = 0; i < steps; i++) now = stepShort(now, dtSeconds / steps, hands);
  return now;
}

/** Lowers the filled jars into the water; a cold jar may break, and the outer third of each takes its heat at once. */
export function loadCanner(state: Stove): Stove {
  let { seed } = state;
  let takenJ = 0;
  const jars = state.jars.map((jar) => {
    if (jar.place !== 'bench' || jar.filledL === 0) return jar;
    takenJ += (jarJPerK(jar) * (state.canner.tempC - jar.contentC)) / 3;
    const moved = shock({ ...jar, place: 'canner' }, state.canner.tempC - jar.glassC, seed);
    seed = moved.seed;
    return moved.jar;
  });
  const tempC = state.canner.tempC - takenJ / (4190 * state.canner.waterKg);
  return { ...state, seed, jars, canner: { ...state.canner, tempC, fullBoilS: 0 } };
}

/** Lifts the jars out onto a towel. */
export function liftJars(state: Stove): Stove {
  const jars = state.jars.map((jar): Jar => (jar.place === 'canner' ? { ...jar, place: 'out' } : jar));
  return { ...state, jars };
}
