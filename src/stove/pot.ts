// What happens in the fruit pot from one moment to the next: it warms, boils, thickens, foams, scorches, runs over?

import type { Mixture } from './mixture.ts';
import {
  activityOf,
  boilsC,
  heatCapacityJPerK,
  latentJPerKg,
  massKg,
  thicknessOf,
  vapourKPa,
  volumeL,
  without,
} from './mixture.ts';

export type Boil = 'still' | 'simmer' | 'rolling';

export interface Pot {
  diameterM: number;
  heightM: number;
  /** Of the empty pot. */
  massKg: number;
  contents: Mixture;
  tempC: number;
  /** Inside of the bottom. */
  wallC: number;
  /** Water leaving, kg/s. */
  vapourKgPerS: number;
  /** Height of the foam on top. */
  foamM: number;
  /** 1 for a fresh jam, less once skimmed or with a dab of butter. */
  foaminess: number;
  /** 0 clean, from 0.15 it smells, from 1 it is burnt and tastes of it. */
  scorch: number;
  sinceStirS: number;
  spilledKg: number;
}

/** What hands do to the pot. */
export interface PotHands {
  stir: boolean;
  skim: boolean;
  lid: boolean;
}

export interface Air {
  tempC: number;
  pressureKPa: number;
  /** Vapour pressure of the water in the room's air. */
  vapourKPa: number;
}

const STEEL_J_PER_KG_K = 500;
// Convection and radiation from pot sides, W/m2/K (heat transfer handbooks give 10 to 15; from memory).
const SIDE_LOSS_W_PER_M2_K = 12;
// Mass transfer from a still hot surface, m/s: natural convection, about 8 kg/m2/h at 90 C (from memory).
const SURFACE_M_PER_S = 0.004;
const LID_LETS_OUT = 0.12;
/** Water that will not boil off, over the solids. */
const DRIEST = 0.04;
// Nucleate boiling of water on steel, W/m2/K, falling with thickness to the power 0.35 (from memory).
const FILM_W_PER_M2_K = 4000;
const FILM_FALL = 0.35;
/** As thick as a butter near its end, times water. */
const THICK = 30;
/** Vapour leaving a square metre each second: less is still, more is a simmer, more yet a rolling boil. */
export const SIMMER_KG_PER_M2_S = 0.0006;
export const ROLLING_KG_PER_M2_S = 0.0025;
// Foam rises to about 7 cm in a fresh jam at a full boil and falls back in half a minute (common practice, no source).
const FOAM_M_AT_ROLLING = 0.035;
const FOAM_FALLS_S = 25;
// Sugar and pulp brown on a wall above about 130 C, twice as fast for each 10 C (rule of thumb, from memory).
const SCORCH_AT_C = 140;
const SCORCH_S = 500;
/** Charred: hotter tells nothing more. */
const HOTTEST_WALL_C = 300;
const CHARRED = 10;

export function bottomM2(pot: Pot): number {
  return (Math.PI / 4) * pot.diameterM ** 2;
}

/** Depth of the contents, metres, without the foam. */
export function depthM(pot: Pot): number {
  return volumeL(pot.contents) / 1000 / bottomM2(pot);
}

export function boilOf(pot: Pot): Boil {
  const flux = pot.vapourKgPerS / bottomM2(pot);
  if (flux >= ROLLING_KG_PER_M2_S) return 'rolling';
  return flux >= SIMMER_KG_PER_M2_S ? 'simmer' : 'still';
}

/**
 * How hard it spits: vapour, kg/m2/s, weighed by how thick it is against a mash (15 times water). Thick mud throws
 * where thin juice bubbles; how much worse that is to a cook is `power`.
 */
export function spatterOf(pot: Pot, power = 0.6): number {
  return (pot.vapourKgPerS / bottomM2(pot)) * 5 * (thicknessOf(pot.contents) / 15) ** power;
}

export function smells(pot: Pot): 'good' | 'catching' | 'burnt' {
  if (pot.scorch >= 1) return 'burnt';
  return pot.scorch >= 0.15 ? 'catching' : 'good';
}

/** Water that the air takes off a surface below its boil, kg/s. */
function surfaceVapour(pot: Pot, activity: number, air: Air): number {
  const excessKPa = activity * vapourKPa(pot.tempC) - air.vapourKPa;
  const kgPerM3 = (excessKPa * 1000 * 0.018015) / (8.314 * (pot.tempC + 273.15));
  return Math.max(0, SURFACE_M_PER_S * kgPerM3 * bottomM2(pot));
}

/**
 * The bottom is hotter than the pot by the heat over what the film carries. Stirring thins the film; a thick mass
 * left alone settles and dries on the bottom, the faster the thicker (kitchen engineering judgement).
 */
