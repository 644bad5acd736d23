// "What is the plan": the agenda, line by line, when it will be over, and how good it is known to be.

import type { Advice, EveningPlan } from '../../core/evening/types.ts';
import type { Message } from '../../../machines/kitchen/effects.ts';
import { listed, type Speech } from './saying.ts';
import type { EveningView } from './shownEvening.ts';

export function planWords(
  { plan, agenda }: Pick<EveningView, 'plan' | 'agenda'>,
  now: number,
  { word, timeOf }: Speech,
): Message[] {
  const lines = agenda.map(({ at, step, names, canner }): Message => ({
    key: 'evening.plan.line',
    params: {
      soon: String(at <= now + 1),
      time: timeOf(at),
      canner: canner ?? 'none',
      names: listed(names, word),
      step: word({ key: `screen.evening.step.${step}` }).toLowerCase(),
    },
  }));
  return [
    ...lines,
    { key: 'evening.plan.over', params: { time: timeOf(plan.finish.likely) } },
    proofWords(plan),
  ];
}

/** A proof that leaves more than this is none that a cook would care for. Chosen by hand, no source. */
const WORTH_SAYING_MINUTES = 15;

/** Whose plan it is, and how good it is known to be: the same words shown and spoken. */
export function proofWords({ proven, within, by }: Pick<EveningPlan, 'proven' | 'within' | 'by'>): Message {
  if (proven) return { key: 'evening.plan.by.proven' };
  return within !== null && within <= WORTH_SAYING_MINUTES
    ? { key: 'evening.plan.by.within', params: { minutes: within } }
    : { key: `evening.plan.by.${by}` };
}

/** Stands on the sheet for whoever looks; nobody need be called for it. */
const ONLY_SHOWN = new Set<Advice['kind']>(['keepHot', 'shareLoad', 'crowded', 'late']);

/** Before the cook starts, the soonest first. */
export function worthTelling(advice: readonly Advice[]): Advice[] {
  return advice.filter(({ kind }) => !ONLY_SHOWN.has(kind)).toSorted((a, b) => timeOf(a) - timeOf(b));
}

/** What has no time of its own comes first: what does not fit, and when the cook leaves. */
const timeOf = (advice: Advice): number =>
  advice.kind === 'startBatch' || advice.kind === 'cannerOn' ? advice.at : -1;
