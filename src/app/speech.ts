// How the cook wants to be spoken to: how many words, how fast, how high, how loud, in which voice, and when not.

import { z } from 'zod';
import type { Manners, Wish } from '../kitchen/live-ports.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import { fliteVoices, type FliteVoice } from '../sound/flite.ts';
import { BEST_UNDERSTOOD } from '../sound/bundledVoice.ts';

/** [least, most, step]; a voice outside of them is hard to follow (common practice, no source). */
export const RATE = [0.7, 1.6, 0.1] as const;
export const PITCH = [0.8, 1.3, 0.1] as const;
export const LOUDNESS = [0.3, 1, 0.1] as const;

const within = ([least, most]: readonly [number, number, number]) => z.number().min(least).max(most);
const timeOfDay = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

/** Each field falls back by itself: one that a later version does not know costs the cook no other. */
export const speechSchema = z.object({
  verbosity: z.enum(['expert', 'cook', 'beginner']).catch('cook'),
  rate: within(RATE).catch(1),
  pitch: within(PITCH).catch(1),
  loudness: within(LOUDNESS).catch(1),
  sounds: within(LOUDNESS).catch(1),
  /** "best" leaves the choice to us; a bundled voice by its name; "local:" and the name of one of the browser's own. */
  voice: z
    .union([z.literal('best'), z.enum(fliteVoices), z.templateLiteral(['local:', z.string()])])
    .catch('best'),
  quiet: z.boolean().catch(true),
  quietFrom: timeOfDay.catch('22:00'),
  quietTo: timeOfDay.catch('07:00'),
});
export type Speech = z.output<typeof speechSchema>;

export const firstSpeech: Speech = speechSchema.parse({});

export function mannersOf({ verbosity, quiet, quietFrom, quietTo }: Speech): Manners {
  return { words: verbosity, quiet: quiet ? { from: minutes(quietFrom), to: minutes(quietTo) } : null };
}

function minutes(time: string): number {
  const [hours = 0, past = 0] = time.split(':').map(Number);
  return hours * 60 + past;
}

/** The bundled voice to speak with, and the browser's own to try before it: null for its first choice, "none" for none. */
export function speakersOf({ voice }: Speech): { bundled: FliteVoice; own: string | null } {
  if (voice === 'best') return { bundled: BEST_UNDERSTOOD, own: null };
  const local = voice.startsWith('local:') ? voice.slice('local:'.length) : null;
  if (local !== null) return { bundled: BEST_UNDERSTOOD, own: local };
  return { bundled: voice as FliteVoice, own: 'none' };
}

const wishes: Record<Wish, { field: 'rate' | 'loudness'; by: 1 | -1 }> = {
  slower: { field: 'rate', by: -1 },
  faster: { field: 'rate', by: 1 },
  louder: { field: 'loudness', by: 1 },
  softer: { field: 'loudness', by: -1 },
};

/** A wish moves its measure by two steps, or says that it is at its end. */
export function granted(speech: Speech, wish: Wish): { patch: Partial<Speech>; says: Message } {
  const { field, by } = wishes[wish];
  const [least, most, step] = field === 'rate' ? RATE : LOUDNESS;
  const now = speech[field];
  const next = Math.round(Math.min(most, Math.max(least, now + 2 * step * by)) * 10) / 10;
  return next === now
    ? { patch: {}, says: { key: 'kitchen.wish.atTheEnd' } }
    : { patch: { [field]: next }, says: { key: `kitchen.wish.${wish}` } };
}
