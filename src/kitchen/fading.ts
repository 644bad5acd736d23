// How many words a cook gets at a step: full ones first, fewer once the step has gone well, all back after a slip.

import type { Message } from '../../machines/kitchen/effects.ts';

/** The steps that are learnt one by one. */
export type Step =
  | 'settingUp'
  | 'mashing'
  | 'boiling'
  | 'simmering'
  | 'skimming'
  | 'straining'
  | 'blending'
  | 'plateTest'
  | 'readyingJars'
  | 'filling'
  | 'loading'
  | 'processing'
  | 'resting'
  | 'checkingSeals'
  | 'puttingAway'
  | 'cannerSetUp';

export type Guidance = 'full' | 'half' | 'bare';

/** Runs of each step that went well since its last slip. */
export type Shown = Readonly<Partial<Record<Step, number>>>;

/** What the cook asked for at a step: +1 for "say more", -1 for "say less", and further the more often. */
export type Asked = Readonly<Partial<Record<Step, number>>>;

/** Common practice, no source: three runs are a habit, not a chance. */
export const CLEAN_RUNS_TO_HALF = 3;

const levels: readonly Guidance[] = ['bare', 'half', 'full'];

/** What the cook has set for the whole kitchen: an expert's few words, a beginner's full ones, or by what was shown. */
export type Verbosity = 'expert' | 'cook' | 'beginner';

/** By itself it only goes to half: bare words are for those who ask for them. */
export function guidanceFor(step: Step, shown: Shown, asked: Asked, verbosity: Verbosity = 'cook'): Guidance {
  const level = Math.min(2, Math.max(0, startingFrom(step, shown, verbosity) + (asked[step] ?? 0)));
  return levels[level] ?? 'full';
}

function startingFrom(step: Step, shown: Shown, verbosity: Verbosity): number {
  if (verbosity !== 'cook') return verbosity === 'expert' ? 0 : 2;
  return (shown[step] ?? 0) >= CLEAN_RUNS_TO_HALF ? 1 : 2;
}

/** "Say more" or "say less": one level from where it stands, and never so far that asking back takes many words. */
export function askedFor(
  step: Step,
  shown: Shown,
  asked: Asked,
  by: 1 | -1,
  verbosity: Verbosity = 'cook',
): Asked {
  const level = levels.indexOf(guidanceFor(step, shown, asked, verbosity));
  const start = startingFrom(step, shown, verbosity);
  return { ...asked, [step]: Math.min(2, Math.max(0, level + by)) - start };
}

interface Fading {
  step: Step;
  /** Safety hangs on it: always full. */
  safety?: true;
  /** Fewer words than the prompt itself exist for it. */
  bare?: true;
  /** Called for again and again: how it is done is told twice of each batch, and again after a slip. */
  often?: true;
}

// What is said that has more, or fewer, words to it, by its key. All else is said as it is.
const fadings: Readonly<Record<string, Fading>> = {
  'batch.setUp': { step: 'settingUp', bare: true },
  'batch.mash': { step: 'mashing', bare: true },
  'batch.bringToBoil': { step: 'boiling', bare: true },
  'batch.simmer': { step: 'simmering', bare: true },
  'batch.stir': { step: 'simmering', bare: true, often: true },
  'batch.nearlyThick': { step: 'simmering', bare: true },
  'batch.skim': { step: 'skimming', bare: true },
  'batch.strain': { step: 'straining', bare: true },
  'batch.blend': { step: 'blending', safety: true },
  'batch.spoonOnPlate': { step: 'plateTest' },
  'batch.waitForPlate': { step: 'plateTest', bare: true },
  'batch.loosen': { step: 'plateTest', bare: true },
  'batch.readyJars': { step: 'readyingJars', safety: true },
  'batch.fill': { step: 'filling', safety: true },
  'batch.toTheCanner': { step: 'loading', safety: true },
  'batch.rest': { step: 'resting', safety: true },
  'batch.checkSeals': { step: 'checkingSeals', safety: true },
  'batch.putAway': { step: 'puttingAway', safety: true },
  'canner.fillIt': { step: 'cannerSetUp', bare: true },
  'canner.loadNow': { step: 'loading', safety: true },
  'canner.bringToFullBoil': { step: 'processing', safety: true },
  'canner.clockStarted': { step: 'processing', safety: true },
  'canner.served': { step: 'processing', safety: true },
  'canner.liftOut': { step: 'processing', safety: true },
};

export const fadingKeys: readonly string[] = Object.keys(fadings);

export function fadingOf(key: string): Readonly<Fading> | null {
  return Object.hasOwn(fadings, key) ? (fadings[key] ?? null) : null;
}

/** Acid on which the shelf may hang is never left unsaid. */
function isSafety({ key, params }: Message): boolean {
  return fadingOf(key)?.safety === true || (key === 'batch.mash' && params?.['acid'] !== 'none');
}

/** The sentences for a message at a level: the prompt, what full words add to it, or what is left of it. */
export function wordsAt(message: Message, guidance: Guidance): { prompt: Message; how: Message | null } {
  const fading = fadingOf(message.key);
  if (!fading) return { prompt: message, how: null };
  const params = message.params ? { params: message.params } : {};
  if (isSafety(message) || guidance === 'full')
    return { prompt: message, how: { key: `how.${message.key}`, ...params } };
  const bare = guidance === 'bare' && fading.bare;
  return { prompt: bare ? { key: `bare.${message.key}`, ...params } : message, how: null };
}

/** Which step a batch or canner is at, for "say more" and "say less". */
const stepOfState: Readonly<Record<string, Step>> = {
  settingUp: 'settingUp',
  mashing: 'mashing',
  comingToBoil: 'boiling',
  reheating: 'boiling',
  simmering: 'simmering',
  caught: 'simmering',
  skimming: 'skimming',
  straining: 'straining',
  blending: 'blending',
  spooning: 'plateTest',
  cooling: 'plateTest',
  judging: 'plateTest',
  loosening: 'plateTest',
  readyingJars: 'readyingJars',
  filling: 'filling',
  waitingForCanner: 'loading',
  processing: 'processing',
  resting: 'resting',
  checkingSeals: 'checkingSeals',
  puttingAway: 'puttingAway',
  empty: 'cannerSetUp',
  filled: 'cannerSetUp',
  heating: 'cannerSetUp',
  probablyHot: 'cannerSetUp',
  hot: 'loading',
  comingToFullBoil: 'processing',
  fullBoil: 'processing',
  boilLost: 'processing',
  unsureOfTheBoil: 'processing',
  standing: 'processing',
  ready: 'processing',
};

export function stepAt(state: string): Step | null {
  return Object.hasOwn(stepOfState, state) ? (stepOfState[state] ?? null) : null;
}

/** Steps whose words never fade, whatever was shown or asked. */
export function isSafetyStep(step: Step): boolean {
  return Object.values(fadings).some((fading) => fading.step === step && fading.safety);
}
