// An evening of two fruits and two canners, by voice: told which canner, asked which where it is in doubt, and the same
// after the page was closed in the middle of it.

import { beforeEach, describe, expect, test, vi } from 'vitest';
import { usualEvening } from '../../src/kitchen/evening/settings.ts';
import { shortOf } from '../../src/app/evening/short.ts';
import { rowsOf } from '../../src/app/evening/rows.ts';
import type { LiveKitchen } from '../../src/kitchen/live.ts';
import { planOf } from '../machines/evening.ts';
import { kitchenAtWork, settle as settleWords } from './atWork.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from './memory.ts';
import { steadyPlanner, type SteadyPlanner } from './steadyPlanner.ts';

// Each evening is cooked through, and a machine that is busy elsewhere is slow.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const MINUTE_MS = 60_000;
const START = new Date(2026, 8, 12, 16, 2).getTime();

let clock: HandClock;
let ear: ToldEar;
let mouth: WritingMouth;
let log: MemoryLog;
let planner: SteadyPlanner;
let live: LiveKitchen;

async function settle(): Promise<void> {
  await settleWords();
  await planner.settled();
}

async function open(): Promise<void> {
  ear = new ToldEar();
  mouth = new WritingMouth();
  planner = steadyPlanner();
  const settings = { ...usualEvening, canners: 2 };
  live = await kitchenAtWork({ clock, ear, mouth, planner, eveningSettings: () => settings }, log);
}

async function turn(ms: number): Promise<void> {
  for (let left = ms; left > 0; left -= 5_000) {
    clock.turn(Math.min(5_000, left));
    await settle();
  }
}

/** What is said within the next seconds of a sentence of the cook's. */
async function say(words: string): Promise<string> {
  const before = mouth.said.length;
  expect(ear.hear(words), `"${words}" can be said now`).toBe(true);
  await settle();
  await turn(5_000);
  return mouth.said.slice(before).join(' ');
}

/** A full boil said unasked: it is asked before it is believed. */
async function atAFullBoil(which: 'first' | 'second'): Promise<string> {
  expect(await say(`the ${which} canner is at a full boil`)).toMatch(
    new RegExp(`^Is the ${which} canner at a full rolling boil\\?$`),
  );
  return say('yes that is right');
}

async function bothAtAFullBoil(): Promise<void> {
  await atAFullBoil('first');
  await atAFullBoil('second');
}

/** Presses what is open for a batch or a canner. */
async function press(about: string, command: string, answer: object = {}): Promise<void> {
  const { batches, canners } = live.view;
  const actor = [...batches, ...canners].find(({ id, name }) => id === about || name === about);
  const choice = actor?.choices.find((one) => one.command === command);
  if (!choice) throw new Error(`${command} is not open for ${about}`);
  await live.choose(choice, answer, 'touch');
  await settle();
}

const canner = (name: string) => {
  const its = live.view.canners.find((one) => one.name === name);
  if (!its) throw new Error(`no ${name}`);
  return its;
};
const names = () => live.view.canners.map(({ name }) => name);
const batch = (name: string) => live.view.batches.find((one) => one.name === name)!;
const evening = () => {
  const { evening: its } = live.view;
  if (!its) throw new Error('The evening has no plan.');
  return its;
};
const planned = (fruit: string) => {
  const { plan } = evening();
  const { id } = batch(fruit);
  return plan.tasks.find(({ step, batches }) => step === 'load' && batches.includes(id))?.uses[0];
};

async function cook(fruit: string): Promise<void> {
  for (const command of ['setup.ready', 'mash.done', 'pot.rollingBoil', 'pot.thick', 'skim.done'])
    await press(fruit, command);
  for (const command of ['strain.done', 'blend.done', 'plate.spooned'])
    if (batch(fruit).choices.some((choice) => choice.command === command)) await press(fruit, command);
  await turn(130_000);
  await press(fruit, 'plate.held');
  await press(fruit, 'jars.ready');
}

/** Both canners hot, both fruits in, each in the canner of the plan. */
async function bothLoaded(): Promise<void> {
  for (const which of ['first', 'second']) {
    await say(`the ${which} canner is filled`);
    await say(`the ${which} canner is heating`);
    await say(`the ${which} canner is hot`);
  }
  for (const fruit of ['plum', 'pear']) {
    await cook(fruit);
    await press(fruit, 'jars.filled', { n: 5 });
    await say(`the ${fruit} jars are in`);
  }
}

