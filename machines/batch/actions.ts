// What a batch notes, and when it speaks: the verbs of the chart. The words themselves are in words.ts.

import { assign, emit } from 'xstate';
import type { Effect } from '../kitchen/effects.ts';
import type { BatchEvent } from '../kitchen/events.ts';
import { worded } from '../kitchen/step.ts';
import {
  breakOneInTheCanner,
  fillJars,
  jarsMovedBy,
  moveJar,
  moveJars,
  moveTheseJars,
  type Jar,
} from '../jar/rules.ts';
import type { BatchContext, PlateVerdict } from './context.ts';
import * as rules from './rules.ts';
import * as simmer from './simmer.ts';
import * as words from './words.ts';
import * as jarWords from './words.jars.ts';

type Args = { context: BatchContext; event: BatchEvent };

/** Notes facts: a plain function from what happened to the fields it changes. */
function note(change: (context: BatchContext, event: BatchEvent) => Partial<BatchContext>) {
  return assign<BatchContext, BatchEvent, undefined, BatchEvent, never>(({ context, event }: Args) =>
    change(context, event),
  );
}

type Words = (context: BatchContext, at: number, event: BatchEvent) => Effect;

/** Says something: a plain function from the batch to an effect. */
function tell(words: Words) {
  return emit<BatchContext, BatchEvent, undefined, BatchEvent, Effect>(({ context, event, self }) =>
    worded(self, () => words(context, event.at, event)),
  );
}

/** Passes something on to another machine, whoever listens. */
function pass(letter: Words) {
  return emit<BatchContext, BatchEvent, undefined, BatchEvent, Effect>(({ context, event }: Args) =>
    letter(context, event.at, event),
  );
}

function verdict(verdict: PlateVerdict) {
  return note((batch, { at }) => ({
    plateTests: [...batch.plateTests, { at, verdict }],
    plateSpoonedAt: null,
  }));
}

const notes = {
  noteTheTime: note((_, { at }) => ({ since: at, nextPromptAt: null })),
  notePlateInFreezer: note((_, { at }) => ({ plateInFreezerAt: at })),
  notePlateCold: note((_, { at }) => ({ plateInFreezerAt: at - rules.PLATE_COLD_MS })),
  noteHeatOn: note((batch, { at }) => ({
    heatOnAt: at,
    heatsSince: batch.heatOnAt === null ? at : null,
    nextPromptAt: at + batch.plan.heatMinutes.likely * 60_000,
  })),
  remindInAWhile: note((_, { at }) => ({ nextPromptAt: at + rules.STEP_REMINDER_MS })),
  promptAgainSoon: note((_, { at }) => ({ nextPromptAt: at + rules.ASK_AGAIN_MS })),
  promptAgainLater: note((_, { at }) => ({ nextPromptAt: at + rules.HOLD_ASK_MS })),

  beginOrGoOnSimmering: note(simmer.beginOrGoOn),
  stopTheSimmer: note(simmer.stop),
  noteStirred: note(simmer.stirred),
  noteStirReminded: note(simmer.stirReminded),
  noteNearlyThickSaid: note(() => ({ saidNearlyThick: true })),
  takeTheReading: note(simmer.takeReading),
  addMinutes: note(simmer.addMinutes),
  noteItWentIn: note(() => ({ wentIn: true })),
  noteSkimmed: note(() => ({ skimmed: true })),
  noteStrained: note(() => ({ strained: true })),
  noteBlended: note(() => ({ blended: true })),
  notePlateSpooned: note((_, { at }) => ({ plateSpoonedAt: at })),
  notePlateHeld: verdict('held'),
  notePlateTooThick: verdict('too-thick'),
  notePlateRunny: note((batch, event) => ({
    plateTests: [...batch.plateTests, { at: event.at, verdict: 'runny' as const }],
    plateSpoonedAt: null,
    ...simmer.afterRunnyPlate(batch, event),
  })),

  noteHeldAt: note((batch, event) => ({
    ...simmer.stop(batch, event),
    heldAt: event.at,
    heatsSince: null,
    nextPromptAt: event.at + rules.HOLD_ASK_MS,
    scorches: batch.scorches + (event.type === 'pot.caught' ? 1 : 0),
  })),
  noteBack: note(() => ({ heldAt: null })),
  countTheCooling: note((batch, event) => ({ ...simmer.afterCooling(batch, event), heldAt: null })),

  noteJarsReady: note((_, { at }) => ({ jarsReadyAt: at })),
  forgetTheJarsWereHot: note(() => ({ jarsReadyAt: null })),
  countTheJars: note((batch, event) => {
    if (event.type !== 'jars.filled') return {};
    const mayShelve = rules.goesToTheShelf(batch) && batch.jarsReadyAt !== null;
    const filled = fillJars(batch.id, { ...event, mayShelve }, batch.jars.length);
    // A short jar is never processed: where the others go to the canner, it goes to the fridge by itself.
    const short = (jar: Jar) =>
      mayShelve && !jar.whole ? moveJar(jar, { type: 'put.inFridge' }, event.at) : jar;
    const canner = event.into ?? batch.canner;
    return { filledAt: event.at, jars: [...batch.jars, ...filled.map(short)], canner };
  }),
  noteInCanner: note((_batch, event) =>
    event.type === 'canner.took' ? { inCanner: event.jars, canner: event.canner } : {},
  ),
  loseAJar: note((batch, { at }) => ({
    jars: breakOneInTheCanner(batch.jars, at),
    inCanner: Math.max(0, batch.inCanner - 1),
  })),
  /** Short jars, and what did not fit the rack, have cooled by now: they are not processed. */
  chillWhatDidNotGoIn: note((batch, { at }) => ({
    jars: moveJars(batch.jars, ['filled'], { type: 'put.inFridge' }, at),
    inCanner: 0,
  })),
  noteServed: note((batch, { at }) => ({
    jars: moveJars(batch.jars, ['filled'], { type: 'process.served' }, at, batch.inCanner),
    inCanner: 0,
    firstOutAt: batch.firstOutAt ?? at,
  })),
  emptyTheJars: note((batch, { at }) => ({
    jars: moveJars(batch.jars, ['filled', 'unsealed'], { type: 'jar.emptied' }, at),
    inCanner: 0,
    filledAt: null,
    firstOutAt: rules.anEarlierLoadRests(batch) ? batch.firstOutAt : null,
  })),

  noteRestBegan: note((_batch, { at }) => ({ restFrom: at, saidRested: false })),
  noteRestedSaid: note(() => ({ saidRested: true })),
  countThePing: note((batch) => ({ pings: batch.pings + 1 })),
  endTheRest: note((batch, { at }) => ({
    jars: moveJars(batch.jars, ['processed'], { type: 'rest.over' }, at),
  })),
  noteAllSealed: note((batch, { at }) => ({
    jars: moveJars(batch.jars, ['rested'], { type: 'seal.held' }, at),
  })),
  noteFailedSeals: note((batch, event) => {
    if (event.type !== 'seals.failed') return {};
    const failed = moveJars(batch.jars, ['rested'], { type: 'seal.failed' }, event.at, event.count);
    return { jars: moveJars(failed, ['rested'], { type: 'seal.held' }, event.at) };
  }),
  putTheSealedAway: note((batch, { at }) => ({
    jars: moveJars(batch.jars, ['sealed'], { type: 'put.onShelf' }, at),
  })),
  putTheJarsAway: note((batch, { at }) => {
    const cold = batch.plan.request.keep === 'freezer' ? 'put.inFreezer' : 'put.inFridge';
    const shelved = moveJars(batch.jars, ['sealed'], { type: 'put.onShelf' }, at);
    return { jars: moveJars(shelved, ['filled', 'unsealed'], { type: cold }, at) };
  }),
  takeOffTheShelf: note((batch, event) => {
    if (event.type !== 'seals.failed') return {};
    return { jars: moveJars(batch.jars, ['onShelf'], { type: 'seal.foundOpen' }, event.at, event.count) };
  }),
  moveTheJars: note((batch, event) => ({
    jars: moveTheseJars(batch.jars, jarsMovedBy(batch.jars, event) ?? [], event),
  })),
  discardFromShelf: note((batch, event) => {
    if (event.type !== 'seals.failed') return {};
    return { jars: moveJars(batch.jars, ['onShelf'], { type: 'seal.failed' }, event.at, event.count) };
  }),
};

