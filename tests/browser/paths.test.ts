// The page is always where the charts say: it is walked along roads generated from them, through every state and
// the edges that one beginning can reach soonest. `npm run paths` walks them all.

import { join } from 'node:path';
import { expect, test } from 'vitest';
import { everyState } from './paths/walk.ts';
import { walkAll } from './paths/walkAll.ts';

const BUILT_PAGE = join(import.meta.dirname, '..', '..', 'dist');
/** No new road is begun after this; on a quiet machine nearly all is walked by then. */
const WITHIN_MS = 60_000;

test('walked along roads generated from the charts, the page is where they say after every step', async () => {
  const { states, edges, steps, wrong } = await walkAll(BUILT_PAGE, { withinMs: WITHIN_MS });
  console.log(
    `${steps} steps, ${states.visited.length} of ${everyState().length} states, ` +
      `${edges.visited.length} of ${edges.visited.length + edges.left.length} edges`,
  );
  expect(wrong).toEqual([]);
  // Every edge is the business of `npm run paths`; here a busy machine may stop half way, but not before this.
  expect(steps).toBeGreaterThan(50);
  expect(edges.visited.length).toBeGreaterThan(60);
  expect(states.visited.length).toBeGreaterThan(20);
});
