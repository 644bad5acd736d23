// What each sound of the kitchen means, how urgent it is, and whether it waits for an answer.

import type { SoundName, Urgency } from '../machines/kitchen/effects.ts';

export interface Meaning {
  /** Key of the catalogue's sentence that tells the cook what this sound means. */
  meaning: `sound.${SoundName}`;
  urgency: Urgency;
  /** Its condition stands until an event answers it; a passing sound only tells that something happened. */
  latched: boolean;
  /** Sounded again, rising, while nobody answers. */
  repeats: boolean;
  /** The priority whose burst it borrows from IEC 60601-1-8; null for a sound that is no alarm. */
  alarm: 'high' | 'medium' | 'low' | null;
}

export const meanings: Record<SoundName, Meaning> = {
  heard: { meaning: 'sound.heard', urgency: 'teaching', latched: false, repeats: false, alarm: null },
  pardon: { meaning: 'sound.pardon', urgency: 'teaching', latched: false, repeats: false, alarm: null },
  step: { meaning: 'sound.step', urgency: 'step', latched: false, repeats: false, alarm: null },
  question: { meaning: 'sound.question', urgency: 'step', latched: true, repeats: false, alarm: null },
  nudge: { meaning: 'sound.nudge', urgency: 'step', latched: true, repeats: true, alarm: 'low' },
  'clock-start': {
    meaning: 'sound.clock-start',
    urgency: 'clock',
    latched: false,
    repeats: false,
    alarm: null,
  },
  'clock-void': {
    meaning: 'sound.clock-void',
    urgency: 'clock',
    latched: true,
    repeats: false,
    alarm: 'medium',
  },
  'time-up': { meaning: 'sound.time-up', urgency: 'clock', latched: true, repeats: false, alarm: 'medium' },
  danger: { meaning: 'sound.danger', urgency: 'danger', latched: true, repeats: true, alarm: 'high' },
};

/** Every sound, least urgent first. */
export const soundNames = Object.keys(meanings) as SoundName[];