beforeEach(async () => {
  clock = new HandClock(START);
  log = new MemoryLog();
  await open();
  for (const fruit of ['plum', 'pear']) await live.plan(planOf({ fruit }));
  await turn(MINUTE_MS);
});

describe('the second canner', () => {
  test('is there once the plan uses it, and each is called by its number', () => {
    expect(names()).toEqual(['first canner', 'second canner']);
    expect(new Set([planned('plum'), planned('pear')])).toEqual(
      new Set(live.view.canners.map(({ id }) => id)),
    );
  });

  test('one batch needs one canner, and that is just the canner', async () => {
    clock = new HandClock(START);
    log = new MemoryLog();
    await open();
    await live.plan(planOf({ fruit: 'plum' }));
    await turn(MINUTE_MS);
    expect(names()).toEqual(['canner']);
    expect(ear.hear('the second canner is hot')).toBe(false);
    expect(await say('the canner is filled')).not.toMatch(/first|second/i);
  });

  test('every sentence says which one it is about', async () => {
    expect(await say('the second canner is filled')).not.toMatch(/first canner/i);
    expect(await say('the second canner is heating')).toMatch(/second canner on/i);
    expect(await say('the second canner is hot')).toMatch(/second canner is hot/i);
    expect(canner('first canner').state).toBe('empty');
    expect(canner('second canner').state).toBe('hot');
  });

  test('the timeline, the short form and the rail have both', async () => {
    await bothLoaded();
    const { plan } = evening();
    expect(rowsOf(plan).filter(({ kind }) => kind === 'canner')).toHaveLength(2);
    const lanes = shortOf(plan, (clock.now() - plan.request.beganAt) / MINUTE_MS).canners;
    expect(lanes).toHaveLength(2);
    const held = lanes.map((lane) => lane.flatMap(({ names: who }) => who));
    expect(held.map((who) => [...new Set(who)])).toEqual(
      live.view.canners.map(({ load }) =>
        load.map(({ batch: id }) => live.view.batches.find((one) => one.id === id)?.name),
      ),
    );
  });
});

describe('whose jars', () => {
  test('are called into the canner of the plan, and go there', async () => {
    await bothLoaded();
    for (const fruit of ['plum', 'pear']) {
      const its = live.view.canners.find(({ id }) => id === planned(fruit));
      expect(its?.load.map(({ batch: id }) => id)).toEqual([batch(fruit).id]);
    }
  });

  test('the prompt names the canner, and the cook may say another', async () => {
    for (const which of ['first', 'second'])
      for (const what of ['is filled', 'is heating', 'is hot']) await say(`the ${which} canner ${what}`);
    await cook('plum');
    const before = mouth.said.length;
    await press('plum', 'jars.filled', { n: 5 });
    await turn(5_000);
    const meant = live.view.canners.find(({ id }) => id === planned('plum'))!.name;
    const other = meant === 'first canner' ? 'second canner' : 'first canner';
    expect(mouth.said.slice(before).join(' ')).toMatch(new RegExp(`to the ${meant} now`, 'i'));
    expect(await say(`the jars are in the ${other}`)).toMatch(new RegExp(other, 'i'));
    expect(canner(other).load).toHaveLength(1);
    expect(canner(meant).load).toHaveLength(0);
    await turn(10_000);
    expect(planned('plum')).toBe(canner(other).id);
    expect(planned('pear')).toBe(canner(meant).id);
  });
});