const sayings = {
  saySetUp: tell(words.setUp),
  sayMash: tell(words.mash),
  sayBringToBoil: tell(words.bringToBoil),
  sayIntoTheBoil: tell(words.intoTheBoil),
  askIfRollingBoil: tell(words.askIfRollingBoil),
  saySimmer: tell(words.simmer),
  sayStirred: tell(words.stirred),
  remindToStir: tell(words.remindToStir),
  sayWhatTheReadingMeans: tell(words.reading),
  sayMinutesAdded: tell(words.minutesAdded),
  sayNearlyThick: tell(words.nearlyThick),
  askIfThick: tell(words.askIfThick),
  sayItSimmeredUnwatched: tell(words.simmeredUnwatched),
  saySkim: tell(words.skim),
  sayStrain: tell(words.strain),
  sayMustStrain: tell(words.mustStrain),
  sayBlend: tell(words.blend),
  saySpoonOnPlate: tell(words.spoonOnPlate),
  sayWaitForPlate: tell(words.waitForPlate),
  askIfItHolds: tell(words.askIfItHolds),
  sayLoosen: tell(words.loosen),
  sayHeld: tell(words.held),
  askIfStillHeld: tell(words.askIfStillHeld),
  sayItCaught: tell(words.itCaught),
  sayJarsNoted: tell(jarWords.jarsNoted),
  sayReadyJars: tell(jarWords.readyJars),
  sayFill: tell(jarWords.fill),
  sayToTheCanner: tell(jarWords.toTheCanner),
  sayWentCold: tell(jarWords.wentCold),
  sayNotServed: tell(jarWords.notServed),
  sayReheat: tell(jarWords.reheat),
  sayRest: tell(jarWords.rest),
  sayPing: tell(jarWords.ping),
  sayRestLonger: tell(jarWords.restLonger),
  sayTooEarlyToJudge: tell(jarWords.tooEarlyToJudge),
  sayMayCheckSeals: tell(jarWords.mayCheckSeals),
  sayCheckSeals: tell(jarWords.checkSeals),
  sayTooManyFailed: tell(jarWords.tooManyFailed),
  sayPutAway: tell(jarWords.putAway),
  sayDone: tell(jarWords.done),
  sayDiscard: tell(jarWords.discard),
  sayJarsMoved: tell(jarWords.jarsMoved),
  sayStopped: tell(jarWords.stopped),
  sayWhereWeAre: tell(jarWords.whereWeAre),
  offerTheLoad: pass(jarWords.offerTheLoad),
  withdrawTheLoad: pass(jarWords.withdrawTheLoad),
};

export const batchActions = { ...notes, ...sayings };
