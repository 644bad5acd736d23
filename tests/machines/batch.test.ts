// A batch through the evening: every row of the process, its loops and its exits.

import { describe, expect, test } from 'vitest';
import { stepKitchen } from '../../machines/kitchen/kitchen.ts';
import { evening, MIN, planOf } from './evening.ts';

describe('from the heap to the simmer', () => {
  test('set up, mash, rolling boil, simmer, each on the cook’s word', () => {
    const it = evening();
    expect(it.state()).toBe('settingUp');
    expect(it.tell('setup.ready').state()).toBe('mashing');
    expect(it.tell('mash.done').state()).toBe('comingToBoil');
    expect(it.tell('pot.rollingBoil').state()).toBe('simmering');
  });

  test('the predicted time to a boil only prompts the question', () => {
    const it = evening().tell('setup.ready').tell('mash.done').wait(60);
    expect(it.state()).toBe('comingToBoil');
    expect(it.heard('batch.askIfRollingBoil')).toBeGreaterThan(1);
  });

  // The order of work: USDA AIB-539, guide 7 (jellies and jams with added pectin).
  test.each([
    ['powdered', 'pectinMassKg', 'sugarMassKg'],
    ['liquid', 'sugarMassKg', 'pectinMassKg'],
  ] as const)(
    'with %s pectin the first rolling boil takes in what waited, the second begins the hard boil',
    (pectin, first, second) => {
      const plan = planOf({ product: 'jam', pectin });
      const it = evening(plan).tell('setup.ready');
      const mash = it.said().find(({ key }) => key === 'batch.mash')?.params;
      expect(mash?.['pectin']).toBe(pectin);
      expect(mash?.[first]).toBe(plan[first]);
      it.tell('mash.done').listen().tell('pot.rollingBoil');
      expect(it.state()).toBe('comingToBoil');
      const intoIt = it.said().find(({ key }) => key === 'batch.intoTheBoil')?.params;
      expect(intoIt?.['pectin']).toBe(pectin);
      expect(intoIt?.[second]).toBe(plan[second]);
      expect(it.tell('pot.rollingBoil').state()).toBe('simmering');
    },
  );

  // One minute of full rolling boil, stirred all the while: USDA AIB-539, guide 7 (jams with added pectin).
  test.each(['powdered', 'liquid'] as const)(
    'with %s pectin a minute is asked for, however long it took to boil, and asked after when it is over',
    (pectin) => {
      for (const minutesToBoil of [4, 25]) {
        const it = evening(planOf({ product: 'jam', pectin }))
          .tell('setup.ready')
          .tell('mash.done');
        it.wait(minutesToBoil).tell('pot.rollingBoil').wait(2).listen().tell('pot.rollingBoil');
        const simmer = it.said().find(({ key }) => key === 'batch.simmer')?.params;
        expect(simmer).toMatchObject({ timed: true, hard: true });
        expect(it.listen().wait(0.9).heard('batch.askIfBoiled')).toBe(0);
        expect(it.wait(0.2).heard('batch.askIfBoiled')).toBe(1);
        expect(it.heard('batch.nearlyThick') + it.heard('batch.askIfThick')).toBe(0);
      }
    },
  );

  test('once a plate has run, thickness decides again, also with pectin', () => {
    const it = evening(planOf({ product: 'jam', pectin: 'powdered' }))
      .tell('setup.ready')
      .tell('mash.done');
    it.wait(10).tell('pot.rollingBoil').wait(2).tell('pot.rollingBoil').wait(1).tell('pot.thick');
    it.tell('skim.done').tell('plate.spooned').wait(3).listen().tell('plate.runny');
    expect(it.state()).toBe('simmering');
    expect(it.said().find(({ key }) => key === 'batch.simmer')?.params).toMatchObject({ timed: false });
  });

  test('without pectin, or by a plan from before its dose was told, one boil is enough', () => {
    const { pectinMassKg: _, ...old } = planOf({ product: 'jam', pectin: 'powdered' });
    for (const plan of [planOf({ product: 'jam' }), old])
      expect(evening(plan).tell('setup.ready').tell('mash.done').tell('pot.rollingBoil').state()).toBe(
        'simmering',
      );
  });

  test('a step that is not due changes nothing', () => {
    const it = evening().tell('plate.held').tell('jars.filled', { full: 6, spare: 0 }).tell('seals.allHeld');
    expect(it.state()).toBe('settingUp');
  });
});