describe('whose boil', () => {
  beforeEach(bothLoaded);

  test('a full boil of no canner in particular is asked back, and starts no clock until it is known whose', async () => {
    expect(await say('full rolling boil')).toMatch(/Which one: the first canner or the second canner\?/);
    expect(live.view.canners.map(({ state }) => state)).toEqual(['comingToFullBoil', 'comingToFullBoil']);
    expect(await say('the second canner')).toMatch(/^Is the second canner at a full rolling boil\?$/);
    expect(canner('second canner').state).toBe('comingToFullBoil');
    expect(await say('yes that is right')).toMatch(/second canner: clock started/i);
    expect(canner('second canner').state).toBe('fullBoil');
    expect(canner('first canner').state).toBe('comingToFullBoil');
  });

  test('while one clock runs, "the canner is at a full boil" does not start the other', async () => {
    await atAFullBoil('first');
    const { clock: running } = canner('first canner');
    expect(await say('the canner is at a full rolling boil')).toMatch(/Which one/);
    expect(canner('second canner').state).toBe('comingToFullBoil');
    expect(canner('first canner').clock).toEqual(running);
  });

  test('a boil that dropped is asked after by name, again and again, until it is known whose', async () => {
    await bothAtAFullBoil();
    expect(await say('the boil dropped')).toMatch(/Which one/);
    const before = mouth.said.length;
    await turn(90_000);
    expect(mouth.said.slice(before).filter((said) => said.startsWith('Which one')).length).toBeGreaterThan(2);
    expect(live.view.canners.map(({ voids }) => voids.length)).toEqual([0, 0]);
    expect(await say('the first canner')).toMatch(/first canner: clock void/i);
    expect(canner('first canner').state).toBe('boilLost');
    expect(canner('second canner').state).toBe('fullBoil');
    const after = mouth.said.length;
    await turn(60_000);
    expect(mouth.said.slice(after).filter((said) => said.startsWith('Which one'))).toEqual([]);
  });

  test('which boil dropped is asked again after other talk came between, until it is known', async () => {
    await bothAtAFullBoil();
    expect(await say('the boil dropped')).toMatch(/Which one/);
    expect(await say('switch to pear')).not.toMatch(/Which one/);
    const before = mouth.said.length;
    await turn(10_000);
    expect(mouth.said.slice(before).join(' ')).toMatch(/Which one/);
    expect(await say('the first canner')).toMatch(/first canner: clock void/i);
    const after = mouth.said.length;
    await turn(60_000);
    expect(mouth.said.slice(after).filter((said) => said.startsWith('Which one'))).toEqual([]);
  });

  test('which boil dropped is asked again by the page that was closed before anybody answered', async () => {
    await bothAtAFullBoil();
    expect(await say('the boil dropped')).toMatch(/Which one/);
    live.close();
    clock.skip(5_000);
    await open();
    await turn(10_000);
    expect(mouth.said.join(' ')).toMatch(/Which one: the first canner or the second canner\?/);
    expect(live.view.canners.map(({ voids }) => voids.length)).toEqual([0, 0]);
    expect(await say('the second canner')).toMatch(/second canner: clock void/i);
    expect(canner('first canner').state).toBe('fullBoil');
    live.close();
    clock.skip(5_000);
    await open();
    await turn(60_000);
    expect(mouth.said.filter((said) => said.startsWith('Which one'))).toEqual([]);
  });

  test('what was answered with a no is not asked again by a later page', async () => {
    await bothAtAFullBoil();
    await say('the boil dropped');
    await say('no that is wrong');
    live.close();
    clock.skip(5_000);
    await open();
    await turn(60_000);
    expect(mouth.said.filter((said) => said.startsWith('Which one'))).toEqual([]);
  });

  test('"full rolling boil" in reply to a question about one canner is of that one, and asked no more', async () => {
    await atAFullBoil('first');
    const { clock: running } = canner('first canner');
    expect(await say('the canner is at a full rolling boil')).toMatch(/Which one/);
    expect(await say('the second canner')).toMatch(/^Is the second canner at a full rolling boil\?$/);
    expect(canner('second canner').state).toBe('comingToFullBoil');
    expect(await say('yes that is right')).toMatch(/second canner: clock started/i);
    for (let waited = 0; waited < 9 * MINUTE_MS; waited += 5_000) {
      const before = mouth.said.length;
      await turn(5_000);
      const asked = mouth.said.slice(before).join(' ');
      if (!/first canner.*full (rolling )?boil\?/i.test(asked)) continue;
      await turn(5_000);
      expect(await say('full rolling boil')).not.toMatch(/Which one|Is the/);
      expect(canner('first canner')).toMatchObject({ state: 'fullBoil', clock: running });
      return;
    }
    expect.unreachable('It was never asked whether the first canner still boils.');
  });

  test('told by name after other talk, it is asked no more', async () => {
    await bothAtAFullBoil();
    await say('the boil dropped');
    await say('switch to pear');
    expect(await say('the second canner stopped boiling')).toMatch(/second canner: clock void/i);
    const after = mouth.said.length;
    await turn(60_000);
    expect(mouth.said.slice(after).filter((said) => said.startsWith('Which one'))).toEqual([]);
  });

  test('"it is not boiling" does not void the one clock that runs before it is asked', async () => {
    await atAFullBoil('first');
    expect(await say("it's not boiling")).toMatch(/Did the first canner stop boiling\?/);
    expect(canner('first canner').state).toBe('fullBoil');
    await say('no that is wrong');
    expect(canner('first canner').state).toBe('fullBoil');
    expect(canner('first canner').voids).toEqual([]);
  });

  test('a dropped boil told by name voids that clock alone', async () => {
    await bothAtAFullBoil();
    const { clock: running } = canner('first canner');
    expect(await say('the second canner stopped boiling')).toMatch(/second canner: clock void/i);
    expect(canner('first canner').clock).toEqual(running);
    expect(canner('second canner').state).toBe('boilLost');
  });

  test('a yes answers for the canner that was asked after, and vouches for no other', async () => {
    await atAFullBoil('first');
    await turn(20_000);
    await atAFullBoil('second');
    for (let waited = 0; waited < 9 * MINUTE_MS; waited += 5_000) {
      const before = mouth.said.length;
      await turn(5_000);
      const asked = mouth.said.slice(before).join(' ');
      if (/first canner/i.test(asked) && !/second canner/i.test(asked)) {
        await turn(5_000);
        if (ear.hear('yes that is right')) await settle();
      }
    }
    await turn(6 * MINUTE_MS);
    expect(canner('second canner').state).toBe('unsureOfTheBoil');
    expect(batch('pear').state).toBe('processing');
  });

  test('added water and jars that came out are asked after, too', async () => {
    await bothAtAFullBoil();
    expect(await say('i added water')).toMatch(/Which one/);
    expect(await say('the second canner')).toMatch(/keep boiling/);
    await say('yes that is right');
    expect(live.view.canners.map(({ voids }) => voids.length)).toEqual([0, 0]);
    expect(await say('the jars are out')).toMatch(/Which one/);
    expect(live.view.canners.map(({ load }) => load.length)).toEqual([1, 1]);
  });
});

