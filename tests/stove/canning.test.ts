// Do the simulated canner and jars boil, lose their boil, seal and crack as they do in a kitchen?

import { describe, expect, it, vi } from 'vitest';
import { MIN, stoveWith, mash, butter, run } from './bench.ts';
import type { Stove } from '../../src/stove/index.ts';
import {
  emptyJar,
  fillJar,
  fillNextJar,
  handsOff,
  liftJars,
  loadCanner,
  stepStove,
  volumeL,
} from '../../src/stove/index.ts';

// Two hours of kitchen take a second of a free processor; a busy one may need ten.
vi.setConfig({ testTimeout: 60_000 });

describe('the canner', () => {
  const boiling = (): Stove => run(stoveWith(mash), 45, { cannerDial: 1 });

  it('comes to a full boil, and jars set it back until it boils again', () => {
    const hot = boiling();
    expect(hot.canner.tempC).toBeGreaterThan(99.5);
    let seed = 3;
    const jars = Array.from({ length: 7 }, () => {
      const filled = fillJar(
        emptyJar(0.2366, 80),
        { litres: 0.22, tempC: 85 },
        { wipeRim: true, lid: 'fingertip' },
        seed,
      );
      seed = filled.seed;
      return filled.jar;
    });
    const loaded = run(loadCanner({ ...hot, jars }), 0.2, { cannerDial: 1 });
    expect(loaded.canner.fullBoilS).toBe(0);
    const again = run(loaded, 12, { cannerDial: 1 });
    expect(again.canner.fullBoilS).toBeGreaterThan(60);
  });

  it('loses its boil when the heat is turned down, and counts again from nothing', () => {
    const jar = { ...emptyJar(0.2366, 90), filledL: 0.22, rimWiped: true, lid: 'fingertip' as const };
    const loaded = run(loadCanner({ ...boiling(), jars: [jar] }), 10, { cannerDial: 1 });
    expect(loaded.jars[0]?.boiledS).toBeGreaterThan(240);
    const lost = run(loaded, 6, { cannerDial: 0.05 });
    expect(lost.canner).toMatchObject({ fullBoilS: 0, boilsLost: 1 });
    expect(lost.jars[0]?.boiledS).toBe(0);
    const regained = run(lost, 10, { cannerDial: 1 });
    expect(regained.canner.fullBoilS).toBeGreaterThan(60);
    expect(regained.canner.fullBoilS).toBeLessThan(10 * MIN);
  });

  it('can lose its boil by mishap', () => {
    const jar = { ...emptyJar(0.2366, 90), filledL: 0.22 };
    const start = loadCanner({ ...boiling(), jars: [jar], mishapsPerHour: 6 });
    expect(run(start, 120, { cannerDial: 0.6 }).canner.boilsLost).toBeGreaterThan(0);
    expect(run({ ...start, mishapsPerHour: 0 }, 120, { cannerDial: 0.6 }).canner.boilsLost).toBe(0);
  });
});

describe('jars', () => {
  /** How many of 300 jars end sealed and whole. */
  function sealedOf300(
    care: { wipeRim: boolean; lid: 'loose' | 'fingertip' },
    boiledS: number,
    glassC = 80,
  ): number {
    let stove = { ...stoveWith(mash), seed: 2 };
    let { seed } = stove;
    const jars = Array.from({ length: 300 }, () => {
      const filled = fillJar(emptyJar(0.2366, glassC), { litres: 0.22, tempC: 90 }, care, seed);
      seed = filled.seed;
      return { ...filled.jar, boiledS, place: 'out' as const };
    });
    stove = stepStove({ ...stove, jars, seed }, 3600, handsOff);
    return liftJars(stove).jars.filter(({ seal }) => seal === 'sealed').length;
  }

  it('seal nearly always with care', () => {
    const careful = sealedOf300({ wipeRim: true, lid: 'fingertip' }, 600);
    expect(careful).toBeGreaterThan(282);
    expect(careful).toBeLessThan(300);
  });

  it('fail more often with a dirty rim, a loose band, or no time under water', () => {
    expect(sealedOf300({ wipeRim: false, lid: 'fingertip' }, 600)).toBeLessThan(246);
    expect(sealedOf300({ wipeRim: true, lid: 'loose' }, 600)).toBeLessThan(120);
    expect(sealedOf300({ wipeRim: true, lid: 'fingertip' }, 0)).toBeLessThan(180);
  });

  it('break more often when they are filled cold', () => {
    const cold = sealedOf300({ wipeRim: true, lid: 'fingertip' }, 600, 5);
    expect(cold).toBeLessThan(sealedOf300({ wipeRim: true, lid: 'fingertip' }, 600, 80) - 30);
  });
});

describe('filling', () => {
  it('moves the pot into the jars, full ones first, and stops when it is empty', () => {
    const hot = run(stoveWith(butter), 12, { potDial: 0.7, stir: true });
    const before = volumeL(hot.pot.contents);
    let stove: Stove = { ...hot, jars: Array.from({ length: 12 }, () => emptyJar(0.2366, 85)) };
    for (let i = 0; i < 12; i++) stove = fillNextJar(stove, { wipeRim: true, lid: 'fingertip' });
    const filled = stove.jars.map(({ filledL }) => filledL).filter((litres) => litres > 0);
    expect(filled[0]).toBeCloseTo(0.22, 2);
    expect(filled.length).toBe(Math.ceil((before - 0.02) / 0.22));
    expect(filled.reduce((sum, litres) => sum + litres, 0)).toBeCloseTo(
      before - volumeL(stove.pot.contents),
      6,
    );
    expect(fillNextJar(stove, { wipeRim: true, lid: 'fingertip' })).toEqual(stove);
  });
});
