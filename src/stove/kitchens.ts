// What kitchens are there? Draws a cook's stove, pot, habits and fruit from what is known of real ones.

import type { Burner, BurnerKind } from './burner.ts';
import { EFFICIENCY } from './burner.ts';
import type { Canner } from './canner.ts';
import type { Mixture } from './mixture.ts';
import { boilsC } from './mixture.ts';
import type { Air, Pot } from './pot.ts';
import { ROLLING_KG_PER_M2_S } from './pot.ts';
import type { Hat } from './random.ts';
import { hat } from './random.ts';
import type { Stove } from './stove.ts';

/** How this cook cooks. */
export interface Habits {
  /** Dial after the rolling boil. */
  simmerDial: number;
  /** Spitting (see `spatterOf`) at which the cook turns the heat down. */
  bearsSpatter: number;
  /** Power of the thickness by which this cook minds it: some fear the mud, some the bubbles. */
  fearsMud: number;
  /** The cook looks at the pot and touches the knob this often. */
  looksEveryS: number;
  stirEveryS: number;
}

export interface Kitchen {
  elevationM: number;
  air: Air;
  pot: { diameterM: number; heightM: number; massKg: number };
  burner: Omit<Burner, 'heatW'>;
  habits: Habits;
  /** How this mill and sieve make the fibre thicken, against apple sauce. */
  body: number;
}

/** Shares of burners in homes: US residential energy survey 2020 (from memory). */
const KINDS: readonly [BurnerKind, ...BurnerKind[]] = [
  ...(['gas', 'gas', 'gas', 'gas'] as const),
  ...(['electric', 'electric', 'electric', 'electric', 'electric'] as const),
  'induction',
];
/** Full power of the larger burners, W (makers' plates; from memory). */
const POWER_W = {
  gas: { low: 2000, high: 4500 },
  electric: { low: 1200, high: 2500 },
  induction: { low: 1400, high: 3000 },
} as const;

/** Air pressure of the standard atmosphere, kPa. */
export function airAt(elevationM: number, roomC: number): Air {
  const pressureKPa = 101.325 * (1 - 2.25577e-5 * elevationM) ** 5.25588;
  return { tempC: roomC, pressureKPa, vapourKPa: 1.2 };
}

function drawBurner(from: Hat): Omit<Burner, 'heatW'> {
  const kind = from.oneOf(KINDS);
  const { low, high } = EFFICIENCY[kind];
  // A pot that does not fit its burner takes up to 15 % less.
  const efficiency = from.between(low, high) * from.between(0.85, 1);
  return { kind, powerW: from.between(POWER_W[kind].low, POWER_W[kind].high), efficiency };
}

/** Whether the full dial gives a rolling boil with something to spare: nobody cooks fruit on less. */
function strongEnough(burner: Omit<Burner, 'heatW'>, diameterM: number): boolean {
  const needW = ROLLING_KG_PER_M2_S * 2.257e6 * (Math.PI / 4) * diameterM ** 2 + 120;
  return burner.powerW * burner.efficiency > 1.3 * needW;
}

/**
 * A cook of fruit butter simmers and minds the spitting; a jam is boiled hard. No publication says how much
 * spitting a cook bears or when the knob is touched: these spreads are wide on purpose, so that no planner can do
 * well by knowing a law.
 */
export function drawKitchen(from: Hat, product: 'butter' | 'jam'): Kitchen {
  const elevationM = from.between(0, 2500);
  const diameterM = from.between(0.2, 0.32);
  const pot = { diameterM, heightM: from.between(0.16, 0.26), massKg: from.between(1, 3) };
  let burner = drawBurner(from);
  while (!strongEnough(burner, diameterM)) burner = drawBurner(from);
  const jam = product === 'jam';
  const habits = {
    simmerDial: jam ? from.between(0.8, 1) : from.between(0.45, 0.85),
    bearsSpatter: jam ? from.between(0.06, 0.12) : from.between(0.018, 0.035),
    fearsMud: from.between(0.4, 0.8),
    looksEveryS: jam ? from.between(30, 90) : from.between(60, 240),
    stirEveryS: jam ? 15 : from.between(30, 90),
  };
  const body = Math.exp(from.normal(0, 0.35));
  return { elevationM, air: airAt(elevationM, from.between(18, 26)), pot, burner, habits, body };
}

/** The same cook on another evening: the dial is never set twice to a hair, and the room differs. */
export function anotherEvening(kitchen: Kitchen, from: Hat): Kitchen {
  const nudge = Math.exp(from.normal(0, 0.04));
  const air = airAt(kitchen.elevationM, from.between(18, 26));
  return { ...kitchen, air, burner: { ...kitchen.burner, efficiency: kitchen.burner.efficiency * nudge } };
}

function potOf(kitchen: Kitchen, contents: Mixture): Pot {
  return {
    ...kitchen.pot,
    contents,
    tempC: kitchen.air.tempC,
    wallC: kitchen.air.tempC,
    vapourKgPerS: 0,
    foamM: 0,
    foaminess: 1,
    scorch: 0,
    sinceStirS: 0,
    spilledKg: 0,
  };
}

/** Water for seven half-pints. */
export function coldCanner({ tempC }: Air): Canner {
  return {
    waterKg: 9,
    coveringKg: 7,
    diameterM: 0.32,
    tempC,
    vapourKgPerS: 0,
    fullBoilS: 0,
    boilsLost: 0,
  };
}

/** Sets the pot on the stove, cold, with a canner of water for seven half-pints on the next burner. */
export function setUpStove(kitchen: Kitchen, contents: Mixture, seed: number): Stove {
  const from = hat(seed);
  return {
    seconds: 0,
    air: kitchen.air,
    pot: potOf(kitchen, contents),
    potBurner: { ...kitchen.burner, heatW: 0 },
    canner: coldCanner(kitchen.air),
    cannerBurner: { kind: 'electric', powerW: 2400, efficiency: 0.72, heatW: 0 },
    jars: [],
    plateC: kitchen.air.tempC,
    setsAtPct: from.normal(64, 1.5),
    mishapsPerHour: 0,
    mishapS: 0,
    seed: from.seed(),
  };
}

/** Fruit as it really is tonight: solids that the cook has not measured. */
export function drawFruit(
  from: Hat,
  fruit: { solublePct: number; sdPct: number; insolublePct: number; body: number },
  kg: number,
): Mixture {
  const soluble = Math.max(3, from.normal(fruit.solublePct, fruit.sdPct)) / 100;
  const insoluble = (fruit.insolublePct / 100) * Math.exp(from.normal(0, 0.05));
  const body = fruit.body * Math.exp(from.normal(0, 0.06));
  return {
    waterKg: kg * (1 - soluble - insoluble),
    solubleKg: kg * soluble,
    insolubleKg: kg * insoluble,
    body,
  };
}

/** Where plain water boils in this kitchen, C. */
export function waterBoilsC(kitchen: Kitchen): number {
  return boilsC(kitchen.air.pressureKPa, 1);
}
