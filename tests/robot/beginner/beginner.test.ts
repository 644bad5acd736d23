// Does a cook who knows nothing get through by the page's words and pictures alone, and fail where they are taken away?

import { describe, expect, test, vi } from 'vitest';
import { cookBatch, fadedWords, fullWords } from './batches.ts';
import { doings, inWords, likeness, numberIn, toSay } from './instructions.ts';

// A batch takes about two seconds of a free processor, far more of a busy one. `npm run beginners` cooks a hundred.
vi.setConfig({ testTimeout: 240_000 });

describe('a beginner who knows nothing', () => {
  // Jam and butter at three altitudes, one for the shelf with jars to boil first, one for the cold.
  test.each([7, 18])('finishes batch %i with no point of safety missed', async (seed) => {
    const batch = await cookBatch(seed, fullWords);
    expect(batch.outcome, batch.record.join('\n')).toBe('putAway');
    expect(batch.missed, batch.record.join('\n')).toEqual([]);
    expect(Object.keys(batch.points).length).toBeGreaterThan(0);
    if (batch.keep === 'shelf') expect(batch.shelved).toBeGreaterThan(0);
  });

  test('fails the same batch where guidance was faded before anything was learnt', async () => {
    const batch = await cookBatch(18, fadedWords());
    expect(batch.outcome !== 'putAway' || batch.missed.length > 0, batch.record.join('\n')).toBe(true);
  });
});

describe('what it is told', () => {
  test('it does word for word', () => {
    expect(doings('Pot off the burner. Put a spoonful on the cold plate.', 'pot')).toEqual([
      { do: 'takeOff' },
      { do: 'spoonOnPlate' },
    ]);
    expect(doings('Boil the empty jars twelve minutes. Pot off the burner, lid on.', 'pot')).toEqual(
      expect.arrayContaining([{ do: 'heatJars', minutes: 12 }]),
    );
    expect(doings('Well done.', 'pot')).toEqual([]);
  });

  test('it fills without care where care is not named', () => {
    expect(doings('Fill the jars.', 'pot')).toMatchObject([
      { do: 'fill', headspace: false, wiped: false, fingertip: false },
    ]);
  });

  test('it says as it was told to, but for what must first be true', () => {
    expect(toSay('Grip under the ring. Say: the jars are out.')).toBe('the jars are out');
    expect(toSay('Stay close. Tell me at once: the boil dropped.')).toBeNull();
  });

  test('numbers come in words', () => {
    expect(['twenty-four', 'ten', '7', 'nonsense'].map(numberIn)).toEqual([24, 10, 7, null]);
    expect([9, 21, 40].map(inWords)).toEqual(['nine', 'twenty-one', 'forty']);
  });

  test('a thing is known by the words it was shown with', () => {
    const rolling = 'Big bubbles break all over and the whole top heaves.';
    expect(likeness('Big bubbles break all over.', rolling)).toBe(1);
    expect(likeness('The water lies still.', rolling)).toBe(0);
  });
});
