// At what temperature does water boil at this pressure? The industrial steam formulation, written out
// here so that the calculator is checked against a formula it does not use.

// IAPWS-IF97 region 4, coefficients of the saturation-temperature equation (table 34 of the release).
const N = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/** Saturation temperature in C at a pressure in kPa; error below 0.01 C from 0.6 kPa to 22 MPa. */
export function saturationC(pressureKPa: number): number {
  const beta = (pressureKPa / 1000) ** 0.25;
  const e = beta ** 2 + N[2] * beta + N[5];
  const f = N[0] * beta ** 2 + N[3] * beta + N[6];
  const g = N[1] * beta ** 2 + N[4] * beta + N[7];
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (N[9] + d - Math.sqrt((N[9] + d) ** 2 - 4 * (N[8] + N[9] * d))) / 2 - 273.15;
}

/** Pressure of the 1976 standard atmosphere in kPa, below 11 km. */
export function standardPressureKPa(elevationM: number): number {
  return 101.325 * (1 - 2.25577e-5 * elevationM) ** 5.25588;
}
