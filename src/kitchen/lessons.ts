// What there is to learn about a question, a figure, a step, a warning or a picture: one breath, the rest behind
// "tell me more", and who says so.

import type { Message } from '../../machines/kitchen/effects.ts';
import { guidanceOn, isQuestion, type FigureId } from '../core/guidance.ts';
import type { BatchPlan } from '../core/types.ts';
import { faceOf } from './face.ts';
import { isSight, sightsOf, type SightId } from './sights.ts';
import type { BatchView, CannerView } from './view.ts';

export interface Lesson {
  short: Message;
  more: Message;
  /** As a person reads them; empty where it is plain sense. */
  sources: readonly string[];
  /** What shows it, where something does. */
  sight: SightId | null;
}

type Actor = BatchView | CannerView;

/** What a question asks after, by its key: an answer of the guides, a figure of the plan in hand, or a picture. */
export function lessonOn(id: string | undefined, plan: BatchPlan | null): Lesson | null {
  if (isQuestion(id)) {
    const { params, sources } = guidanceOn(id);
    return lesson(`ask.${id}`, params, sources, sightOfQuestion[id] ?? null);
  }
  if (isFigure(id)) return lessonOnFigure(id, plan);
  return isSight(id) ? lessonOnSight(id) : null;
}

export function lessonOnSight(id: SightId): Lesson {
  return {
    short: { key: `see.${id}.said` },
    more: { key: `see.${id}.alt` },
    sources: [],
    sight: id,
  };
}

/** Why a figure is what it is; the sources are those of this very plan. */
export function lessonOnFigure(id: FigureId, plan: BatchPlan | null): Lesson {
  const source = plan && id in plan.why ? plan.why[id as keyof BatchPlan['why']]?.source : undefined;
  return lesson(`why.figure.${id}`, {}, source === undefined ? [figureSource[id] ?? ''] : [source], null);
}

/** Why this step: what it is for, whatever was said of it. */
export function lessonOnStep(actor: Actor): Lesson {
  const kind = 'plan' in actor ? 'batch' : 'canner';
  const face = faceOf(actor);
  const sources = stepSources[`${kind}.${face}`] ?? [COMMON];
  return lesson(`why.${kind}.${face}`, {}, sources, sightsOf(kind, face)[0] ?? null);
}

/** Why this was said: its own reason, where it has one apart from its step. */
export function lessonOnSaid(said: Message): Lesson | null {
  const key = String(said.params?.['of'] ?? said.key);
  const sources = saidSources[key];
  return sources === undefined ? null : lesson(`why.said.${key}`, {}, sources, null);
}

/** Who says so, for a voice that cannot read out a citation. */
export function sourceSaid(sources: readonly string[]): Message | null {
  const [first = ''] = sources;
  if (first === '') return null;
  return { key: 'teach.source', params: { who: authority(first), remembered: /from memory/.test(first) } };
}

function authority(source: string): string {
  if (/common practice|no source|common sense/i.test(source)) return 'practice';
  if (/AIB-539|USDA|HG-56/.test(source)) return 'usda';
  if (/NCHFP/.test(source)) return 'center';
  if (/CFR|Codex|Directive/.test(source)) return 'law';
  if (/MSU|NMSU|MU |Wisconsin|Illinois|UMaine|California|K-State|extension/i.test(source)) return 'extension';
  if (/you entered/.test(source)) return 'you';
  return 'handbook';
}

function lesson(
  key: string,
  params: Record<string, number>,
  sources: readonly string[],
  sight: SightId | null,
): Lesson {
  return { short: { key, params }, more: { key: `${key}.more`, params }, sources, sight };
}

function isFigure(id: string | undefined): id is FigureId {
  return id !== undefined && Object.hasOwn(figureSource, id);
}

const COMMON = 'common practice, no source';
const GUIDE_1 = 'AIB-539 guide 1';
const GUIDE_2 = 'AIB-539 guide 2';

/** Where the plan itself gives none. */
const figureSource: Readonly<Record<FigureId, string>> = {
  sugar: 'AIB-539 guide 7',
  acid: 'AIB-539 guides 2 and 3',
  pectin: 'from memory: AIB-539 guide 7',
  liquid: COMMON,
  targetMass: 'soluble-solids balance',
  solubleSolids: 'from memory: 21 CFR 150',
  targetDepth: 'ICUMSA density of sucrose solutions',
  finishTemp: 'AIB-539 guide 7',
  heatMinutes: 'energy balance',
  simmerMinutes: 'energy balance',
  stirInterval: COMMON,
  yield: 'ICUMSA density of sucrose solutions',
  jars: 'US customary volume',
  canner: GUIDE_1,
  shelf: 'AIB-539 guides 2 and 7',
  process: 'AIB-539 guides 2 and 7',
  strain: COMMON,
  standard: 'from memory: 21 CFR 150',
  pots: 'AIB-539 guides 1 and 7',
  startMass: 'a sum',
  startDepth: 'ICUMSA density of sucrose solutions',
  waterBoils: 'U.S. Standard Atmosphere 1976',
  headspace: 'AIB-539 guides 2 and 7',
  sterilise: GUIDE_1,
  clean: GUIDE_1,
  sugarPer100g: COMMON,
  fruitPer100g: 'a sum',
  pH: '21 CFR 114.3: acid food at pH 4.6 or below',
  waterActivity: 'handbook of sucrose solutions',
  bestBy: 'NCHFP, storing home-canned jams and jellies',
  cost: 'what you entered',
};

