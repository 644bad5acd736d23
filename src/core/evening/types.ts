// What is an evening's plan asked, and what does it answer?
//
// All times are minutes from the evening's zero, `EveningRequest.beganAt` in kitchen milliseconds;
// `instantOf` in index.ts turns one into the other. Ranges are low / likely / high, 80 in 100 within.
// Everything here is plain JSON, so that it passes to a worker and back.

import type { BatchPlan, JarSize, Range } from '../types.ts';

export type RingSize = 'small' | 'large';

/** One pot of fruit: what the calculator says of it, and what it needs of the kitchen. */
export interface EveningBatch {
  id: string;
  /** What the cook calls it: "plum", "second plum". */
  name: string;
  plan: BatchPlan;
  /** Jars of the chosen size that are likely to be filled; left out: the plan's likely count. */
  jars?: number;
  /** A ring at least this big; left out: large for pots of 26 cm and more. */
  ring?: RingSize;
}

export interface Burner {
  id: string;
  size: RingSize;
}

export interface EveningCanner {
  id: string;
  /** How many jars of a size go in one load; a size left out: the plan's `canner.jarsPerLoad`. */
  jarsPerLoad?: Partial<Record<JarSize, number>>;
  /** Minutes from cold to hot enough for hot jars; left out: the plan's `canner.preheatMinutes`. */
  preheatMinutes?: Range;
}

/** "I leave at five for half an hour": this cook, from minute to minute. Cooks count from zero. */
export interface Absence {
  cook: number;
  from: number;
  to: number;
}

export interface EveningRequest {
  /** Kitchen milliseconds of minute zero. */
  beganAt: number;
  batches: readonly EveningBatch[];
  cooks: number;
  absences: readonly Absence[];
  /** Rings for pots; the canners stand on their own. */
  burners: readonly Burner[];
  canners: readonly EveningCanner[];
  /** Blenders, and mills or sieves; left out: one of each. */
  blenders?: number;
  mills?: number;
  /** Plates in the freezer, and since which minute; left out: put there at minute zero. */
  plateInFreezerAt?: number;
  /** Jars stand ready in hot water already, so that nothing need be done for those not to be sterilised. */
  jarsAreHot?: boolean;
  /** No step of the evening may end after this minute; null: no limit. */
  latestFinish: number | null;
  /** How this cook's hands compare with the tables, from earlier evenings: 1.5 takes half as long again. */
  pace?: number;
}

/** The steps in the order of one batch's work. `preheat` belongs to a canner. */
export type Step =
  | 'preheat'
  | 'prepare'
  | 'heat'
  | 'simmer'
  /** At low heat before the last reduction, or away: the one wait that spoils nothing. */
  | 'keepHot'
  | 'reduce'
  | 'skim'
  | 'strain'
  | 'blend'
  | 'spoon'
  | 'cool'
  | 'judge'
  /** Jars warmed where they need not be sterile. */
  | 'warmJars'
  /** Empty jars into the canner, and boiled there. */
  | 'jarsIn'
  | 'sterilise'
  | 'fill'
  | 'load'
  /** Jars in, up to the full boil; then the clock; then the stand. */
  | 'toFullBoil'
  | 'process'
  | 'stand'
  | 'unload';

/** What a step asks of the cook: both hands, a look every so often, or nothing. */
export type Attention = 'hands' | 'glances' | 'none';

export type TaskState = 'planned' | 'underway' | 'done';

export interface EveningTask {
  /** `plum/prepare/2`, `plum/skim`, `canner-1/preheat`; a shared load is `plum+pear/load/1`. Stable over re-plans. */
  id: string;
  /** Batches it serves: one, two where they share a load, none for a canner's preheat. */
  batches: readonly string[];
  step: Step;
  /** Counts from 1: pieces of preparation, plate tests, loads of a big batch. */
  round: number;
  attention: Attention;
  /** Which cook; null where no hands are needed. */
  cook: number | null;
  /** Minute at which the plan starts it, or at which it really began. */
  start: number;
  /** Minute at which it likely ends, or really ended. */
  end: number;
  minutes: Range;
  /** Where the start and the end may fall, judged by simulation. */
  starts: Range;
  ends: Range;
  /** Minutes between glances at the beginning and at the end; null where none. */
  glanceEvery: { start: number; end: number } | null;
  /** It may be left for a glance at a pot and taken up again. */
  pausable: boolean;
  /** The ring, the canner, the blender it uses. */
  uses: readonly string[];
  state: TaskState;
  /** Tasks that must have ended first. */
  after: readonly string[];
  /** Minutes after the end of the last of `after` by which it must begin, or something spoils; null: it can wait. */
  within: number | null;
}

/** Who occupies a ring, a canner, a blender or a cook, and from when to when: the rows under the timeline. */
export interface ResourceRow {
  id: string;
  kind: 'cook' | 'burner' | 'canner' | 'blender' | 'mill';
  spans: readonly { from: number; to: number; tasks: readonly string[]; batches: readonly string[] }[];
}

