// A planner that has answered once answers the same evening again in thought: for real, and in short stretches.

import { expect, test, vi } from 'vitest';
import { replanEvening } from '../../src/core/evening/index.ts';
import type { Answered, Ask } from '../../src/kitchen/evening/planner.ts';
import { answerTo } from '../../src/kitchen/evening/planner.ts';
import { rehearse } from '../../src/kitchen/evening/rehearse.ts';
import { hat } from '../../src/stove/index.ts';
import { drawEvening } from '../evening/kitchens.ts';

vi.mock(import('../../src/core/evening/index.ts'), async (original) => {
  const evening = await original();
  return { ...evening, replanEvening: vi.fn<typeof evening.replanEvening>(evening.replanEvening) };
});

test('the evening just planned is planned anew as if its next task had begun, and what is told of it stays as it was', () => {
  let at = 0;
  const now = () => at++;
  const request = drawEvening(hat(31), { batches: 6, canners: 2 });
  const ask: Ask = { id: 1, request, plan: null, progress: { tasks: {} }, now: 0, seed: 1 };
  const plan: Answered = answerTo(ask, 'first', now);
  const before = JSON.stringify([ask, plan]);
  const stretches: number[] = [];
  const rehearsing = rehearse(ask, plan, now);
  for (let began = at; !rehearsing.next().done; began = at) stretches.push(at - began);
  const replanned = vi.mocked(replanEvening);
  expect(replanned.mock.calls.map(([, progress]) => Object.keys(progress.tasks).length)).toEqual(
    Array.from({ length: stretches.length }, () => 1),
  );
  expect(stretches.length).toBeGreaterThan(3);
  expect(Math.max(...stretches)).toBeLessThan(20);
  expect(JSON.stringify([ask, plan])).toBe(before);
});
