// How the cook wants to be spoken to: what is kept, what is refused, and what a wish changes.

import { describe, expect, it, test } from 'vitest';
import { settingsFrom } from '../../src/app/preferences.ts';
import { profileFrom } from '../../src/app/learner.ts';
import { firstSpeech, granted, LOUDNESS, mannersOf, RATE, speakersOf } from '../../src/app/speech.ts';

const old = { units: 'metric', theme: 'dark', hand: 'left', letterKeys: false };

describe('settings that were kept', () => {
  it('of a version without speech go on, with the first manner', () => {
    expect(settingsFrom(JSON.stringify(old))).toEqual({
      ...old,
      language: 'en',
      speech: firstSpeech,
      room: null,
    });
  });

  it('with one field that cannot be read lose that field alone', () => {
    const speech = { ...firstSpeech, rate: 99, verbosity: 'expert', quietFrom: '25:00' };
    const room = { noiseDb: -50, voiceDb: -25 };
    expect(settingsFrom(JSON.stringify({ ...old, speech, room }))).toEqual({
      ...old,
      language: 'en',
      speech: { ...firstSpeech, verbosity: 'expert' },
      room,
    });
  });

  test.each(['', 'null', '{', '{"units":"stone"}'])('that are no settings: %s', (kept) =>
    expect(settingsFrom(kept)).toBeNull(),
  );
});

describe('a wish', () => {
  it('slower moves the speed and nothing else, and says so in the new voice', () => {
    expect(granted(firstSpeech, 'slower')).toEqual({
      patch: { rate: 0.8 },
      says: { key: 'kitchen.wish.slower' },
    });
  });

  it('goes as far as the measure, and then says so', () => {
    expect(granted({ ...firstSpeech, rate: RATE[0] }, 'slower').says.key).toBe('kitchen.wish.atTheEnd');
    expect(granted(firstSpeech, 'louder').says.key).toBe('kitchen.wish.atTheEnd');
    expect(granted({ ...firstSpeech, loudness: 0.4 }, 'softer').patch).toEqual({ loudness: LOUDNESS[0] });
    expect(granted({ ...firstSpeech, rate: 1.5 }, 'faster').patch).toEqual({ rate: RATE[1] });
  });
});

describe('the manner', () => {
  it('has its hours in minutes, or none', () => {
    expect(mannersOf(firstSpeech)).toEqual({ words: 'cook', quiet: { from: 22 * 60, to: 7 * 60 } });
    expect(mannersOf({ ...firstSpeech, quiet: false }).quiet).toBeNull();
  });

  it('a bundled voice is not exchanged for one of the browser', () => {
    expect(speakersOf({ ...firstSpeech, voice: 'slt' })).toEqual({ bundled: 'slt', own: 'none' });
    expect(speakersOf({ ...firstSpeech, voice: 'local:Anna' })).toEqual({ bundled: 'rms', own: 'Anna' });
    expect(speakersOf(firstSpeech)).toEqual({ bundled: 'rms', own: null });
  });
});

describe('a learnt voice that was kept', () => {
  const profile = { version: 1, network: 'a', seconds: 60, values: [1, -2] };

  it('is read back as it was', () => expect(profileFrom(JSON.stringify(profile))).toEqual(profile));

  test.each([
    null,
    '',
    '{}',
    JSON.stringify({ ...profile, version: 2 }),
    JSON.stringify({ ...profile, values: ['a'] }),
  ])('is left alone where it is no profile: %s', (kept) => expect(profileFrom(kept)).toBeNull());
});
