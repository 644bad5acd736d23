// A voice that was learnt before: that it is known, and how to have it forgotten.

import { useState } from 'react';
import type { LearningEar } from '../../voice/learning.ts';
import type { AppProps } from '../actions.ts';
import { forgetProfile, keptProfile } from '../learner.ts';

interface KnownVoiceProps {
  learner: LearningEar;
  catalogue: AppProps['catalogue'];
}

export function KnownVoice({ learner, catalogue }: KnownVoiceProps) {
  const word = (key: string) => catalogue.text({ key });
  const [stage, setStage] = useState<'none' | 'known' | 'forgotten'>(() =>
    keptProfile() ? 'known' : 'none',
  );
  if (stage === 'none') return null;
  if (stage === 'forgotten') return <p role="status">{word('screen.mic.forgotten')}</p>;
  const forget = () => {
    forgetProfile();
    void learner.useProfile(null);
    setStage('forgotten');
  };
  return (
    <div className="ask-row">
      <p>{word('screen.mic.known')}</p>
      <button type="button" className="choice" onClick={forget}>
        {word('screen.mic.forget')}
      </button>
    </div>
  );
}
