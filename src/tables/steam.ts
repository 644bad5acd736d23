// Which published constants describe water, its steam and the air above it?

import { memory, read } from './source.ts';

/** ln(p/pc) = Tc/T (a1 t + a2 t^1.5 + a3 t^3 + a4 t^3.5 + a5 t^4 + a6 t^7.5), t = 1 - T/Tc, in K. */
export const saturationLine = memory(
  {
    criticalK: 647.096,
    criticalPa: 22.064e6,
    a: [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502],
    powers: [1, 1.5, 3, 3.5, 4, 7.5],
  } as const,
  'Wagner and Pruss, saturation line of IAPWS SR1-86 (1992); agrees with the steam points below',
);

/** p = p0 (1 - h / (T0/lapse))^exponent. */
export const standardAtmosphere = read(
  { seaLevelPa: 101325, scaleM: 44330.77, exponent: 5.255876 } as const,
  'U.S. Standard Atmosphere 1976, troposphere',
);

/** Near boiling, latent heat falls by 2.56 kJ/kg for each degree (80 C: 2308.0, 90 C: 2282.5, 100 C: 2256.7). */
export const latentHeat = read(
  { at100JPerKg: 2.25666e6, perKelvin: -2560 } as const,
  'dry saturated steam tables, fitted from 80 to 100 C',
);

/** Density of pure water, kg/m3, at t in C: (c0 + c1 t + ... + c5 t^5) / (1 + d t), 0 to 150 C. */
export const waterDensity = memory(
  {
    c: [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12],
    d: 16.87985e-3,
  } as const,
  'Kell, J. Chem. Eng. Data 20 (1975) 97',
);
