// What time is it in the kitchen? Time that can be trusted while the wall clock cannot.
//
// Two sources: the wall clock, which people and networks set, and the page's monotonic clock, which nobody can set.
// Between two looks at both, kitchen time advances by what the monotonic clock says, except across sleep:
//
//   wall and monotonic advanced alike          -> that much time went by (also a sleep in which monotonic kept running)
//   wall fell behind monotonic                 -> the clock was set back: monotonic is right
//   wall ran ahead of monotonic, with a sign   -> the device slept and monotonic stood still: the wall is right
//   wall ran ahead of monotonic, without one   -> the clock was set forward: monotonic is right
//
// Whether `performance.now()` runs on during sleep depends on the system (it does on Windows; on Linux, Android and
// macOS it mostly does not), so a jump of the wall alone does not tell sleep from a clock that was set. A sign does:
// the page was hidden, frozen, shown or resumed between the two looks. It may arrive just after
// the first beat on waking; then the jump is made good at once. Without a sign the safe side is taken (a jar boiled
// too long is safe, a jar boiled too short is not), and `doubtMs` says that there is something to ask the cook.
//
// Daylight saving does not matter: everything here counts from the epoch.

import type { Clock } from './ports.ts';

export interface ClockSources {
  /** Milliseconds since the epoch, as the system has it. */
  wall(): number;
  /** Milliseconds that never run backwards, from any start. */
  mono(): number;
  /** Calls back about every `everyMs`, also in a hidden tab where the browser lets it. Returns a stop function. */
  ticker(everyMs: number, onTick: () => void): () => void;
  /** Calls back whenever the page may just have been asleep. Returns a stop function. */
  signs(onSign: () => void): () => void;
}

/** Ties kitchen time to wall time: kitchen = kitchenAt + (wall - wallAt) * pace. Outlives the page. */
export interface Anchor {
  kitchenAt: number;
  wallAt: number;
  /** Kitchen seconds per wall second. */
  pace: number;
}

export interface ClockOptions {
  sources: ClockSources;
  /** 1 in a real kitchen. An anchor that was kept says its own. */
  pace?: number;
  anchor?: Anchor | null;
  /** Called whenever the tie between kitchen and wall changes; what it gets must be kept for the next start. */
  keepAnchor?: (anchor: Anchor) => void;
  /** Kitchen time never starts before this: the last instant that the log knows of. */
  notBefore?: number | null;
}

/** Less than this is the ordinary drift of two clocks and the jitter of reading one after the other. */
const JUMP_MS = 500;
/** How long after a jump a sign of sleep may still arrive. A person who set the clock needs longer to come back. */
const LATE_SIGN_MS = 2000;
/** No deadline lives longer (the longest is the rest of 24 h); after that a wall that was set wrong is forgotten. */
const ANCHOR_HOLDS_MS = 36 * 3_600_000;
const BEAT_MS = 1000;
/** Quicker beats where kitchen time is quick, so that an alarm is not a kitchen minute late. */
const QUICK_BEAT_MS = 250;

export class KitchenClock implements Clock {
  readonly #sources: ClockSources;
  readonly #keepAnchor: (anchor: Anchor) => void;
  #pace: number;
  #kitchen: number;
  #wall: number;
  #mono: number;
  #signsSeen = 0;
  #signsUsed = 0;
  /** The last jump of the wall that was taken for a clock set forward. */
  #doubt: { aheadMs: number; mono: number } | null = null;

  constructor({ sources, pace = 1, anchor = null, keepAnchor = () => {}, notBefore = null }: ClockOptions) {
    this.#sources = sources;
    this.#keepAnchor = keepAnchor;
    this.#wall = sources.wall();
    this.#mono = sources.mono();
    this.#pace = anchor?.pace ?? pace;
    this.#kitchen = Math.max(resume(anchor, this.#wall), notBefore ?? -Infinity);
    this.#tie();
    // For as long as the page lives: what tells sleep from a set clock must not be missed.
    sources.signs(() => this.#signsSeen++);
  }

  /** How far the wall jumped ahead without a sign of sleep; null where nothing is in doubt. */
  get doubtMs(): number | null {
    return this.#doubt?.aheadMs ?? null;
  }

  /** The cook says whether the device slept while the wall jumped ahead. */
  settleDoubt(slept: boolean): void {
    this.#look();
    if (slept) this.#kitchen += (this.#doubt?.aheadMs ?? 0) * this.#pace;
    this.#doubt = null;
    this.#tie();
  }

  get pace(): number {
    return this.#pace;
  }

  setPace(pace: number): void {
    this.#look();
    this.#pace = pace;
    this.#tie();
  }

  now(): number {
    this.#look();
    return Math.round(this.#kitchen);
  }

  beat(onBeat: (now: number) => void): () => void {
    const beatNow = () => onBeat(this.now());
    const stopTicks = this.#sources.ticker(this.#pace > 1 ? QUICK_BEAT_MS : BEAT_MS, beatNow);
    const stopSigns = this.#sources.signs(beatNow);
    beatNow();
    return () => {
      stopTicks();
      stopSigns();
    };
  }

  #look(): void {
    const wall = this.#sources.wall();
    const mono = this.#sources.mono();
    const monoMs = Math.max(0, mono - this.#mono);
    const aheadMs = wall - this.#wall - monoMs;
    this.#wall = wall;
    this.#mono = mono;
    const sign = this.#signsSeen > this.#signsUsed;
    this.#signsUsed = this.#signsSeen;
    const jumped = Math.abs(aheadMs) > JUMP_MS;
    const sleptMs = sign ? Math.max(0, jumped ? aheadMs : 0) + this.#lateSleepMs() : 0;
    this.#kitchen += (monoMs + sleptMs) * this.#pace;
    if (jumped) this.#doubt = aheadMs > 0 && !sign ? { aheadMs, mono } : null;
    if (jumped || sleptMs > 0) this.#tie();
  }

  /** The jump just before, which a sign that comes now shows to have been sleep. */
  #lateSleepMs(): number {
    if (!this.#doubt || this.#mono - this.#doubt.mono > LATE_SIGN_MS) return 0;
    const { aheadMs } = this.#doubt;
    this.#doubt = null;
    return aheadMs;
  }

  #tie(): void {
    this.#keepAnchor({ kitchenAt: this.#kitchen, wallAt: this.#wall, pace: this.#pace });
  }
}

/**
 * Kitchen time at the start of a page. Without an anchor it is the wall's. A wall that stands before the anchor was
 * set back while no page lived: then at least the time up to the anchor went by.
 */
function resume(anchor: Anchor | null, wall: number): number {
  if (!anchor) return wall;
  const away = Math.max(0, wall - anchor.wallAt);
  if (anchor.pace === 1 && away > ANCHOR_HOLDS_MS) return Math.max(wall, anchor.kitchenAt);
  return anchor.kitchenAt + away * anchor.pace;
}
