/**
 * Is this a job shop, in which everything is ordered work on one machine at a
 * time, and what is a good order of work there? Works of critical blocks are
 * moved to the blocks' ends (Balas & Vazacopoulos 1998), each move judged by
 * its estimate (Taillard 1994).
 */

import type { Problem } from './problem.ts';

const NONE = -1;

/** A work goes behind or before another on the same machine. */
export type Move = { readonly work: number; readonly target: number; readonly isBehind: boolean };

export class Shop {
  readonly count: number;
  readonly duration: Int32Array;
  /** The work before and after in the job, and on the machine. */
  private readonly jobBefore: Int32Array;
  private readonly jobAfter: Int32Array;
  private readonly before: Int32Array;
  private readonly after: Int32Array;
  private readonly machine: Int32Array;
  /** Longest way to the start of the work, and from its start to the end of all. */
  readonly head: Int32Array;
  private readonly tail: Int32Array;
  private readonly order: Int32Array;
  private readonly missing: Int32Array;
  private readonly heads: Int32Array;
  private readonly tails: Int32Array;
  makespan = Infinity;

  private constructor(problem: Problem, machine: Int32Array) {
    this.count = problem.count;
    this.machine = machine;
    this.duration = Int32Array.from(problem.project.activities, ({ duration }) => duration);
    const blank = () => new Int32Array(problem.count).fill(NONE);
    [this.jobBefore, this.jobAfter, this.before, this.after] = [blank(), blank(), blank(), blank()];
    [this.head, this.tail, this.order, this.missing] = [blank(), blank(), blank(), blank()];
    [this.heads, this.tails] = [blank(), blank()];
    for (const { from, to } of problem.hard) {
      this.jobAfter[from] = to;
      this.jobBefore[to] = from;
    }
  }

  /** Null when it is not a job shop. */
  static of(problem: Problem): Shop | null {
    const { project, count } = problem;
    const machine = new Int32Array(count).fill(NONE);
    const isPlain =
      problem.soft.length === 0 &&
      !project.startWeights?.some((weight) => weight !== 0) &&
      project.activities.every(
        (each) =>
          each.duration > 0 &&
          !each.earliestStart &&
          each.latestFinish === undefined &&
          each.fixedStart === undefined,
      );
    if (!isPlain) return null;
    for (const [index, { uses, steps }] of problem.resources.entries()) {
      for (const { variable, amount } of uses) {
        if (machine[variable] !== NONE || steps.length > 1 || 2 * amount <= steps[0]!.capacity) return null;
        if (amount > steps[0]!.capacity) return null;
        machine[variable] = index;
      }
    }
    const outs = new Set(problem.hard.map(({ from }) => from));
    const ins = new Set(problem.hard.map(({ to }) => to));
    const isChain = outs.size === problem.hard.length && ins.size === problem.hard.length;
    const isFollowed = problem.hard.every(
      ({ from, distance }) => distance === project.activities[from]!.duration,
    );
    return isChain && isFollowed && machine.every((each) => each !== NONE)
      ? new Shop(problem, machine)
      : null;
  }

  /** Takes the order of work on each machine from a plan. */
  follow(starts: readonly number[]): void {
    const last = new Map<number, number>();
    const sorted = Array.from(starts, (_, i) => i).sort((a, b) => starts[a]! - starts[b]!);
    this.before.fill(NONE);
    this.after.fill(NONE);
    for (const work of sorted) {
      const previous = last.get(this.machine[work]!);
      if (previous !== undefined) this.link(previous, work);
      last.set(this.machine[work]!, work);
    }
    this.measure();
  }

  private link(first: number, second: number): void {
    if (first !== NONE) this.after[first] = second;
    if (second !== NONE) this.before[second] = first;
  }

  /** Heads, tails and the makespan; false when the order goes round in a circle. */
  measure(): boolean {
    const { count, order, missing, jobBefore, before, jobAfter, after, head, tail, duration } = this;
    let ready = 0;
    for (let i = 0; i < count; i++) {
      missing[i] = (jobBefore[i] === NONE ? 0 : 1) + (before[i] === NONE ? 0 : 1);
      if (missing[i] === 0) order[ready++] = i;
    }
    let makespan = 0;
    for (let at = 0; at < ready; at++) {
      const i = order[at]!;
      head[i] = Math.max(this.endOf(jobBefore[i]!), this.endOf(before[i]!));
      makespan = Math.max(makespan, head[i]! + duration[i]!);
      const [inJob, onMachine] = [jobAfter[i]!, after[i]!];
      if (inJob !== NONE && --missing[inJob]! === 0) order[ready++] = inJob;
      if (onMachine !== NONE && --missing[onMachine]! === 0) order[ready++] = onMachine;
    }
    if (ready < count) return false;
    for (let at = count - 1; at >= 0; at--) {
      const i = order[at]!;
      tail[i] = duration[i]! + Math.max(this.tailOf(jobAfter[i]!), this.tailOf(after[i]!));
    }
    this.makespan = makespan;
    return true;
  }

