// For whoever looks at the page from outside: who is in which state and until when, and what is being said, on the root element.

import type { KitchenView } from '../kitchen/view.ts';

/** Who made the evening's plan, and how many minutes it may be over the best, where that is proven. */
function provenOf(evening: KitchenView['evening']): string {
  if (!evening) return '';
  const { by, within } = evening.plan;
  return within === null ? by : `${by}, within ${within}`;
}

export function showStates({ now, batches, canners, caption, evening }: KitchenView): void {
  const states = [
    ...batches.map(({ name, state }) => [name, state]),
    ...canners.map(({ state }) => ['canner', state]),
  ];
  const shown = document.documentElement.dataset;
  shown['kitchen'] = states.map((pair) => pair.join(': ')).join('; ');
  // The chart's own clock, which hangs on the log alone: how long a canner should wait hangs on the evening's plan.
  const until = canners.flatMap(({ clock }) =>
    clock?.kind === 'until' && clock.label.key !== 'clock.evening.wait' ? [clock.until] : [],
  )[0];
  const simmer = batches.flatMap(({ clock }) => (clock?.kind === 'about' ? [clock.until.likely] : []))[0];
  shown['clockUntil'] = until === undefined ? '' : String(Math.round(until));
  shown['saying'] = caption?.speaking ? caption.text : '';
  shown['planBy'] = provenOf(evening);
  shown['now'] = String(Math.round(now));
  shown['simmerUntil'] = simmer === undefined ? '' : String(Math.round(simmer));
}
