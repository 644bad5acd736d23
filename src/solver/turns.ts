// Lets the solver be held and ended while it thinks. It asks for the time all the while: there its stack is put aside
// (JSPI) every few milliseconds, and its worker hears what it is told. One that never does hears nothing, and is ended
// by the browser by force, but only two seconds later (Chromium, measured): so long it would have a core that the answer
// to what was just told has need of.

/** So long it keeps its thread to itself at a time, ms. Chosen by hand, no source. */
const TURN_MS = 5;

type Imports = WebAssembly.Imports;
type Clock = (clock: number, precision: bigint, at: number) => number;
/** Of JSPI, which the compiler's library does not know yet. */
type Suspending = new (
  call: (...given: Parameters<Clock>) => number | Promise<number>,
) => WebAssembly.ImportValue;

export class Turns {
  /** Since when it has had the thread; never, while it is not asked anything and could not be put aside. */
  #began = Infinity;
  #isHeld = false;
  /** When it was put aside last, and for how long in all, ms: that is not counted as its time. */
  #asideSince = 0;
  #asideMs = 0;
  #goOn: (() => void) | null = null;
  readonly #channel = new MessageChannel();

  constructor() {
    this.#channel.port1.onmessage = () => this.#next();
  }

  /** Until it is told to go on, it takes no time at all. */
  hold(on: boolean): void {
    this.#isHeld = on;
    if (!on) this.#channel.port2.postMessage(null);
  }

  /** The module's imports, with a clock at which it can be put aside. */
  within(imports: Imports): Imports {
    const system = imports['wasi_snapshot_preview1'];
    const clock = system?.['clock_time_get'] as Clock | undefined;
    const memory = imports['env']?.['memory'] as WebAssembly.Memory | undefined;
    if (!clock || !memory) throw new Error('The solver asks for the time in another way.');
    const told: Clock = (...given) => {
      const failed = clock(...given);
      const [, , at] = given;
      const view = new DataView(memory.buffer);
      const asideNs = BigInt(Math.floor(this.#asideMs)) * 1_000_000n;
      if (asideNs > 0n) view.setBigUint64(at, view.getBigUint64(at, true) - asideNs, true);
      return failed;
    };
    const { Suspending } = WebAssembly as unknown as { Suspending: Suspending };
    const patient = new Suspending((...given) =>
      performance.now() - this.#began < TURN_MS
        ? told(...given)
        : this.#nextTurn().then(() => told(...given)),
    );
    return { ...imports, wasi_snapshot_preview1: { ...system, clock_time_get: patient } };
  }

  async during<T>(work: () => Promise<T>): Promise<T> {
    this.#began = performance.now();
    try {
      return await work();
    } finally {
      this.#began = Infinity;
    }
  }

  #nextTurn(): Promise<void> {
    return new Promise((resolve) => {
      this.#goOn = resolve;
      this.#asideSince = performance.now();
      this.#channel.port2.postMessage(null);
    });
  }

  #next(): void {
    const goOn = this.#goOn;
    if (this.#isHeld || !goOn) return;
    this.#goOn = null;
    this.#began = performance.now();
    this.#asideMs += this.#began - this.#asideSince;
    goOn();
  }
}
