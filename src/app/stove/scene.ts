// Which drawing stands on the stage: the thing the cook has in hand now.

import type { BatchView, CannerView } from '../../kitchen/view.ts';
import { fruitHue } from '../drawings/hue.ts';
import type { Subject } from './glance.ts';

export type Scene =
  | { kind: 'bench'; batch: BatchView }
  | { kind: 'pot'; batch: BatchView }
  | { kind: 'plate'; batch: BatchView; spooned: boolean }
  | { kind: 'fill'; batch: BatchView }
  | { kind: 'canner'; canner: CannerView; jarHues: number[] }
  | { kind: 'jars'; batch: BatchView; on: 'towel' | 'shelf' };

export function sceneOf(subject: Subject, batches: readonly BatchView[]): Scene {
  if (subject.kind === 'canner') return cannerScene(subject.canner, batches);
  return subject.canner ? cannerScene(subject.canner, batches) : batchScene(subject.batch);
}

function cannerScene(canner: CannerView, batches: readonly BatchView[]): Scene {
  return { kind: 'canner', canner, jarHues: jarHues(canner, batches) };
}

/** One hue for each jar on the rack: the fruit that is in it. */
function jarHues(canner: CannerView, batches: readonly BatchView[]): number[] {
  return canner.load.flatMap((share) => {
    const batch = batches.find((one) => one.id === share.batch);
    return Array.from({ length: share.jars }, () => fruitHue(batch?.plan.request.fruit ?? ''));
  });
}

/** The state's name tells the thing in hand; where it does not, the pot does if there is one. */
function batchScene(batch: BatchView): Scene {
  const state = batch.state;
  if (/plate/i.test(state)) return { kind: 'plate', batch, spooned: /spoon|judg|wait|rest/i.test(state) };
  if (/fill|jarring/i.test(state)) return { kind: 'fill', batch };
  if (/rest|cool|process|served|canner|load|seal|check/i.test(state))
    return { kind: 'jars', batch, on: 'towel' };
  if (/away|shelf|store|stored|done|finish|ended|label/i.test(state))
    return { kind: 'jars', batch, on: 'shelf' };
  if (batch.pot) return { kind: 'pot', batch };
  return { kind: 'bench', batch };
}
