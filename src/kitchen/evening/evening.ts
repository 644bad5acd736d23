// The evening at work: keeps the plan true to what happens, holds back what it wants later, and tells the cook
// only what changed for them.

import { instantOf } from '../../core/evening/index.ts';
import type { Advice, EveningPlan } from '../../core/evening/types.ts';
import type { Effect, Message } from '../../../machines/kitchen/effects.ts';
import type { KitchenEvent, PlanTold } from '../../../machines/kitchen/events.ts';
import type { Slots } from '../../../machines/dialogue/commands.ts';
import { Asking, type AskingParts } from './asking.ts';
import { cannerFor, idleCanners, isLone, opened } from './canners.ts';
import { Foresight } from './foresight.ts';
import { News } from './news.ts';
import { PlanNotes, putOffIn, type PutOff } from './putOff.ts';
import { minuteOf } from './request.ts';
import { planWords, worthTelling } from './planWords.ts';
import { adviceWords, changeWords, type Speech } from './saying.ts';
import type { EveningSettings } from './settings.ts';
import { ShownEvening, type EveningView } from './shownEvening.ts';
import { nextTime, onTheWall, timeOfDay, timeOfPlan } from './times.ts';
import { Untold, waitWords } from './untold.ts';
import { isCalledFor, waitsIn, waitsOf, type Wait } from './waits.ts';

type Say = Extract<Effect, { type: 'say' }>;

export interface EveningParts extends AskingParts {
  /** Left out: what the cook has for the evening cannot be changed by word. */
  setAway?: ((away: EveningSettings['away']) => void) | undefined;
  say(effect: Say): void;
  /** Keeps in the log what a pot was told of its heat; left out: a reload forgets it. */
  note?: ((event: PlanTold) => void) | undefined;
  /** Sets up a canner that the plan comes to use. */
  openCanner?: ((event: Extract<KitchenEvent, { type: 'canner.set' }>) => void) | undefined;
  changed(): void;
  /** The sentence for a message, in the cook's language. */
  word(message: Message): string;
  /** Another object once the cook's language or measures are others: sentences are put into words anew. */
  tongue?: () => object;
  timeOf?: (instant: number) => string;
}

/** An event moves the plan at once; while nothing happens it is looked at anew this often, kitchen ms. */
const LOOK_AGAIN_MS = 120_000;
const MINUTE_MS = 60_000;

export class Evening {
  readonly #parts: EveningParts;
  readonly #asking: Asking;
  readonly #shown = new ShownEvening();
  #plan: EveningPlan | null = null;
  readonly #news = new News();
  #waits: readonly Wait[] = [];
  /** What a chart called for, to be said when the plan comes to it. */
  #heldBack = new Map<string, Say>();
  readonly #untold = new Untold();
  readonly #foresight = new Foresight();
  readonly #notes: PlanNotes;
  /** As the log has it: read anew when something happens, not at every beat. */
  #putOff = new Map<string, PutOff>();

  constructor(parts: EveningParts) {
    this.#parts = parts;
    this.#notes = new PlanNotes(parts.note);
    const events = () => this.#events();
    this.#asking = new Asking({ ...parts, events }, ({ plan, last }) => this.#take(plan, last));
  }

  get view(): EveningView | null {
    const plan = this.#plan;
    if (!plan) return null;
    const now = this.#minuteOf(plan);
    return this.#shown.of({ plan, waits: this.#waits, now, tongue: this.#parts.tongue?.() }, () =>
      plan.advice.map((one) => this.#adviceWords(one, plan)),
    );
  }

  /** Who waits: by the plan, and before there is one, after a reload, as it was told. */
  get waits(): readonly Wait[] {
    return this.#waits;
  }

