// A voice that was learnt before: whether it is known to the ear of today, and how to have it forgotten.

import { useState, useSyncExternalStore } from 'react';
import type { LearningEar, VoiceKnown } from '../../voice/learning.ts';
import type { AppProps } from '../actions.ts';
import { forgetProfile } from '../learner.ts';

interface KnownVoiceProps {
  learner: LearningEar;
  ear: AppProps['ear'];
  catalogue: AppProps['catalogue'];
}

const SAYS: Record<Exclude<VoiceKnown, 'none'>, string> = {
  waiting: 'screen.mic.kept',
  known: 'screen.mic.known',
  'other network': 'screen.mic.outdated',
};

export function KnownVoice({ learner, ear, catalogue }: KnownVoiceProps) {
  const word = (key: string) => catalogue.text({ key });
  const voice = useSyncExternalStore(ear.subscribe, () => learner.voice, () => learner.voice); // prettier-ignore
  const [forgotten, setForgotten] = useState(false);
  if (voice === 'none') return forgotten ? <p role="status">{word('screen.mic.forgotten')}</p> : null;
  const forget = () => {
    forgetProfile();
    learner.useProfile(null);
    setForgotten(true);
  };
  return (
    <div className="ask-row">
      <p>{word(SAYS[voice])}</p>
      <button type="button" className="choice" onClick={forget}>
        {word('screen.mic.forget')}
      </button>
    </div>
  );
}
