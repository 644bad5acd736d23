// The kitchen in every state the screens must show, for one batch and for several.

import { firstSpeech } from '../../src/app/speech.ts';
import type { CommandId } from '../../machines/dialogue/commands.ts';
import { consequenceOf } from '../../machines/dialogue/commands.ts';
import type { Catalogue, EarState } from '../../src/kitchen/ports.ts';
import type {
  BatchView,
  CannerView,
  Choice,
  ClockView,
  JarView,
  KitchenView,
  PotView,
} from '../../src/kitchen/view.ts';
import type { Actions, EarFeed, Settings } from '../../src/app/actions.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { crabPlan, pearPlan, plan } from './plans.ts';

/** A September evening, ten past seven. */
export const NOW = Date.UTC(2026, 8, 12, 19, 10, 0);
const MIN = 60_000;

/** The real words, in pounds and inches. */
export const catalogue: Catalogue = createCatalogue('en', 'us');

export const settings: Settings = {
  language: 'en',
  units: 'us',
  theme: 'dark',
  hand: 'right',
  letterKeys: true,
  speech: firstSpeech,
  room: null,
};

export const actions: Actions = {
  start() {},
  plan() {},
  choose() {},
  talk() {},
  call() {},
  sound() {},
  tryVoice() {},
  localVoices: async () => [],
  learner: () => null,
  focus() {},
  set() {},
  exportLog() {},
  importLog() {},
  takeOver() {},
  practice() {},
};

export function ear(state: EarState): EarFeed {
  return { now: () => state, subscribe: () => () => {} };
}
export const listening = ear({ kind: 'listening', levelDb: -34, speech: false });
export const speaking = ear({ kind: 'listening', levelDb: -18, speech: true });
export const called = ear({ kind: 'listening', levelDb: -18, speech: false, called: true });
export const noMicrophone = ear({ kind: 'refused', why: 'notFound' });
export const loading = ear({ kind: 'loading', fraction: 0.62 });

function choice(command: CommandId, more: Partial<Choice> = {}): Choice {
  return {
    command,
    slots: {},
    about: 'damson',
    label: { key: `choice.${command}` },
    sayIt: sayIt(command),
    consequence: consequenceOf(command),
    main: false,
    ...more,
  };
}

const until = (key: string, from: number, to: number, urgent = false): ClockView => ({
  kind: 'until',
  label: { key },
  from: NOW + from * MIN,
  until: NOW + to * MIN,
  urgent,
});
const about = (key: string, low: number, likely: number, high: number): ClockView => ({
  kind: 'about',
  label: { key },
  from: NOW - 10 * MIN,
  until: { low: NOW + low * MIN, likely: NOW + likely * MIN, high: NOW + high * MIN },
});
const since = (key: string, minutes: number): ClockView => ({
  kind: 'since',
  label: { key },
  from: NOW - minutes * MIN,
});

function pot(over: Partial<PotView> = {}): PotView {
  return {
    massKg: { low: 3.72, likely: 3.82, high: 3.95 },
    startMassKg: 4.31,
    targetMassKg: 3.4,
    depthM: { low: 0.05, likely: 0.0525, high: 0.055 },
    startDepthM: 0.061,
    targetDepthM: 0.043,
    heat: 'low',
    surface: 'simmer',
    foam: false,
    scorchRisk: 'none',
    readings: [],
    reduction: null,
    foretell: () => null,
    ...over,
  };
}
/** Fourteen minutes of simmer, weighed twice; the curve goes on from the second weighing. */
const weighedTwice: Partial<PotView> = {
  massKg: { low: 3.82, likely: 3.86, high: 3.9 },
  readings: [
    { at: NOW - 9 * MIN, massKg: 4.12 },
    { at: NOW - 3 * MIN, massKg: 3.9 },
  ],
  reduction: {
    startedAt: NOW - 14 * MIN,
    // Believed to be a little heavier than it was, until each weighing.
    path: [
      [14, 4.31, 0.02],
      [11.5, 4.23, 0.04],
      [9, 4.15, 0.06],
      [9, 4.12, 0.025],
      [6, 4.025, 0.035],
      [3, 3.93, 0.05],
      [3, 3.9, 0.025],
    ].map(([ago = 0, likely = 0, off = 0]) => ({
      at: NOW - ago * MIN,
      massKg: { low: likely - off, likely, high: likely + off },
    })),
    curve: Array.from({ length: 11 }, (_, i) => {
      const likely = 3.9 - 0.06 * i;
      return {
        at: NOW + (4.5 * i - 3) * MIN,
        massKg: { low: likely - 0.03 - 0.01 * i, likely, high: likely + 0.03 + 0.01 * i },
      };
    }),
  },
};
const full = { low: 0.0605, likely: 0.061, high: 0.0615 };
const done = { low: 0.0425, likely: 0.043, high: 0.0436 };

