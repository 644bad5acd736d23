// The kitchen at work, by voice alone: from an accepted plan to jars on the shelf, through the real log,
// the real dialogue and the real catalogue, with only the air between cook and page left out.

import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { LiveKitchen } from '../../src/kitchen/live.ts';
import { planOf } from '../machines/evening.ts';
import { kitchenAtWork, settle } from './atWork.ts';
import { logbook } from './logbook.ts';
import { HandClock, MemoryLog, ToldEar, WritingMouth } from './memory.ts';

// A whole evening of beats, sentence by sentence, on a machine that may be busy.
vi.setConfig({ testTimeout: 120_000 });

const MIN = 60_000;
const HOUR = 60 * MIN;

let clock: HandClock;
let log: MemoryLog;
let ear: ToldEar;
let mouth: WritingMouth;
let live: LiveKitchen;

async function openKitchen() {
  ear = new ToldEar();
  mouth = new WritingMouth();
  live = await kitchenAtWork({ clock, ear, mouth }, log);
  await settle();
}

beforeEach(async () => {
  clock = new HandClock(Date.UTC(2026, 8, 12, 17));
  log = new MemoryLog();
  await openKitchen();
});

async function say(words: string) {
  await turn(2_000);
  expect(ear.hear(words), `"${words}" can be said now`).toBe(true);
  await settle();
}

/** What a jar's safety hangs on, said unasked: it is asked before it is done. */
async function vouch(words: string) {
  await say(words);
  expect(mouth.said.at(-1)).toMatch(/^(Is|Does) .*\?$/);
  await say('yes that is right');
}

async function turn(ms: number, every = 20_000) {
  for (let left = ms; left > 0; left -= every) {
    clock.turn(Math.min(every, left));
    await settle();
  }
}

/** Two batches, filled together and put into the canner together. */
function twoBatchesLoaded() {
  const book = logbook(['plum', 'pear']);
  book.canner('canner.filled').canner('canner.heatOn').canner('canner.hot').toPlate('plum').toPlate('pear');
  for (const name of ['plum', 'pear'])
    book.tell('plate.held', name).tell('jars.ready', name).tell('jars.filled', name, { full: 3, spare: 0 });
  book.canner('jars.in');
  return { kitchen: [...book.entries], now: book.now };
}

/** The first load is out of the canner and rests. */
function firstLoadOut() {
  const { entries, now } = logbook().toLoaded(4).serve().wait(5).canner('jars.out');
  return { entries: [...entries], now };
}

const batch = () => live.view.batches[0];
const canner = () => live.view.canners[0];

async function toTheCanner() {
  await say('everything is ready');
  await say('the mash is done');
  await say('the canner is filled');
  await say('the canner is heating');
  await turn(10 * MIN);
  await say('the canner is hot');
  await say('the pot is at a rolling boil');
  await turn(20 * MIN);
  await say('it is thick enough');
  await say('the foam is off');
  if (batch()?.state === 'straining') await say('straining is done');
  if (batch()?.state === 'blending') await say('blending is done');
  await say('a spoonful is on the plate');
  await turn(2 * MIN);
}

test('what was just told can be said again for a minute: it is no mishearing, and changes nothing', async () => {
  await live.plan(planOf({ fruit: 'plum' }));
  await turn(MIN);
  await say('everything is ready');
  await say('the mash is done');
  const told = log.entries.length;
  await say('the mash is done');
  expect(mouth.said.at(-1)).toMatch(/^I have that/);
  expect(log.entries.length).toBe(told);
  expect(batch()?.state).toBe('comingToBoil');
  await turn(2 * MIN);
  expect(ear.phrases.some(({ words }) => words === 'the mash is done')).toBe(false);
});

