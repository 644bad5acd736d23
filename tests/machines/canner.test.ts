// The canner: its clock starts on the cook's word only, is void when the boil drops, and is believed
// only when somebody looked.

import { initialTransition, type SnapshotFrom } from 'xstate';
import { describe, expect, test } from 'vitest';
import { cannerState } from '../../machines/canner/choices.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import type { Effect } from '../../machines/kitchen/effects.ts';
import type { CannerEvent } from '../../machines/kitchen/events.ts';
import { stepMachine } from '../../machines/kitchen/step.ts';

const MIN = 60_000;

/** A canner driven minute by minute, with everything it asked for. */
function canner(jarsPerLoad = 7) {
  let [snapshot] = initialTransition(cannerMachine, {
    id: 'canner-1',
    jarsPerLoad,
    preheatMinutes: 25,
    at: 0,
  }) as [SnapshotFrom<typeof cannerMachine>, unknown];
  let now = 0;
  const effects: Effect[] = [];
  const kitchen = {
    happens(event: Omit<CannerEvent, 'at'> & { type: string }) {
      const step = stepMachine(cannerMachine, snapshot, { at: now, ...event } as CannerEvent);
      snapshot = step.snapshot;
      effects.push(...step.effects);
      return kitchen;
    },
    wait(minutes: number, stepMinutes = 0.5) {
      const end = now + minutes * MIN;
      while (now < end) {
        now = Math.min(end, now + stepMinutes * MIN);
        kitchen.happens({ type: 'tick' });
      }
      return kitchen;
    },
    asleep(minutes: number) {
      const awaySince = now;
      now += minutes * MIN;
      return kitchen.happens({ type: 'kitchen.returned', awaySince } as never);
    },
    hot() {
      return kitchen
        .happens({ type: 'canner.filled' })
        .happens({ type: 'canner.heatOn' })
        .wait(25)
        .happens({ type: 'canner.hot' });
    },
    offered(batch: string, jars: number, minutes: number) {
      return kitchen.happens({
        type: 'load.offered',
        batch,
        jars,
        jarSize: 'half-pint',
        minutes,
        filledAt: now,
      } as never);
    },
    loaded(minutes = 10) {
      return kitchen.hot().offered('plum', 6, minutes).happens({ type: 'jars.in' });
    },
    get state() {
      return cannerState(snapshot);
    },
    get context() {
      return snapshot.context;
    },
    get now() {
      return now;
    },
    heard: (key: string) =>
      effects.filter((effect) => effect.type === 'say' && effect.message.key === key).length,
    asked: (key: string) =>
      effects.flatMap((effect) =>
        effect.type === 'say' && effect.message.key === key
          ? [{ urgency: effect.urgency, silences: effect.message.params?.['silences'] }]
          : [],
      ),
    passed: () => effects.flatMap((effect) => (effect.type === 'pass' ? [effect.message] : [])),
  };
  return kitchen;
}

describe('before the jars', () => {
  test('when the preheat time has passed it asks, and only the cook makes it hot', () => {
    const it = canner().happens({ type: 'canner.filled' }).happens({ type: 'canner.heatOn' }).wait(60);
    expect(it.state).toBe('probablyHot');
    expect(it.heard('canner.askIfHot')).toBe(1);
    expect(it.happens({ type: 'canner.hot' }).state).toBe('hot');
  });

  test('no jars go in while none are filled', () => {
    expect(canner().hot().happens({ type: 'jars.in' }).state).toBe('hot');
  });

  test('jars filled more than ten minutes ago are not taken', () => {
    const it = canner().hot().offered('plum', 6, 10);
    expect(it.wait(10).happens({ type: 'jars.in' }).state).toBe('comingToFullBoil');
    const late = canner().hot().offered('plum', 6, 10);
    expect(late.wait(10.5).happens({ type: 'jars.in' }).state).toBe('hot');
  });

  test('jars are not taken into a canner that is not hot', () => {
    const it = canner().happens({ type: 'canner.filled' }).happens({ type: 'canner.heatOn' });
    expect(it.offered('plum', 6, 10).happens({ type: 'jars.in' }).state).toBe('heating');
  });
});

