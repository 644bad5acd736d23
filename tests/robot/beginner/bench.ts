// The beginner's bench: the simulated stove, and what hands have done to what stands there.

import { layOut, told, act, look, runTo, type Place, type Scene } from '../../../src/rehearsal/index.ts';
import type { Catalogue, LogEntry } from '../../../src/kitchen/ports.ts';
import type { BatchPlan } from '../../../src/core/types.ts';
import { coversJars, volumeL } from '../../../src/stove/index.ts';
import { jarVolumeL } from '../../../src/tables/jars.ts';
import { findFruit } from '../../../src/tables/fruits/index.ts';
import type { Doing } from './instructions.ts';

/** What was done, for the safety points. */
export interface Done {
  acid: boolean;
  mashed: boolean;
  blended: boolean;
  vented: boolean;
  /** Minutes that the empty jars boiled. */
  jarsBoiled: number;
  jarsHot: boolean;
  headspace: boolean;
  wiped: boolean;
  fingertip: boolean;
  covered: boolean;
  liftedUpright: boolean;
  /** Coolest jar that went into the canner, C. */
  coolestC: number;
}

const SPOONFUL_L = 0.03;

export class Bench {
  scene: Scene;
  readonly done: Done = {
    acid: false,
    mashed: false,
    blended: false,
    vented: true,
    jarsBoiled: 0,
    jarsHot: false,
    headspace: true,
    wiped: true,
    fingertip: true,
    covered: true,
    liftedUpright: true,
    coolestC: Infinity,
  };
  readonly #catalogue: Catalogue;

  constructor(plan: BatchPlan, seed: number, at: number, mishapsPerHour: number, catalogue: Catalogue) {
    this.#catalogue = catalogue;
    const fibrePct = findFruit(plan.request.fruit)?.fibrePct.value ?? 1.5;
    const prepared = plan.startMassKg - plan.sugarMassKg;
    this.scene = layOut(
      {
        id: 'batch',
        product: plan.request.product,
        elevationM: plan.request.elevationM,
        startKg: plan.startMassKg,
        startSolubleSolidsPct: plan.startSolubleSolidsPct,
        fibreKg: plan.request.product === 'jelly' ? 0.001 * prepared : (prepared * fibrePct) / 100,
        targetSolubleSolidsPct: plan.targetSolubleSolidsPct,
        potDiameterM: plan.request.pot?.diameterM ?? null,
        burnerW: plan.request.burner?.powerW ?? null,
        jarL: jarVolumeL.value[plan.request.jar],
        jars: plan.jars.makeReady + 1,
        processMinutes: plan.process?.minutes ?? null,
      },
      seed,
      at,
      mishapsPerHour,
    );
  }

  follow({ event }: LogEntry): void {
    if (event.type === 'batch.planned' || event.type === 'canner.set' || event.type === 'tick') return;
    this.scene = told(this.scene, event);
  }

  runTo(at: number): void {
    this.scene = runTo(this.scene, at);
  }

  /** What a person would say of what is seen there. */
  sees(place: Place): string[] {
    return look(this.scene, place).map((message) => this.#catalogue.text(message));
  }

  /** Is there a whole jar more in the pot? */
  hasMore(): boolean {
    return volumeL(this.scene.stove.pot.contents) - SPOONFUL_L >= this.scene.batch.jarL;
  }

  filled(): number {
    return this.scene.stove.jars.filter(({ place, filledL }) => place === 'bench' && filledL > 0).length;
  }

  hands(doing: Doing): void {
    const { done } = this;
    switch (doing.do) {
      case 'acid':
        done.acid = true;
        return;
      case 'mash':
        done.mashed = true;
        return;
      case 'freezePlate':
        return this.#act({ do: 'plate.freeze' });
      case 'stir':
      case 'stirAllTheTime':
        return this.#act({ do: 'pot.stir' });
      case 'heat':
        return this.#act({ do: `${doing.under}.heat`, heat: doing.heat });
      case 'takeOff':
        return this.#act({ do: 'pot.takeOff' });
      case 'lid':
        return doing.of === 'pot' ? this.#act({ do: 'pot.lid', on: doing.on }) : undefined;
      case 'blend':
        done.blended = true;
        done.vented = doing.vented;
        return;
      case 'heatJars':
        done.jarsBoiled = Math.max(done.jarsBoiled, doing.minutes);
        done.jarsHot = true;
        return this.#act({ do: 'jars.heat' });
      case 'fill':
        return this.#fill(doing);
      case 'coverJars':
        return this.#cover();
      case 'loadCanner':
        done.coolestC = Math.min(done.coolestC, ...this.#standing().map(({ contentC }) => contentC));
        return;
      case 'liftJars':
        return;
      default:
        return; // what needs no stove: weighing, milling, putting away
    }
  }

  #standing() {
    return this.scene.stove.jars.filter(({ place, filledL }) => place === 'bench' && filledL > 0);
  }

  #act(what: Parameters<typeof act>[1]): void {
    this.scene = act(this.scene, what);
  }

  /** Fills as many whole jars as there is; without a word of headspace to the brim, of the rim not wiped. */
  #fill({ headspace, wiped, fingertip, most }: Extract<Doing, { do: 'fill' }>): void {
    const { done } = this;
    Object.assign(done, {
      headspace: done.headspace && headspace,
      wiped: done.wiped && wiped,
      fingertip: done.fingertip && fingertip,
    });
    while (this.filled() < most && this.hasMore()) {
      const before = this.filled();
      const lid = fingertip ? 'fingertip' : 'overtight';
      this.#act({ do: 'jar.fill', care: { wipeRim: wiped, lid } });
      if (this.filled() === before) return;
    }
  }

  /** Water from the kettle until it stands over the lids. */
  #cover(): void {
    const { stove } = this.scene;
    const waterKg = Math.max(stove.canner.waterKg, stove.canner.coveringKg + 0.5);
    this.scene = { ...this.scene, stove: { ...stove, canner: { ...stove.canner, waterKg } } };
    this.done.covered = coversJars(this.scene.stove.canner);
  }
}
