// Real second edges for tests of the kitchen: a log in memory, a clock that is turned by hand, a mouth
// that writes down what it says, and an ear that hears what it is told.

import type {
  Clock,
  Ear,
  EarState,
  Hearing,
  LogEntry,
  LogStore,
  Mouth,
  OpenPhrase,
  Reminder,
  Utterance,
} from '../../src/kitchen/ports.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';

export class MemoryLog implements LogStore {
  entries: LogEntry[];
  lastSeenAt: number | null = null;

  constructor(entries: LogEntry[] = []) {
    this.entries = entries;
  }

  async open() {
    return { entries: [...this.entries], lastSeenAt: this.lastSeenAt, trouble: [] };
  }

  async append(entry: LogEntry): ReturnType<LogStore['append']> {
    this.entries.push(entry);
    return { trouble: [] };
  }

  seen(at: number) {
    this.lastSeenAt = at;
  }

  async exportFile() {
    return new Blob([JSON.stringify(this.entries)]);
  }
}

export class HandClock implements Clock {
  #now: number;
  #beat: ((now: number) => void) | null = null;

  constructor(now: number) {
    this.#now = now;
  }

  now() {
    return this.#now;
  }

  beat(onBeat: (now: number) => void) {
    this.#beat = onBeat;
    onBeat(this.#now);
    return () => {
      this.#beat = null;
    };
  }

  turn(ms: number) {
    this.#now += ms;
    this.#beat?.(this.#now);
  }

  /** Time that nobody counted: the page was closed. */
  skip(ms: number) {
    this.#now += ms;
  }
}

export class WritingMouth implements Mouth {
  readonly said: string[] = [];
  readonly sounded: SoundName[] = [];
  #cut: (() => void) | null = null;

  async unlock() {}

  /** Each sentence takes a turn of the event loop, so that what waits behind it must really wait. */
  speak({ text }: Utterance): Promise<'spoken' | 'cut'> {
    this.said.push(text);
    return new Promise((resolve) => {
      this.#cut = () => resolve('cut');
      setImmediate(() => resolve('spoken'));
    });
  }

  cut() {
    this.#cut?.();
  }

  duck() {}

  async sound(name: SoundName) {
    this.sounded.push(name);
    return 'played' as const;
  }
}

export class ToldEar implements Ear {
  phrases: readonly OpenPhrase[] = [];
  #listener: (hearing: Hearing) => void = () => {};

  async start() {}
  stop() {}
  mask() {}
  call() {}

  expect(phrases: readonly OpenPhrase[]) {
    this.phrases = phrases;
  }

  onHearing(listener: (hearing: Hearing) => void) {
    this.#listener = listener;
    return () => {};
  }

  onState(listener: (state: EarState) => void) {
    listener({ kind: 'listening', levelDb: -60, speech: false });
    return () => {};
  }

  /** An ear of flesh has heard this. */
  tell(hearing: Hearing) {
    this.#listener(hearing);
  }

  /** The cook says a sentence; it is heard only if it can be said now. */
  hear(words: string, confidence = 0.99) {
    const phrase = this.phrases.find((open) => open.words === words);
    this.tell(
      phrase
        ? {
            kind: 'heard',
            words,
            understood: { command: phrase.command, slots: phrase.slots },
            confidence,
            ms: 1,
          }
        : { kind: 'nothing', ms: 1 },
    );
    return phrase !== undefined;
  }
}

export const noReminder: Reminder = { keepAwake() {}, notify() {} };
