// What an event that has acted calls for: words, and whoever else is to hear of it. In works that can each have a task of
// their own, for together they hold the page's thread too long.

import type { Effect } from '../../machines/kitchen/effects.ts';
import type { Announcer } from './announcing.ts';
import type { Acted } from './keeper.ts';
import { movesBetween, wordsFor } from './moves.ts';
import type { LogEntry } from './ports.ts';
import type { Speaker } from './speaker.ts';

interface Callers {
  announcer: Pick<Announcer, 'movedOn' | 'happened'>;
  speaker: Pick<Speaker, 'say'>;
  doing: Parameters<typeof wordsFor>[1];
  /** As the plan of the evening has it said. */
  planned: (effect: Effect) => Effect[];
  passOn: (entry: LogEntry) => void;
}

/** To be done in this order. */
export function calledFor(acted: Acted, { announcer, speaker, ...to }: Callers): (() => void)[] {
  const { before, step, entry } = acted;
  let worded: Effect[] = [];
  return [
    () => (worded = wordsFor(acted, to.doing).flatMap(to.planned)),
    () => {
      for (const about of movesBetween(before.kitchen, step.kitchen)) announcer.movedOn(about);
      if (entry.source !== 'clock') announcer.happened();
      for (const effect of worded) speaker.say(effect);
    },
    () => to.passOn(entry),
  ];
}
