// The table of sounds: every sound has a meaning in words, and the table agrees with itself.

import { describe, expect, it } from 'vitest';
import { meanings, soundNames } from '../../sounds/meanings.ts';
import { scores, levelOf } from '../../sounds/scores.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';

const catalogue = createCatalogue('en', 'us');

describe.each(soundNames)('the meaning of "%s"', (name) => {
  const { meaning, urgency, latched, repeats, alarm } = meanings[name];

  it('can be told to the cook in one breath', () => {
    const text = catalogue.text({ key: meaning });
    expect(text.length).toBeGreaterThan(20);
    expect(text.split(' ').length).toBeLessThan(25);
  });

  it('is as loud as its urgency', () => {
    expect(scores[name].levelDb).toBe(levelOf[urgency]);
  });

  it('repeats only what stands until it is answered, and is an alarm only if it stands', () => {
    if (repeats) expect(latched).toBe(true);
    if (alarm !== null) expect(latched).toBe(true);
  });
});

it('no two sounds mean the same', () => {
  const texts = soundNames.map((name) => catalogue.text({ key: meanings[name].meaning }));
  expect(new Set(texts).size).toBe(soundNames.length);
});
