// Push-to-talk: who has the word, from when until when.

import { describe, expect, it } from 'vitest';
import { Calling } from '../../src/kitchen/calling.ts';
import type { Hearing } from '../../src/kitchen/ports.ts';

const command: Hearing = {
  kind: 'heard',
  words: 'next',
  understood: { command: 'next', slots: {} },
  confidence: 0.5,
  ms: 1,
};

function setUp() {
  const told: string[] = [];
  let wall = 0;
  const calling = new Calling({
    ear: { call: (on) => told.push(on ? 'ear opens' : 'ear closes') },
    wall: () => wall,
    yield: (on) => told.push(on ? 'mouth yields' : 'mouth goes on'),
    called: () => told.push('called'),
  });
  const wait = (ms: number) => {
    wall += ms;
    calling.beat();
  };
  return { calling, told, wait };
}

const opened = ['mouth yields', 'ear opens', 'called'];
const closed = ['ear closes', 'mouth goes on'];

describe('a touch', () => {
  it('opens the ear, the mouth first, so that it is not heard', () => {
    const { calling, told } = setUp();
    calling.touch();
    expect(told).toEqual(opened);
    expect(calling.isOpen).toBe(true);
  });

  it('is over with one command', () => {
    const { calling, told } = setUp();
    calling.touch();
    calling.heard(command);
    expect(told).toEqual([...opened, ...closed]);
  });

  it('is not over with a mumble, for which the cook is asked again', () => {
    const { calling } = setUp();
    calling.touch();
    calling.heard({ kind: 'nothing', ms: 1 });
    expect(calling.isOpen).toBe(true);
  });

  it('is over after eight seconds of silence, and with a second touch', () => {
    const { calling, wait } = setUp();
    calling.touch();
    wait(7_999);
    expect(calling.isOpen).toBe(true);
    wait(1);
    expect(calling.isOpen).toBe(false);
    calling.touch();
    calling.touch();
    expect(calling.isOpen).toBe(false);
  });
});

describe('a held key', () => {
  it('keeps the ear open for as long as it is down, and a little more', () => {
    const { calling, wait } = setUp();
    calling.hold(true);
    wait(60_000);
    expect(calling.isOpen).toBe(true);
    calling.hold(false);
    wait(1_499);
    expect(calling.isOpen).toBe(true);
    wait(1);
    expect(calling.isOpen).toBe(false);
  });

  it('that comes up when nothing is open does nothing', () => {
    const { calling, told } = setUp();
    calling.hold(false);
    calling.heard(command);
    expect(told).toEqual([]);
  });
});
