// Plans off the main thread. A newer question ends the work on an older one.

import { answersTo, type Answer, type Ask } from './planner.ts';

let newest = 0;

self.addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  newest = data.id;
  const answers = answersTo(data, () => performance.now());
  const next = (last: boolean): void => {
    if (newest !== data.id) return;
    const { value } = answers.next();
    if (!value) return;
    self.postMessage({ id: data.id, plan: value, last } satisfies Answer);
    if (!last) setTimeout(() => next(true), 0); // lets a newer question in first
  };
  next(false);
});
