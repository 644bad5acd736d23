// What there is to see, and which of it belongs to which step of the work.

import type { CannerState } from '../../machines/canner/choices.ts';
import type { BatchFace } from './face.ts';

export const sights = [
  'simmer',
  'boil',
  'rollingBoil',
  'cannerBoil',
  'boilLost',
  'foam',
  'spoonCoats',
  'plateHeld',
  'plateWrinkled',
  'plateRunny',
  'headspace',
  'wipeRim',
  'fingertipTight',
  'waterOverJars',
  'lidUp',
  'lidDown',
  'scorch',
  'steamBurns',
  'mash',
  'stirIn',
  'coldPlate',
  'hotJars',
  'ventedBlender',
  'funnel',
  'bubblesOut',
  'liftUpright',
  'restStill',
  'label',
  'potDepth',
  'stirBottom',
  'strain',
  'nickedRim',
  'lidAway',
  'coolStand',
] as const;

export type SightId = (typeof sights)[number];

export function isSight(id: string | undefined): id is SightId {
  return (sights as readonly string[]).includes(id ?? '');
}

// The first is the one shown by itself and for "show me how"; the others stand beside it on the sheet.
const ofBatch: Record<BatchFace, readonly SightId[]> = {
  settingUp: ['nickedRim', 'coldPlate'],
  mashing: ['mash'],
  softening: ['simmer'],
  melting: ['stirIn'],
  comingToBoil: ['rollingBoil', 'boil', 'foam'],
  simmering: ['simmer', 'stirBottom', 'spoonCoats', 'potDepth', 'scorch'],
  boilingHard: ['rollingBoil', 'stirBottom', 'spoonCoats', 'foam', 'scorch'],
  skimming: ['foam'],
  straining: ['strain'],
  blending: ['ventedBlender'],
  spooning: ['coldPlate', 'plateHeld'],
  cooling: ['plateHeld', 'plateRunny'],
  judging: ['plateHeld', 'plateWrinkled', 'plateRunny'],
  loosening: ['spoonCoats'],
  held: ['potDepth'],
  caught: ['scorch'],
  readyingJars: ['hotJars', 'nickedRim'],
  filling: ['headspace', 'funnel', 'bubblesOut', 'wipeRim', 'fingertipTight'],
  waitingForCanner: ['waterOverJars', 'liftUpright'],
  processing: ['cannerBoil', 'boilLost'],
  unprocessed: ['lidUp'],
  reheating: ['rollingBoil'],
  resting: ['restStill'],
  checkingSeals: ['lidDown', 'lidUp'],
  puttingAway: ['label'],
  putAway: ['lidUp'],
  stopped: ['label'],
};

const ofCanner: Record<CannerState, readonly SightId[]> = {
  empty: ['waterOverJars'],
  filled: ['waterOverJars'],
  heating: ['steamBurns'],
  probablyHot: ['steamBurns'],
  hot: ['waterOverJars', 'liftUpright'],
  comingToFullBoil: ['cannerBoil', 'waterOverJars'],
  fullBoil: ['cannerBoil', 'boilLost'],
  boilLost: ['boilLost', 'cannerBoil'],
  unsureOfTheBoil: ['boilLost', 'cannerBoil'],
  standing: ['lidAway', 'coolStand'],
  ready: ['liftUpright', 'restStill'],
};

/** A state that has no picture of its own yet gets none, rather than another's. */
export function sightsOf(kind: 'batch' | 'canner', state: string): readonly SightId[] {
  const table: Readonly<Record<string, readonly SightId[]>> = kind === 'batch' ? ofBatch : ofCanner;
  return table[state] ?? [];
}