/** The guides behind the steps; where none is named it is common practice. */
const stepSources: Readonly<Record<string, readonly string[]>> = {
  'batch.skimming': ['AIB-539 guide 7'],
  'batch.spooning': ['AIB-539 guide 7: chilled plate'],
  'batch.cooling': ['AIB-539 guide 7: chilled plate'],
  'batch.judging': [`${GUIDE_2}: no liquid rim`],
  'batch.readyingJars': [`${GUIDE_1}: sterile jars where the process is under 10 minutes`],
  'batch.filling': [`${GUIDE_2}; Illinois Extension: headspace, fingertip tight`],
  'batch.waitingForCanner': ['NCHFP: hot jars, hot fill'],
  'batch.processing': ['AIB-539 guides 2 and 7'],
  'batch.unprocessed': [`${GUIDE_1}; NCHFP uncooked jam: 3 weeks in the fridge`],
  'batch.reheating': [`${GUIDE_1}; K-State: new lid, full time`],
  'batch.resting': [`${GUIDE_1}: 12 to 24 hours undisturbed`],
  'batch.checkingSeals': [`${GUIDE_1}: press, tap, look`],
  'batch.puttingAway': ['NCHFP, storing home-canned jams and jellies; Illinois Extension'],
  'batch.putAway': [`from memory: ${GUIDE_1}, spoiled jars`],
  'canner.empty': [`${GUIDE_1}: half full, rack`],
  'canner.filled': [`${GUIDE_1}: preheated for hot packs`],
  'canner.heating': [`${GUIDE_1}: preheated for hot packs`],
  'canner.probablyHot': [`${GUIDE_1}: preheated for hot packs`],
  'canner.hot': [`${GUIDE_1}: 180 F for hot packs`],
  'canner.comingToFullBoil': [`${GUIDE_1}: vigorous boil, then the timer`],
  'canner.fullBoil': ['AIB-539 guides 2 and 7'],
  'canner.boilLost': ['from memory: NCHFP, using boiling water canners'],
  'canner.unsureOfTheBoil': ['from memory: NCHFP, using boiling water canners'],
  'canner.standing': ['Illinois Extension; NCHFP: 5 minutes'],
  'canner.ready': ['Wisconsin B2909: no tilting, no tightening'],
};

/** What is said that has its own reason (src/words/en.why.ts), and who says so. */
const saidSources: Readonly<Record<string, readonly string[]>> = {
  'canner.addWater': [`${GUIDE_1}: add boiling water if the level drops`],
  'canner.jarBroke': [COMMON],
  'canner.askPlainly': ['from memory: NCHFP, using boiling water canners'],
  'canner.whileAway': ['from memory: NCHFP, using boiling water canners'],
  'batch.simmeredUnwatched': [COMMON],
  'batch.wentCold': [`${GUIDE_1}: reprocess within 24 hours; NCHFP uncooked jam: 3 weeks in the fridge`],
  'batch.notServed': ['from memory: NCHFP, using boiling water canners'],
  'batch.discard': [`from memory: ${GUIDE_1}, spoiled jars`],
  'kitchen.clockVoid': ['from memory: NCHFP, using boiling water canners'],
  'kitchen.notServed': ['from memory: NCHFP, using boiling water canners'],
  'kitchen.clockReopened': ['from memory: NCHFP, using boiling water canners'],
  'kitchen.didItSleep': [COMMON],
};

const sightOfQuestion: Readonly<Partial<Record<string, SightId>>> = {
  burntSmell: 'scorch',
  foamsOver: 'foam',
  howDone: 'plateHeld',
  notSet: 'plateRunny',
  blendHot: 'ventedBlender',
  jarBroke: 'hotJars',
  whyBreak: 'hotJars',
  chippedRim: 'nickedRim',
  howFull: 'headspace',
  howTight: 'fingertipTight',
  bubblesInJar: 'bubblesOut',
  wipeRim: 'wipeRim',
  whenTimeStarts: 'cannerBoil',
  ifBoilStops: 'boilLost',
  howMuchWater: 'waterOverJars',
  waitFive: 'coolStand',
  touching: 'waterOverJars',
  coolFaster: 'restStill',
  buckled: 'fingertipTight',
  checkSeal: 'lidDown',
  unsealedJar: 'lidUp',
  looseLater: 'lidUp',
  tighten: 'restStill',
  ringsOff: 'label',
  label: 'label',
  thermometer: 'plateHeld',
};
