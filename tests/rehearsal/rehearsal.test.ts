// Does a rehearsal cook what is told, show what is so, and find at the end what was late or missed?

import { describe, expect, test } from 'vitest';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import {
  act,
  followed,
  layOut,
  look,
  news,
  review,
  runTo,
  told,
  type RehearsedBatch,
  type Scene,
} from '../../src/rehearsal/index.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';

const MIN = 60_000;
const damson: RehearsedBatch = {
  id: 'damson',
  product: 'butter',
  elevationM: 100,
  startKg: 2.2,
  startSolubleSolidsPct: 34,
  fibreKg: 0.03,
  targetSolubleSolidsPct: 43,
  potDiameterM: 0.26,
  burnerW: 2400,
  jarL: 0.2366,
  jars: 7,
  processMinutes: 10,
};

const begun = (): Scene => layOut(damson, 5, 0);
const happens = (scene: Scene, minute: number, type: string, more: object = {}): Scene =>
  followed(scene, { type, at: minute * MIN, batch: 'damson', canner: 'canner', ...more } as KitchenEvent);
const keys = (scene: Scene): string[] => review(scene).map(({ message }) => message.key);

describe('the stove of a rehearsal', () => {
  test('is cold until the heat is on, and rolls in its own time', () => {
    const cold = runTo(begun(), 10 * MIN);
    expect(look(cold, 'pot')[0]?.key).toBe('sense.pot.still');
    const hot = runTo(happens(cold, 10, 'mash.done'), 35 * MIN);
    expect(look(hot, 'pot')[0]?.key).toBe('sense.pot.rolling');
  });

  test('gives the same evening for the same seed', () => {
    expect(runTo(happens(begun(), 1, 'mash.done'), 9 * MIN)).toEqual(
      runTo(happens(begun(), 1, 'mash.done'), 9 * MIN),
    );
  });

  test('keeps its knob where a hand left it, where nobody turns it by the page’s word', () => {
    const by = told(begun(), { type: 'mash.done', at: 0, batch: 'damson' });
    expect(by.hands.potDial).toBe(0);
    expect(act(by, { do: 'pot.heat', heat: 'high' }).hands.potDial).toBe(1);
  });

  test('burns what is left alone over a high flame, and says what that would have meant', () => {
    const left = runTo(happens(begun(), 0, 'mash.done'), 120 * MIN);
    expect(look(left, 'pot').map(({ key }) => key)).toContain('sense.pot.burnt');
    expect(keys(left)).toEqual(expect.arrayContaining(['review.burnt', 'review.unstirred']));
  });

  test('puts every message into words', () => {
    const { text } = createCatalogue('en', 'us');
    const left = runTo(happens(begun(), 0, 'mash.done'), 120 * MIN);
    for (const { message } of review(left)) expect(text(message)).toMatch(/\w+ \w+/);
    for (const place of ['pot', 'scale', 'spoon', 'plate', 'canner', 'jars'] as const)
      for (const message of look(left, place)) expect(text(message)).toMatch(/\w+ \w+/);
  });
});

describe('what is noticed', () => {
  const noticed = (scene: Scene) => news(scene).map(({ place, message }) => `${place} ${message.key}`);

  test('is nothing beside a cold stove', () => {
    expect(noticed(runTo(begun(), 5 * MIN))).toEqual([]);
  });

  test('is how pot and canner boil once there is heat under them, each by its place', () => {
    const heated = runTo(happens(happens(begun(), 0, 'mash.done'), 0, 'canner.heatOn'), MIN);
    expect(noticed(heated)).toEqual(['pot sense.pot.still', 'canner sense.canner.still']);
  });

  test('is how it falls from the spoon over the heat, once that tells something', () => {
    let scene = happens(begun(), 0, 'mash.done');
    expect(noticed(runTo(scene, 5 * MIN)).join()).not.toContain('sense.spoonful.');
    for (let minute = 1; minute < 60; minute += 1)
      scene = happens(scene, minute, minute === 20 ? 'pot.rollingBoil' : 'pot.stirred');
    expect(noticed(scene)).toContain('pot sense.spoonful.mounds');
    expect(noticed(act(scene, { do: 'pot.heat', heat: 'off' })).join()).not.toContain('sense.spoonful.');
  });

  test('is a burnt smell, with the heat off, too', () => {
    const left = runTo(happens(begun(), 0, 'mash.done'), 120 * MIN);
    expect(noticed(act(left, { do: 'pot.heat', heat: 'off' }))).toContain('pot sense.pot.burnt');
  });

  test('has one name for each thing, so that the newest word about it replaces the older', () => {
    const [still] = news(runTo(happens(begun(), 0, 'mash.done'), MIN));
    const [rolling] = news(runTo(happens(begun(), 0, 'mash.done'), 25 * MIN));
    expect([still?.message.key, rolling?.message.key]).toEqual(['sense.pot.still', 'sense.pot.rolling']);
    expect(still?.of).toBe(rolling?.of);
  });

  test('is the lids, once the jars are out', () => {
    let scene = happens(begun(), 0, 'jars.ready');
    scene = happens(scene, 1, 'jars.filled', { full: 6, spare: 0 });
    scene = happens(happens(scene, 2, 'jars.in'), 3, 'jars.out');
    expect(noticed(scene)).toContain('jars sense.jars.hot');
  });
});

