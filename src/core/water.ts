// At which temperature does water boil at this altitude, and what does it take to boil it away?

import { latentHeat, saturationLine, standardAtmosphere, waterDensity } from '../tables/steam.ts';
import { KELVIN } from './units.ts';

/** Pressure of the standard atmosphere, Pa. A storm moves the real one by 3 %, boiling water by 1 C. */
export function pressurePa(elevationM: number): number {
  const { seaLevelPa, scaleM, exponent } = standardAtmosphere.value;
  return seaLevelPa * (1 - elevationM / scaleM) ** exponent;
}

/** Pressure of saturated steam, Pa, at a temperature in C; within 0.03 % from 0 to 370 C. */
export function saturationPa(tempC: number): number {
  const { criticalK, criticalPa, a, powers } = saturationLine.value;
  const kelvin = tempC + KELVIN;
  const away = 1 - kelvin / criticalK;
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * away ** (powers[i] ?? 0);
  return criticalPa * Math.exp((criticalK / kelvin) * sum);
}

/** Specific gas constant of steam, J/kg/K. */
const STEAM_J_PER_KG_K = 461.52;

/** Temperature in C at which a liquid of this water activity boils under this pressure; good to a millionth of a
 *  degree. Newton on ln p, with Clausius and Clapeyron's slope: latent heat over R T^2. */
export function boilsAtC(pressure: number, activityAt: (tempC: number) => number = () => 1): number {
  let tempC = 100 - 0.00027 * (standardAtmosphere.value.seaLevelPa - pressure);
  for (let i = 0; i < 20; i++) {
    const excess = Math.log((activityAt(tempC) * saturationPa(tempC)) / pressure);
    const step = (excess * STEAM_J_PER_KG_K * (tempC + KELVIN) ** 2) / latentHeatJPerKg(tempC);
    tempC -= step;
    if (Math.abs(step) < 1e-6) break;
  }
  return tempC;
}

/** Heat that a kilogram of water takes with it as steam, J/kg, within 0.1 % from 75 to 105 C. */
export function latentHeatJPerKg(tempC: number): number {
  const { at100JPerKg, perKelvin } = latentHeat.value;
  return at100JPerKg + perKelvin * (tempC - 100);
}

/** Density of pure water, kg/m3. */
export function waterKgPerM3(tempC: number): number {
  const { c, d } = waterDensity.value;
  return c.reduceRight<number>((sum, coefficient) => sum * tempC + coefficient, 0) / (1 + d * tempC);
}