describe('simmer', () => {
  test('reminds to stir, more often near the end than at the beginning', () => {
    const early = evening().toSimmer().listen().wait(15).heard('batch.stir');
    const late = evening().toSimmer();
    const left = late.context().estimate;
    expect(left).not.toBeNull();
    const minutes = late.context().plan.simmerMinutes.likely;
    late
      .wait(Math.max(0, minutes - 15))
      .listen()
      .wait(15);
    expect(early).toBeGreaterThan(0);
    expect(late.heard('batch.stir')).toBeGreaterThan(early);
  });

  test('says once that it is nearly thick, and asks when it should be, but never decides', () => {
    const it = evening().toSimmer();
    it.wait(it.context().plan.simmerMinutes.likely + 20);
    expect(it.heard('batch.nearlyThick')).toBe(1);
    expect(it.heard('batch.askIfThick')).toBeGreaterThan(0);
    expect(it.state()).toBe('simmering');
  });

  test('minutes that the cook adds move the end', () => {
    const it = evening().toSimmer().wait(10);
    const before = it.context().nextPromptAt ?? 0;
    it.tell('minutes.added', { minutes: 7 });
    expect(((it.context().nextPromptAt ?? 0) - before) / MIN).toBeCloseTo(7, 0);
  });

  test('a weight at the target asks whether it is thick', () => {
    const it = evening().toSimmer().wait(20);
    it.listen().tell('reading.taken', { massKg: it.context().plan.targetMassKg * 0.98 });
    expect(it.said()).toContainEqual(
      expect.objectContaining({ key: 'batch.reading', params: expect.objectContaining({ done: true }) }),
    );
  });

  test('a weight that cannot be, as with the pot still on the scale, is asked for again', () => {
    const far = (massKg: number) => {
      const it = evening().toSimmer().wait(10).listen().tell('reading.taken', { massKg });
      return it.said().find(({ key }) => key === 'batch.reading')?.params?.['far'];
    };
    const { startMassKg } = planOf();
    expect(far(startMassKg * 0.96)).toBe(false);
    expect(far(startMassKg + 2.5)).toBe(true);
  });

  test('coming back after the pot should be thick is a danger, not a timer that rang', () => {
    const it = evening().toSimmer().listen().asleep(600);
    expect(it.said()).toContainEqual(
      expect.objectContaining({
        key: 'batch.simmeredUnwatched',
        params: expect.objectContaining({ over: true }),
      }),
    );
    expect(it.state()).toBe('simmering');
  });
});

describe('a step that nobody says is done', () => {
  const prompts = [
    ['skimming', 'batch.skim'],
    ['straining', 'batch.strain'],
    ['blending', 'batch.blend'],
    ['spooning', 'batch.spoonOnPlate'],
  ] as const;
  const walkTo = (state: string) => {
    const it = evening().toSimmer().wait(30).tell('pot.thick');
    for (const done of ['skim.done', 'strain.done', 'blend.done'] as const)
      if (it.state() !== state) it.tell(done);
    return it;
  };

  test.each(prompts)('%s is told again after a quarter of an hour, and not before', (state, key) => {
    const it = walkTo(state);
    expect(it.state()).toBe(state);
    expect(it.listen().wait(14).heard(key)).toBe(0);
    expect(it.wait(2).heard(key)).toBe(1);
    expect(it.wait(20).heard(key)).toBe(1);
    expect(it.state()).toBe(state);
  });
});

describe('plate test', () => {
  test('the spoonful gets its two minutes on the plate before the question', () => {
    const it = evening().toSimmer().wait(20).tell('pot.thick').tell('skim.done');
    if (it.state() === 'straining') it.tell('strain.done');
    if (it.state() === 'blending') it.tell('blend.done');
    expect(it.tell('plate.spooned').wait(1.5).state()).toBe('cooling');
    expect(it.wait(0.5).state()).toBe('judging');
  });

  test('runny goes back to the simmer with computed minutes, and is counted', () => {
    const it = evening().toPlate().tell('plate.runny');
    expect(it.state()).toBe('simmering');
    expect(it.context().plateTests.map(({ verdict }) => verdict)).toEqual(['runny']);
    const minutes = ((it.context().nextPromptAt ?? 0) - it.now) / MIN;
    expect(minutes).toBeGreaterThanOrEqual(1);
    expect(minutes).toBeLessThan(60);
  });

  test('the second time round it is not skimmed, strained or blended again', () => {
    const it = evening().toPlate().tell('plate.runny').wait(5).tell('pot.thick');
    expect(it.state()).toBe('spooning');
  });

  test('too thick is loosened and tested again', () => {
    const it = evening().toPlate().tell('plate.tooThick');
    expect(it.state()).toBe('loosening');
    expect(it.tell('pot.loosened').state()).toBe('spooning');
  });

  test('passed, with jars not yet hot, waits for the jars', () => {
    expect(evening().toPlate().tell('plate.held').state()).toBe('readyingJars');
    const early = evening().toSimmer().tell('jars.ready').wait(20).tell('pot.thick').tell('skim.done');
    if (early.state() === 'straining') early.tell('strain.done');
    if (early.state() === 'blending') early.tell('blend.done');
    expect(early.tell('plate.spooned').wait(2).tell('plate.held').state()).toBe('filling');
  });
});

