// The planning page: what the cook has on the left, the plan it makes on the right, alive as it is typed.

import { useMemo, useRef, useState } from 'react';
import type { BatchRequest } from '../../core/request.ts';
import type { AppProps, Arrival } from '../actions.ts';
import { emptyDraft, examples, fromRequest, type Draft } from './draft.ts';
import { EveningPanel } from '../evening/EveningPanel.tsx';
import { FirstRun } from './FirstRun.tsx';
import { Gist } from './Gist.tsx';
import { Inputs } from './Inputs.tsx';
import { forgetLink } from './share.ts';
import { outcomeOf, type Outcome } from './outcome.ts';
import { refusal, wanting } from './noPlan.ts';
import { PlanSheet } from './PlanSheet.tsx';
import { ShareRow } from './ShareRow.tsx';
import { Rail } from '../stove/Rail.tsx';
import { Notices } from '../stove/Notices.tsx';

interface PlanPageProps extends AppProps {
  onStart: () => void;
  onStove: () => void;
  onOpen: (what: 'settings' | 'help' | 'microphone') => void;
}

export function PlanPage(props: PlanPageProps) {
  const { view, actions, settings, catalogue, arrival, onStart, onStove } = props;
  const [came, setCame] = useState<Arrival | undefined>(arrival);
  const [draft, setDraft] = useState<Draft>(() =>
    arrival?.kind === 'request' ? fromRequest(arrival.request) : startingDraft(view.batches),
  );
  const outcome = useMemo(() => outcomeOf(draft, view.learned), [draft, view.learned]);
  const out = useRef<HTMLElement>(null);
  const take = (next: Arrival) => {
    setCame(next);
    if (next.kind === 'request') setDraft(fromRequest(next.request));
  };
  const word = (key: string) => catalogue.text({ key });
  return (
    <div className="planning">
      <Header {...props} />
      <Notices notices={view.notices} catalogue={catalogue} takeOver={actions.takeOver} />
      {came?.kind === 'refused' && (
        <p className="notice grave" role="alert">
          {came.says}
        </p>
      )}
      {view.batches.length > 0 && (
        <section className="running" aria-label={word('screen.running')}>
          <h2>{word('screen.running')}</h2>
          <Rail
            view={view}
            current={null}
            catalogue={catalogue}
            focus={(id) => (actions.focus(id), onStove())}
          />
          <button type="button" className="choice" onClick={onStove}>
            {word('screen.go.stove')}
          </button>
        </section>
      )}
      <EveningPanel view={view} catalogue={catalogue} />
      {view.batches.length === 0 && <FirstRun view={view} actions={actions} catalogue={catalogue} />}
      <main>
        <ExampleRow catalogue={catalogue} onTake={setDraft} onClear={() => setDraft(emptyDraft)} />
        <div className="plan-columns">
          <div>
            <Inputs
              draft={draft}
              onChange={setDraft}
              outcome={outcome}
              settings={settings}
              catalogue={catalogue}
            />
            <Gist outcome={outcome} catalogue={catalogue} onOpen={() => out.current?.scrollIntoView()} />
          </div>
          <section ref={out} className="plan-out" aria-label={word('screen.plan.title')}>
            <Out outcome={outcome} {...props} />
            {outcome.kind === 'plan' && (
              <StartBar
                again={view.batches.length > 0}
                catalogue={catalogue}
                onMicrophone={() => {
                  actions.start();
                  props.onOpen('microphone');
                }}
                onStart={() => {
                  forgetLink();
                  actions.start();
                  actions.plan(outcome.request);
                  onStart();
                }}
              />
            )}
            <ShareRow request={requestOf(outcome)} catalogue={catalogue} onArrival={take} />
          </section>
        </div>
      </main>
      <footer className="plan-foot">{word('screen.plan.caution')}</footer>
    </div>
  );
}

/** The kitchen stays where it is: altitude, pot and burner of the last batch are still right. */
function startingDraft(batches: AppProps['view']['batches']): Draft {
  const last = batches.at(-1)?.plan.request;
  if (!last) return emptyDraft;
  const { elevationM, potDiameterM, burnerW, jar } = fromRequest(last);
  return { ...emptyDraft, elevationM, potDiameterM, burnerW, jar };
}

function requestOf(outcome: Outcome): BatchRequest | null {
  return outcome.kind === 'plan' ? outcome.request : null;
}

function Header({ settings, actions, catalogue, onOpen }: PlanPageProps) {
  const word = (key: string) => catalogue.text({ key });
  const other = settings.units === 'us' ? 'metric' : 'us';
  return (
    <header className="plan-head">
      <p className="wordmark">Stovehand</p>
      <nav aria-label={word('screen.more.ways')}>
        <button type="button" className="link" onClick={() => actions.set({ units: other })}>
          {word(`screen.units.to.${other}`)}
        </button>
        <button type="button" className="link" onClick={() => onOpen('settings')}>
          {word('screen.go.settings')}
        </button>
        <button type="button" className="link" onClick={() => onOpen('help')}>
          {word('screen.go.help')}
        </button>
      </nav>
    </header>
  );
}

function ExampleRow({
  catalogue,
  onTake,
  onClear,
}: {
  catalogue: AppProps['catalogue'];
  onTake: (draft: Draft) => void;
  onClear: () => void;
}) {
  return (
    <p className="examples">
      <span>{catalogue.text({ key: 'screen.example' })}</span>
      {examples.map((example) => (
        <button key={example.name} type="button" className="link" onClick={() => onTake(example.draft)}>
          {catalogue.text({ key: `screen.example.${example.name}` })}
        </button>
      ))}
      <button type="button" className="link quiet" onClick={onClear}>
        {catalogue.text({ key: 'screen.clear' })}
      </button>
    </p>
  );
}

function Out({ outcome, settings, catalogue }: PlanPageProps & { outcome: Outcome }) {
  switch (outcome.kind) {
    case 'plan':
      return <PlanSheet plan={outcome.plan} units={settings.units} catalogue={catalogue} />;
    case 'refused':
      return (
        <div className="plan-empty">
          <p role="status">{refusal(outcome, catalogue)}</p>
        </div>
      );
    case 'waiting':
      return (
        <div className="plan-empty">
          <p role="status">{wanting(outcome, catalogue)}</p>
        </div>
      );
  }
}

function StartBar({
  again,
  catalogue,
  onStart,
  onMicrophone,
}: {
  again: boolean;
  catalogue: AppProps['catalogue'];
  onStart: () => void;
  onMicrophone: () => void;
}) {
  return (
    <div className="start-bar">
      <button type="button" className="choice main" onClick={onStart}>
        <span className="choice-label">
          {catalogue.text({ key: again ? 'screen.start.add' : 'screen.start' })}
        </span>
      </button>
      <p>
        {catalogue.text({ key: 'screen.start.says' })}{' '}
        <button type="button" className="link" onClick={onMicrophone}>
          {catalogue.text({ key: 'screen.settings.microphone' })}
        </button>
      </p>
    </div>
  );
}
