// A kitchen on the test bench: one known stove, a mash, a butter, and hands that do one thing for some minutes.

import type { Hands, Mixture, Stove } from '../../src/stove/index.ts';
import { airAt, handsOff, setUpStove, stepStove } from '../../src/stove/index.ts';

export const MIN = 60;

export const habits = { simmerDial: 0.7, bearsSpatter: 0.03, fearsMud: 0.6, looksEveryS: 60, stirEveryS: 30 };

export function stoveWith(contents: Mixture, elevationM = 0): Stove {
  const kitchen = {
    elevationM,
    air: airAt(elevationM, 20),
    pot: { diameterM: 0.26, heightM: 0.2, massKg: 1.5 },
    burner: { kind: 'induction', powerW: 1500, efficiency: 0.85 },
    habits,
    body: 1,
  } as const;
  return setUpStove(kitchen, contents, 7);
}

export const water = (kg: number): Mixture => ({ waterKg: kg, solubleKg: 0, insolubleKg: 0, body: 1 });
/** Sweetened damson pulp: 3 kg, about 30 % sugars. */
export const mash: Mixture = { waterKg: 2.04, solubleKg: 0.9, insolubleKg: 0.06, body: 1 };
/** The same boiled to a butter. */
export const butter: Mixture = { waterKg: 1.1, solubleKg: 0.9, insolubleKg: 0.06, body: 1 };

export function run(stove: Stove, minutes: number, hands: Partial<Hands>, everyS = 10): Stove {
  let now = stove;
  for (let s = 0; s < minutes * MIN; s += everyS) now = stepStove(now, everyS, { ...handsOff, ...hands });
  return now;
}