function jars(state: string, count = 10, spare = true): JarView[] {
  const jar = (number: number, whole: boolean, is: string): JarView => ({
    id: `damson/jar-${number}`,
    number,
    whole,
    state: is,
    at: 0,
  });
  const whole = Array.from({ length: count }, (_, i) => jar(i + 1, true, state));
  return spare ? [...whole, jar(count + 1, false, 'inFridge')] : whole;
}

function batch(state: string, over: Partial<BatchView> = {}): BatchView {
  const name = state.split('.').at(-1) ?? state;
  return {
    id: 'damson',
    name: 'Damson plum',
    state,
    stateWord: { key: `state.batch.${name}` },
    doing: { key: `screen.act.batch.${name}` },
    detail: { key: `look.batch.${name}`, params: { targetMassKg: 3.4, headspaceMm: 6.35 } },
    clock: null,
    pot: null,
    plan: plan(),
    choices: [],
    jars: [],
    plateTests: [],
    warning: null,
    ...over,
  };
}

function canner(state: string, over: Partial<CannerView> = {}): CannerView {
  const name = state.split('.').at(-1) ?? state;
  return {
    id: 'canner',
    name: 'canner',
    waiting: [],
    state,
    stateWord: { key: `state.canner.${name}` },
    doing: { key: `screen.act.canner.${name}` },
    clock: null,
    choices: [],
    load: [],
    voids: [],
    boil: 'none',
    warning: null,
    ...over,
  };
}

function kitchen(over: Partial<KitchenView>): KitchenView {
  return {
    now: NOW,
    pace: 1,
    practice: false,
    learned: {},
    focus: over.batches?.[0]?.id ?? over.canners?.[0]?.id ?? null,
    batches: [],
    canners: [],
    question: null,
    caption: null,
    lastHeard: null,
    notices: [],
    ...over,
  };
}

const hold = choice('batch.held');
const stir = choice('pot.stirred');
const reading = choice('reading.taken', { asks: 'reading' });
const stop = choice('batch.stopped');
const say = (text: string, speakingNow = true): KitchenView['caption'] => ({
  text,
  speaking: speakingNow,
  urgency: 'step',
});
const heard = (words: string, verdict: 'done' | 'asked-back' | 'not-now' | 'nothing' = 'done') => ({
  words,
  verdict,
  at: NOW - 2000,
});

const load = [{ batch: 'damson', jars: 7 }];
const fullBoil = choice('canner.fullBoil', { main: true, about: 'canner' });
const boilDropped = choice('canner.boilDropped', { about: 'canner' });
const jarBroke = choice('jar.broke', { about: 'canner' });
const inCanner = batch('processing', { jars: jars('filled') });

