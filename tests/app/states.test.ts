// What the page tells of its clocks to whoever looks at it from outside.

import { afterEach, expect, test, vi } from 'vitest';
import { showStates } from '../../src/app/states.ts';
import type { ClockView } from '../../src/kitchen/view.ts';
import { states } from './fixtures.ts';

afterEach(() => vi.unstubAllGlobals());

function shownUntil(clock: ClockView): string | undefined {
  const view = states['processing'];
  const canner = view?.canners[0];
  if (!view || !canner) throw new Error('No canner to look at.');
  const dataset: DOMStringMap = {};
  vi.stubGlobal('document', { documentElement: { dataset } });
  showStates({ ...view, canners: [{ ...canner, clock }] });
  return dataset['clockUntil'];
}

test('the canner’s own clock, and not how long the plan would have it wait', () => {
  const clock = { kind: 'until', from: 0, until: 600_000, urgent: false } as const;
  expect(shownUntil({ ...clock, label: { key: 'clock.fullBoil' } })).toBe('600000');
  expect(shownUntil({ ...clock, label: { key: 'clock.evening.wait' } })).toBe('');
});