describe('a whole batch by voice', () => {
  test('with a runny plate and a dropped boil, to the shelf', async () => {
    await live.plan(planOf());
    await settle();
    await toTheCanner();
    await say('it is still runny');
    expect(batch()?.state).toBe('simmering');
    await turn(6 * MIN);
    await say('it is thick enough');
    await say('a spoonful is on the plate');
    await turn(2 * MIN);
    await say('plate test passed');
    await say('the jars are ready');
    await say('six jars filled');
    await say('the jars are in');
    expect(batch()?.state).toBe('processing');
    expect(canner()?.clock?.kind).toBe('since');

    await vouch('it is at a full rolling boil');
    const first = canner()?.clock;
    expect(first?.kind).toBe('until');
    await turn(3 * MIN);
    await say('the boil dropped');
    expect(canner()?.voids).toHaveLength(1);
    await vouch('it is at a full rolling boil');
    const again = canner()?.clock;
    expect(again).toMatchObject({ kind: 'until' });
    if (again?.kind !== 'until' || first?.kind !== 'until') throw new Error('no clock');
    expect(again.until - again.from).toBe(first.until - first.from);

    for (let i = 0; i < 60 && canner()?.state === 'fullBoil'; i++) {
      await turn(20_000);
      if (live.view.question?.message.key === 'canner.askIfItHolds') await say('the full boil is holding');
    }
    expect(canner()?.state).toBe('standing');
    await turn(5 * MIN);
    await say('the jars are out');
    if (canner()?.state !== 'hot') await say('yes that is right');
    expect(batch()?.state).toBe('resting');
    await turn(12 * HOUR, 10 * MIN);
    await vouch('all jars sealed');
    await say('the jars are put away');
    expect(batch()?.state).toBe('putAway');
    expect(batch()?.jars.filter((jar) => jar.state === 'onShelf')).toHaveLength(6);
  });

  test('every sentence that the mouth says is a whole one', async () => {
    await live.plan(planOf());
    await settle();
    await toTheCanner();
    expect(mouth.said.length).toBeGreaterThan(8);
    for (const sentence of mouth.said) expect(sentence).toMatch(/^[A-Z].*[.?]$/s);
  });
});

describe('what a voice is asked before it is done', () => {
  async function untilTheBoilIsAsked() {
    await live.plan(planOf());
    await settle();
    await toTheCanner();
    for (const words of ['plate test passed', 'the jars are ready', 'six jars filled', 'the jars are in'])
      await say(words);
    await say('it is at a full rolling boil');
    expect(live.view.question).toMatchObject({ message: { key: 'dialogue.plain.canner.fullBoil' } });
    expect(canner()?.clock?.kind).toBe('since');
  }

  test('stands on the screen as a question, and a held yes there does it', async () => {
    await untilTheBoilIsAsked();
    await turn(2_000);
    await live.ask('yes', 'touch');
    await settle();
    expect(live.view.question).toBeNull();
    expect(canner()?.clock?.kind).toBe('until');
  });

  test('is not done by a no there, nor left standing when nobody answers', async () => {
    await untilTheBoilIsAsked();
    await turn(2_000);
    await live.ask('no', 'touch');
    await settle();
    expect(live.view.question).toBeNull();
    await say('it is at a full rolling boil');
    expect(live.view.question).not.toBeNull();
    await turn(40_000, 1_000);
    expect(live.view.question?.message.key).not.toBe('dialogue.plain.canner.fullBoil');
    expect(canner()?.clock?.kind).toBe('since');
  });
});

describe('never lost', () => {
  test('a kitchen opened again stands where the log left it, with the same deadline', async () => {
    await live.plan(planOf());
    await toTheCanner();
    await say('plate test passed');
    await say('the jars are ready');
    await say('six jars filled');
    await say('the jars are in');
    await vouch('it is at a full rolling boil');
    const before = canner()?.clock;
    clock.skip(4_000);
    await openKitchen();
    expect(canner()?.clock).toEqual(before);
    expect(batch()?.state).toBe('processing');
  });

  test('coming back after a while it says what went on, and asks whether the boil held', async () => {
    await live.plan(planOf());
    await toTheCanner();
    await say('plate test passed');
    await say('the jars are ready');
    await say('six jars filled');
    await say('the jars are in');
    await vouch('it is at a full rolling boil');
    await turn(MIN);
    clock.skip(3 * MIN);
    await openKitchen();
    expect(mouth.said.join(' ')).toContain('Away ');
    expect(live.view.question?.message.key).toBe('canner.whileAway');
  });
});

