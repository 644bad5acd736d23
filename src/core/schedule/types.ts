/**
 * What a scheduler is asked and what it answers: activities with durations,
 * shared resources, and least and greatest distances between starts. This is
 * the resource-constrained project scheduling problem with minimum and maximum
 * time lags (RCPSP/max; Neumann, Schwindt & Zimmermann 2003), with what a
 * kitchen adds: fixed starts, absences, and lags that may stretch at a price.
 *
 * All times are whole units from the project's own zero (a kitchen uses
 * minutes, a benchmark file whatever it says). Indices count from zero.
 */

/** One thing that takes time and, while it runs, a part of some resources. */
export type Activity = {
  readonly duration: number;
  readonly demands: readonly Demand[];
  /** No start before this. Left out: 0. */
  readonly earliestStart?: number;
  /** No finish after this. Left out: no limit. */
  readonly latestFinish?: number;
  /** Already under way or done: started here and not to be moved. */
  readonly fixedStart?: number;
};

export type Demand = { readonly resource: number; readonly amount: number };

/**
 * `start[to] >= start[from] + distance`. A negative distance is a greatest
 * distance the other way: `start[from] <= start[to] + |distance|`.
 */
export type Lag = {
  readonly from: number;
  readonly to: number;
  readonly distance: number;
  /**
   * Left out: never broken. Given: it may stretch, and each unit by which it
   * does adds this to the cost (a re-plan of hot jam that is already late must
   * still have an answer).
   */
  readonly pricePerUnit?: number;
};

/** Something of which there is only so much at a time: hands, burners, a canner. */
export type Resource = {
  readonly capacity: number;
  /** When some of it is away ("I leave at five for half an hour"). */
  readonly absences?: readonly { readonly from: number; readonly to: number; readonly amount: number }[];
};

/** The question. Cost = makespan + sum of prices; less is better. */
export type Project = {
  readonly activities: readonly Activity[];
  readonly resources: readonly Resource[];
  readonly lags: readonly Lag[];
  /**
   * What it costs for each unit that an activity starts later than it could:
   * `weight * start[activity]`, added to the makespan (small weights make a
   * plan that does not dawdle). Left out: none.
   */
  readonly startWeights?: readonly number[];
};

/** The answer, the best so far. */
export type Schedule =
  | {
      readonly kind: 'schedule';
      readonly starts: readonly number[];
      readonly makespan: number;
      readonly cost: number;
      /** A cost below which no schedule can fall; equal to `cost` when proven. */
      readonly lowerBound: number;
      readonly proven: boolean;
      readonly by: 'own' | 'solver';
    }
  /** `proven` false: none was found in the time given, there may be one. */
  | { readonly kind: 'none'; readonly proven: boolean; readonly by: 'own' | 'solver' };

/** How long to think, how to draw lots, and what to start from. */
export type Effort = {
  readonly budgetMs: number;
  /** Milliseconds of any clock that does not run backwards; injected, for the core has none. */
  readonly now: () => number;
  readonly seed: number;
  /** Starts of an earlier plan to begin from and to stay close to. */
  readonly warmStarts?: readonly number[];
  /** Called with each better answer as it is found. */
  readonly onBetter?: (schedule: Schedule, atMs: number) => void;
};

/** Anything that answers: our own search in `schedule.ts`, or a constraint solver behind the same door. */
export type Scheduler = (project: Project, effort: Effort) => Schedule | Promise<Schedule>;
