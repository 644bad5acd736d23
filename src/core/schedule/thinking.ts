/**
 * In which order the ways of searching take their turns, and what the best plan
 * is so far.
 */

import { chanceFrom } from './chance.ts';
import { costOf, makespanOf } from './cost.ts';
import type { Encoded } from './encode.ts';
import { Neighbourhood } from './neighbourhood.ts';
import type { Problem } from './problem.ts';
import type { Manner } from './search/branching.ts';
import type { Errand, Outcome } from './search/engine.ts';
import { Shop } from './shop.ts';
import { walk } from './tabu.ts';
import type { Effort, Schedule } from './types.ts';

/** Turns of thinking over a part of the plan between two of the whole. */
const PARTS_PER_WHOLE = 12;
const PART_CONFLICTS = 120;
/** So much is thought before the clock is first asked: an answer a little late is better than none. */
const FIRST_CONFLICTS = 50;
/** A job shop with more work than this is too large to be searched through: most of the time goes to the walk. */
const LARGE_SHOP = 150;

const UNTIL_FIRST: readonly Manner[] = ['busiest', 'earliest', 'soonest'];
const AFTER_FIRST: readonly Manner[] = ['earliest', 'busiest', 'busiest', 'busiest'];

/** Times the least makespan: a plan is looked for in little room first, where less can be tried in vain. */
const ROOMS = [1.2, 1.5, 2.5, 5];

/**
 * Asking the cost down: how much of the time may go to it, how far between the least and the best the first question
 * lies, how many conflicts each is worth, and when it is near enough. Tried on kitchens of seeds of their own.
 */
const ASKING_DOWN = { timeShare: 0.8, share: 0.8, mostShare: 0.95, conflicts: 150, nearEnough: 0.003 };

const never = () => false;
const FIRST_ERRAND = { manner: 'soonest', mostConflicts: FIRST_CONFLICTS, isOver: never } as const;

export class Thinking {
  answer: Schedule = { kind: 'none', proven: false, by: 'own' };
  /** There is nothing left to look for. */
  private isClosed = false;
  private readonly problem: Problem;
  private readonly encoded: Encoded;
  private readonly effort: Effort;
  private readonly began: number;
  private readonly chance: () => number;
  private readonly neighbourhood: Neighbourhood;
  /** How much better, as a part of the cost, the next plan is asked to be while parts are thought over. */
  private ambition = 0.05;

  constructor(problem: Problem, encoded: Encoded, effort: Effort, began: number) {
    this.problem = problem;
    this.encoded = encoded;
    this.effort = effort;
    this.began = began;
    this.chance = chanceFrom(effort.seed);
    this.neighbourhood = new Neighbourhood(problem, encoded, this.chance);
  }

  /** Does an earlier plan still hold? Then it is where the thinking begins. */
  standsOn(starts: readonly number[]): boolean {
    this.prefer(starts);
    const same = starts.flatMap((start, i) => [2 * i, start, 2 * i + 1, -start]);
    return this.run({ ...FIRST_ERRAND, granted: same }) === 'found';
  }

  /** A first plan: by the earlier one's order of work, else the earliest start first. */
  begin(): void {
    const { warmStarts } = this.effort;
    if (warmStarts?.length === this.problem.count && !this.standsOn(warmStarts)) {
      const { preferred } = this.encoded.engine.branching;
      this.run({ ...FIRST_ERRAND, granted: this.neighbourhood.orders(preferred) });
    }
    const { engine, end } = this.encoded;
    const least = engine.leastEver(end);
    for (const room of ROOMS)
      if (this.answer.kind === 'none' && !this.isClosed)
        this.run({ ...FIRST_ERRAND, granted: [2 * end + 1, -Math.ceil(room * least)] });
  }

  improve(): void {
    const isOver = () => this.spent() >= this.effort.budgetMs;
    this.walkShop();
    this.askDown(isOver);
    let wholes = 0;
    for (let turn = 0; !this.isClosed && !isOver(); turn++) {
      const isPart = this.answer.kind === 'schedule' && this.encoded.orders.length > 0;
      if (isPart && turn % (PARTS_PER_WHOLE + 1) > 0) this.thinkPart(isOver);
      else this.run(this.wholeErrand(wholes++, isOver));
    }
  }

