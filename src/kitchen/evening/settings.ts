// What the cook has for the evening: hands, rings, canners, and when it must be over.

import { z } from 'zod';

const timeOfDay = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/);

export const eveningSettingsSchema = z.object({
  cooks: z.int().min(1).max(3),
  /** Rings for pots, the canner's own not counted. */
  rings: z.int().min(1).max(6),
  canners: z.int().min(1).max(2),
  /** "21:00"; null: no limit. */
  overBy: timeOfDay.nullable(),
  /** "I leave at five for half an hour"; `over`, kitchen ms: said for this evening alone. */
  away: z
    .object({ from: timeOfDay, minutes: z.int().min(1).max(240), over: z.number().optional() })
    .nullable(),
});
export type EveningSettings = z.infer<typeof eveningSettingsSchema>;

export const usualEvening: EveningSettings = { cooks: 1, rings: 3, canners: 1, overBy: null, away: null };
