// What a planner does before it is asked: real planning, in stretches short enough for a question to come between.

import { expect, test, vi } from 'vitest';
import { warmUp } from '../../src/kitchen/evening/warmUp.ts';

vi.setConfig({ testTimeout: 60_000 }); // it counts looks at a clock of its own, however long they take

test('a planner that is not asked yet plans in stretches of about 40 ms, and then leaves off', () => {
  let at = 0;
  const warming = warmUp(() => at++);
  const stretches: number[] = [];
  for (let began = at; !warming.next().done; began = at) stretches.push(at - began);
  // Looks at the clock, each of which takes a millisecond here: none while the evening is made up, then a stretch each.
  const [madeUp, planned, , ...searched] = stretches;
  expect(madeUp).toBe(0);
  expect(planned).toBeGreaterThan(0);
  expect(searched).toHaveLength(20);
  expect(Math.min(...searched)).toBeGreaterThan(20);
  expect(Math.max(...searched)).toBeLessThan(80);
});