describe('the clock', () => {
  test('does not run from jars-in, however long it takes to boil', () => {
    const it = canner().loaded().wait(20);
    expect(it.state).toBe('comingToFullBoil');
    expect(it.context.clock).toBeNull();
    expect(it.heard('canner.askIfFullBoil')).toBeGreaterThan(2);
  });

  test('runs the full time from the full boil, to an absolute instant', () => {
    const it = canner().loaded(10).wait(6).happens({ type: 'canner.fullBoil' });
    expect(it.context.clock).toEqual({ from: it.now, until: it.now + 10 * MIN });
  });

  test('a tick before, exactly at, and after the end', () => {
    const it = canner().loaded(10).happens({ type: 'canner.fullBoil' });
    const served = it.now + 10 * MIN;
    it.wait(9.5).happens({ type: 'canner.boilHolds' });
    expect(it.state).toBe('fullBoil');
    it.wait((served - it.now) / MIN);
    expect(it.now).toBe(served);
    expect(it.state).toBe('standing');
  });

  test('a dropped boil voids it, keeps the void, and the next full boil starts the full time', () => {
    const it = canner()
      .loaded(10)
      .happens({ type: 'canner.fullBoil' })
      .wait(7)
      .happens({ type: 'canner.boilDropped' });
    expect(it.state).toBe('boilLost');
    expect(it.context.clock).toBeNull();
    expect(it.context.voids).toHaveLength(1);
    it.wait(3).happens({ type: 'canner.fullBoil' });
    expect(it.context.clock).toEqual({ from: it.now, until: it.now + 10 * MIN });
  });

  test('two batches in one load are given the longer time', () => {
    const it = canner().hot().offered('plum', 3, 10).offered('pear', 3, 15);
    it.happens({ type: 'jars.in' }).happens({ type: 'canner.fullBoil' });
    expect(it.context.clock).toEqual({ from: it.now, until: it.now + 15 * MIN });
  });

  test('what does not fit the rack does not ride', () => {
    const it = canner(7).hot().offered('plum', 9, 10).happens({ type: 'jars.in' });
    expect(it.context.load).toMatchObject([{ batch: 'plum', jars: 7 }]);
    expect(it.passed()).toContainEqual({ type: 'canner.took', canner: 'canner-1', jars: 7, minutes: 10 });
  });

  test('water added that stopped the boil voids it; water that did not, does not', () => {
    const kept = canner().loaded().happens({ type: 'canner.fullBoil' }).wait(2);
    const before = kept.context.clock;
    kept.happens({ type: 'canner.waterAdded', keptBoiling: true } as never);
    expect(kept.context.clock).toBe(before);
    const lost = canner().loaded().happens({ type: 'canner.fullBoil' }).wait(2);
    expect(lost.happens({ type: 'canner.waterAdded', keptBoiling: false } as never).state).toBe('boilLost');
  });
});

