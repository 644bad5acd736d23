// Are the simulated kitchen's readings, plates and steps what a test and a practice evening can lean on?

import { describe, expect, it, vi } from 'vitest';
import { stoveWith, mash, butter, run } from './bench.ts';
import type { Stove } from '../../src/stove/index.ts';
import {
  cookOn,
  depthM,
  drawFruit,
  drawKitchen,
  handsOff,
  hat,
  massKg,
  measureDepth,
  plateTest,
  readThermometer,
  setUpStove,
  solubleSolidsPct,
  startCooking,
  stepStove,
  weighPot,
} from '../../src/stove/index.ts';

// Two hours of kitchen take a second of a free processor; a busy one may need ten.
vi.setConfig({ testTimeout: 60_000 });

describe('readings', () => {
  it('scatter about the truth by what a home kitchen can do', () => {
    let stove = run(stoveWith(mash), 25, { potDial: 1 });
    const truth = { kg: massKg(stove.pot.contents), m: depthM(stove.pot), c: stove.pot.tempC };
    let worst = 0;
    let sum = 0;
    for (let i = 0; i < 400; i++) {
      const weighed = weighPot(stove);
      const measured = measureDepth(weighed.stove);
      const heated = readThermometer(measured.stove);
      stove = heated.stove;
      sum += weighed.value / truth.kg - 1;
      worst = Math.max(worst, Math.abs(measured.value - truth.m), Math.abs(heated.value - truth.c) / 250);
    }
    expect(Math.abs(sum / 400)).toBeLessThan(0.002);
    expect(worst).toBeGreaterThan(0.003);
    expect(worst).toBeLessThan(0.012);
  });

  it('of the cold plate: runny before it sets, holds after, too thick far beyond, nothing on a warm plate', () => {
    const at = (setsAtPct: number, plateC = -10): Stove => ({ ...stoveWith(butter), setsAtPct, plateC });
    const pct = solubleSolidsPct(butter);
    expect(plateTest(at(pct + 4)).value).toBe('runny');
    expect(plateTest(at(pct - 3)).value).toBe('holds');
    expect(plateTest(at(pct - 12)).value).toBe('too thick');
    expect(plateTest(at(pct - 3, 21)).value).toBe('plate too warm');
  });

  it('a plate in the freezer is cold after a quarter of an hour', () => {
    expect(run(stoveWith(mash), 15, { plate: 'freezer' }).plateC).toBeLessThan(0);
    expect(run(stoveWith(mash), 15, { plate: 'bench' }).plateC).toBeGreaterThan(15);
  });
});

describe('the simulator', () => {
  it('gives the same evening for the same seed, another for another', () => {
    const evening = (seed: number): Stove => {
      const from = hat(seed);
      const kitchen = drawKitchen(from, 'butter');
      const fruit = drawFruit(from, { solublePct: 14, sdPct: 1, insolublePct: 2, body: 1 }, 2);
      let cooking = startCooking(setUpStove(kitchen, fruit, from.seed()));
      for (let i = 0; i < 60; i++) cooking = cookOn(cooking, kitchen.habits, 10);
      return cooking.stove;
    };
    expect(evening(5)).toEqual(evening(5));
    expect(evening(5)).not.toEqual(evening(6));
  });

  it('does not change what it was given', () => {
    const before = stoveWith(mash);
    const copy = structuredClone(before);
    stepStove(before, 60, { ...handsOff, potDial: 1, stir: true });
    expect(before).toEqual(copy);
  });

  it('comes to nearly the same in long steps as in short ones', () => {
    const short = run(stoveWith(mash), 40, { potDial: 0.8, stir: true }, 1);
    const long = run(stoveWith(mash), 40, { potDial: 0.8, stir: true }, 60);
    expect(Math.abs(massKg(short.pot.contents) / massKg(long.pot.contents) - 1)).toBeLessThan(0.005);
  });

  it('stays finite for any hands in any drawn kitchen', () => {
    for (let seed = 0; seed < 40; seed++) {
      const from = hat(seed);
      const kitchen = drawKitchen(from, seed % 2 ? 'jam' : 'butter');
      let stove = setUpStove(kitchen, mash, from.seed());
      for (let i = 0; i < 120; i++) {
        const hands = {
          ...handsOff,
          potDial: from.between(0, 1),
          stir: from.between(0, 1) < 0.5,
          cannerDial: 1,
        };
        stove = stepStove(stove, 60, hands);
      }
      const { tempC, contents, scorch, foamM } = stove.pot;
      for (const value of [
        tempC,
        contents.waterKg,
        scorch,
        foamM,
        stove.canner.tempC,
        stove.canner.waterKg,
      ]) {
        expect(Number.isFinite(value) && value >= 0, `seed ${seed}`).toBe(true);
      }
    }
  });
});
