// What really happens in a kitchen of several pots, minute by minute?
//
// Draws its own truth and keeps its own limits; knows nothing of how an evening is planned. A cook asks it
// what can be begun, begins it, and sees what is over. Time goes in quarters of a minute.

import type { EveningRequest, Step } from '../../src/core/evening/index.ts';
import { hat, type Hat } from '../../src/stove/index.ts';

export const TICK = 0.25;

/** Limits in minutes, as a careful cook keeps them: the canner's chart for filled jars, else common practice. */
const LIMIT = { skim: 3, hotStep: 5, fill: 5, load: 10, unload: 15, sterileJars: 20, keptHot: 60 };

/** Low, likely, high of what hands do, minutes; common practice, no source. */
const HANDS: Partial<Record<Step, readonly [number, number, number]>> = {
  skim: [1, 1.5, 2.5],
  blend: [2, 2.5, 4],
  spoon: [0.3, 0.5, 1],
  judge: [0.3, 0.5, 1],
  warmJars: [1, 1.5, 2.5],
  jarsIn: [0.7, 1, 1.8],
  load: [1, 1.5, 2.5],
  unload: [1, 1.5, 2.5],
};

/** A stir or a look takes a quarter of a minute; one that is due waits this long at most, and its own interval. */
const STIR_MIN = 0.25;
const STIR_GRACE_MIN = 2;

export interface Doing {
  id: string;
  step: Step;
  batches: readonly string[];
  canner: string | null;
  /** How many pieces the preparation of this batch was cut into. */
  pieces: number;
}

interface Running extends Doing {
  startedAt: number;
  /** Work still to do by a cook, or null where it ends by itself at `endsAt`. */
  handsLeft: number | null;
  endsAt: number;
  cook: number | null;
}

export interface Tally {
  late: string[];
  handsOnSteps: number;
  askedTwice: number;
  finish: number;
  stirs: number;
  lateStirs: number;
}

export interface Chances {
  /** Of this cook's hands against the table. */
  slowness: number;
  runny: number;
  boilDrops: number;
}

const HOT: readonly Step[] = ['skim', 'strain', 'blend', 'spoon', 'cool', 'judge', 'fill'];
const BUBBLING: readonly Step[] = ['heat', 'simmer', 'reduce'];
export const NEEDS_HANDS: readonly Step[] = [
  ...['prepare', 'skim', 'strain', 'blend', 'spoon', 'judge', 'warmJars', 'jarsIn', 'fill', 'load', 'unload'],
] as Step[];
const STEADY: readonly Step[] = ['spoon', 'judge'];

export class World {
  now = 0;
  readonly running = new Map<string, Running>();
  readonly ended = new Map<string, { startedAt: number; endedAt: number }>();
  readonly runny: Record<string, number> = {};
  readonly voidedAt: Record<string, number> = {};
  readonly tally: Tally = { late: [], handsOnSteps: 0, askedTwice: 0, finish: 0, stirs: 0, lateStirs: 0 };
  /** Something happened since the cook last looked. */
  news = true;
  private readonly request: EveningRequest;
  private readonly chances: Chances;
  private readonly seed: number;
  private readonly hotCanners = new Set<string>();
  private readonly ringOf = new Set<string>();
  private readonly stirredAt = new Map<string, number>();
  private readonly stirLate = new Set<string>();
  private readonly sterileAt = new Map<string, { canner: string | null; at: number }>();
  private readonly drops = new Map<string, number>();
  private readonly asked = new Set<string>();
  readonly cooks: (string | null)[];

  constructor(request: EveningRequest, seed: number, chances: Chances) {
    this.request = request;
    this.seed = seed;
    this.chances = chances;
    this.cooks = Array.from({ length: request.cooks }, () => null);
  }

