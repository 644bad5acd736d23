// A rehearsal in the page: lays out the stove for the batch that was planned last, and follows what is told.

import type { BatchPlan } from '../../core/types.ts';
import type { LogEntry } from '../../kitchen/ports.ts';
import {
  act,
  followed,
  layOut,
  review,
  runTo,
  type Act,
  type Finding,
  type RehearsedBatch,
  type Scene,
} from '../../rehearsal/index.ts';
import { findFruit } from '../../tables/fruits/index.ts';
import { jarVolumeL } from '../../tables/jars.ts';

export interface Rehearsal {
  follow(entry: LogEntry): void;
  /** The stove as it stands now; null before a batch is planned. */
  at(now: number): Scene | null;
  act(done: Act, now: number): void;
  review(now: number): Finding[];
}

/** A draught now and then: about one evening in three meets one. */
const MISHAPS_PER_HOUR = 0.4;
const JUICE_FIBRE = 0.001;

export function openRehearsal(seed: () => number): Rehearsal {
  let scene: Scene | null = null;
  return {
    follow({ event }) {
      if (event.type === 'batch.planned') {
        scene = layOut(rehearsed(event.batch, event.plan), seed(), event.at, MISHAPS_PER_HOUR);
      } else if (scene && concerns(event, scene.batch.id)) scene = followed(scene, event);
    },
    at(now) {
      if (scene) scene = runTo(scene, now);
      return scene;
    },
    act(done, now) {
      if (scene) scene = act(runTo(scene, now), done);
    },
    review: (now) => (scene ? review(runTo(scene, now)) : []),
  };
}

/** Told of this batch, or of the canner; another batch has no stove of its own here. */
function concerns(event: LogEntry['event'], batch: string): boolean {
  return event.type !== 'tick' && (!('batch' in event) || event.batch === undefined || event.batch === batch);
}

/** Amounts only: what the plan believes of times and heat stays out of the rehearsal. */
function rehearsed(id: string, plan: BatchPlan): RehearsedBatch {
  const { request } = plan;
  const fruitKg = plan.startMassKg - plan.sugarMassKg;
  const fibre =
    request.product === 'jelly' ? JUICE_FIBRE : (findFruit(request.fruit)?.fibrePct.value ?? 1.5) / 100;
  return {
    id,
    product: request.product,
    elevationM: request.elevationM,
    startKg: plan.startMassKg,
    startSolubleSolidsPct: plan.startSolubleSolidsPct,
    fibreKg: fruitKg * fibre,
    targetSolubleSolidsPct: plan.targetSolubleSolidsPct,
    potDiameterM: request.pot?.diameterM ?? null,
    burnerW: request.burner?.powerW ?? null,
    jarL: jarVolumeL.value[request.jar],
    jars: plan.jars.makeReady + plan.jars.spare.count,
    processMinutes: plan.process?.minutes ?? null,
  };
}
