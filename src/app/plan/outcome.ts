// What comes of a draft: nothing yet, a plan, or sentences by the fields that must change.

import { batchRequestSchema, planBatch, type BatchRequest } from '../../core/index.ts';
import { withLearned, type StoveMemory } from '../../kitchen/learning.ts';
import type { FullPlan } from '../../core/types.ts';
import { missing, toRequest, type Draft } from './draft.ts';

/** The fields that a sentence can stand beside. */
export type Field =
  | 'fruit'
  | 'fruitMassKg'
  | 'juiceMassKg'
  | 'elevationM'
  | 'sugarMassKg'
  | 'acid'
  | 'targetSolubleSolidsPct'
  | 'pot'
  | 'burner'
  | 'other';

export type Outcome =
  | { kind: 'waiting'; missing: ReturnType<typeof missing> }
  | { kind: 'refused'; troubles: Partial<Record<Field, string>> }
  | { kind: 'plan'; request: BatchRequest; plan: FullPlan };

const FIELDS: readonly Field[] = [
  'fruit',
  'fruitMassKg',
  'juiceMassKg',
  'elevationM',
  'sugarMassKg',
  'acid',
  'targetSolubleSolidsPct',
  'pot',
  'burner',
];

/** `learned` is what this kitchen knows of its stove: it sharpens the plan, and is not part of what is shared. */
export function outcomeOf(draft: Draft, learned: StoveMemory = {}): Outcome {
  const asked = toRequest(draft);
  if (asked === null) return { kind: 'waiting', missing: missing(draft) };
  const parsed = batchRequestSchema.safeParse(asked);
  if (!parsed.success) return { kind: 'refused', troubles: byField(parsed.error.issues) };
  return { kind: 'plan', request: parsed.data, plan: planBatch(withLearned(parsed.data, learned)) };
}

function byField(
  issues: readonly { path: PropertyKey[]; message: string }[],
): Partial<Record<Field, string>> {
  const troubles: Partial<Record<Field, string>> = {};
  for (const issue of issues) {
    const field = FIELDS.find((name) => name === issue.path[0]) ?? 'other';
    troubles[field] ??= issue.message;
  }
  return troubles;
}