describe('a tab that mirrors', () => {
  test('misses nothing that the other wrote while it read the log', async () => {
    const { kitchen } = twoBatchesLoaded();
    let written: () => void = () => {};
    log = new MemoryLog(kitchen.slice(0, -3));
    log.open = async () => {
      const read = [...log.entries];
      await new Promise<void>((resolve) => (written = resolve));
      return { entries: read, lastSeenAt: null, trouble: [] };
    };
    const opened = live.open(log, false);
    for (const entry of kitchen.slice(-3)) live.follow(entry);
    written();
    await opened;
    expect(live.view.canners[0]?.state).toBe('comingToFullBoil');
  });

  test('reads the log anew where an entry never came', async () => {
    const { kitchen } = twoBatchesLoaded();
    log = new MemoryLog(kitchen.slice(0, -3));
    await live.open(log, false);
    log.entries = kitchen;
    for (const entry of kitchen.slice(-1)) live.follow(entry);
    await settle();
    await turn(1_000);
    expect(live.view.canners[0]?.state).toBe('comingToFullBoil');
  });

  test('waits for the next entry where the disk has the missing one not yet', async () => {
    const { kitchen } = twoBatchesLoaded();
    log = new MemoryLog(kitchen.slice(0, -3));
    const read = vi.spyOn(log, 'open');
    await live.open(log, false);
    for (const entry of kitchen.slice(-2, -1)) live.follow(entry);
    await settle();
    expect(read).toHaveBeenCalledTimes(2);
    log.entries = kitchen.slice(0, -2);
    for (const entry of kitchen.slice(-2)) live.follow(entry);
    await settle();
    expect(live.view.canners[0]?.state).toBe('comingToFullBoil');
  });

  test('takes nothing over from a log that was closed while it read', async () => {
    const { kitchen } = twoBatchesLoaded();
    log = new MemoryLog(kitchen.slice(0, -3));
    await live.open(log, false);
    const before = live.view.canners;
    for (const entry of kitchen.slice(-1)) live.follow(entry);
    log.entries = [];
    live.close();
    await settle();
    expect(live.view.canners).toEqual(before);
  });

  test('does not move at a tap, and says that it only looks on', async () => {
    log.append = async () => ({ trouble: [{ kind: 'readonly', says: 'Only looking on.' }], refused: true });
    await live.open(log, false);
    await live.plan(planOf());
    expect(live.view.batches).toEqual([]);
    expect(live.view.notices.map(({ text }) => text)).toEqual(['Only looking on.']);
  });
});

describe('taking back', () => {
  test('“go back” takes back the last step, and says where that leads', async () => {
    await live.plan(planOf());
    await settle();
    await say('everything is ready');
    expect(batch()?.state).toBe('mashing');
    await say('go back');
    if (batch()?.state !== 'settingUp') await say('yes that is right');
    expect(batch()?.state).toBe('settingUp');
    expect(mouth.said.join(' ')).toContain('Taken back');
    expect(log.entries.map(({ event }) => event.type)).toContain('setup.ready');
  });
});

describe('putting right', () => {
  async function toFullBoil() {
    await live.plan(planOf());
    await settle();
    await toTheCanner();
    await say('plate test passed');
    await say('the jars are ready');
    await say('six jars filled');
    await say('the jars are in');
    await vouch('it is at a full rolling boil');
    await turn(3 * MIN);
  }

  test('“it dropped two minutes ago” voids the clock from then, and says so', async () => {
    await toFullBoil();
    const from = clock.now();
    await say('it dropped two minutes ago');
    expect(canner()?.state).toBe('boilLost');
    expect(canner()?.voids.at(-1)?.to).toBeLessThanOrEqual(from - 1.9 * MIN);
    await turn(4_000);
    expect(mouth.said.at(-1)).toMatch(/^The clock is void|^Clock void/);
    expect(mouth.sounded).toContain('clock-void');
  });

  test('what cannot have been is answered with a sentence, and the clock runs on', async () => {
    await toFullBoil();
    await say('it dropped twenty minutes ago');
    await turn(4_000);
    expect(canner()?.state).toBe('fullBoil');
    expect(mouth.said.at(-1)).toContain('That does not fit what you told me before.');
  });

  test('“I said full boil too early” takes the clock back, by voice and by touch', async () => {
    await toFullBoil();
    await say('i said full boil too early');
    expect(canner()?.state).toBe('comingToFullBoil');
    await vouch('it is at a full rolling boil');
    const choice = canner()?.choices.find(({ command }) => command === 'boil.droppedEarlier');
    expect(choice).toMatchObject({ asks: 'minutes', main: false });
    await turn(2 * MIN);
    if (choice) await live.choose(choice, { n: 1 }, 'touch');
    expect(canner()?.state).toBe('boilLost');
  });

  test('a full boil said too early is told as danger when the jars rest already', async () => {
    const { entries, now } = firstLoadOut();
    [log, clock] = [new MemoryLog(entries), new HandClock(now)];
    await openKitchen();
    expect(batch()?.state).toBe('resting');
    await say('i said full boil too early');
    await turn(4_000);
    expect(batch()?.state).toBe('unprocessed');
    expect(mouth.said.join(' ')).toContain('Time not served. Not safe for the shelf');
  });

  test('“that was the pear, not the damson”', async () => {
    await live.plan(planOf());
    await settle();
    await live.plan(planOf({ fruit: 'pear', product: 'jam' }));
    await settle();
    const [plum = '', pear = ''] = live.view.batches.map(({ name }) => name);
    const states = () => live.view.batches.map(({ state }) => state);
    live.focus(live.view.batches[0]?.id ?? '');
    await say('everything is ready');
    expect(states()).toEqual(['mashing', 'settingUp']);
    await say(`that was the ${pear} not the ${plum}`);
    expect(states()).toEqual(['settingUp', 'mashing']);
    await say('go back');
    expect(states()).toEqual(['mashing', 'settingUp']);
    expect(log.entries.filter(({ event }) => event.type === 'log.corrected')).toHaveLength(2);
  });
});

