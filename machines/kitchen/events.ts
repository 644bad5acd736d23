// What can happen in the kitchen: the one vocabulary that the log stores and the machines accept.
// Every event is something that happened or was asked in the real world; `at` is the instant it
// happened, in kitchen milliseconds (the kitchen clock stamps it, machines never read a clock).

import type { Reading } from '../../src/core/index.ts';
import type { BatchPlan, JarSize } from '../../src/core/types.ts';

export type BatchId = string;
export type CannerId = string;
export type JarId = string;

/** What the cook, a reading or the clock tells one batch. */
export type BatchHappening =
  | { type: 'setup.ready' } // fruit weighed, jars inspected, plate in the freezer, tools out
  | { type: 'mash.done' } // crushed until it swims in its own juice
  | { type: 'heat.on' }
  | { type: 'heat.off' }
  | { type: 'pot.rollingBoil' } // a boil that cannot be stirred down
  | { type: 'pot.stirred' }
  | { type: 'pot.thick' } // the cook, or a reading, says it is thick enough
  | { type: 'pot.tooThick' }
  | { type: 'pot.caught' } // it scorched on the bottom
  | { type: 'pot.changed' } // moved to a clean pot without scraping
  | ({ type: 'reading.taken' } & Reading)
  | { type: 'minutes.added'; minutes: number }
  | { type: 'skim.done' }
  | { type: 'strain.done' }
  | { type: 'strain.skipped' }
  | { type: 'blend.done' }
  | { type: 'blend.skipped' }
  | { type: 'plate.cold' } // the plate has been in the freezer long enough
  | { type: 'plate.spooned' } // a spoonful is on the cold plate
  | { type: 'plate.held' }
  | { type: 'plate.runny' }
  | { type: 'plate.tooThick' }
  | { type: 'pot.loosened' }
  | { type: 'jars.ready' } // hot, and boiled their minutes where they must be sterile
  /** Counted: really filled whole jars, and short or spare ones; and the canner that the evening has for them. */
  | { type: 'jars.filled'; full: number; spare: number; into?: CannerId }
  | { type: 'pot.more' } // jars out of the canner, and there is more in the pot, kept hot: another load
  | { type: 'ping.heard' } // a lid popped down: welcome, proves nothing
  | { type: 'rest.over' } // the cook ends the rest after at least 12 hours
  | { type: 'seals.allHeld' }
  | { type: 'seals.failed'; count: number }
  | { type: 'jars.putAway' }
  | { type: 'jars.emptied' } // back into the pot, to be heated and filled again into clean hot jars with new lids
  | { type: 'jars.toFridge' } // this load will not go on the shelf
  | JarHappening
  | { type: 'batch.held' } // heat off, somebody at the door
  | { type: 'batch.resumed' }
  | { type: 'batch.stopped' };

/** What becomes of jars that are kept: of this one, or else of so many, whichever comes first by its chart. */
export type JarHappening =
  | { type: 'jars.eaten'; count: number; jar?: JarId }
  | { type: 'jars.givenAway'; count: number; jar?: JarId }
  | { type: 'jars.discarded'; count: number; jar?: JarId }
  | { type: 'jars.intoFridge'; count: number; jar?: JarId } // from the shelf, or out of the freezer to thaw
  | { type: 'jars.intoFreezer'; count: number; jar?: JarId };

/** What happens to one canner. */
export type CannerHappening =
  | { type: 'canner.filled' } // half full of water, rack in
  | { type: 'canner.heatOn' }
  | { type: 'canner.hot' } // simmering, ready for hot jars
  | { type: 'jars.in'; batch?: BatchId } // jars on the rack, covered by 1 to 2 inches; whose, where they were meant for another canner
  | { type: 'canner.fullBoil' }
  | { type: 'canner.boilDropped' }
  | { type: 'canner.boilHolds' } // asked and answered: still a full boil
  | { type: 'canner.waterLow' }
  | { type: 'canner.waterAdded'; keptBoiling: boolean }
  | { type: 'jar.broke'; batch?: BatchId } // whose jar, where two batches share the load
  | { type: 'jars.out' }
  | { type: 'canner.off' };

/** Messages between machines; routed by the kitchen, never typed by a cook. */
export type BatchMessage =
  | { type: 'canner.took'; canner: CannerId; jars: number; minutes: number } // so many of this batch's jars went in
  | { type: 'canner.jarBroke'; canner: CannerId }
  | { type: 'canner.gaveBack'; canner: CannerId; served: boolean; minutes: number }; // jars out; was the full time served unbroken?

export type CannerMessage =
  | {
      type: 'load.offered'; // a batch has filled its jars and wants a place
      batch: BatchId;
      jars: number;
      jarSize: JarSize;
      /** Process minutes of the published row for this batch. */
      minutes: number;
      filledAt: number;
    }
  | { type: 'load.withdrawn'; batch: BatchId }; // the jars went cold, or go elsewhere

/** What the evening's plan told a mashed pot: to wait with the heat until about then, and then to go on. */
export type PlanTold =
  | { type: 'heat.putOff'; at: number; batch: BatchId; until: number }
  | { type: 'heat.called'; at: number; batch: BatchId };

/** A boil dropped in one of these canners, and nobody has said in which; none: nothing is in doubt any more. */
export type BoilDoubted = { type: 'boil.doubted'; at: number; canners: readonly CannerId[] };

/** Time passing, and coming back after time went by unseen. */
export type ClockHappening =
  { type: 'tick'; at: number } | { type: 'kitchen.returned'; at: number; awaySince: number };

export type BatchEvent = (BatchHappening & { at: number }) | (BatchMessage & { at: number }) | ClockHappening;
export type CannerEvent =
  (CannerHappening & { at: number }) | (CannerMessage & { at: number }) | ClockHappening;

/** What enters the kitchen from outside and stands in the log. */
export type KitchenEvent =
  | { type: 'batch.planned'; at: number; batch: BatchId; name: string; plan: BatchPlan }
  | { type: 'canner.set'; at: number; canner: CannerId; jarsPerLoad: number; preheatMinutes: number }
  | (BatchHappening & { at: number; batch: BatchId })
  | (CannerHappening & { at: number; canner: CannerId })
  | ClockHappening
  | PlanTold
  | BoilDoubted
  /** An earlier entry was wrong: it never happened, or happened at another time, or to another batch. */
  | {
      type: 'log.corrected';
      at: number;
      seq: number;
      how: { kind: 'never' } | { kind: 'when'; at: number } | { kind: 'batch'; batch: BatchId };
    };

export type KitchenEventType = KitchenEvent['type'];
