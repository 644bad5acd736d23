// What the assistant answers to "what is ...": the message of each word of the trade and the numbers in
// it. Units are in the names; every number carries its source.

import type { Message } from '../kitchen/effects.ts';

const INCH_M = 0.0254; // exact, 1959 international inch

// Each key is a term of the phrase book; each answer has a longer one behind it, under the key + ".more".
const numbers = {
  rollingBoil: {},
  // 1/4 inch for jam, jelly and butter: USDA AIB-539 (Complete Guide to Home Canning), guides 2 and 7.
  headspace: { headspaceMm: 6.35 },
  plateTest: {},
  simmer: {},
  scorch: {},
  fingertipTight: {},
  pectin: {},
  // 43 % soluble solids at least: 21 CFR 150.110(d), from memory.
  butter: { butterSolids: 43 },
  // 65 % soluble solids at least: 21 CFR 150.160(d)(3), from memory.
  jam: { jamSolids: 65 },
  // Water at least 1 inch over the lids: USDA AIB-539, guide 1.
  canner: { depthM: INCH_M },
  seal: {},
  falseSeal: {},
  ping: {},
  foam: {},
  mash: {},
  process: {},
  // 12 to 24 hours undisturbed, jars at least an inch apart: USDA AIB-539, guide 1.
  rest: { restLowHours: 12, restHighHours: 24, gapDepthM: INCH_M },
  solids: {},
  settingPoint: {}, // + 8 °F: USDA AIB-539, guide 7; said in both scales, for a difference does not convert like a reading
  // Acid food is pH 4.6 or below: 21 CFR 114.3(a).
  acid: { shelfPh: 4.6 },
  // Boil empty jars 10 minutes, needed where the process is under 10 minutes: USDA AIB-539, guide 1.
  sterileJar: { minutes: 10, processMinutes: 10 },
  // Within 24 hours: USDA AIB-539, guide 1.
  reprocess: { withinHours: 24 },
  // The first altitude band ends at 1,000 ft: USDA AIB-539, guides 2 and 7.
  altitude: { elevationM: 304.8 },
  rack: {},
  airBubbles: {},
  foodMill: {},
  thermalShock: {},
  band: {},
  // 5 minutes with heat and lid off: National Center for Home Food Preservation; Illinois Extension.
  siphoning: { standMinutes: 5 },
  ventedLid: {},
  // Best within 12 months at 50-70 °F: National Center for Home Food Preservation, storing jams and jellies.
  bestBy: { shelfMonths: 12 },
  spoilage: {},
} as const satisfies Record<string, Readonly<Record<string, number>>>;

export type Term = keyof typeof numbers;
export const terms = Object.keys(numbers) as Term[];

type Who = 'usda' | 'center' | 'law' | 'practice';

/** Who says so; "remembered" is named from memory and was not looked up. All others: common practice, no source. */
const sources: { readonly [T in Term]?: { who: Who; remembered: boolean } } = {
  headspace: { who: 'usda', remembered: false },
  fingertipTight: { who: 'center', remembered: true },
  butter: { who: 'law', remembered: true },
  jam: { who: 'law', remembered: true },
  canner: { who: 'usda', remembered: false },
  seal: { who: 'usda', remembered: false },
  process: { who: 'usda', remembered: true },
  rest: { who: 'usda', remembered: false },
  settingPoint: { who: 'usda', remembered: false },
  acid: { who: 'law', remembered: false },
  sterileJar: { who: 'usda', remembered: false },
  reprocess: { who: 'usda', remembered: false },
  altitude: { who: 'usda', remembered: false },
  airBubbles: { who: 'center', remembered: true },
  // The five minutes were read; that a sealed jar which lost some is good was not.
  siphoning: { who: 'center', remembered: true },
  bestBy: { who: 'center', remembered: false },
  spoilage: { who: 'usda', remembered: true },
};

interface TermAnswer {
  short: Message;
  /** What "tell me more" says, the last of it who says so. */
  more: readonly [Message, Message];
}

/** Null for a word that is not of the trade. */
export function answerTo(term: string | undefined): TermAnswer | null {
  if (term === undefined || !isTerm(term)) return null;
  const params = { ...numbers[term] };
  const { who, remembered } = sources[term] ?? { who: 'practice', remembered: false };
  return {
    short: { key: `teach.${term}`, params },
    more: [
      { key: `teach.${term}.more`, params },
      { key: 'teach.source', params: { who, remembered } },
    ],
  };
}

function isTerm(term: string): term is Term {
  return Object.hasOwn(numbers, term);
}
