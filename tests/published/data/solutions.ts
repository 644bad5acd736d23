// What handbooks print about sugar solutions: density and water activity, each row with its source.

/** Density of sucrose solutions at 20 C, g/mL: [mass %, density]. */
export const density20C = [
  [0, 0.99823],
  [10, 1.03814],
  [20, 1.08096],
  [30, 1.12698],
  [40, 1.17645],
  [50, 1.22957],
  [60, 1.28646],
  [70, 1.34717],
  [80, 1.41172],
] as const;
export const density20CSource =
  'NBS Circular C440, Polarimetry, Saccharimetry and the Sugars (1942), densities at 20 C (from memory)';

/** The newer international polynomial, same temperature. */
export const densityIcumsa20C = [
  [0, 0.9982],
  [10, 1.03811],
  [20, 1.08098],
  [30, 1.12703],
  [40, 1.17652],
  [50, 1.22965],
  [60, 1.28661],
  [70, 1.34748],
  [80, 1.4122],
] as const;
export const densityIcumsaSource =
  'ICUMSA SPS-4 / PTB density polynomial at 20 C (computed from the named formula)';

/** A teaching laboratory's table, kg/m3: [mass %, at 15 C, at 20 C]. */
export const densityLaboratory = [
  [1, 1003.01, 1002.09],
  [5, 1018.84, 1017.84],
  [8, 1031.0, 1029.93],
  [10, 1039.25, 1038.13],
  [12, 1047.62, 1046.46],
  [15, 1060.41, 1059.16],
  [18, 1073.47, 1072.13],
  [22, 1091.34, 1089.9],
  [25, 1105.07, 1103.54],
  [28, 1119.11, 1117.5],
  [33, 1143.19, 1141.45],
  [37, 1163.08, 1161.24],
] as const;
export const densityLaboratorySource =
  'Nicolaus Copernicus University, second physics laboratory, table of sucrose solution density (read)';

/** Specific gravity on the Balling scale, 17.5 C against water at 17.5 C: [mass %, sp. gr.]. */
export const ballingGravity = [
  [10, 1.040104],
  [20, 1.083234],
  [30, 1.129586],
  [40, 1.179358],
  [50, 1.232748],
  [60, 1.289952],
  [65, 1.320046],
  [70, 1.351168],
  [75, 1.383342],
] as const;
export const ballingSource = "Balling's table in Cooley's Cyclopaedia (read)";
/** Water at 17.5 C, g/mL. IAPWS-95 (from memory). */
export const WATER_AT_17_5_C = 0.99868;

/** Pounds in a US gallon weighed in air at 20 C: [mass %, lb]. */
export const poundsPerGallon = [
  [0, 8.322],
  [1, 8.354],
  [2, 8.387],
  [3, 8.419],
  [4, 8.452],
  [5, 8.486],
] as const;
export const poundsPerGallonSource = 'Chen, Cane Sugar Handbook (1992), after NBS C440 (read)';

/** Thousandths of the density of water, both at 20 C: [mass %, ratio]. (The handbook's column begins at 1000 for water.) */
export const gravity20C = [
  [6, 1023.66],
  [8, 1031.76],
  [10, 1039.98],
  [12, 1048.31],
  [14, 1056.77],
  [16, 1065.34],
  [18, 1074.04],
  [20, 1082.87],
  [21, 1087.33],
] as const;
export const gravity20CSource = 'Asadi, Beet-Sugar Handbook (2007), table A.1 (read)';

/** Pure water, kg/L by C. The hot jar and the hot pot are filled by volume, so the heat must be in the density. */
export const waterDensity = [
  [4, 0.99997],
  [20, 0.99821],
  [40, 0.99222],
  [60, 0.9832],
  [80, 0.97179],
  [95, 0.96189],
] as const;
export const waterDensitySource = 'IAPWS-95, density of liquid water at 1 atm (from memory)';

/**
 * Osmotic coefficients of sucrose at 25 C from isopiestic measurement: [mol/kg water, phi].
 * Water activity is exp(-phi * m * 0.018015).
 */
export const sucroseOsmotic25C = [
  [0.2, 1.017],
  [0.5, 1.041],
  [1.0, 1.088],
  [1.4, 1.129],
  [2.0, 1.189],
  [2.5, 1.24],
  [3.0, 1.288],
  [3.5, 1.334],
  [4.0, 1.375],
  [4.5, 1.414],
  [5.0, 1.45],
  [5.5, 1.482],
  [6.0, 1.511],
] as const;
export const sucroseOsmoticSource =
  'Robinson & Stokes, Electrolyte Solutions, appendix table of isopiestic sucrose data (from memory)';

/** Water activity of sucrose solutions at 25 C by two published formulas: [mass %, Norrish, Starzak]. */
export const waterActivityFormulas = [
  [10, 0.994, 0.9939],
  [30, 0.9749, 0.9746],
  [43, 0.9528, 0.9523],
  [50, 0.9348, 0.9341],
  [60, 0.8953, 0.8947],
  [67.5, 0.8466, 0.8472],
  [75, 0.7657, 0.7709],
] as const;
export const waterActivityFormulasSource =
  'Norrish (1966) with K = 6.47 from Chirife; Starzak & Peacock (1997) (computed from the named formulas)';

/** Water needs at a given water activity, mol sucrose per kg water at 25 C. */
export const molalityAtWaterActivity = [
  [0.99, 0.534],
  [0.98, 1.03],
  [0.96, 1.92],
  [0.94, 2.72],
  [0.92, 3.48],
  [0.9, 4.11],
] as const;
export const molalityAtWaterActivitySource =
  'Scott, Water relations of food spoilage microorganisms, Adv. Food Res. 7 (1957) (from memory)';