describe('straining and blending', () => {
  test('a fruit with seeds must be strained', () => {
    const it = evening(planOf({ fruit: 'grape' }))
      .toSimmer()
      .wait(20)
      .tell('pot.thick')
      .tell('skim.done');
    expect(it.state()).toBe('straining');
    expect(it.tell('strain.skipped').state()).toBe('straining');
    expect(it.heard('batch.mustStrain')).toBe(1);
  });

  test('a jam is not blended unless its plan says so', () => {
    const plan = planOf({ fruit: 'strawberry', product: 'jam' });
    expect(plan.steps.blend).toBe(false);
    const it = evening(plan).toSimmer().wait(20).tell('pot.thick').tell('skim.done');
    if (it.state() === 'straining') it.tell('strain.skipped');
    expect(it.state()).toBe('spooning');
  });
});

describe('interruptions', () => {
  test.each(['comingToBoil', 'simmering', 'skimming'] as const)(
    'hold and carry on where it was: %s',
    (state) => {
      const it = evening().tell('setup.ready').tell('mash.done');
      if (state !== 'comingToBoil') it.tell('pot.rollingBoil');
      if (state === 'skimming') it.tell('pot.thick');
      expect(it.tell('batch.held').state()).toBe('held');
      expect(it.wait(10).tell('batch.resumed').state()).toBe(state);
    },
  );

  test('a pot that stood off the heat takes longer by the standing and the way back to the boil', () => {
    const it = evening().toSimmer().wait(10);
    const due = it.context().nextPromptAt ?? 0;
    it.tell('batch.held').wait(20).tell('batch.resumed');
    expect((it.context().nextPromptAt ?? 0) - due).toBeGreaterThan(20 * MIN);
  });

  test('it caught: heat off, never scrape, on in a clean pot', () => {
    const it = evening().toSimmer().wait(10).tell('pot.caught');
    expect(it.state()).toBe('caught');
    expect(it.heard('batch.itCaught')).toBe(1);
    expect(it.tell('pot.changed').state()).toBe('simmering');
  });

  test('a batch given up goes to the cold', () => {
    const it = evening().toSimmer().tell('batch.stopped');
    expect(it.state()).toBe('stopped');
  });
});

describe('to the shelf', () => {
  test('the whole road, with the short jar to the fridge', () => {
    const it = evening().toResting();
    expect(it.state()).toBe('resting');
    it.wait(12 * 60, 30)
      .tell('rest.over')
      .tell('seals.allHeld')
      .tell('jars.putAway');
    expect(it.state()).toBe('putAway');
    expect(it.jars()).toEqual([...Array(6).fill('onShelf'), 'inFridge']);
  });

  test('jars that cooled before the canner are not processed', () => {
    const it = evening().cannerHot().toFilled().wait(11);
    expect(it.state()).toBe('unprocessed');
    it.canner('jars.in');
    expect(it.cannerState()).toBe('hot');
    expect(it.tell('jars.toFridge').tell('jars.putAway').jars()).not.toContain('onShelf');
  });

  test('cooled jars may be emptied, boiled again, and filled into hot jars', () => {
    const it = evening().cannerHot().toFilled().wait(11).tell('jars.emptied');
    expect(it.state()).toBe('reheating');
    it.tell('pot.rollingBoil');
    expect(it.state()).toBe('readyingJars');
    it.tell('jars.ready').tell('jars.filled', { full: 6, spare: 0 }).canner('jars.in');
    expect(it.state()).toBe('processing');
  });

  test('jars taken out early are not safe', () => {
    const it = evening().toLoaded().canner('canner.fullBoil').wait(3).canner('jars.out');
    expect(it.state()).toBe('unprocessed');
    expect(it.heard('batch.notServed')).toBe(1);
  });

  test('a jar broken in the canner is missing afterwards', () => {
    const it = evening().toLoaded().canner('jar.broke').serve().wait(5).canner('jars.out');
    expect(it.jars().filter((state) => state === 'broken')).toHaveLength(1);
    expect(it.jars().filter((state) => state === 'processed')).toHaveLength(5);
  });

  test('more jars than the rack holds: the rest goes to the fridge', () => {
    const it = evening().toLoaded(9).serve().wait(5).canner('jars.out');
    expect(it.jars().filter((state) => state === 'processed')).toHaveLength(7);
    it.wait(12 * 60, 30)
      .tell('seals.allHeld')
      .tell('jars.putAway');
    expect(it.jars().filter((state) => state === 'inFridge')).toHaveLength(3);
  });
});

