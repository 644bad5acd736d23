// A kitchen without fruit: one pot, one canner and a row of jars on the simulated stove, and what has been noticed of them.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import {
  airAt,
  EFFICIENCY,
  emptyJar,
  handsOff,
  hat,
  setUpStove,
  type Hands,
  type Kitchen,
  type PlateVerdict,
  type Stove,
} from '../stove/index.ts';
import type { Marks } from './marks.ts';
import { noMarks } from './marks.ts';
import type { Surface } from './surface.ts';

/** What goes into the pot and the jars, in amounts only: how it will boil is for the stove to say. */
export interface RehearsedBatch {
  id: string;
  product: 'butter' | 'jam' | 'jelly' | 'marmalade';
  elevationM: number;
  startKg: number;
  startSolubleSolidsPct: number;
  /** Fibre in what goes in, kg. */
  fibreKg: number;
  /** Soluble solids at which it is meant to be done. */
  targetSolubleSolidsPct: number;
  potDiameterM: number | null;
  burnerW: number | null;
  jarL: number;
  jars: number;
  /** Minutes at a full boil; null where it is not for the shelf. */
  processMinutes: number | null;
}

/** What was told to the kitchen, and how it really stood at that instant. */
export interface Told {
  event: KitchenEvent;
  truth: Truth;
}

export interface Truth {
  pot: Surface;
  canner: Surface | 'flat';
  /** Since when so, kitchen ms. */
  rollingSince: number | null;
  cannerFullSince: number | null;
  massKg: number;
  plate: PlateVerdict | null;
  /** Jars out of the canner, whole, whose lid is up; null while they are still hot. */
  lidsUp: number | null;
}

/** A canner that stands beside this batch's own: what others do there must not be done to ours. */
export interface BesideIt {
  id: string;
  canner: Stove['canner'];
  burner: Stove['cannerBurner'];
  dial: number;
}

export interface Scene {
  batch: RehearsedBatch;
  stove: Stove;
  hands: Hands;
  /** Kitchen ms up to which the stove has run. */
  at: number;
  /** Kitchen ms until which a hand stirs. */
  stirsUntil: number;
  /** The spoonful on the plate: how it will turn out, and since when it lies there. */
  plate: { at: number; verdict: PlateVerdict } | null;
  /** The canner that this batch's jars are in or for, as far as is known: the first that is spoken of. */
  canner: string | null;
  /** Another canner of the evening, with its burner and its dial; null where none was spoken of. */
  beside: BesideIt | null;
  /** Are the empty jars hot? */
  jarsHot: boolean;
  told: Told[];
  marks: Marks;
}

/** Where the cook names no pot or burner: a wide pot with a layer of 7 cm, a middling electric ring. */
const USUAL_LAYER_M = 0.07;
const USUAL_BURNER_W = 2200;

function kitchenOf(batch: RehearsedBatch): Kitchen {
  const widthM = Math.sqrt((4 * batch.startKg) / 1050 / (Math.PI * USUAL_LAYER_M));
  const { low, high } = EFFICIENCY.electric;
  return {
    elevationM: batch.elevationM,
    air: airAt(batch.elevationM, 21),
    pot: {
      diameterM: batch.potDiameterM ?? Math.min(0.36, Math.max(0.16, widthM)),
      heightM: 0.2,
      massKg: 1.6,
    },
    burner: { kind: 'electric', powerW: batch.burnerW ?? USUAL_BURNER_W, efficiency: (low + high) / 2 },
    habits: { simmerDial: 0.6, bearsSpatter: 0.03, fearsMud: 0.6, looksEveryS: 60, stirEveryS: 60 },
    body: 1,
  };
}

/** How unlike the books tonight's fruit may be, and where it sets: log sd of its solids, points of soluble solids. */
const LOT_LOG_SD = 0.03;
const SETS_SD_PCT = 1.2;

/** Everything laid out, cold. The same seed gives the same evening. */
export function layOut(batch: RehearsedBatch, seed: number, at: number, mishapsPerHour = 0): Scene {
  const from = hat(seed);
  const solubleKg =
    (batch.startKg * batch.startSolubleSolidsPct * Math.exp(from.normal(0, LOT_LOG_SD))) / 100;
  const contents = {
    waterKg: batch.startKg - solubleKg - batch.fibreKg,
    solubleKg,
    insolubleKg: batch.fibreKg,
    body: 1,
  };
  const stove = setUpStove(kitchenOf(batch), contents, from.seed());
  const setsAtPct = batch.targetSolubleSolidsPct + from.normal(0, SETS_SD_PCT);
  return {
    batch,
    stove: { ...stove, setsAtPct, mishapsPerHour, jars: emptyJars(batch, stove.air.tempC) },
    // Until somebody puts it in the freezer the plate lies on the bench.
    hands: { ...handsOff, plate: 'bench' },
    at,
    stirsUntil: -Infinity,
    plate: null,
    canner: null,
    beside: null,
    jarsHot: false,
    told: [],
    marks: noMarks,
  };
}

export const emptyJars = ({ jars, jarL }: RehearsedBatch, glassC: number) =>
  Array.from({ length: jars }, () => emptyJar(jarL / FILL_SHARE, glassC));

/** A jar holds its name at the fill line; above it is the headspace. */
const FILL_SHARE = 0.93;
