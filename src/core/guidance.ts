// Which guidance answers which question, with its numbers and its source?

import { guidance as g } from '../tables/guidance.ts';
import { cite, type Sourced } from '../tables/source.ts';
import type { WhyKey } from './types.ts';

type Row = Sourced<Readonly<Record<string, number>> | null>;

/** The rows behind each answer; the first is the one that is named. */
const rows = {
  lessSugar: [g.keepTheSugar, g.reducedSugarKeeps],
  honey: [g.testedRecipesOnly],
  sweetener: [g.reducedSugarKeeps],
  double: [g.neverDouble],
  half: [g.smallBatch],
  skipLemon: [g.testedAcid],
  freshLemon: [g.bottledLemon],
  vinegar: [g.vinegar, g.testedAcid],
  citricAcid: [g.testedAcid],
  spices: [g.commonPractice],
  nuts: [g.testedRecipesOnly],
  brandy: [g.testedRecipesOnly],
  starch: [g.noStarch],
  mixFruit: [g.mixedButter],
  frozenFruit: [g.commonPractice],
  badFruit: [g.soundFruit],
  otherPectin: [g.pectinKinds],
  peel: [g.commonPractice],
  wash: [g.commonPractice],
  burntSmell: [g.commonPractice],
  foamsOver: [g.foam, g.potRoom],
  spits: [g.burns],
  burnedMyself: [g.firstAid],
  slow: [g.commonPractice],
  lumpy: [g.commonPractice],
  lidOnPot: [g.clockStart],
  whichPot: [g.potMetal],
  potFull: [g.potRoom],
  slowCooker: [g.commonPractice],
  stopTonight: [g.commonPractice],
  howDone: [g.butterTest],
  thermometer: [g.jellyTest, g.pectinMinute],
  notSet: [g.commonPractice],
  tooStiff: [g.commonPractice],
  grainy: [g.commonPractice],
  blendHot: [g.hotBlending],
  jarBroke: [g.commonPractice, g.thermalShock],
  whyBreak: [g.thermalShock],
  dishwasher: [g.notRecommended],
  oven: [g.notRecommended],
  microwave: [g.notRecommended],
  openKettle: [g.notRecommended],
  inversion: [g.notRecommended],
  paraffin: [g.paraffin],
  steamCanner: [g.steamCanner],
  pressureCanner: [g.pressure],
  reuseLids: [g.newLids],
  oldJars: [g.realJars],
  bigJars: [g.jarSizes],
  smallJars: [g.smallJars],
  chippedRim: [g.inspectJars],
  boilJarsFirst: [g.sterilise],
  keepJarsHot: [g.keepJarsHot],
  howFull: [g.headspace],
  howTight: [g.fingertip],
  bubblesInJar: [g.newLids],
  shortJar: [g.shortJars],
  wipeRim: [g.newLids],
  altitude: [g.altitude],
  whenTimeStarts: [g.clockStart],
  ifBoilStops: [g.boilLost],
  howMuchWater: [g.waterCover],
  coldWater: [g.boilingWater],
  waitFive: [g.stand],
  touching: [g.rack],
  noRack: [g.rack],
  whichCanner: [g.cannerKind, g.waterCover],
  longer: [g.longerProcess],
  shorter: [g.publishedTimes],
  coolFaster: [g.cooling],
  buckled: [g.buckledLid],
  leaked: [g.spoilage],
  noPing: [g.cooling],
  checkSeal: [g.seal],
  unsealedJar: [g.unsealed, g.reprocess],
  again: [g.reprocess],
  looseLater: [g.spoilage],
  tighten: [g.noRetightening],
  ringsOff: [g.putAway],
  howLongKeeps: [g.shelf, g.darkens],
  opened: [g.opened, g.mould],
  inFridge: [g.fridge, g.unsealed, g.reducedSugarKeeps, g.pumpkinFridge],
  freeze: [g.freezer],
  mold: [g.mould],
  smellsOff: [g.spoilage],
  bulging: [g.spoilage],
  botulism: [g.botulism, g.acidLine],
  whereKeep: [g.shelf],
  darkened: [g.darkens],
  whiteFilm: [g.commonPractice],
  giveAway: [g.selling],
  label: [g.putAway],
  pumpkin: [g.pumpkin],
  whitePeach: [g.whitePeach],
  elderberry: [g.elderberry],
  lowAcid: [g.testedDoseOnly, g.testedAcid],
} as const satisfies Record<string, readonly [Row, ...Row[]]>;

export type QuestionId = keyof typeof rows;
export const questionIds = Object.keys(rows) as QuestionId[];

/** Every figure that a plan shows. */
export type FigureId =
  | WhyKey
  | 'startMass'
  | 'startDepth'
  | 'pectin'
  | 'liquid'
  | 'waterBoils'
  | 'headspace'
  | 'sterilise'
  | 'clean'
  | 'sugarPer100g'
  | 'fruitPer100g'
  | 'pH'
  | 'waterActivity'
  | 'bestBy'
  | 'cost';

export function isQuestion(id: string | undefined): id is QuestionId {
  return id !== undefined && Object.hasOwn(rows, id);
}

/** The numbers of an answer, in SI units by name, and its sources as a person reads them. */
export function guidanceOn(id: QuestionId): { params: Record<string, number>; sources: string[] } {
  const asked: readonly Row[] = rows[id];
  return {
    params: Object.assign({}, ...asked.map(({ value }) => value ?? {})) as Record<string, number>,
    sources: asked.map(cite),
  };
}
