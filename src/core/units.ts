// How do the units of a kitchen convert, exactly?

export const KG_PER_LB = 0.45359237;
export const M_PER_FT = 0.3048;
export const MM_PER_IN = 25.4;
/** US customary volumes. */
export const L_PER_CUP = 0.2365882365;
export const L_PER_TBSP = L_PER_CUP / 16;
export const L_PER_PINT = 2 * L_PER_CUP;
export const KELVIN = 273.15;

export const kgFromLb = (lb: number): number => lb * KG_PER_LB;
export const lbFromKg = (kg: number): number => kg / KG_PER_LB;
export const mFromFt = (ft: number): number => ft * M_PER_FT;
export const ftFromM = (m: number): number => m / M_PER_FT;
export const fFromC = (c: number): number => c * 1.8 + 32;
export const cFromF = (f: number): number => (f - 32) / 1.8;
/** A difference of temperatures, not a temperature. */
export const fFromCRise = (c: number): number => c * 1.8;
