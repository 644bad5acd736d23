// The evening's plan as a screen may show it, put into words once for many looks.

import type { EveningPlan } from '../../core/evening/types.ts';
import { agendaOf, type AgendaLine } from './agenda.ts';
import type { Wait } from './waits.ts';

export interface EveningView {
  plan: EveningPlan;
  waits: readonly Wait[];
  /** Sentences of advice, with their reasons. */
  advice: readonly string[];
  /** The plan in short, as it is also spoken: what comes next, for whom and when. */
  agenda: readonly AgendaLine[];
}

interface Looked {
  plan: EveningPlan;
  waits: readonly Wait[];
  /** Minute of the evening. */
  now: number;
  /** Another object once the cook's language or measures are others; left out: put into words at every look. */
  tongue: object | undefined;
}

export class ShownEvening {
  #seen: { view: EveningView; minute: number; tongue: object | undefined } | null = null;

  /** The same object as long as it would say the same. */
  of({ plan, waits, now, tongue }: Looked, adviceWords: () => readonly string[]): EveningView {
    const minute = Math.floor(now);
    const seen = this.#seen;
    const worded = tongue && seen?.tongue === tongue && seen.view.plan === plan ? seen : null;
    if (worded?.minute === minute && worded.view.waits === waits) return worded.view;
    const agenda = plan.request.batches.length > 1 ? agendaOf(plan, now) : [];
    const view = { plan, waits, agenda, advice: worded ? worded.view.advice : adviceWords() };
    this.#seen = { view, minute, tongue };
    return view;
  }
}
