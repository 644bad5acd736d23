// How is the tie between kitchen time and wall time kept as text, and believed when it is read back?

import { z } from 'zod';
import type { Anchor } from './clock.ts';

const anchorSchema = z.strictObject({
  kitchenAt: z.number().nonnegative(),
  wallAt: z.number().nonnegative(),
  pace: z.number().positive(),
}) satisfies z.ZodType<Anchor>;

export const writeAnchor = (anchor: Anchor): string => JSON.stringify(anchor);

/** Null where there is none or it makes no sense; the clock then starts from the wall and the log. */
export function readAnchor(text: string | null): Anchor | null {
  try {
    return anchorSchema.parse(JSON.parse(text ?? ''));
  } catch {
    return null;
  }
}