describe('more than one load', () => {
  /** Seven jars to a load, and a pot for more; the first load is out. */
  const firstLoadOut = () => evening().toLoaded(4).serve().wait(5).canner('jars.out');
  const secondLoad = (it: ReturnType<typeof evening>) =>
    it
      .tell('pot.more')
      .tell('pot.rollingBoil')
      .tell('jars.ready')
      .tell('jars.filled', { full: 3, spare: 0 })
      .canner('jars.in');

  test('the fill says how many the canner takes, and to keep the rest hot in the pot', () => {
    const told = (jarsPerLoad: number) =>
      evening(planOf({ jarsPerLoad }))
        .toPlate()
        .tell('jars.ready')
        .listen()
        .tell('plate.held')
        .said()
        .find(({ key }) => key === 'batch.fill')?.params;
    expect(told(4)).toMatchObject({ fits: 4, tooMany: true });
    expect(told(20)).toMatchObject({ fits: 20, tooMany: false });
  });

  test('what is left in the pot is boiled again and goes into hot jars, hot, for the full time', () => {
    const it = firstLoadOut().tell('pot.more');
    expect(it.state()).toBe('reheating');
    expect(it.heard('batch.nextLoad')).toBe(1);
    expect(it.tell('pot.rollingBoil').state()).toBe('readyingJars');
    expect(it.tell('jars.ready').tell('jars.filled', { full: 3, spare: 0 }).state()).toBe('waitingForCanner');
    expect(it.canner('jars.in').cannerContext().load).toMatchObject([{ jars: 3 }]);
    it.serve().wait(5).canner('jars.out');
    expect(it.jars().filter((state) => state === 'processed')).toHaveLength(7);
  });

  test('what did not fit the first load is never offered to the second', () => {
    const it = secondLoad(evening(planOf(), 4).toLoaded(6).serve().wait(5).canner('jars.out'));
    expect(it.cannerContext().load).toMatchObject([{ jars: 3 }]);
    it.serve().wait(5).canner('jars.out');
    expect(it.jars().filter((state) => state === 'inFridge')).toHaveLength(3); // two too many and the short one
    expect(it.jars().filter((state) => state === 'processed')).toHaveLength(7);
  });

  test('the rest counts from the last load, and the seal check covers all', () => {
    const it = secondLoad(firstLoadOut().wait(30)).serve().wait(5).canner('jars.out');
    it.wait(11.5 * 60, 30);
    expect(it.tell('seals.allHeld').state()).toBe('resting');
    it.wait(30, 30).tell('rest.over').tell('seals.failed', { count: 1 }).tell('jars.putAway');
    expect(it.jars().filter((state) => state === 'onShelf')).toHaveLength(6);
    expect(it.jars().filter((state) => state === 'inFridge')).toHaveLength(2);
  });

  test('a second load that did not serve its time leaves the first as it is', () => {
    const it = secondLoad(firstLoadOut()).canner('canner.fullBoil').wait(3).canner('jars.out');
    expect(it.state()).toBe('unprocessed');
    expect(it.tell('jars.toFridge').state()).toBe('resting');
    it.wait(12 * 60, 30)
      .tell('seals.allHeld')
      .tell('jars.putAway');
    expect(it.jars().filter((state) => state === 'onShelf')).toHaveLength(4);
    expect(it.jars().filter((state) => state === 'inFridge')).toHaveLength(4);
  });

  test.each([
    ['before it boils', []],
    ['with the jars ready', ['pot.rollingBoil', 'jars.ready']],
  ] as const)('giving up the rest, %s, lets the first load rest on', (_, steps) => {
    const it = firstLoadOut().tell('pot.more');
    for (const step of steps) it.tell(step);
    expect(it.tell('batch.stopped').state()).toBe('resting');
    expect(it.jars()).toContain('processed');
  });

  test('a rest that fills only a short jar goes to the fridge, and the first load rests on', () => {
    const it = firstLoadOut().tell('pot.more').tell('pot.rollingBoil').tell('jars.ready');
    expect(it.tell('jars.filled', { full: 0, spare: 1 }).state()).toBe('resting');
    expect(it.jars().filter((state) => state === 'inFridge')).toHaveLength(2);
  });

  test('a pot that stood for more than an hour is not another load', () => {
    expect(firstLoadOut().wait(60).tell('pot.more').state()).toBe('reheating');
    expect(firstLoadOut().wait(60.5).tell('pot.more').state()).toBe('resting');
  });

  test('a ping of the first load is heard while the second is made', () => {
    const it = firstLoadOut().tell('pot.more').tell('ping.heard');
    expect(it.context().pings).toBe(1);
    expect(it.state()).toBe('reheating');
  });
});

