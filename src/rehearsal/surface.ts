// How does the top of the pot and of the canner look?

import { atFullBoil, type Stove } from '../stove/index.ts';

export type Surface = 'still' | 'steaming' | 'simmer' | 'boil' | 'rolling';

/** Steam from a square metre each second, kg, that an eye tells apart: the last is the stove's own rolling boil. */
const FROM: readonly (readonly [least: number, surface: Surface])[] = [
  [0.0025, 'rolling'],
  [0.0015, 'boil'],
  [0.0006, 'simmer'],
];

export function surfaceOf({ pot }: Stove): Surface {
  const flux = pot.vapourKgPerS / ((Math.PI / 4) * pot.diameterM ** 2);
  const found = FROM.find(([least]) => flux >= least)?.[1];
  return found ?? (pot.tempC > 70 ? 'steaming' : 'still');
}

export function cannerSurfaceOf({ canner, jars }: Stove): Surface | 'flat' {
  if (atFullBoil(canner)) return 'rolling';
  if (jars.some(({ place }) => place === 'canner') && canner.boilsLost > 0 && canner.tempC > 90)
    return 'flat';
  if (canner.tempC > 97) return 'simmer';
  return canner.tempC > 70 ? 'steaming' : 'still';
}
