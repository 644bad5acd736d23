// What a step looks like and is called where one state of the chart has two: a jam boils down hard, a butter simmers.

import type { BatchState } from '../../machines/batch/choices.ts';
import { boilsHard } from '../../machines/batch/rules.ts';
import type { BatchPlan } from '../core/types.ts';
import type { BatchView, CannerView } from './view.ts';

export type BatchFace = BatchState | 'boilingHard';

export function batchFace(state: BatchState, plan: BatchPlan): BatchFace {
  return state === 'simmering' && boilsHard(plan) ? 'boilingHard' : state;
}

/** As the words and pictures are keyed. */
export function faceOf(actor: BatchView | CannerView): string {
  return 'plan' in actor ? batchFace(actor.state as BatchState, actor.plan) : actor.state;
}
