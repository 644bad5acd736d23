// The vocabulary of the batch calculator: what a cook asks for, and the plan that comes back.
// Every unit is in the name. Ranges are low / likely / high with low <= likely <= high.

import type { BatchRequest } from './request.ts';

export interface Range {
  low: number;
  likely: number;
  high: number;
}

export type Product = 'butter' | 'jam' | 'jelly' | 'marmalade';
export type Keep = 'shelf' | 'fridge' | 'freezer';
export type JarSize = 'quarter-pint' | 'half-pint' | 'pint' | 'quart';
export type Pectin = 'none' | 'powdered' | 'liquid';

/** Where one number comes from, so that every number on the planning page can be questioned. */
export interface Why {
  /** One short sentence a cook understands. */
  says: string;
  /** The formula or table row, in words or symbols. */
  how: string;
  /** The published source, or "common practice, no source", or "from memory: ...". */
  source: string;
}

/** The numbers on a plan that open to their reason. */
export type WhyKey =
  | 'sugar'
  | 'acid'
  | 'targetMass'
  | 'targetDepth'
  | 'finishTemp'
  | 'solubleSolids'
  | 'heatMinutes'
  | 'simmerMinutes'
  | 'stirInterval'
  | 'yield'
  | 'jars'
  | 'canner'
  | 'process'
  | 'shelf'
  | 'strain'
  | 'standard'
  | 'pots';

export interface AcidDose {
  kind: 'bottled-lemon-juice' | 'citric-acid';
  massKg: number;
  /** Only for liquids. */
  volumeMl: number | null;
  /** True where the shelf hangs on it. */
  neededForShelf: boolean;
}

export interface BatchPlan {
  /** The request as parsed, with its defaults filled in. */
  request: BatchRequest;
  fruitName: string;
  sugarMassKg: number;
  /** What the cook may choose between; outside it the request is refused with a sentence. */
  sugarBoundsKg: { low: number; high: number };
  acid: AcidDose | null;
  /** Added pectin, powder or liquid; absent where none is added. */
  pectinMassKg?: number;
  /** Water that goes in with the fruit, or the liquid that the cook named; absent where there is none. */
  liquidMassKg?: number;
  /** Everything in the pot before heating. */
  startMassKg: number;
  startSolubleSolidsPct: number;
  targetMassKg: number;
  targetSolubleSolidsPct: number;
  /** Depth of the finished spread in the pot; null where the pot is not known. */
  startDepthM: number | null;
  targetDepthM: number | null;
  waterBoilsC: number;
  finishTempC: number;
  heatMinutes: Range;
  simmerMinutes: Range;
  /** Minutes between stirs, at the start of the simmer and near its end. */
  stirEveryMinutes: { start: number; end: number };
  yieldVolumeL: Range;
  jars: {
    size: JarSize;
    count: Range;
    /** Jars to make ready of the chosen size: enough with high probability. */
    makeReady: number;
    /** One small jar for what does not fill a whole one. */
    spare: { size: JarSize; count: number };
    /** Chance that `makeReady` jars and the spare hold everything, 0..1. */
    enoughProbability: number;
  };
  canner: { loads: number; jarsPerLoad: number; waterL: number; preheatMinutes: Range } | null;
  process: {
    minutes: number;
    presteriliseJars: boolean;
    /** Minutes to boil empty jars at this altitude, where they must be sterile. */
    steriliseMinutes: number;
    headspaceMm: number;
    /** The published row, in words, and its source. */
    row: string;
    source: string;
  } | null;
  headspaceMm: number;
  shelf: { allowed: boolean; reasons: string[]; remedy: string | null };
  /** Which optional steps of the work this fruit and product need. */
  steps: { strain: 'none' | 'optional' | 'needed'; strainWith: string | null; blend: boolean };
  standardOfIdentity: { meets: boolean; says: string };
  tools: string[];
  cautions: string[];
  /** Pots to split the batch into, with the reason, when one is too much. */
  pots: { count: number; says: string };
  why: Partial<Record<WhyKey, Why>>;
}

/** Where it is to be kept; a low-acid spread keeps worse in the fridge. */
export type StoragePlace = 'shelf' | 'freezer' | 'fridge' | 'pumpkinFridge';

/** What a plan also knows: for the label, the purse and the curious. */
export interface PlanFacts {
  /** Water to boil away, kg. */
  boilAwayKg: number;
  /** What the scale shows at the end with the pot on it, kg; null where the empty pot was not weighed. */
  targetWithPotKg: number | null;
  /** pH of the finished spread, estimated; 4.6 is the line. */
  pH: Range;
  /** Dryness of the finished spread at 25 C, 0..1. */
  waterActivity: number;
  /** The likely yield in the chosen jars and the others that stand ready, largest first. */
  mixedJars: { size: JarSize; count: number }[];
  label: { solubleSolidsPct: number; sugarPer100g: number; fruitPer100g: number };
  /** In the currency of the prices; null where none were given. */
  cost: { total: number; perJar: number } | null;
  /** How long it keeps at its best where it is to be kept, and once opened. */
  bestBy: { place: StoragePlace; months: number; says: string; source: string };
}

/** What `planBatch` returns. */
export interface FullPlan extends BatchPlan {
  facts: PlanFacts;
}