describe('rest and seals', () => {
  test('a seal is not judged before twelve hours', () => {
    const it = evening()
      .toResting()
      .wait(8 * 60, 30);
    expect(it.tell('seals.allHeld').state()).toBe('resting');
    expect(it.tell('seals.failed', { count: 1 }).state()).toBe('resting');
    expect(it.heard('batch.tooEarlyToJudge')).toBe(1);
    expect(
      it
        .wait(4 * 60, 30)
        .tell('seals.failed', { count: 1 })
        .state(),
    ).toBe('checkingSeals');
  });

  test('what is answered only in words has been taken, and is remembered', () => {
    const it = evening().toResting();
    const early = { type: 'rest.over', at: it.now, batch: 'plum' } as const;
    expect(stepKitchen(it.kitchen, early)).toMatchObject({ changed: true });
    expect(stepKitchen(it.kitchen, { ...early, type: 'mash.done' })).toMatchObject({ changed: false });
  });

  test('a ping is welcome and proves nothing', () => {
    const it = evening().toResting().tell('ping.heard');
    expect(it.state()).toBe('resting');
    expect(it.jars()).not.toContain('sealed');
  });

  test('after a whole day it asks for the seals by itself', () => {
    expect(
      evening()
        .toResting()
        .wait(24 * 60, 30)
        .state(),
    ).toBe('checkingSeals');
  });

  test('the ones that did not seal go to the fridge, the others to the shelf', () => {
    const it = evening()
      .toResting()
      .wait(13 * 60, 30)
      .tell('rest.over')
      .tell('seals.failed', { count: 2 })
      .tell('jars.putAway');
    expect(it.jars().filter((state) => state === 'onShelf')).toHaveLength(4);
    expect(it.jars().filter((state) => state === 'inFridge')).toHaveLength(3);
  });

  test('more failures than jars is not believed', () => {
    const it = evening()
      .toResting()
      .wait(13 * 60, 30)
      .tell('rest.over')
      .tell('seals.failed', { count: 9 });
    expect(it.state()).toBe('checkingSeals');
    expect(it.heard('batch.tooManyFailed')).toBe(1);
  });

  test('unsealed jars may be processed again within a day, not later', () => {
    const soon = evening()
      .toResting()
      .wait(13 * 60, 30)
      .tell('rest.over')
      .tell('seals.failed', { count: 2 });
    expect(soon.tell('jars.emptied').state()).toBe('reheating');
    const late = evening()
      .toResting()
      .wait(26 * 60, 30)
      .tell('seals.failed', { count: 2 });
    expect(late.tell('jars.emptied').state()).toBe('puttingAway');
  });

  test('a seal lost on the shelf is discarded, more than a day after the canner', () => {
    const it = evening()
      .toResting()
      .wait(13 * 60, 30)
      .tell('seals.allHeld')
      .tell('jars.putAway')
      .wait(12 * 60, 60);
    expect(it.tell('seals.failed', { count: 1 }).jars()).toContain('discarded');
    expect(it.state()).toBe('putAway');
  });
});

describe('what is not for the shelf', () => {
  test('a fridge batch is filled and put away, without canner or rest', () => {
    const it = evening(planOf({ keep: 'fridge' }))
      .cannerHot()
      .toFilled();
    expect(it.state()).toBe('puttingAway');
    expect(it.tell('jars.putAway').jars()).toEqual(Array(7).fill('inFridge'));
  });

  test('pumpkin asked for the shelf never gets there', () => {
    const plan = planOf({ fruit: 'pumpkin' });
    expect(plan.shelf.allowed).toBe(false);
    const it = evening(plan).cannerHot().toFilled();
    expect(it.state()).toBe('puttingAway');
    it.canner('jars.in');
    expect(it.cannerState()).toBe('hot');
    expect(it.tell('jars.putAway').jars()).not.toContain('onShelf');
  });
});