/** What is worth saying, each with its reason as data. */
export type Advice =
  | { kind: 'startBatch'; batch: string; at: number; because: Because }
  | { kind: 'cannerOn'; canner: string; at: number; because: Because }
  | { kind: 'keepHot'; batch: string; from: number; to: number; because: Because }
  | { kind: 'shareLoad'; batches: readonly string[]; minutes: number }
  | { kind: 'offTheHeat'; batch: string; at: number; until: number }
  /** These do not fit before the latest finish, or hardly without something late: leave those out. Said before the cook starts. */
  | {
      kind: 'tooMany';
      asked: number;
      fits: number;
      leaveOut: readonly string[];
      /** Null: there is time, but not the hands or the canner. */
      latestFinish: number | null;
      because: Because;
    }
  /** More pots are on than the cook said there are rings for. */
  | { kind: 'crowded'; pots: number; rings: number }
  /** Even the best plan has this wait so many minutes longer than it may. */
  | { kind: 'late'; batch: string; step: Step; minutes: number }
  /** Possible, but seldom without something late. */
  | { kind: 'risky'; chanceOfLate: number; because: Because };

export type Because =
  | { reason: 'hands'; batch: string | null }
  | { reason: 'canner'; batch: string | null }
  | { reason: 'jars'; batch: string | null }
  | { reason: 'burner'; batch: string | null }
  | { reason: 'away'; from: number; to: number }
  | { reason: 'longest'; batch: string }
  | { reason: 'readyFor'; batch: string; at: number }
  | { reason: 'finish'; at: number }
  | { reason: 'none' };

export interface EveningPlan {
  request: EveningRequest;
  /** False: nothing was found that keeps every limit; `advice` says what to leave out. */
  feasible: boolean;
  tasks: readonly EveningTask[];
  rows: readonly ResourceRow[];
  advice: readonly Advice[];
  /** Chance that any step begins later than it may, 0..1, by simulation over the durations' own ranges. */
  chanceOfLate: number;
  /** Minutes by which steps are late in an evening, on average. */
  expectedLateness: number;
  finish: Range;
  /** Learned of this cook: what a hands-on step takes compared with the table, and how sure that is. */
  pace: { factor: number; logSd: number };
  /** Who found it, and whether nothing better exists for the durations it reckons with. */
  by: 'own' | 'solver';
  proven: boolean;
  /** Proven: no plan is better by more than so many minutes. Null: nobody knows. */
  within: number | null;
  /** The minute at which it was made. */
  madeAt: number;
  /** What it stands on, for the next plan to begin from: who goes first, who shares a load, whose jars go where. */
  order: readonly string[];
  choice: Choice;
  /** Its answer to the scheduler's own question, which another scheduler may go on from; empty where there is none. */
  starts: readonly number[];
}

/** What of an earlier plan the next one begins from. */
export interface Standing extends Pick<EveningPlan, 'request' | 'order' | 'choice'> {
  tasks: readonly Pick<EveningTask, 'id' | 'start'>[];
}

/** Which two batches share a load, and which canner takes whose jars. */
export interface Choice {
  shared: readonly (readonly [string, string])[];
  /** Canner by batch; left out: in turn. */
  canners: Readonly<Record<string, string>>;
}

/** What has really happened to one task. */
export interface TaskProgress {
  startedAt: number;
  /** Left out while it is under way. */
  endedAt?: number;
  /** Minutes still to go, where something knows better than the clock: the pot's own estimate, the canner's clock. */
  remaining?: Range;
}

/**
 * The evening so far. A runny plate, a voided clock or a second load needs nothing special:
 * the task of the next round (`plum/reduce/2`, `plum/spoon/2`) simply appears, or the old one starts anew.
 */
export interface EveningProgress {
  tasks: Readonly<Record<string, TaskProgress>>;
  /** Plate tests that did not hold, by batch: the chain goes round once more for each. */
  runnyPlates?: Readonly<Record<string, number>>;
  /** Process clocks voided, by the id of the process task: full boil again, full time again, from this minute. */
  voidedAt?: Readonly<Record<string, number>>;
  /** Off the heat since this minute, by batch (somebody at the door); it goes on when the cook says so. */
  heldSince?: Readonly<Record<string, number>>;
  /** Batches given up. */
  stopped?: readonly string[];
}

/** Told to the cook only if it concerns what was told before. */
export type Change =
  | { kind: 'startMoved'; task: string; step: Step; batches: readonly string[]; from: number; to: number }
  | { kind: 'added'; task: string; step: Step; batches: readonly string[]; at: number }
  | { kind: 'dropped'; task: string; step: Step; batches: readonly string[] }
  | { kind: 'noLongerFits'; latestFinish: number; finish: number };