  /**
   * Where lateness is paid for, a plan can cost twice what it must by two things late at once, which no part of it puts
   * right alone. So the whole is first asked for a cost between the least that any can have and the best so far.
   */
  private askDown(isOver: () => boolean): void {
    const { engine, cost, end, scale } = this.encoded;
    if (cost === end || this.isClosed) return;
    const { timeShare, mostShare, conflicts, nearEnough } = ASKING_DOWN;
    const until = this.spent() + timeShare * (this.effort.budgetMs - this.spent());
    const isEnough = () => isOver() || this.spent() >= until;
    let { share } = ASKING_DOWN;
    let least = engine.leastEver(cost);
    while (this.answer.kind === 'schedule' && !this.isClosed && share <= mostShare && !isEnough()) {
      const best = this.answer.cost * scale;
      if (best - least < nearEnough * best) return;
      const most = Math.floor(least + share * (best - least));
      const granted = [2 * cost + 1, -most];
      const outcome = this.run({ manner: 'busiest', mostConflicts: conflicts, isOver: isEnough, granted });
      if (outcome === 'notHere') least = most + 1;
      share = outcome === 'gaveUp' ? (1 + share) / 2 : outcome === 'found' ? ASKING_DOWN.share : share;
    }
  }

  private spent(): number {
    return this.effort.now() - this.began;
  }

  private thinkPart(isOver: () => boolean): void {
    const granted = [...this.asked(), ...this.neighbourhood.draw(this.encoded.engine.branching.preferred)];
    const outcome = this.run({ manner: 'busiest', mostConflicts: PART_CONFLICTS, isOver, granted });
    this.ambition = outcome === 'found' ? Math.min(0.05, this.ambition * 1.5) : this.ambition * 0.85;
    this.neighbourhood.learn(outcome !== 'gaveUp');
  }

  /** The cost to stay below, as an atom. */
  private asked(): number[] {
    if (this.answer.kind === 'none') return [];
    const { cost: variable, scale } = this.encoded;
    return [2 * variable + 1, Math.ceil(this.answer.cost * scale * (this.ambition - 1))];
  }

  /** All manners in turn until there is a plan, mostly the busiest after that; longer and longer. */
  private wholeErrand(times: number, isOver: () => boolean): Errand {
    const manners = this.answer.kind === 'none' ? UNTIL_FIRST : AFTER_FIRST;
    const manner = manners[times % manners.length]!;
    return { manner, mostConflicts: Math.min(20_000, FIRST_CONFLICTS * 1.3 ** times), isOver };
  }

  private run(errand: Errand): Outcome {
    const { engine } = this.encoded;
    const outcome = engine.search(errand);
    if (outcome === 'none') this.close();
    if (outcome === 'found') {
      const reckoned = engine.value(this.encoded.cost);
      this.accept(Array.from({ length: this.problem.count }, (_, i) => engine.value(i)));
      this.demandLessThan(reckoned);
    }
    return outcome;
  }

  /** Local search over the orders of work where the problem is a job shop. */
  private walkShop(): void {
    const shop = this.answer.kind === 'schedule' && !this.isClosed ? Shop.of(this.problem) : null;
    if (!shop || this.answer.kind === 'none') return;
    const share = this.effort.budgetMs * (this.problem.count > LARGE_SHOP ? 0.7 : 0.5);
    walk(shop, this.answer.starts, {
      chance: this.chance,
      isOver: () => this.spent() >= share,
      onBetter: (starts) => {
        const makespan = makespanOf(this.problem.project, starts);
        if (this.answer.kind !== 'schedule' || makespan >= this.answer.makespan) return;
        this.accept(starts);
        this.demandLessThan(makespan);
      },
      least: this.leastCost(),
    });
  }

  /** A better plan: tells it, leans on it from now on. Where prices were rounded, what seemed better need not be. */
  private accept(starts: readonly number[]): void {
    const { project } = this.problem;
    const cost = costOf(project, starts);
    if (this.answer.kind === 'schedule' && cost >= this.answer.cost) return;
    const lowerBound = Math.min(cost, this.leastCost());
    const answer = {
      kind: 'schedule',
      starts,
      makespan: makespanOf(project, starts),
      cost,
      lowerBound,
    } as const;
    this.answer = { ...answer, proven: false, by: 'own' };
    this.prefer(starts);
    this.effort.onBetter?.(this.answer, this.spent());
  }

  /** Asks only for better ones from now on. */
  private demandLessThan(reckoned: number): void {
    const { engine, cost } = this.encoded;
    if (!engine.demand(2 * cost + 1, 1 - reckoned)) this.close();
  }

  private prefer(starts: readonly number[]): void {
    const { preferred } = this.encoded.engine.branching;
    starts.forEach((start, i) => (preferred[i] = start));
    for (const { first, second, variable } of this.encoded.orders)
      preferred[variable] = starts[first]! < starts[second]! ? 1 : 0;
  }

  /** Rounded prices bound nothing. */
  private leastCost(): number {
    const { engine, cost, scale, isExact } = this.encoded;
    return isExact ? engine.leastEver(cost) / scale : -Infinity;
  }

  /** Nothing better is possible, or nothing at all: for certain, but where prices had to be rounded. */
  private close(): void {
    this.isClosed = true;
    const { answer } = this;
    if (answer.kind === 'none') this.answer = { ...answer, proven: true };
    else if (this.encoded.isExact) this.answer = { ...answer, lowerBound: answer.cost, proven: true };
  }
}
