// A voice that was learnt on another network is not said to be known.

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { KnownVoice } from '../../src/app/sheets/KnownVoice.tsx';
import type { LearningEar, VoiceKnown } from '../../src/voice/learning.ts';
import * as fixtures from './fixtures.ts';

const learner = (voice: VoiceKnown): LearningEar => ({
  canLearn: true,
  voice,
  read: async () => null,
  stopReading() {},
  learn: async () => null,
  useProfile() {},
});
const shown = (voice: VoiceKnown) =>
  renderToStaticMarkup(
    <KnownVoice learner={learner(voice)} ear={fixtures.listening} catalogue={fixtures.catalogue} />,
  );

describe('what is said of a kept voice', () => {
  test('known only where it fits the network of this visit', () => {
    expect(shown('known')).toContain('I know your voice: you have read to me.');
    for (const voice of ['waiting', 'other network', 'none'] as const)
      expect(shown(voice)).not.toContain('I know your voice:');
  });

  test('one of another network has to be read anew, and can be forgotten', () => {
    expect(shown('other network')).toContain('Please read to me again');
    expect(shown('other network')).toContain('Forget my voice');
  });

  test('nothing where there is none', () => {
    expect(shown('none')).toBe('');
  });
});