describe('the review', () => {
  test('praises nothing before anything could have gone wrong, and calls nothing over before it is', () => {
    expect(keys(begun())).toEqual(['review.notYet']);
    expect(keys(happens(begun(), 1, 'setup.ready'))).toEqual(['review.notYet']);
    let scene = happens(begun(), 1, 'mash.done');
    let minute = 1;
    while (scene.marks.rollingSince === null && minute < 60)
      scene = happens(scene, (minute += 1), 'pot.stirred');
    expect(keys(happens(scene, minute + 0.5, 'pot.rollingBoil'))).toEqual(['review.cleanSoFar']);
  });

  const canned = (heatOnAt: number, fullBoilAt: number, outAt: number): Scene => {
    let scene = happens(begun(), 0, 'setup.ready');
    scene = happens(scene, 1, 'mash.done');
    for (let minute = 2; minute < 30; minute += 1) {
      scene = happens(scene, minute, 'pot.stirred');
      if (minute === heatOnAt) scene = happens(scene, minute, 'canner.heatOn');
    }
    scene = happens(scene, 30, 'pot.thick');
    scene = happens(scene, 31, 'jars.ready');
    scene = happens(scene, 32, 'jars.filled', { full: 6, spare: 0 });
    scene = happens(scene, 33, 'jars.in');
    scene = happens(scene, fullBoilAt, 'canner.fullBoil');
    return happens(scene, outAt, 'jars.out');
  };

  test('finds a clock that was started before the boil, and a time that was not served', () => {
    const found = review(canned(25, 34, 45));
    expect(found.filter(({ grave }) => grave).map(({ message }) => message.key)).toEqual(
      expect.arrayContaining(['review.clockTooEarly', 'review.unserved']),
    );
  });

  test('finds nothing grave where the boil was waited for and the time served', () => {
    expect(review(canned(3, 60, 75)).filter(({ grave }) => grave)).toEqual([]);
  });
});

describe('an evening of two canners', () => {
  const FIRST = { canner: 'canner-1' };
  const SECOND = { canner: 'canner-2' };
  const bothHeating = (): Scene => {
    let scene = begun();
    for (const canner of [FIRST, SECOND]) scene = happens(scene, 0, 'canner.set', canner);
    for (const canner of [FIRST, SECOND]) scene = happens(scene, 0, 'canner.heatOn', canner);
    return scene;
  };
  const filled = (into: object): Scene => {
    let scene = happens(bothHeating(), 30, 'mash.done');
    scene = happens(scene, 31, 'jars.ready');
    return happens(runTo(scene, 70 * MIN), 70, 'jars.filled', { full: 4, spare: 0, ...into });
  };
  const inSecond = (): Scene => happens(filled({ into: 'canner-2' }), 71, 'jars.in', SECOND);

  test('each is heated by its own word, as hot as one alone', () => {
    const both = runTo(bothHeating(), 40 * MIN);
    expect(both.beside?.canner.tempC).toBeCloseTo(both.stove.canner.tempC, 1);
    expect(both.stove.canner.tempC).toBeGreaterThan(95);
    const one = runTo(happens(bothHeating(), 1, 'canner.off', SECOND), 40 * MIN);
    expect(one.beside?.canner.tempC).toBeLessThan(40);
    expect(one.stove.canner.tempC).toBeCloseTo(both.stove.canner.tempC, 5);
  });

  test('the jars go into the one that they were filled for, as hot as it was', () => {
    const before = filled({});
    const after = filled({ into: 'canner-2' });
    expect([before.canner, after.canner]).toEqual(['canner-1', 'canner-2']);
    expect(after.stove.canner).toEqual(before.beside?.canner);
    expect(after.beside?.canner).toEqual(before.stove.canner);
    expect(inSecond().stove.jars.filter(({ place }) => place === 'canner')).toHaveLength(4);
  });

  test('what is told of the other lifts no jar, turns no knob and is held against nobody', () => {
    const alone = inSecond();
    let scene = alone;
    for (const [minute, type] of [
      [73, 'canner.fullBoil'],
      [74, 'canner.boilDropped'],
      [75, 'jars.out'],
      [76, 'canner.off'],
    ] as const)
      scene = happens(scene, minute, type, FIRST);
    expect(runTo(scene, 90 * MIN).stove).toEqual(runTo(alone, 90 * MIN).stove);
    expect(scene.hands).toEqual(alone.hands);
    expect(keys(scene)).toEqual(keys(runTo(alone, 76 * MIN)));
    expect(
      happens(scene, 77, 'jars.out', SECOND).stove.jars.filter(({ place }) => place === 'out'),
    ).toHaveLength(4);
  });
});
