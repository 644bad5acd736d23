// What a step looks like and is called where one state of the chart has several: a jam boils down hard, a butter
// simmers; fruit is mashed, peel softened, and juice takes its sugar.

import type { BatchState } from '../../machines/batch/choices.ts';
import { boilsHard, intoThePot } from '../../machines/batch/rules.ts';
import type { BatchPlan } from '../core/types.ts';
import type { BatchView, CannerView } from './view.ts';

export type BatchFace = BatchState | 'boilingHard' | 'softening' | 'melting';

export function batchFace(state: BatchState, plan: BatchPlan): BatchFace {
  if (state === 'simmering') return boilsHard(plan) ? 'boilingHard' : state;
  if (state === 'mashing') return goesIn[intoThePot(plan)];
  return state;
}

const goesIn = { fruit: 'mashing', peel: 'softening', juice: 'melting' } as const;

/** As the words and pictures are keyed. */
export function faceOf(actor: BatchView | CannerView): string {
  return 'plan' in actor ? batchFace(actor.state as BatchState, actor.plan) : actor.state;
}