/** One batch, state by state, in the order of an evening. */
export const states: Record<string, KitchenView> = {
  settingUp: kitchen({
    batches: [batch('settingUp', { choices: [choice('setup.ready', { main: true }), stop] })],
    caption: say('Weigh the fruit, look over the jars, put a plate in the freezer. Say when all is ready.'),
  }),
  mashing: kitchen({
    batches: [
      batch('mashing', {
        pot: pot({ depthM: full, heat: 'off', surface: 'still' }),
        choices: [choice('mash.done', { main: true }), hold, stop],
      }),
    ],
    caption: say('Crush the fruit with the sugar until it swims in its own juice.', false),
    lastHeard: heard('all is there'),
  }),
  comingToBoil: kitchen({
    batches: [
      batch('comingToBoil', {
        pot: pot({ depthM: full, heat: 'high', surface: 'simmer', foam: true }),
        clock: about('clock.comingToBoil', 6, 9, 14),
        choices: [choice('pot.rollingBoil', { main: true }), hold, stir, stop],
      }),
    ],
    caption: say('Heat up to a full rolling boil, one you cannot stir down.'),
  }),
  askedRollingBoil: kitchen({
    batches: [
      batch('comingToBoil', {
        pot: pot({ depthM: full, heat: 'high', surface: 'rolling', foam: true }),
        clock: about('clock.comingToBoil', -2, 0, 5),
        choices: [choice('pot.rollingBoil', { main: true }), hold, stir, stop],
      }),
    ],
    question: { message: { key: 'batch.askIfRollingBoil' }, urgency: 'step' },
    lastHeard: heard('it boils', 'asked-back'),
  }),
  simmering: kitchen({
    batches: [
      batch('simmering', {
        pot: pot(weighedTwice),
        clock: about('clock.simmering', 27, 34, 42),
        choices: [
          choice('pot.thick', { main: true }),
          stir,
          reading,
          choice('minutes.added', { asks: 'minutes' }),
          hold,
          choice('pot.caught'),
          stop,
        ],
      }),
    ],
    caption: say('Heat down to a simmer. Stir when I ask.', false),
    lastHeard: heard('full rolling boil'),
  }),
  stirDue: kitchen({
    batches: [
      batch('simmering', {
        doing: { key: 'screen.act.batch.stir' },
        pot: pot({ depthM: { low: 0.0445, likely: 0.0455, high: 0.0466 }, scorchRisk: 'high' }),
        clock: until('clock.simmering', -30, 6.4),
        warning: { key: 'screen.warn.batch.itCaught' },
        choices: [choice('pot.stirred', { main: true }), choice('pot.thick'), reading, hold, stop],
      }),
    ],
    caption: { text: 'Stir now, right to the bottom.', speaking: true, urgency: 'clock' },
  }),
  skimming: kitchen({
    batches: [
      batch('skimming', {
        pot: pot({ depthM: done, foam: true }),
        choices: [choice('skim.done', { main: true }), hold, stop],
      }),
    ],
  }),
  straining: kitchen({
    batches: [
      batch('straining', {
        pot: pot({ depthM: done, heat: 'off', surface: 'still' }),
        choices: [choice('strain.done', { main: true }), choice('strain.skipped'), hold, stop],
      }),
    ],
  }),
  blending: kitchen({
    batches: [
      batch('blending', {
        pot: pot({ depthM: done, heat: 'off', surface: 'still' }),
        choices: [choice('blend.done', { main: true }), choice('blend.skipped'), hold, stop],
      }),
    ],
  }),
  plateSpooning: kitchen({
    batches: [
      batch('spooning', {
        pot: pot({ depthM: done, heat: 'off', surface: 'still' }),
        choices: [choice('plate.spooned', { main: true }), hold, stop],
      }),
    ],
    caption: say('Put a spoonful on the cold plate.'),
  }),
  plateCooling: kitchen({
    batches: [
      batch('cooling', {
        pot: pot({ depthM: done, heat: 'off', surface: 'still' }),
        clock: until('clock.cooling', -1, 0.72),
        choices: [hold, stop],
      }),
    ],
  }),
  plateJudging: kitchen({
    batches: [
      batch('judging', {
        pot: pot({ depthM: done, heat: 'off', surface: 'still' }),
        plateTests: [{ at: NOW - 14 * MIN, verdict: 'runny' }],
        choices: [
          choice('plate.held', { main: true }),
          choice('plate.runny'),
          choice('plate.tooThick'),
          hold,
        ],
      }),
    ],
  }),
  held: kitchen({
    batches: [
      batch('held', {
        pot: pot({ heat: 'off', surface: 'still' }),
        clock: since('clock.held', 11.4),
        choices: [choice('batch.resumed', { main: true }), stop],
      }),
    ],
  }),
  caught: kitchen({
    batches: [
      batch('caught', {
        pot: pot({ heat: 'off', surface: 'still', scorchRisk: 'high' }),
        warning: { key: 'screen.warn.batch.itCaught' },
        choices: [choice('pot.changed', { main: true }), stop],
      }),
    ],
    caption: {
      text: 'Heat off. Do not scrape. Pour it into a clean pot. Taste it.',
      speaking: true,
      urgency: 'danger',
    },
  }),
  readyingJars: kitchen({
    batches: [batch('readyingJars', { choices: [hold, stop] })],
  }),
  filling: kitchen({
    batches: [
      batch('filling', {
        choices: [choice('jars.filled', { main: true, asks: 'count' }), hold, stop],
      }),
    ],
    caption: say('Fill the hot jars to a quarter inch below the rim.'),
  }),
  waitingForCanner: kitchen({
    batches: [
      batch('waitingForCanner', {
        jars: jars('filled'),
        clock: until('clock.waitingForCanner', -2, 9.1, true),
        choices: [stop],
      }),
    ],
    canners: [
      canner('heating', {
        boil: 'heating',
        clock: about('clock.heating', 3, 5, 9),
        choices: [choice('canner.hot', { about: 'canner', main: true })],
      }),
    ],
  }),
  cannerLoaded: kitchen({
    batches: [inCanner],
    canners: [
      canner('comingToFullBoil', {
        load,
        boil: 'heating',
        clock: since('clock.comingToFullBoil', 5.5),
        choices: [fullBoil, jarBroke],
      }),
    ],
    caption: say('Bring the canner to a full rolling boil. Tell me when it is.'),
  }),
  processing: kitchen({
    batches: [inCanner],
    canners: [
      canner('fullBoil', {
        load,
        boil: 'full',
        clock: until('clock.fullBoil', -3.7, 6.3),
        choices: [boilDropped, choice('canner.waterLow', { about: 'canner' }), jarBroke],
      }),
    ],
    caption: say('Clock started. Ten minutes at a full boil.', false),
    lastHeard: heard('full rolling boil'),
  }),
  boilLost: kitchen({
    batches: [inCanner],
    canners: [
      canner('boilLost', {
        load,
        boil: 'lost',
        voids: [{ from: NOW - 5 * MIN, to: NOW - 0.4 * MIN }],
        warning: { key: 'screen.warn.canner.clockVoid' },
        choices: [fullBoil, jarBroke],
      }),
    ],
    caption: {
      text: 'The clock is void. Full boil again, then the full ten minutes.',
      speaking: true,
      urgency: 'danger',
    },
    lastHeard: heard('the boil dropped'),
  }),
  processingAgain: kitchen({
    batches: [inCanner],
    canners: [
      canner('fullBoil', {
        load,
        boil: 'full',
        clock: until('clock.fullBoil', -1.2, 8.8),
        voids: [
          { from: NOW - 14 * MIN, to: NOW - 9 * MIN },
          { from: NOW - 6.5 * MIN, to: NOW - 3 * MIN },
        ],
        choices: [boilDropped, jarBroke],
      }),
    ],
  }),
  askedStillBoiling: kitchen({
    batches: [inCanner],
    canners: [
      canner('fullBoil', {
        load,
        boil: 'full',
        clock: until('clock.fullBoil', -6, 4),
        choices: [boilDropped, jarBroke],
      }),
    ],
    question: {
      message: { key: 'canner.askIfItHolds', params: { minutes: 4, silences: 0 } },
      urgency: 'clock',
    },
  }),
  standing: kitchen({
    batches: [inCanner],
    canners: [
      canner('standing', {
        load,
        boil: 'none',
        clock: until('clock.standing', -2, 3),
        choices: [choice('jars.out', { about: 'canner', main: true })],
      }),
    ],
  }),
  resting: kitchen({
    batches: [
      batch('resting', {
        jars: jars('processed'),
        clock: until('clock.resting', -100, 640),
        choices: [choice('ping.heard'), choice('rest.over')],
      }),
    ],
    caption: say('Leave the jars alone until tomorrow morning.', false),
  }),
  checkingSeals: kitchen({
    batches: [
      batch('checkingSeals', {
        jars: jars('rested'),
        choices: [choice('seals.allHeld', { main: true }), choice('seals.failed', { asks: 'count' })],
      }),
    ],
  }),
  puttingAway: kitchen({
    batches: [
      batch('puttingAway', {
        jars: jars('sealed', 9).map((jar, i) => (i === 3 ? { ...jar, state: 'unsealed' } : jar)),
        choices: [choice('jars.putAway', { main: true })],
      }),
    ],
  }),
  putAway: kitchen({ batches: [batch('putAway', { jars: jars('onShelf') })] }),
  unprocessed: kitchen({
    batches: [
      batch('unprocessed', {
        jars: jars('filled'),
        warning: { key: 'screen.warn.batch.wentCold' },
        choices: [choice('jars.putAway', { main: true }), choice('heat.on')],
      }),
    ],
  }),
};