test('jars told of one fruit by mistake can still be put right as the other one', async () => {
  for (const fruit of ['plum', 'pear']) await cook(fruit);
  await press('plum', 'jars.filled', { n: 5 });
  const { event } = log.entries.findLast((entry) => entry.event.type === 'jars.filled')!;
  expect(event).toMatchObject({ into: planned('plum') });
  await press('pear', 'batch.mixedUp');
  expect([batch('plum').state, batch('pear').state]).toEqual(['filling', 'waitingForCanner']);
});

test('the page is closed while both boil, and comes back with both clocks as they were', async () => {
  await bothLoaded();
  await atAFullBoil('first');
  await turn(60_000);
  await atAFullBoil('second');
  const before = live.view.canners.map(({ id, name, state, load, clock: its }) => ({
    id,
    name,
    state,
    load,
    its,
  }));
  live.close();
  clock.skip(5_000);
  await open();
  await turn(5_000);
  const after = live.view.canners.map(({ id, name, state, load, clock: its }) => ({
    id,
    name,
    state,
    load,
    its,
  }));
  expect(after).toEqual(before);
  for (const fruit of ['plum', 'pear'])
    expect(live.view.canners.find(({ id }) => id === planned(fruit))?.load).toMatchObject([
      { batch: batch(fruit).id },
    ]);
});

test('the whole evening: both fruits served each in its own canner, to the towel', async () => {
  await bothLoaded();
  await atAFullBoil('second');
  await atAFullBoil('first');
  const boiling = () =>
    live.view.canners.filter(({ state }) => state === 'fullBoil' || state === 'unsureOfTheBoil');
  for (let minutes = 0; boiling().length > 0 && minutes < 40; minutes++) {
    await turn(MINUTE_MS / 2);
    for (const { name } of boiling())
      if (/^Did the .* all along\?$/.test(await say(`the ${name} is still at a full boil`)))
        await say('yes that is right');
  }
  await turn(6 * MINUTE_MS);
  for (const which of ['second', 'first']) await say(`the jars are out of the ${which} canner`);
  expect(['plum', 'pear'].map((fruit) => batch(fruit).state)).toEqual(['resting', 'resting']);
  expect(live.view.canners.map(({ load }) => load)).toEqual([[], []]);
});