function wallOf(pot: Pot, heatW: number, sinceStirS: number): number {
  const thickness = thicknessOf(pot.contents);
  const stirred = 1 + 1.5 * Math.exp(-sinceStirS / 20);
  const settled = 1 + (thickness / THICK) * (sinceStirS / 120);
  const film = (FILM_W_PER_M2_K * thickness ** -FILM_FALL * stirred) / settled;
  return Math.min(HOTTEST_WALL_C, pot.tempC + heatW / (film * bottomM2(pot)));
}

/** Warms it; what heat is left over at the boil drives water off. */
function heatAndBoil(pot: Pot, dtS: number, heatW: number, lid: boolean, air: Air): Pot {
  const activity = activityOf(pot.contents);
  const boilAtC = boilsC(air.pressureKPa, activity);
  const sideM2 = Math.PI * pot.diameterM * Math.min(pot.heightM, depthM(pot) + 0.02);
  const lossW = SIDE_LOSS_W_PER_M2_K * sideM2 * (pot.tempC - air.tempC);
  const out = lid ? LID_LETS_OUT : 1;
  const surface = surfaceVapour(pot, activity, air) * out;
  const latent = latentJPerKg(pot.tempC);
  const capacity = heatCapacityJPerK(pot.contents) + pot.massKg * STEEL_J_PER_KG_K;
  // At the boil the steam pushes the air away, and the surface no longer dries by itself.
  const boiling = pot.tempC >= boilAtC - 0.01;
  const netJ = (heatW - lossW - (boiling ? 0 : surface * latent)) * dtS;
  const warmedC = pot.tempC + netJ / capacity;
  const overJ = Math.max(0, (warmedC - boilAtC) * capacity);
  // Below this it is candy on a hot bottom, and what is left of the heat goes into burning it.
  const driestKg = DRIEST * (pot.contents.solubleKg + pot.contents.insolubleKg);
  const steamKg = Math.min(overJ / latent, Math.max(0, pot.contents.waterKg - driestKg));
  const leftKg = boiling ? steamKg * out : steamKg * out + surface * dtS;
  return {
    ...pot,
    tempC: Math.min(warmedC, boilAtC),
    // The eye sees the bubbles, lid or no lid.
    vapourKgPerS: steamKg / dtS,
    contents: { ...pot.contents, waterKg: Math.max(0.001, pot.contents.waterKg - leftKg) },
  };
}

function foam(pot: Pot, dtS: number, hands: PotHands): Pot {
  const drive = pot.vapourKgPerS / bottomM2(pot) / ROLLING_KG_PER_M2_S;
  const restM = FOAM_M_AT_ROLLING * Math.min(2.5, drive) * pot.foaminess;
  const falls = FOAM_FALLS_S * (hands.stir ? 0.4 : 1) * (hands.lid ? 2 : 1);
  const foamM = restM + (pot.foamM - restM) * Math.exp(-dtS / falls);
  if (!hands.skim) return { ...pot, foamM };
  return { ...pot, foamM: foamM * 0.4, foaminess: pot.foaminess * Math.exp(-dtS / 60) };
}

function runOver(pot: Pot): Pot {
  const overM = depthM(pot) + pot.foamM - pot.heightM;
  if (overM <= 0) return pot;
  // Foam is mostly air: a twentieth of what runs over is product.
  const lostKg = Math.min(0.2 * massKg(pot.contents), overM * bottomM2(pot) * 50);
  const foamM = Math.max(0, pot.foamM - overM);
  return { ...pot, foamM, contents: without(pot.contents, lostKg), spilledKg: pot.spilledKg + lostKg };
}

function scorch(pot: Pot, dtS: number): number {
  const stuck = 1 - Math.exp(-pot.sinceStirS / 60);
  const pace = 2 ** ((pot.wallC - SCORCH_AT_C) / 10) / SCORCH_S;
  return pot.wallC < 115 ? pot.scorch : Math.min(CHARRED, pot.scorch + pace * stuck * dtS);
}

/** The pot a moment (at most a few seconds) later. */
export function stepPot(pot: Pot, dtS: number, heatW: number, hands: PotHands, air: Air): Pot {
  const sinceStirS = hands.stir ? 0 : pot.sinceStirS + dtS;
  const heated = heatAndBoil({ ...pot, sinceStirS }, dtS, heatW, hands.lid, air);
  const walled = { ...heated, wallC: wallOf(heated, heatW, sinceStirS) };
  const foamed = runOver(foam(walled, dtS, hands));
  return { ...foamed, scorch: scorch(foamed, dtS) };
}