describe('a second load', () => {
  test('by voice: what was kept hot in the pot, boiled again, into hot jars', async () => {
    const { entries, now } = firstLoadOut();
    [log, clock] = [new MemoryLog(entries), new HandClock(now)];
    await openKitchen();
    await say('there is more in the pot');
    await turn(4_000);
    expect(mouth.said.at(-1)).toContain('Boil the rest, stir all the time.');
    await say('the pot is at a rolling boil');
    await say('the jars are hot and ready');
    await say('three jars filled');
    await say('the jars are in');
    expect(batch()?.state).toBe('processing');
    expect(canner()?.load).toMatchObject([{ jars: 3 }]);
  });
});

describe('what a choice asks', () => {
  const choice = (command: string) => canner()?.choices.find((one) => one.command === command);

  /** Two batches ride in one load. */
  async function twoInTheCanner() {
    const { kitchen, now } = twoBatchesLoaded();
    log = new MemoryLog(kitchen);
    clock = new HandClock(now);
    await openKitchen();
  }

  test('whose jar broke, where two batches share the canner', async () => {
    await twoInTheCanner();
    expect(choice('jar.broke')).toMatchObject({
      asks: 'whose',
      whose: [{ name: 'plum' }, { name: 'pear' }],
    });
    await say('a jar broke');
    await turn(2_000);
    expect(mouth.said.join(' ')).toContain('Which one: the plum or the pear?');
    await say('the pear');
    expect(log.entries.at(-1)?.event).toMatchObject({ type: 'jar.broke', batch: 'pear' });
    await say('a jar of plum broke');
    expect(log.entries.at(-1)?.event).toMatchObject({ type: 'jar.broke', batch: 'plum' });
    expect(
      live.view.batches.map(({ jars }) => jars.filter(({ state }) => state === 'broken').length),
    ).toEqual([1, 1]);
  });

  test('whether it kept boiling, while the clock runs', async () => {
    await twoInTheCanner();
    expect(choice('canner.waterAdded')?.asks).toBeUndefined(); // nothing is timed yet
    await vouch('it is at a full rolling boil');
    const water = choice('canner.waterAdded');
    expect(water).toMatchObject({ asks: 'keptBoiling' });
    if (water) await live.choose(water, { keptBoiling: true }, 'touch');
    expect(canner()?.state).toBe('fullBoil');
    if (water) await live.choose(water, { keptBoiling: false }, 'touch');
    expect(canner()?.state).toBe('boilLost');
    expect(choice('canner.waterAdded')).not.toHaveProperty('asks');
  });
});

describe('what the cook asks', () => {
  test('how long, status, what is next, help and why get an answer', async () => {
    await live.plan(planOf());
    await settle();
    for (const question of ['how long', 'status', 'what is next', 'help', 'why']) {
      const before = mouth.said.length;
      await say(question);
      await turn(4_000);
      expect(mouth.said.length, question).toBeGreaterThan(before);
    }
  });

  test('an empty kitchen says that nothing is on the stove', async () => {
    await say('status');
    expect(mouth.said.at(-1)).toBe('Nothing is on the stove.');
  });
});
