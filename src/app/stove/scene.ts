// Which drawing stands on the stage: the thing the cook has in hand now.

import type { BatchView, CannerView } from '../../kitchen/view.ts';
import type { Subject } from './glance.ts';

export type Scene =
  | { kind: 'bench'; batch: BatchView }
  | { kind: 'pot'; batch: BatchView }
  | { kind: 'plate'; batch: BatchView; spooned: boolean }
  | { kind: 'fill'; batch: BatchView }
  | { kind: 'canner'; canner: CannerView }
  | { kind: 'jars'; batch: BatchView; on: 'towel' | 'shelf' };

export function sceneOf(subject: Subject): Scene {
  if (subject.kind === 'canner') return { kind: 'canner', canner: subject.canner };
  if (subject.canner) return { kind: 'canner', canner: subject.canner };
  return batchScene(subject.batch);
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