describe('was it at a full boil all the time?', () => {
  test('it asks during even a five-minute clock', () => {
    const it = canner().loaded(5).happens({ type: 'canner.fullBoil' }).wait(4);
    expect(it.heard('canner.askIfItHolds')).toBe(1);
  });

  test('each silence is counted as not confirmed, and the next question is graver; an answer makes it plain again', () => {
    const it = canner().loaded(25).happens({ type: 'canner.fullBoil' });
    it.wait(11);
    expect(it.asked('canner.askIfItHolds')).toEqual([
      { urgency: 'clock', silences: 0 },
      { urgency: 'danger', silences: 1 },
    ]);
    it.wait(5);
    expect(it.asked('canner.askIfItHolds').at(-1)).toEqual({ urgency: 'danger', silences: 2 });
    expect(it.context.silences).toBe(2);
    it.happens({ type: 'canner.boilHolds' });
    expect(it.context.silences).toBe(0);
    it.wait(5);
    expect(it.asked('canner.askIfItHolds').at(-1)).toEqual({ urgency: 'clock', silences: 0 });
  });

  test('time served in silence is not believed: it asks plainly, again and again', () => {
    const it = canner().loaded(10).happens({ type: 'canner.fullBoil' }).wait(12);
    expect(it.state).toBe('unsureOfTheBoil');
    expect(it.wait(20).heard('canner.askPlainly')).toBeGreaterThan(2);
  });

  test('a yes at the end serves the clock; a no voids it', () => {
    const yes = canner().loaded(10).happens({ type: 'canner.fullBoil' }).wait(12);
    expect(yes.happens({ type: 'canner.boilHolds' }).state).toBe('standing');
    const no = canner().loaded(10).happens({ type: 'canner.fullBoil' }).wait(12);
    expect(no.happens({ type: 'canner.boilDropped' }).state).toBe('boilLost');
  });

  test('an answer before the last question does not cover the time after it', () => {
    const it = canner()
      .loaded(20)
      .happens({ type: 'canner.fullBoil' })
      .wait(5.5)
      .happens({ type: 'canner.boilHolds' });
    expect(it.wait(15).state).toBe('unsureOfTheBoil');
  });

  test('coming back after the time ran out asks whether it boiled all along', () => {
    const it = canner()
      .loaded(10)
      .happens({ type: 'canner.fullBoil' })
      .wait(2)
      .happens({ type: 'canner.boilHolds' });
    it.asleep(40);
    expect(it.state).toBe('unsureOfTheBoil');
    expect(it.heard('canner.whileAway')).toBe(1);
  });

  test('coming back in the middle keeps the same deadline but believes no earlier answer', () => {
    const it = canner()
      .loaded(30)
      .happens({ type: 'canner.fullBoil' })
      .wait(2)
      .happens({ type: 'canner.boilHolds' });
    const deadline = it.context.clock;
    it.asleep(10);
    expect(it.context.clock).toEqual(deadline);
    expect(it.wait(18.5).state).toBe('unsureOfTheBoil');
  });
});

describe('out of the canner', () => {
  test('five minutes of standing, then the jars are lifted, served', () => {
    const it = canner()
      .loaded(10)
      .happens({ type: 'canner.fullBoil' })
      .wait(9.5)
      .happens({ type: 'canner.boilHolds' })
      .wait(0.5);
    expect(it.state).toBe('standing');
    expect(it.wait(4.5).state).toBe('standing');
    expect(it.wait(0.5).state).toBe('ready');
    it.happens({ type: 'jars.out' });
    expect(it.passed()).toContainEqual({
      type: 'canner.gaveBack',
      canner: 'canner-1',
      served: true,
      minutes: 10,
    });
    expect(it.state).toBe('hot');
  });

  test('jars filled while it was taken are called when it is free, and nobody is where none wait', () => {
    const served = () => canner().loaded(10).happens({ type: 'canner.fullBoil' }).wait(15);
    const waits = served().offered('pear', 5, 10).happens({ type: 'jars.out' });
    expect(waits.heard('canner.loadNow')).toBe(2);
    expect(waits.happens({ type: 'jars.in' }).state).toBe('comingToFullBoil');
    expect(served().happens({ type: 'jars.out' }).heard('canner.loadNow')).toBe(1);
    const cold = served().offered('pear', 5, 10).wait(11).happens({ type: 'jars.out' });
    expect(cold.heard('canner.loadNow')).toBe(1);
  });

  test.each(['comingToFullBoil', 'fullBoil', 'boilLost', 'unsureOfTheBoil'])(
    'jars taken out while %s have not served',
    (state) => {
      const it = canner().loaded(10);
      if (state !== 'comingToFullBoil') it.happens({ type: 'canner.fullBoil' });
      if (state === 'boilLost') it.happens({ type: 'canner.boilDropped' });
      if (state === 'unsureOfTheBoil') it.wait(11);
      expect(it.state).toBe(state);
      it.happens({ type: 'jars.out' });
      expect(it.passed()).toContainEqual({
        type: 'canner.gaveBack',
        canner: 'canner-1',
        served: false,
        minutes: 10,
      });
    },
  );

  test('a broken jar is told to the batch, and the clock runs on', () => {
    const it = canner().loaded(10).happens({ type: 'canner.fullBoil' }).happens({ type: 'jar.broke' });
    expect(it.state).toBe('fullBoil');
    expect(it.passed()).toContainEqual({ type: 'canner.jarBroke', canner: 'canner-1' });
  });
});
