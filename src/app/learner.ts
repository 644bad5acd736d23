// A cook's voice, learnt from a minute of reading: whether this ear can, and what is kept of it between visits.

import { z } from 'zod';
import type { Ear } from '../kitchen/ports.ts';
import type { LearningEar, VoiceProfile } from '../voice/learning.ts';

const KEY = 'stovehand.voice';

const profileSchema = z.object({
  version: z.literal(1),
  network: z.string(),
  seconds: z.number().nonnegative(),
  values: z.array(z.number()),
}) satisfies z.ZodType<VoiceProfile>;

export function isLearner(ear: Ear): ear is Ear & LearningEar {
  return 'learn' in ear && 'useProfile' in ear;
}

/** Null where none was kept, or what was kept is no profile. */
export function profileFrom(kept: string | null): VoiceProfile | null {
  try {
    return profileSchema.parse(JSON.parse(kept ?? ''));
  } catch {
    return null;
  }
}

export function keptProfile(): VoiceProfile | null {
  try {
    return profileFrom(localStorage.getItem(KEY));
  } catch {
    return null; // a browser that keeps nothing refuses to be read, too
  }
}

/** False where the browser keeps nothing: the ear then knows the voice until the page is closed. */
export function keepProfile(profile: VoiceProfile): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(profile));
    return true;
  } catch {
    return false;
  }
}

export function forgetProfile(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // A browser that keeps nothing has nothing to forget.
  }
}
