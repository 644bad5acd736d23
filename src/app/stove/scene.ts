// Which drawing stands on the stage: the thing the cook has in hand now.

import type { BatchView, CannerView } from '../../kitchen/view.ts';
import type { SightId } from '../../kitchen/sights.ts';
import type { Showing } from '../../kitchen/teaching.ts';
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

/** What is in hand in each state of a batch; in all others it is the pot, if there is one yet. */
const IN_HAND: Record<string, 'unspooned' | 'spooned' | 'bench' | 'fill' | 'towel' | 'shelf'> = {
  settingUp: 'bench',
  spooning: 'unspooned',
  cooling: 'spooned',
  judging: 'spooned',
  readyingJars: 'bench',
  filling: 'fill',
  waitingForCanner: 'towel',
  processing: 'towel',
  unprocessed: 'towel',
  resting: 'towel',
  checkingSeals: 'towel',
  puttingAway: 'shelf',
  putAway: 'shelf',
};

function batchScene(batch: BatchView): Scene {
  const inHand = IN_HAND[batch.state.split('.').at(-1) ?? ''];
  switch (inHand) {
    case 'unspooned':
    case 'spooned':
      return { kind: 'plate', batch, spooned: inHand === 'spooned' };
    case 'towel':
    case 'shelf':
      return { kind: 'jars', batch, on: inHand };
    case 'fill':
    case 'bench':
      return { kind: inHand, batch };
    default:
      return batch.pot ? { kind: 'pot', batch } : { kind: 'bench', batch };
  }
}

/** A pot and a canner show how things are: there a picture gives way to them once it has been looked at. */
export function sightOnStage(showing: Showing | null, { kind }: Scene): SightId | null {
  if (showing === null) return null;
  const live = kind === 'pot' || kind === 'canner';
  return showing.asked || showing.fresh || !live ? showing.sight : null;
}
