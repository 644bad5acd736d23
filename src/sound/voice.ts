// What a voice is to the mouth: something that says one text aloud, can be cut, and tells how it went.

export interface Manner {
  /** 1 is the voice's own speed. */
  rate: number;
  /** 1 is the voice's own height, 2 an octave higher. */
  pitch: number;
  /** 0 to 1. */
  loudness: number;
}

export interface Saying {
  done: Promise<'spoken' | 'cut' | 'failed'>;
  /** Stops at once; `done` resolves 'cut'. */
  cut(): void;
  /** So loud from now on, 0 to 1, without a click. */
  loudness(to: number): void;
}

export interface Voice {
  name: string;
  /** Makes it ready, telling how far it is (0 to 1); false when it cannot speak. */
  load(onProgress?: (fraction: number) => void): Promise<boolean>;
  /** Says words that are already sayable. `onSound` is called when the first sound is heard. */
  say(text: string, manner: Manner, onSound: () => void): Saying;
  /** Makes ready what will soon be said. */
  prepare(text: string, manner: Manner): void;
}
