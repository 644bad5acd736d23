// Does a jar survive the heat, and does its lid seal?

import type { Drawn } from './random.ts';
import { drawUniform } from './random.ts';

export interface Jar {
  volumeL: number;
  /** Of the glass when it is filled. */
  glassC: number;
  /** Of the product now. */
  contentC: number;
  filledL: number;
  rimWiped: boolean;
  lid: 'loose' | 'fingertip' | 'overtight';
  place: 'bench' | 'canner' | 'out';
  /** Seconds under water at an unbroken full boil, as it stands. */
  boiledS: number;
  /** The longest of such times: a jar that has had its heat keeps its vacuum when the water calms. */
  longestBoilS: number;
  state: 'sound' | 'broken';
  seal: 'not yet' | 'sealed' | 'failed';
}

const COOLS_S = 2400; // a half-pint in still air loses 63 % of its heat in about 40 min (from memory)
/** Seconds to take 63 % of the way to the canner's heat: */
export const JAR_WARMS_S = 300; // in boiling water (from memory)
/** A lid snaps down when the headspace has cooled and drawn a vacuum. */
const SEALS_BELOW_C = 60;
// Soda-lime glass of this wall takes a jump of about 50 C with a small risk, 90 C hardly ever (from memory).
const SHOCK_MIDDLE_C = 85;
const SHOCK_SPREAD_C = 8;

export function emptyJar(volumeL: number, glassC: number): Jar {
  return {
    volumeL,
    glassC,
    contentC: glassC,
    filledL: 0,
    rimWiped: false,
    lid: 'loose',
    place: 'bench',
    boiledS: 0,
    longestBoilS: 0,
    state: 'sound',
    seal: 'not yet',
  };
}

function shockChance(jumpC: number): number {
  return 1 / (1 + Math.exp((SHOCK_MIDDLE_C - jumpC) / SHOCK_SPREAD_C));
}

/** Moves a jar into something hotter or colder: it may break. */
export function shock(jar: Jar, jumpC: number, seed: number): { jar: Jar; seed: number } {
  const drawn = drawUniform(seed);
  const broken = jar.state === 'broken' || drawn.value < shockChance(Math.abs(jumpC));
  return { jar: { ...jar, state: broken ? 'broken' : 'sound' }, seed: drawn.seed };
}

/** Fills a jar with hot spread. */
export function fillJar(
  jar: Jar,
  spread: { litres: number; tempC: number },
  care: { wipeRim: boolean; lid: Jar['lid'] },
  seed: number,
): { jar: Jar; seed: number } {
  const filledL = Math.min(jar.volumeL, spread.litres);
  const filled = { ...jar, filledL, contentC: spread.tempC, rimWiped: care.wipeRim, lid: care.lid };
  return shock(filled, spread.tempC - jar.glassC, seed);
}

/**
 * Chance that a lid seals once cool. A careful jar fails about one time in fifty; a dirty rim, a loose or
 * overtight band, too full or too empty a jar, or no heating under water costs more (common practice, no source).
 */
export function sealChance(jar: Jar): number {
  const fill = jar.filledL / jar.volumeL;
  let chance = 0.98;
  if (!jar.rimWiped) chance *= 0.75;
  if (jar.lid !== 'fingertip') chance *= jar.lid === 'loose' ? 0.3 : 0.8;
  if (fill > 0.99) chance *= 0.6;
  if (fill < 0.8) chance *= 0.6;
  if (Math.max(jar.boiledS, jar.longestBoilS) < 240) chance *= 0.5;
  return chance;
}

function settle(jar: Jar, seed: number): { jar: Jar; seed: number } {
  if (jar.place !== 'out' || jar.seal !== 'not yet' || jar.contentC > SEALS_BELOW_C) return { jar, seed };
  const drawn: Drawn = drawUniform(seed);
  const sealed = jar.state === 'sound' && drawn.value < sealChance(jar);
  return { jar: { ...jar, seal: sealed ? 'sealed' : 'failed' }, seed: drawn.seed };
}

/** The jar a moment later, in air or in the canner's water. */
export function stepJar(
  jar: Jar,
  dtS: number,
  around: { tempC: number; fullBoil: boolean; seed: number },
): { jar: Jar; seed: number } {
  const underWater = jar.place === 'canner';
  const keep = Math.exp(-dtS / (underWater ? JAR_WARMS_S : COOLS_S));
  const contentC = around.tempC + (jar.contentC - around.tempC) * keep;
  // A dropped boil starts the time again from nothing.
  const boiledS = !underWater ? jar.boiledS : around.fullBoil ? jar.boiledS + dtS : 0;
  const longestBoilS = Math.max(jar.longestBoilS, boiledS);
  return settle({ ...jar, contentC, glassC: contentC, boiledS, longestBoilS }, around.seed);
}
