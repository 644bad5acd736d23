// What does ladling do: a jar gets fuller, the pot emptier, and the jar may crack?

import type { Jar } from './jars.ts';
import { fillJar } from './jars.ts';
import { massKg, volumeL, without } from './mixture.ts';
import type { Stove } from './stove.ts';

/** Share of the jar below a quarter inch of headspace. */
const FILLED_SHARE = 0.93;
/** What sticks to pot and ladle. */
const LEFT_IN_POT_L = 0.02;

/** Fills the first empty jar on the bench from the pot; the last one gets what is left. Nothing to fill: no change. */
export function fillNextJar(state: Stove, care: { wipeRim: boolean; lid: Jar['lid'] }): Stove {
  const index = state.jars.findIndex(
    (jar) => jar.place === 'bench' && jar.filledL === 0 && jar.state === 'sound',
  );
  const jar = state.jars[index];
  const inPotL = volumeL(state.pot.contents) - LEFT_IN_POT_L;
  if (jar === undefined || inPotL <= 0.01) return state;
  const litres = Math.min(inPotL, FILLED_SHARE * jar.volumeL);
  const filled = fillJar(jar, { litres, tempC: state.pot.tempC }, care, state.seed);
  const takenKg = (litres / volumeL(state.pot.contents)) * massKg(state.pot.contents);
  const contents = without(state.pot.contents, takenKg);
  const jars = state.jars.map((other, i) => (i === index ? filled.jar : other));
  return { ...state, seed: filled.seed, jars, pot: { ...state.pot, contents } };
}