  /** The same lot for the same thing on the same evening, whatever the cook does before. */
  private hatFor(what: string): Hat {
    let hash = this.seed | 0;
    for (const letter of what) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193);
    return hat(hash ^ (hash >>> 13));
  }

  private planOf(batch: string) {
    const found = this.request.batches.find(({ id }) => id === batch);
    if (!found) throw new Error(`No batch ${batch}`);
    return found.plan;
  }

  /** A value whose tenth, half and nine tenths are these. */
  private drawn(what: string, [low, likely, high]: readonly [number, number, number]): number {
    const z = Math.max(-2.5, Math.min(2.5, this.hatFor(what).normal(0, 1)));
    return Math.max(TICK, likely + (z / 1.2816) * (z < 0 ? likely - low : high - likely));
  }

  private jarsOf(batch: string): number {
    return Math.max(1, Math.round(this.planOf(batch).jars.count.likely));
  }

  /** The whole simmer is drawn once; its end is the last reduction. */
  private simmerOf(batch: string): { simmer: number; reduce: number } {
    const { low, likely, high } = this.planOf(batch).simmerMinutes;
    const whole = this.drawn(`${batch} simmer`, [low, likely, high]);
    const last = Math.min(0.8 * likely, Math.max(3, Math.min(6, 0.3 * likely)));
    const reduce = this.drawn(`${batch} last`, [0.8 * last, last, 1.3 * last]);
    return { simmer: Math.max(TICK, whole - last), reduce };
  }

  private truth({ id, step, batches, canner, pieces }: Doing): number {
    const [batch = ''] = batches;
    const slow = this.chances.slowness;
    const hands = HANDS[step];
    if (hands) return slow * this.drawn(id, hands);
    switch (step) {
      case 'prepare': {
        const kg = this.planOf(batch).request.fruitMassKg ?? 1;
        return (slow * this.drawn(id, [2 + 3 * kg, 2 + 4 * kg, 2 + 5.5 * kg])) / pieces;
      }
      case 'strain': {
        const kg = this.planOf(batch).targetMassKg;
        return slow * this.drawn(id, [2 + 1.2 * kg, 2 + 1.6 * kg, 2 + 2.4 * kg]);
      }
      case 'fill': {
        const jars = this.fillsOf(batch);
        return slow * this.drawn(id, [1 + 0.5 * jars, 1 + 0.7 * jars, 1 + jars]);
      }
      case 'heat': {
        const { low, likely, high } = this.planOf(batch).heatMinutes;
        return this.drawn(id, [low, likely, high]);
      }
      case 'simmer':
        return this.simmerOf(batch).simmer;
      case 'reduce':
        return id.endsWith('/1') ? this.simmerOf(batch).reduce : this.drawn(id, [3, 4, 6]);
      case 'cool':
        return 2;
      case 'preheat':
        return this.drawn(id, this.preheat());
      case 'sterilise':
        return (
          this.toBoil(id) + Math.max(...batches.map((one) => this.planOf(one).process?.steriliseMinutes ?? 0))
        );
      case 'toFullBoil':
        return this.toBoil(id);
      case 'process':
        return this.servedAfter(id, canner, batches);
      case 'stand':
        return 5;
      default:
        return TICK;
    }
  }

  private preheat(): readonly [number, number, number] {
    const minutes = this.request.batches.find(({ plan }) => plan.canner)?.plan.canner?.preheatMinutes;
    return minutes ? [minutes.low, minutes.likely, minutes.high] : [20, 30, 50];
  }

  /** From 82 C to the boil is 18 of the 67 degrees that the whole way from cold has. */
  private toBoil(id: string): number {
    const [low, likely, high] = this.preheat();
    const share = 18 / 67;
    return this.drawn(`${id} boil`, [low * share, likely * share, high * share]);
  }

  private fillsOf(batch: string): number {
    const perLoad = this.planOf(batch).canner?.jarsPerLoad ?? 7;
    return this.jarsOf(batch) / Math.ceil(this.jarsOf(batch) / perLoad);
  }

  /** A boil that drops makes the clock void: back to the boil, and the full time again. */
  private servedAfter(id: string, _canner: string | null, batches: readonly string[]): number {
    const full = Math.max(...batches.map((one) => this.planOf(one).process?.minutes ?? 0));
    const lot = this.hatFor(`${id} drop`);
    if (lot.between(0, 1) >= this.chances.boilDrops) return full;
    const at = lot.between(0, 1) * full;
    this.drops.set(id, this.now + at);
    return at + this.toBoil(`${id} again`) + full;
  }

  /** Why this cannot begin now; null where it can. */
  hindrance(doing: Doing): string | null {
    if (this.running.has(doing.id) || this.ended.has(doing.id)) return 'begun already';
    const [batch = ''] = doing.batches;
    if (doing.step === 'heat' && this.ringOf.size >= this.request.burners.length) return 'no ring is free';
    if (doing.step === 'strain' && this.anyRuns('strain')) return 'the mill is in use';
    if (doing.step === 'blend' && this.anyRuns('blend')) return 'the blender is in use';
    if (doing.canner !== null && doing.step !== 'preheat') {
      if (!this.hotCanners.has(doing.canner)) return 'the canner is not hot';
      const inIt = [...this.running.values()].some(({ canner }) => canner === doing.canner);
      if (inIt) return 'the canner is full';
      if ((doing.step === 'jarsIn' || doing.step === 'load') && this.jarsIn(doing.canner))
        return 'the canner is full';
    }
    return this.missing(doing, batch);
  }

  /** Jars that stand in a canner, served, and wait to be lifted. */
  private jarsIn(canner: string): boolean {
    return this.inCanner.has(canner);
  }
  private readonly inCanner = new Map<string, string>();

  private missing({ id, step, batches }: Doing, batch: string): string | null {
    const done = (what: string): boolean => this.ended.has(what);
    const owner = id.split('/')[0] ?? '';
    const round = Number(id.split('/')[2]);
    const before = this.before(step, owner, batch, round, batches);
    const lacking = before.find((what) => !done(what));
    return lacking === undefined ? null : `${lacking} is not over`;
  }

  /** What must be over first: the order of the work, written down once more. */
  private before(
    step: Step,
    owner: string,
    batch: string,
    round: number,
    batches: readonly string[],
  ): string[] {
    const { strain, blend } = this.planOf2(batch);
    const last = (this.runny[batch] ?? 0) + 1;
    switch (step) {
      case 'prepare':
        return round > 1 ? [`${batch}/prepare/${round - 1}`] : [];
      case 'heat':
        return [this.lastPiece(batch)];
      case 'simmer':
        return [`${batch}/heat/1`];
      case 'reduce':
        return round > 1 ? [`${batch}/judge/${round - 1}`] : [`${batch}/simmer/1`];
      case 'skim':
        return [`${batch}/reduce/1`];
      case 'strain':
        return [`${batch}/skim/1`];
      case 'blend':
        return [strain ? `${batch}/strain/1` : `${batch}/skim/1`];
      case 'spoon': {
        if (round > 1) return [`${batch}/reduce/${round}`];
        return [blend ? `${batch}/blend/1` : strain ? `${batch}/strain/1` : `${batch}/skim/1`];
      }
      case 'cool':
        return [`${batch}/spoon/${round}`];
      case 'judge':
        return [`${batch}/cool/${round}`];
      case 'fill':
        return [
          `${batch}/judge/${last}`,
          ...(round > 1 ? [`${batch}/fill/${round - 1}`] : []),
          ...this.jarsFor(batch, round),
        ];
      case 'load':
        return batches.map((one) => `${one}/fill/${round}`);
      case 'sterilise':
        return [`${owner}/jarsIn/${round}`];
      case 'toFullBoil':
        return [`${owner}/load/${round}`];
      case 'process':
        return [`${owner}/toFullBoil/${round}`];
      case 'stand':
        return [`${owner}/process/${round}`];
      case 'unload':
        return [`${owner}/stand/${round}`];
      default:
        return [];
    }
  }

  private planOf2(batch: string): { strain: boolean; blend: boolean } {
    const found = this.request.batches.find(({ id }) => id === batch);
    return {
      strain: (found?.plan.steps.strain ?? 'none') !== 'none',
      blend: found?.plan.steps.blend ?? false,
    };
  }

  private jarsFor(batch: string, round: number): string[] {
    if (!(this.planOf(batch).process?.presteriliseJars ?? false)) return [`${batch}/warmJars/${round}`];
    const own = [...this.ended.keys()].find(
      (id) =>
        id.includes('/sterilise/') &&
        (id.split('/')[0] ?? '').split('+').includes(batch) &&
        id.endsWith(`/${round}`),
    );
    return [own ?? `${batch}/sterilise/${round}`];
  }

  private lastPiece(batch: string): string {
    const pieces = this.piecesOf.get(batch) ?? 1;
    return `${batch}/prepare/${pieces}`;
  }
  readonly piecesOf = new Map<string, number>();

  private anyRuns(step: Step): boolean {
    return [...this.running.values()].some((one) => one.step === step);
  }

  /** Minutes of waiting beyond what this step's product bears, were it begun now; minus: still to spare. */
  overdue({ id, step, batches }: Doing): number {
    const [batch = ''] = batches;
    const owner = id.split('/')[0] ?? '';
    const round = Number(id.split('/')[2]);
    const limit = this.limitOf(step, round);
    if (limit === null) return -Infinity;
    const since = this.before(step, owner, batch, round, batches).map((what) =>
      what.includes('/warmJars/') || what.includes('/sterilise/')
        ? -Infinity
        : (this.ended.get(what)?.endedAt ?? Infinity),
    );
    const waited = step === 'load' ? Math.min(...since) : Math.max(...since);
    return this.now - waited - limit;
  }

  private limitOf(step: Step, round: number): number | null {
    if (step === 'skim') return LIMIT.skim;
    if (step === 'reduce') return round > 1 ? LIMIT.hotStep : LIMIT.keptHot;
    if (step === 'spoon' && round > 1) return LIMIT.skim;
    if (step === 'fill') return round > 1 ? 90 : LIMIT.fill;
    if (step === 'load') return LIMIT.load;
    if (step === 'unload') return LIMIT.unload;
    return HOT.includes(step) ? LIMIT.hotStep : null;
  }

  freeCook(): number {
    return this.cooks.findIndex((doing, cook) => doing === null && !this.isAway(cook));
  }

  isAway(cook: number): boolean {
    return this.request.absences.some(
      (away) => away.cook === cook && away.from <= this.now && this.now < away.to,
    );
  }

  /** Begins it; a step that began later than its product bears is late. */
  begin(doing: Doing): void {
    const why = this.hindrance(doing);
    if (why !== null) throw new Error(`${doing.id} cannot begin: ${why}`);
    if (this.overdue(doing) > TICK) this.tally.late.push(doing.id);
    const hands = NEEDS_HANDS.includes(doing.step);
    const cook = hands ? this.freeCook() : null;
    if (hands && (cook === null || cook < 0)) throw new Error(`${doing.id}: no hands are free`);
    const takes = this.truth(doing);
    this.running.set(doing.id, {
      ...doing,
      startedAt: this.now,
      handsLeft: hands ? takes : null,
      endsAt: this.now + takes,
      cook,
    });
    if (cook !== null) {
      this.cooks[cook] = doing.id;
      this.tally.handsOnSteps++;
    }
    const [batch = ''] = doing.batches;
    if (doing.step === 'heat') this.ringOf.add(batch);
    if (BUBBLING.includes(doing.step)) this.stirredAt.set(batch, this.now);
    if (doing.step === 'load') this.loaded.push({ canner: doing.canner, at: this.now });
    if (doing.step === 'load' && doing.canner !== null) this.inCanner.set(doing.canner, doing.id);
    if (doing.step === 'fill') this.checkJars(batch, Number(doing.id.split('/')[2]), doing.id);
  }

  /** Sterile jars stand in the canner's boiling water until another load needs it; out of it they keep so long. */
  private checkJars(batch: string, round: number, id: string): void {
    const sterile = this.sterileAt.get(`${batch}/${round}`);
    if (sterile === undefined) return;
    const out = this.loaded.find(({ canner, at }) => canner === sterile.canner && at >= sterile.at);
    if (out && this.now - out.at > LIMIT.sterileJars + TICK)
      this.tally.late.push(`${id} into jars no longer sterile`);
  }
  private readonly loaded: { canner: string | null; at: number }[] = [];

  /** Urgent and asked for while no hands are free: noted once for each step. */
  noteAsked(doing: Doing): void {
    if (this.asked.has(doing.id)) return;
    this.asked.add(doing.id);
    if (this.freeCook() < 0) this.tally.askedTwice++;
  }

  tick(): void {
    this.now += TICK;
    this.stirPots();
    for (const [id, dropped] of this.drops)
      if (dropped <= this.now) {
        this.voidedAt[id] = dropped;
        this.drops.delete(id);
        this.news = true;
      }
    for (const one of [...this.running.values()]) {
      if (one.handsLeft !== null) {
        const away = one.cook !== null && this.isAway(one.cook);
        const stirring = this.stirring.get(one.cook ?? -1) ?? 0;
        if (stirring > 0) this.stirring.set(one.cook ?? -1, stirring - TICK);
        else if (!away) one.handsLeft -= TICK;
        if (one.handsLeft <= 1e-9) this.finish(one);
      } else if (one.endsAt <= this.now + 1e-9) this.finish(one);
    }
  }

  /** Minutes that each cook still spends at another pot. */
  private readonly stirring = new Map<number, number>();

  private stirPots(): void {
    for (const { step, batches, startedAt, endsAt } of this.running.values()) {
      if (!BUBBLING.includes(step)) continue;
      const [batch = ''] = batches;
      const { start, end } = this.planOf(batch).stirEveryMinutes;
      const share = Math.min(1, (this.now - startedAt) / Math.max(1, endsAt - startedAt));
      const every = step === 'heat' ? 4 : step === 'simmer' ? start + share * 0.7 * (end - start) : end;
      const waits = this.now - (this.stirredAt.get(batch) ?? this.now);
      if (waits < every) continue;
      const cook = this.cooks.findIndex((doing, who) => !this.isAway(who) && this.canLook(doing));
      if (cook >= 0) {
        this.stirredAt.set(batch, this.now);
        this.stirLate.delete(batch);
        this.tally.stirs++;
        if (this.cooks[cook] !== null) this.stirring.set(cook, (this.stirring.get(cook) ?? 0) + STIR_MIN);
      } else if (waits > every + STIR_GRACE_MIN && !this.stirLate.has(batch)) {
        this.stirLate.add(batch);
        this.tally.lateStirs++;
        this.tally.late.push(`${batch} not stirred`);
      }
    }
  }

  private canLook(doing: string | null): boolean {
    if (doing === null) return true;
    const step = doing.split('/')[1] as Step;
    return !STEADY.includes(step);
  }

  private finish(one: Running): void {
    this.running.delete(one.id);
    this.ended.set(one.id, { startedAt: one.startedAt, endedAt: this.now });
    if (one.cook !== null) this.cooks[one.cook] = null;
    this.tally.finish = this.now;
    this.news = true;
    const [batch = ''] = one.batches;
    const round = Number(one.id.split('/')[2]);
    if (one.step === 'preheat' && one.canner !== null) this.hotCanners.add(one.canner);
    if (one.step === 'sterilise')
      for (const each of one.batches)
        this.sterileAt.set(`${each}/${round}`, { canner: one.canner, at: this.now });
    if (one.step === 'unload' && one.canner !== null) this.inCanner.delete(one.canner);
    if (
      one.step === 'judge' &&
      this.hatFor(`${one.id} verdict`).between(0, 1) < this.chances.runny &&
      round <= 2
    )
      this.runny[batch] = round;
    if (one.step === 'fill') this.ringOf.delete(batch);
    // What follows by itself: the boil is seen and the heat turned down, the spoonful cools, the canner goes on.
    const then = FOLLOWS[one.step];
    if (then !== undefined) {
      const [owner = ''] = one.id.split('/');
      this.begin({ ...one, id: `${owner}/${then}/${round}`, step: then });
    }
  }
}

const FOLLOWS: Partial<Record<Step, Step>> = {
  heat: 'simmer',
  spoon: 'cool',
  jarsIn: 'sterilise',
  load: 'toFullBoil',
  toFullBoil: 'process',
  process: 'stand',
};
