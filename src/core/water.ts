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
  const sum = a.reduce((total, coefficient, i) => total + coefficient * away ** (powers[i] ?? 0), 0);
  return criticalPa * Math.exp((criticalK / kelvin) * sum);
}

/** Temperature in C at which a liquid of this water activity boils under this pressure. Newton on ln p. */
export function boilsAtC(pressure: number, activityAt: (tempC: number) => number = () => 1): number {
  let tempC = 100 - 0.00027 * (standardAtmosphere.value.seaLevelPa - pressure);
  const excess = (t: number): number => Math.log((activityAt(t) * saturationPa(t)) / pressure);
  for (let i = 0; i < 12; i++) {
    const f = excess(tempC);
    const step = f / ((excess(tempC + 0.01) - f) / 0.01);
    tempC -= step;
    if (Math.abs(step) < 1e-9) break;
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
  return c.reduce<number>((sum, coefficient, i) => sum + coefficient * tempC ** i, 0) / (1 + d * tempC);
}