  /** "I leave at five for half an hour", "I am away for twenty minutes". */
  leave({ awayMinutes = 0, clock }: Slots): Message {
    const { setAway, now } = this.#parts;
    if (!setAway || awayMinutes <= 0 || !this.#plan) return { key: 'evening.away.cannot' };
    const from = clock === undefined ? Math.ceil(now() / MINUTE_MS) * MINUTE_MS : nextTime(clock, now());
    const over = from + awayMinutes * MINUTE_MS;
    setAway({ from: onTheWall(from), minutes: awayMinutes, over });
    const timeOf = (instant: number) => this.#parts.timeOf?.(instant) ?? timeOfDay(instant);
    return { key: 'evening.away.noted', params: { from: timeOf(from), to: timeOf(over) } };
  }

  /** "I am here again." */
  stay(): Message {
    if (!this.#parts.setAway) return { key: 'evening.away.cannot' };
    this.#parts.setAway(null);
    return { key: 'evening.away.over' };
  }

  /** "What is the plan": the short form, line by line. */
  spoken(): Message[] {
    const view = this.view;
    if (!view || view.agenda.length === 0) return [{ key: 'evening.plan.alone' }];
    return planWords(view, this.#minuteOf(view.plan), this.#speech(view.plan));
  }

  /** Something happened, or the cook's evening was set otherwise: the plan is made anew. */
  happened(): void {
    this.#putOff = putOffIn(this.#events());
    if (this.#asking.ask(this.#plan)) this.#look();
    else this.#forget();
  }

  beat(): void {
    const { now } = this.#parts;
    // At the first beat, too: who comes back to an evening under way is not left without a plan until the next word.
    if (now() - this.#asking.askedAt >= LOOK_AGAIN_MS) this.happened();
    this.#look();
    this.#untold.beat().forEach((about) => this.#tellToWait(about));
    this.#tellChanges();
    this.#callWhoIsDue();
    this.#foresee();
  }

  /** What a chart wants said now: as it is, put off, or not at all. */
  worded(effect: Effect): Effect[] {
    if (effect.type !== 'say' || effect.about === null || effect.urgency === 'danger') return [effect];
    this.#look();
    if (this.idle.includes(effect.about)) {
      this.#heldBack.set(effect.about, effect);
      return [];
    }
    const wait = this.#waits.find(({ about }) => about === effect.about);
    if (wait && effect.urgency !== 'teaching') {
      const callsForIt = effect.slot.endsWith('/step') || effect.slot.endsWith('/setup');
      if (!callsForIt) return []; // a question about what has not begun
      this.#heldBack.set(wait.about, effect);
      if (wait.step === 'heat') this.#note({ type: 'heat.putOff', batch: wait.about, until: wait.until });
      this.#untold.add(wait.about);
      return [];
    }
    return [effect];
  }

  /** What a chart called for is to wait, if the new plan says so, too. */
  #tellToWait(about: string): void {
    const effect = this.#heldBack.get(about);
    const wait = this.#waits.find((one) => one.about === about);
    if (effect && wait) this.#parts.say(waitWords(effect, wait, this.#parts.now()));
  }

  // --- The plan ---

  #take(plan: EveningPlan, last: boolean): void {
    this.#plan = plan;
    this.#look();
    if (last) this.#untold.takeAll().forEach((about) => this.#tellToWait(about));
    const { openCanner, actors, now } = this.#parts;
    if (last && openCanner) opened(plan, actors(), now()).forEach(openCanner);
    if (!last) this.#news.unsettled();
    else if (plan.request.batches.length > 1 && this.#news.take(plan)) this.#tellTheStart(plan);
    this.#parts.changed();
  }

  /** Canners that nobody need see: cold, and not wanted by the plan. */
  get idle(): readonly string[] {
    return idleCanners(this.#plan, this.#parts.actors());
  }

  /** The canner that these jars are filled for. */
  cannerFor(batch: string): string | null {
    return cannerFor(this.#plan, this.#parts.actors(), batch);
  }

  #tellTheStart(plan: EveningPlan): void {
    for (const [i, advice] of worthTelling(plan.advice).entries())
      this.#say(`advice-${i}`, { key: 'evening.words', params: { words: this.#adviceWords(advice, plan) } });
  }

  #tellChanges(): void {
    const news = this.#news.beat();
    if (!news) return;
    const { plan, changes } = news;
    for (const change of changes) {
      if (isCalledFor(change, this.#heldBack, this.#waits)) continue;
      const words = changeWords(change, plan.request, this.#speech(plan));
      const slot = 'task' in change ? change.task : change.kind;
      this.#say(`change-${slot}`, { key: 'evening.words', params: { words } });
    }
  }

  #forget(): void {
    this.#plan = null;
    this.#news.forget();
    this.#waits = [];
    this.#heldBack.clear();
  }

  // --- Attention ---

  #look(): void {
    const { now, actors } = this.#parts;
    const before = this.#waits;
    const waits = this.#plan
      ? waitsIn(this.#plan, actors(), now()).map((wait) => ({
          ...wait,
          from:
            before.find(({ about, step }) => about === wait.about && step === wait.step)?.from ?? wait.from,
        }))
      : waitsOf(this.#putOff, actors(), now());
    // The same object while it says the same: what is drawn from it is not drawn anew.
    if (JSON.stringify(waits) !== JSON.stringify(before)) this.#waits = waits;
  }

  /** What was put off is called for as soon as nothing is in its way. */
  #callWhoIsDue(): void {
    if (!this.#plan) return;
    this.#takeUpWhatWaits();
    for (const [about, effect] of this.#heldBack) {
      if (this.#waits.some((wait) => wait.about === about) || this.idle.includes(about)) continue;
      this.#heldBack.delete(about);
      if (this.#putOff.get(about)?.waits) this.#note({ type: 'heat.called', batch: about });
      const { batches, canners } = this.#parts.actors();
      const still = [...batches, ...canners].find(({ id }) => id === about)?.state;
      if (still && ['comingToBoil', 'readyingJars', 'empty', 'filled'].includes(still))
        this.#parts.say(effect);
    }
  }

  /** Told to wait before a reload: what its chart called for then was heard by nobody who is still here. */
  #takeUpWhatWaits(): void {
    for (const [about, { waits }] of this.#putOff) {
      const batch = this.#parts
        .actors()
        .batches.find(({ id, state }) => id === about && state === 'comingToBoil');
      if (!waits || !batch || this.#heldBack.has(about)) continue;
      const params = { name: batch.name, aboutMinutes: batch.plan.heatMinutes.likely };
      this.#heldBack.set(about, {
        type: 'say',
        about,
        slot: `${about}/step`,
        urgency: 'step',
        message: { key: 'batch.bringToBoil', params },
        why: { key: 'batch.bringToBoil.why' },
      });
    }
  }

  #note(
    told: { type: 'heat.putOff'; batch: string; until: number } | { type: 'heat.called'; batch: string },
  ): void {
    const event: PlanTold = { ...told, at: this.#parts.now() };
    this.#notes.add(event);
    for (const [batch, putOff] of putOffIn([event])) this.#putOff.set(batch, putOff);
  }

  #events(): readonly KitchenEvent[] {
    return this.#notes.after(this.#parts.events());
  }

  #foresee(): void {
    const { actors, now } = this.#parts;
    const plan = this.#plan;
    if (!plan) return;
    const { word } = this.#speech(plan);
    for (const { slot, message } of this.#foresight.of(plan, actors(), this.#waits, now(), word))
      this.#say(slot, message);
  }

  // --- Words ---

  #say(slot: string, message: Message): void {
    this.#parts.say({ type: 'say', about: null, urgency: 'step', slot: `evening/${slot}`, message });
  }

  #adviceWords(advice: Advice, plan: EveningPlan): string {
    return adviceWords(advice, plan.request, this.#speech(plan));
  }

  #speech(plan: EveningPlan): Speech {
    return {
      word: (message) => this.#parts.word(message),
      timeOf: (minute) => this.#timeOf(plan, minute),
      now: plan.madeAt,
      lone: isLone(plan, this.#parts.actors()),
    };
  }

  #minuteOf({ request }: EveningPlan): number {
    return minuteOf(this.#parts.now(), request.beganAt);
  }

  #timeOf({ request }: EveningPlan, minute: number): string {
    return this.#parts.timeOf?.(instantOf(request, minute)) ?? timeOfPlan(request, minute);
  }
}
