// Which published constants describe sugar in water?

import { computed, memory, read } from './source.ts';

/** ln(activity coefficient of water) = Q/(RT) x^2 (1 + a x + b x^2), x the mole fraction of sucrose. */
export const starzakPeacock = computed(
  { qJPerMol: -17638, a: -1.0038, b: -0.24653 } as const,
  'Starzak and Peacock, water activity of aqueous sucrose, 1997',
);

/** g/mol. */
export const molarMass = { water: 18.01528, sucrose: 342.2965 } as const;

/** kg/m3 added to water's own density: sum over k of ((t-20)/100)^k times sum over i of b[k][i] w^(i+1). */
export const icumsaDensity = memory(
  {
    b: [
      [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
      [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
      [59.7712, 7.2491, 12.363, -35.4791],
      [-47.2207, -21.6977, 27.6301],
      [18.3184, 12.3081],
    ],
  } as const,
  'ICUMSA SPS-4, density of sucrose solutions; row 0 agrees with NBS Circular C440 within 0.0006 g/mL to 85 %',
);

/** Specific heat, kJ/kg/K: 4.187 (1 - 0.006 Brix). */
export const specificHeat = memory(
  { waterKJPerKgK: 4.187, perBrix: 0.006 } as const,
  'Hugot, Handbook of Cane Sugar Engineering',
);

/** A spread at 65 % gels 4.44 C (8 F) above water, where plain sucrose would boil 3.79 C above it: the sugars of
 *  fruit and those that acid splits off weigh less a molecule, so the same per cent raises the boiling point more. */
export const gelRise = read({ riseC: 8 / 1.8, atPct: 65 } as const, 'USDA HG-56 / AIB-539 guide 7');

/** Preserves, conserves and marmalades without added pectin: 9 F above water. */
export const marmaladeRise = read({ riseC: 5, atPct: 65 } as const, 'MSU Extension 01600549');
