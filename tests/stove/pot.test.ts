// Does the simulated pot warm, boil, thicken, foam and catch as energy balances and printed physics say?

import { describe, expect, it, vi } from 'vitest';
import { MIN, habits, stoveWith, water, mash, butter, run } from './bench.ts';
import type { Stove } from '../../src/stove/index.ts';
import { boilOf, depthM, massKg, simmerToWeight, smells, solubleSolidsPct } from '../../src/stove/index.ts';

// Two hours of kitchen take a second of a free processor; a busy one may need ten.
vi.setConfig({ testTimeout: 60_000 });

describe('water in the pot', () => {
  it('comes to the boil when the heat has paid for it (4.19 kJ/kg/K, with loss from the sides)', () => {
    const needsJ = 80 * (2 * 4190 + 1.5 * 500);
    const idealMin = needsJ / (1500 * 0.85) / MIN;
    const before = run(stoveWith(water(2)), 0.98 * idealMin, { potDial: 1, potLid: true });
    const after = run(stoveWith(water(2)), 1.12 * idealMin, { potDial: 1, potLid: true });
    expect(boilOf(before.pot)).toBe('still');
    expect(boilOf(after.pot)).toBe('rolling');
  });

  it.each([
    [0, 100.0],
    [1524, 94.9],
    [2743.2, 90.83],
  ])(
    'boils at %s m at %s C, within 0.1 C (standard atmosphere and IAPWS steam line)',
    (elevationM, boilsAtC) => {
      const boiling = run(stoveWith(water(2), elevationM), 20, { potDial: 1 });
      expect(Math.abs(boiling.pot.tempC - boilsAtC)).toBeLessThan(0.1);
    },
  );

  it('loses 26.6 g a minute for each kilowatt of net heat, within 5 % (latent heat of the steam table)', () => {
    const boiling = run(stoveWith(water(3)), 20, { potDial: 1 });
    const later = run(boiling, 10, { potDial: 1 });
    const gPerMin = (boiling.pot.contents.waterKg - later.pot.contents.waterKg) * 100;
    const sideM2 = Math.PI * 0.26 * (depthM(later.pot) + 0.02);
    const netKW = (later.potBurner.heatW - 12 * sideM2 * 80) / 1000;
    expect(Math.abs(gPerMin / netKW / 26.6 - 1)).toBeLessThan(0.05);
  });

  it('stays in the pot under a lid', () => {
    const open = run(stoveWith(water(3)), 40, { potDial: 1 });
    const covered = run(stoveWith(water(3)), 40, { potDial: 1, potLid: true });
    const lost = (stove: Stove): number => 3 - stove.pot.contents.waterKg;
    expect(lost(covered)).toBeLessThan(0.25 * lost(open));
  });

  it('cools when the flame goes out', () => {
    const boiling = run(stoveWith(water(2)), 20, { potDial: 1 });
    expect(run(boiling, 30, {}).pot.tempC).toBeLessThan(boiling.pot.tempC - 10);
  });
});

describe('fruit and sugar in the pot', () => {
  it('boils about 4.4 C above water at 65 % (USDA AIB-539 guide 7: water + 8 F), within 0.6 C', () => {
    let jam = stoveWith({ waterKg: 1.1, solubleKg: 1.3, insolubleKg: 0.01, body: 1 });
    while (solubleSolidsPct(jam.pot.contents) < 65) jam = run(jam, 0.5, { potDial: 1, stir: true });
    expect(solubleSolidsPct(jam.pot.contents)).toBeLessThan(66);
    expect(Math.abs(jam.pot.tempC - 100 - 4.4)).toBeLessThan(0.6);
  });

  it('keeps its solids: only water leaves', () => {
    const done = run(stoveWith(mash), 60, { potDial: 0.7, stir: true, skim: true });
    expect(done.pot.contents.solubleKg).toBeCloseTo(mash.solubleKg, 9);
    expect(done.pot.contents.insolubleKg).toBeCloseTo(mash.insolubleKg, 9);
    expect(massKg(done.pot.contents)).toBeLessThan(massKg(mash));
  });

  it('simmers at a low dial, rolls at a high one, and is still with none', () => {
    const hot = run(stoveWith(mash), 25, { potDial: 1, stir: true });
    expect(boilOf(hot.pot)).toBe('rolling');
    expect(boilOf(run(hot, 3, { potDial: 0.2, stir: true }).pot)).toBe('simmer');
    expect(boilOf(run(hot, 3, {}).pot)).toBe('still');
  });

  it('more water at the start never shortens the simmer', () => {
    let last = 0;
    for (const extraKg of [0, 0.2, 0.5, 1]) {
      const stove = stoveWith({ ...mash, waterKg: mash.waterKg + extraKg });
      const { simmerMinutes } = simmerToWeight(stove, habits, 2.1);
      expect(simmerMinutes).toBeGreaterThan(last);
      last = simmerMinutes;
    }
  });

  it('foams, and skimming takes the foam off', () => {
    const foaming = run(stoveWith(mash), 25, { potDial: 1 });
    expect(foaming.pot.foamM).toBeGreaterThan(0.03);
    expect(run(foaming, 2, { potDial: 0.7, skim: true }).pot.foamM).toBeLessThan(foaming.pot.foamM / 3);
  });

  it('runs over when a small pot is full and the flame is high', () => {
    const full = stoveWith(mash);
    const small = { ...full, pot: { ...full.pot, diameterM: 0.18, heightM: 0.12 } };
    expect(run(small, 25, { potDial: 1 }).pot.spilledKg).toBeGreaterThan(0);
    expect(run(full, 25, { potDial: 1 }).pot.spilledKg).toBe(0);
  });

  it('catches on the bottom when a thick butter is left alone, not when it is stirred', () => {
    const thick = run(stoveWith(butter), 12, { potDial: 0.7, stir: true });
    expect(smells(run(thick, 20, { potDial: 0.6 }).pot)).not.toBe('good');
    expect(smells(run(thick, 20, { potDial: 0.6, stir: true }).pot)).toBe('good');
  });
});
