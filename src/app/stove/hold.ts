// The guard against drips: what matters is held for a moment and let go, or pressed twice by key. Drops do neither.
//
// Spray touches for milliseconds and in many places at once; a drop that lies on the glass stays for long. A finger
// presses alone, stays, and is lifted.

/** Long enough that a splash or a sleeve does not do it, short enough not to annoy. Chosen by hand, no source. */
export const HOLD_MS = 700;
/** A finger is lifted by then; what still lies there is water. Chosen by hand, no source. */
export const LIFT_BY_MS = 3000;
/** Two touches closer together than this, wherever they fall, are spray. Chosen by hand, no source. */
export const SPRAY_MS = 250;
/** A second press within this time confirms the first. */
export const TWICE_MS = 3000;
/** A finger that slides further than this is wiping, not pressing. */
const DRIFT_PX = 24;

export type Phase = 'idle' | 'holding' | 'held' | 'once';

export interface Touch {
  clientX: number;
  clientY: number;
  isPrimary: boolean;
  button: number;
}

export class HoldGuard {
  #phase: Phase = 'idle';
  #timer: ReturnType<typeof setTimeout> | undefined;
  #from: { x: number; y: number } | null = null;
  #done: () => void = () => {};
  readonly #onPhase: (phase: Phase) => void;

  constructor(onPhase: (phase: Phase) => void) {
    this.#onPhase = onPhase;
  }

  whenHeld(done: () => void): void {
    this.#done = done;
  }

  down(touch: Touch): void {
    // Two touches at once are water, not a cook.
    if (this.#from || !touch.isPrimary || touch.button !== 0) return this.cancel();
    this.#enter('holding');
    this.#from = { x: touch.clientX, y: touch.clientY };
    this.#timer = setTimeout(() => this.#waitForLift(), HOLD_MS);
  }

  move(touch: Touch): void {
    const from = this.#from;
    if (from && Math.hypot(touch.clientX - from.x, touch.clientY - from.y) > DRIFT_PX) this.cancel();
  }

  /** Lifted: that is the act, if it was held long enough. Returns whether it was. */
  up(): boolean {
    const held = this.#from !== null && this.#phase === 'held';
    if (held) this.#act();
    else if (this.#from) this.cancel();
    return held;
  }

  /** Something else touched the glass: one of the two is water. */
  disturbed(): void {
    if (this.#from) this.cancel();
  }

  /** A short press by key, or by a screen reader, arms it; the second one acts. */
  press(): void {
    if (this.#phase === 'once') return this.#act();
    this.#enter('once');
    this.#timer = setTimeout(() => this.#enter('idle'), TWICE_MS);
  }

  /** The key stays down: now it counts as held. */
  keepPressing(): void {
    if (this.#phase !== 'once') return;
    this.#enter('holding');
    this.#timer = setTimeout(() => this.#act(), HOLD_MS);
  }

  letGo(): void {
    if (this.#phase === 'holding') this.cancel();
  }

  cancel(): void {
    this.#enter('idle');
  }

  #waitForLift(): void {
    this.#phase = 'held';
    this.#onPhase('held');
    this.#timer = setTimeout(() => this.cancel(), LIFT_BY_MS - HOLD_MS);
  }

  #act(): void {
    this.#enter('idle');
    this.#done();
  }

  #enter(phase: Phase): void {
    clearTimeout(this.#timer);
    this.#from = null;
    this.#phase = phase;
    this.#onPhase(phase);
  }
}
