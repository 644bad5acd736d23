// The microphone test: the room as it is, one sentence, a frank word on both; then a minute of reading, for whoever likes.

import { useEffect, useState, useSyncExternalStore } from 'react';
import type { EarState } from '../../kitchen/ports.ts';
import type { Room } from '../../sound/levels.ts';
import { READING_SENTENCES } from '../../voice/learning.ts';
import { microphoneVerdict, type Look, type Verdict } from '../../voice/microphoneTest.ts';
import type { AppProps } from '../actions.ts';
import { KnownVoice } from './KnownVoice.tsx';
import { ReadingAloud } from './ReadingAloud.tsx';
import { Sheet } from './Sheet.tsx';

type MicrophoneSheetProps = Pick<AppProps, 'actions' | 'catalogue' | 'ear' | 'started'> & {
  onClose: () => void;
};

/** No command is among these, so that the test moves nothing. */
const SENTENCE = READING_SENTENCES[2] ?? '';

export function MicrophoneSheet(props: MicrophoneSheetProps) {
  const { actions, catalogue, ear, onClose } = props;
  const word = (key: string) => catalogue.text({ key });
  const [reading, setReading] = useState(false);
  const [round, setRound] = useState(0);
  const learner = actions.learner();
  return (
    <Sheet title={word('screen.mic.title')} closeLabel={word('screen.close')} onClose={onClose}>
      {reading && learner ? (
        <ReadingAloud learner={learner} ear={ear} catalogue={catalogue} />
      ) : (
        <Trial
          {...props}
          key={round}
          canLearn={learner?.canLearn === true}
          onAgain={() => setRound(round + 1)}
          onRead={() => setReading(true)}
        />
      )}
      {!reading && learner && <KnownVoice learner={learner} ear={ear} catalogue={catalogue} />}
    </Sheet>
  );
}

interface TrialProps extends Omit<MicrophoneSheetProps, 'onClose'> {
  canLearn: boolean;
  onAgain: () => void;
  onRead: () => void;
}

function Trial({ actions, catalogue, ear, started, canLearn, onAgain, onRead }: TrialProps) {
  const word = (key: string) => catalogue.text({ key });
  const state = useSyncExternalStore(ear.subscribe, ear.now, ear.now);
  const verdict = useVerdict(ear);
  useEffect(() => {
    const room = roomOf(verdict);
    if (room) actions.set({ room });
  }, [verdict, actions]);
  return (
    <>
      <Test state={state} verdict={verdict} started={started} actions={actions} catalogue={catalogue} />
      {verdict.kind !== 'listening' && (
        <div className="ask-row">
          <button type="button" className="choice" onClick={onAgain}>
            {word('screen.mic.again')}
          </button>
          {canLearn && (
            <button type="button" className="choice" onClick={onRead}>
              {word('screen.mic.learn')}
            </button>
          )}
        </div>
      )}
      {verdict.kind !== 'listening' && canLearn && <p>{word('screen.mic.learn.says')}</p>}
    </>
  );
}

/** What the mouth's levels rest on from now on; null where nothing sure was measured. */
function roomOf(verdict: Verdict): Room | null {
  if (verdict.kind === 'good') return { noiseDb: verdict.noiseDb, voiceDb: verdict.speechDb };
  if (verdict.kind !== 'loud room' || !Number.isFinite(verdict.snrDb)) return null;
  return { noiseDb: verdict.noiseDb, voiceDb: Math.min(0, verdict.noiseDb + verdict.snrDb) };
}

/** Gathers what the meter shows until it is enough for a verdict, which then stands. */
function useVerdict(ear: AppProps['ear']): Verdict {
  const [verdict, setVerdict] = useState<Verdict>(microphoneVerdict([]));
  useEffect(() => {
    const looks: Look[] = [];
    let over = false;
    return ear.subscribe(() => {
      const now = ear.now();
      if (over || now.kind !== 'listening') return;
      looks.push({ levelDb: now.levelDb, speech: now.speech });
      const next = microphoneVerdict(looks);
      over = next.kind !== 'listening' && !now.speech; // the sentence is let to end
      if (next.kind === 'listening' || over) setVerdict(next);
    });
  }, [ear]);
  return verdict;
}

interface TestProps {
  state: EarState;
  verdict: Verdict;
  started: boolean;
  actions: AppProps['actions'];
  catalogue: AppProps['catalogue'];
}

function Test({ state, verdict, started, actions, catalogue }: TestProps) {
  const word = (key: string) => catalogue.text({ key });
  if (state.kind === 'loading') {
    const percent = Math.round(state.fraction * 100);
    return <p className="lead">{catalogue.text({ key: 'screen.ear.loading', params: { percent } })}</p>;
  }
  if (state.kind !== 'listening')
    return (
      <>
        <p className="lead">
          {word(state.kind === 'refused' ? `screen.says.ear.${state.why}` : 'screen.says.earOff')}
        </p>
        {!started && (
          <button type="button" className="choice main" onClick={actions.start}>
            {word('screen.mic.start')}
          </button>
        )}
      </>
    );
  if (verdict.kind !== 'listening') return <Outcome verdict={verdict} catalogue={catalogue} />;
  const quiet = verdict.quietShare < 1;
  const share = quiet ? verdict.quietShare : verdict.spokenShare;
  return (
    <>
      <p className="lead">{word(quiet ? 'screen.mic.quiet' : 'screen.mic.say')}</p>
      {!quiet && <p className="read-this">“{SENTENCE}”</p>}
      <progress max={1} value={share} aria-label={word('screen.mic.title')} />
    </>
  );
}

type Judged = Exclude<Verdict, { kind: 'listening' }>;

function Outcome({ verdict, catalogue }: { verdict: Judged; catalogue: AppProps['catalogue'] }) {
  return (
    <>
      <p className={verdict.kind === 'good' ? 'lead' : 'lead warning-line'} role="status">
        {catalogue.text({ key: keyOf(verdict) })}
      </p>
      {'snrDb' in verdict && Number.isFinite(verdict.snrDb) && (
        <p>{catalogue.text({ key: 'screen.mic.figures', params: { snr: Math.round(verdict.snrDb) } })}</p>
      )}
    </>
  );
}

function keyOf(verdict: Judged): string {
  switch (verdict.kind) {
    case 'silent':
      return 'screen.mic.silent';
    case 'too near':
      return 'screen.mic.tooNear';
    case 'too weak':
      return 'screen.mic.tooWeak';
    case 'loud room':
      return verdict.useless ? 'screen.mic.useless' : 'screen.mic.loud';
    case 'good':
      return 'screen.mic.good';
  }
}
