// A kitchen that obeys physics and knows nothing of the planner: pot, burner, canner and jars, one step at a time.
//
// The planner predicts; this is what really happens. It is plain data and pure functions, so that the practice
// evening, the robot cook and the calibration tests can all cook on it. Heat comes from the burner (efficiency by
// kind, falling as the wall gets hotter), warms pot and fruit, and at the boil drives water off. As water leaves,
// sugars raise the boiling point (Norrish, Antoine), the mass thickens, the wall gets hotter and may scorch, and
// the cook turns it down because it spits. Each constant says beside it where it is from.

export { EFFICIENCY } from './burner.ts';
export type { Burner, BurnerKind } from './burner.ts';
export { atFullBoil, coversJars } from './canner.ts';
export type { Canner } from './canner.ts';
export { cookOn, simmerToWeight, startCooking } from './cook.ts';
export type { Cooking, SimmerTruth } from './cook.ts';
export { fillNextJar } from './filling.ts';
export { emptyJar, fillJar, sealChance } from './jars.ts';
export type { Jar } from './jars.ts';
export {
  airAt,
  anotherEvening,
  coldCanner,
  drawFruit,
  drawKitchen,
  setUpStove,
  waterBoilsC,
} from './kitchens.ts';
export type { Habits, Kitchen } from './kitchens.ts';
export { massKg, solubleSolidsPct, volumeL, without } from './mixture.ts';
export type { Mixture } from './mixture.ts';
export { boilOf, depthM, smells, spatterOf } from './pot.ts';
export type { Air, Boil, Pot } from './pot.ts';
export { hat } from './random.ts';
export type { Hat } from './random.ts';
export { measureDepth, plateTest, READING_SD, readThermometer, weighPot } from './readings.ts';
export type { PlateVerdict, Reading } from './readings.ts';
export { handsOff, liftJars, loadCanner, stepStove } from './stove.ts';
export type { Hands, Stove } from './stove.ts';