  private endOf(work: number): number {
    return work === NONE ? 0 : this.head[work]! + this.duration[work]!;
  }

  private tailOf(work: number): number {
    return work === NONE ? 0 : this.tail[work]!;
  }

  /** Takes a work out of its place on its machine and puts it in again behind or before another. */
  move({ work, target, isBehind }: Move): void {
    this.link(this.before[work]!, this.after[work]!);
    const [ahead, behind] = isBehind ? [target, this.after[target]!] : [this.before[target]!, target];
    this.before[work] = ahead;
    this.after[work] = behind;
    if (ahead !== NONE) this.after[ahead] = work;
    if (behind !== NONE) this.before[behind] = work;
  }

  /** The works between, in their order: those that the moved one leaps over. */
  leapt({ work, target, isBehind }: Move): number[] {
    const over: number[] = [];
    for (let at = work; at !== target;) over.push((at = isBehind ? this.after[at]! : this.before[at]!));
    return over;
  }

  /** The longest way through what is moved is about so long after it (Balas & Vazacopoulos 1998). */
  estimate(move: Move): number {
    const { duration, heads, tails } = this;
    const { work, isBehind } = move;
    const over = this.leapt(move);
    const line = isBehind ? [...over, work] : [work, ...over.reverse()];
    const { length } = line;
    const outer = this.before[isBehind ? work : move.target]!;
    const rear = isBehind ? this.after[move.target]! : this.after[work]!;
    let ready = this.endOf(outer);
    for (let i = 0; i < length; i++) {
      const at = line[i]!;
      heads[i] = Math.max(this.endOf(this.jobBefore[at]!), ready);
      ready = heads[i]! + duration[at]!;
    }
    let rest = this.tailOf(rear);
    let longest = 0;
    for (let i = length - 1; i >= 0; i--) {
      const at = line[i]!;
      tails[i] = duration[at]! + Math.max(this.tailOf(this.jobAfter[at]!), rest);
      rest = tails[i]!;
      longest = Math.max(longest, heads[i]! + tails[i]!);
    }
    return longest;
  }

  /**
   * Moves to either end of a block of one longest way, drawn at forks by lot, that surely close no circle, and the
   * exchanges of neighbours there, which never do.
   */
  moves(chance: () => number): Move[] {
    const way = this.longestWay(chance);
    const found: Move[] = [];
    for (let from = 0, to = 0; from < way.length; from = to) {
      to = from + 1;
      while (
        to < way.length &&
        this.machine[way[to]!] === this.machine[way[from]!] &&
        this.after[way[to - 1]!] === way[to]
      )
        to++;
      if (to - from < 2) continue;
      const [first, last] = [way[from]!, way[to - 1]!];
      for (let i = from; i < to; i++) {
        const work = way[i]!;
        // Where two works are the block, one goes behind the other, and that is the only move.
        const isOnlyMove = to - from === 2 && to < way.length;
        if (to < way.length && i < to - 1 && this.canGoBehind(work, last, i === to - 2))
          found.push({ work, target: last, isBehind: true });
        if (from > 0 && !isOnlyMove && i > from && this.canGoBefore(work, first, i === from + 1))
          found.push({ work, target: first, isBehind: false });
      }
    }
    return found;
  }

  /** No way leads from what follows the work in its job to the target. */
  private canGoBehind(work: number, target: number, areNeighbours: boolean): boolean {
    if (this.jobAfter[work] === target) return false;
    return areNeighbours || this.tailOf(target) >= this.tailOf(this.jobAfter[work]!);
  }

  private canGoBefore(work: number, target: number, areNeighbours: boolean): boolean {
    if (this.jobBefore[work] === target) return false;
    return areNeighbours || this.endOf(target) >= this.endOf(this.jobBefore[work]!);
  }

  private longestWay(chance: () => number): number[] {
    const way: number[] = [];
    const isOnWay = (work: number) => work !== NONE && this.head[work]! + this.tail[work]! === this.makespan;
    const firsts = Array.from(this.head, (_, i) => i).filter((i) => this.head[i] === 0 && isOnWay(i));
    let at = firsts[Math.floor(chance() * firsts.length)] ?? NONE;
    while (at !== NONE) {
      way.push(at);
      const end = this.endOf(at);
      const follows = (work: number) => isOnWay(work) && this.head[work] === end;
      const [job, machine] = [this.jobAfter[at]!, this.after[at]!];
      const isFork = follows(job) && follows(machine);
      at = follows(machine) && !(isFork && chance() < 0.5) ? machine : follows(job) ? job : NONE;
    }
    return way;
  }
}
