// What each sound means, in English: for the table of sounds and for the cook who asks.

import type { SoundName } from '../../machines/kitchen/effects.ts';

export const soundWords = {
  'sound.heard': 'One short high drop: you were understood.',
  'sound.pardon': 'One long sinking tone: you were not understood. Say it again.',
  'sound.step': 'Three quick tones going up: a step is done, and the next begins.',
  'sound.question': 'Two tones, the second lifting: a question waits for your answer.',
  'sound.nudge': 'Two equal knocks: look at the pot. Stir, check, or answer.',
  'sound.clock-start': 'Four tones going up, the last one held: the process clock runs.',
  'sound.clock-void':
    'Three slow tones going down: the process clock is void. Full boil again, full time again.',
  'sound.time-up': 'Three high tones, close together: a clock has run out.',
  'sound.danger': 'Ten fast loud pulses: act now.',
} as const satisfies Record<`sound.${SoundName}`, string>;
