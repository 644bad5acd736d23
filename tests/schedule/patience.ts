// How long a scheduler may think in a test: by how often it looks at the clock, so that a busy machine changes nothing.

import type { Effort } from '../../src/core/schedule/index.ts';

export function patience(looks: number, seed = 1): Effort {
  let looked = 0;
  return { budgetMs: looks, now: () => looked++, seed };
}