/** Three fruits and a canner on one evening. */
export const several: KitchenView = kitchen({
  batches: [
    states['simmering']?.batches[0] as BatchView,
    batch('comingToBoil', {
      id: 'pear',
      name: 'Pear',
      plan: pearPlan,
      pot: pot({
        startMassKg: 4.1,
        targetMassKg: 2.1,
        massKg: { low: 4, likely: 4.05, high: 4.1 },
        heat: 'high',
      }),
      clock: about('clock.comingToBoil', 4, 6, 9),
    }),
    batch('mashing', {
      id: 'crab-apple',
      name: 'Crab apple',
      plan: crabPlan,
      pot: pot({ surface: 'still', heat: 'off' }),
      warning: null,
    }),
  ],
  canners: [canner('heating', { boil: 'heating', clock: about('clock.heating', 12, 15, 21) })],
  caption: say('Heat down to a simmer. Stir when I ask.', false),
  focus: 'damson',
});

export const many: KitchenView = {
  ...several,
  batches: [
    ...several.batches,
    ...(['Apricot', 'Fig', 'Quince'] as const).map((name) =>
      batch('resting', {
        id: name.toLowerCase(),
        name,
        plan: plan({}, { fruit: name.toLowerCase() }),
        jars: jars('processed', 4),
        clock: until('clock.resting', -60, 700),
      }),
    ),
  ],
};

export const troubled: KitchenView = {
  ...(states['simmering'] as KitchenView),
  notices: [
    {
      id: 'full',
      text: 'The disk of this device is full. What happens now may be forgotten: save the log as a file.',
      grave: true,
    },
    {
      id: 'voice',
      text: 'This device has no voice of its own; the page uses the one it brings along.',
      grave: false,
    },
  ],
};

export const empty: KitchenView = kitchen({});
export const practising: KitchenView = { ...(states['simmering'] as KitchenView), practice: true, pace: 10 };
