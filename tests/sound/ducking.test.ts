// The mouth makes way for the cook, and never for its own echo.

import { describe, expect, it } from 'vitest';
import { createDucking } from '../../src/sound/ducking.ts';

function setUp() {
  const told: boolean[] = [];
  const ducking = createDucking((on) => told.push(on));
  let at = 0;
  const hear = (seconds: number, levelDb: number, speech = true) => {
    for (let i = 0; i < seconds * 10; i++) ducking.look({ at: (at += 100), levelDb, speech });
  };
  const speak = (on: boolean) => ducking.mouth(on, at);
  return { told, hear, speak };
}

describe('while it speaks', () => {
  it('its own echo, however loud, does not lower it', () => {
    const { told, hear, speak } = setUp();
    speak(true);
    hear(10, -15);
    expect(told).toEqual([]);
  });

  it('a voice clearly above the echo does, within half a second, until it ends', () => {
    const { told, hear, speak } = setUp();
    speak(true);
    hear(3, -40);
    hear(0.5, -25);
    expect(told).toEqual([true]);
    hear(2, -40, false);
    expect(told).toEqual([true, false]);
  });

  it('a clink does not, and neither does a roar that is no voice', () => {
    const { told, hear, speak } = setUp();
    speak(true);
    hear(3, -40);
    hear(0.2, -10);
    hear(1, -40);
    hear(2, -20, false);
    expect(told).toEqual([]);
  });

  it('a voice does not teach it that the echo is loud: the next word still counts', () => {
    const { told, hear, speak } = setUp();
    speak(true);
    hear(3, -40);
    hear(4, -25);
    hear(2, -40, false);
    hear(1, -25);
    expect(told).toEqual([true, false, true]);
  });

  it('its full voice is back for the next sentence', () => {
    const { told, hear, speak } = setUp();
    speak(true);
    hear(3, -40);
    hear(1, -25);
    speak(false);
    expect(told).toEqual([true, false]);
  });
});

it('while it is silent there is nothing to lower', () => {
  const { told, hear } = setUp();
  hear(5, -10);
  expect(told).toEqual([]);
});
