// Which canner's boil dropped, while nobody has said? The log knows, so that a reload does not let it be forgotten.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';

/** The canners in doubt after all this; none when it is known, or was never asked. */
export function doubtedIn(events: readonly KitchenEvent[]): readonly string[] {
  return events.findLast((event) => event.type === 'boil.doubted')?.canners ?? [];
}
