// For development and tests only: one screen in one state, named in the address, e.g. /?state=simmering&theme=dark.

import { createRoot } from 'react-dom/client';
import * as fixtures from '../fixtures.ts';
import { drawEvening } from '../../evening/kitchens.ts';
import { planEvening } from '../../../src/core/evening/index.ts';
import { agendaOf } from '../../../src/kitchen/evening/agenda.ts';
import { adviceWords } from '../../../src/kitchen/evening/saying.ts';
import { timeOfPlan } from '../../../src/kitchen/evening/times.ts';
import type { Message } from '../../../machines/kitchen/effects.ts';
import { hat } from '../../../src/stove/index.ts';
import { App } from '../../../src/app/App.tsx';
import { EveningSheet } from '../../../src/app/evening/EveningSheet.tsx';
import type { AppProps, Settings } from '../../../src/app/actions.ts';
import { Sight } from '../../../src/app/drawings/sights/Sight.tsx';
import { sights, type SightId } from '../../../src/kitchen/sights.ts';
import { examples, toRequest, type Draft } from '../../../src/app/plan/draft.ts';
import { batchRequestSchema } from '../../../src/core/index.ts';
import '../../../src/app/styles/index.css';

const asked = new URLSearchParams(window.location.search);
const name = asked.get('state') ?? 'simmering';

const settings: Settings = {
  ...fixtures.settings,
  theme: (asked.get('theme') as Settings['theme'] | null) ?? 'dark',
  hand: (asked.get('hand') as Settings['hand'] | null) ?? 'right',
  units: (asked.get('units') as Settings['units'] | null) ?? 'us',
};

/** A screen that shows its picture by itself. */
function shown(state: string, sight: SightId): AppProps['view'] {
  return { ...(fixtures.states[state] ?? fixtures.empty), showing: { sight, asked: false, fresh: true } };
}

const others: Record<string, AppProps['view']> = {
  several: fixtures.several,
  many: fixtures.many,
  troubled: fixtures.troubled,
  practising: fixtures.practising,
  showing: shown('comingToBoil', 'rollingBoil'),
  showingFill: shown('filling', 'headspace'),
  plan: fixtures.empty,
  planExample: fixtures.empty,
  planButter: fixtures.empty,
  planRefused: fixtures.empty,
  planRunning: fixtures.several,
};

const drafts: Record<string, Draft | undefined> = {
  planExample: examples[0]?.draft,
  planButter: examples[1]?.draft,
  planRunning: examples[2]?.draft,
  planRefused: examples[1] && { ...examples[1].draft, fruit: 'pumpkin' },
};

function arrival(): AppProps['arrival'] {
  const draft = drafts[name];
  const request = draft && toRequest(draft);
  return request ? { kind: 'request', request: batchRequestSchema.parse(request) } : undefined;
}

const ears = {
  listening: fixtures.listening,
  speaking: fixtures.speaking,
  called: fixtures.called,
  none: fixtures.noMicrophone,
  loading: fixtures.loading,
};

const root = document.getElementById('root');
if (!root) throw new Error('The gallery needs its root element.');
document.documentElement.dataset['theme'] = settings.theme;
document.documentElement.style.fontSize = `${asked.get('text') ?? '100'}%`;
/** Every picture that teaches, each with the words that stand for it. */
function Sights() {
  const word = (key: string) => fixtures.catalogue.text({ key });
  return (
    <main className="sights">
      {sights.map((sight) => (
        <section key={sight}>
          <Sight sight={sight} catalogue={fixtures.catalogue} />
          <p className="sight-words">{word(`see.${sight}.alt`)}</p>
        </section>
      ))}
    </main>
  );
}

/** Six batches and two canners, an hour into the evening. */
function sixBatches(view: AppProps['view']): AppProps['view'] {
  const beganAt = view.now - 60 * 60_000;
  const request = { ...drawEvening(hat(12), { batches: 6, canners: 2 }), beganAt };
  const plan = planEvening(request, { budgetMs: 200, now: () => performance.now(), seed: 1 });
  const word = (message: Message) => fixtures.catalogue.text(message);
  const speech = { word, timeOf: (minute: number) => timeOfPlan(request, minute), now: 0 };
  const advice = plan.advice.map((one) => adviceWords(one, request, speech));
  return { ...view, evening: { plan, waits: [], advice, agenda: agendaOf(plan, 60) } };
}

const evenings: Record<string, (() => AppProps['view']) | undefined> = {
  evening: () => sixBatches(fixtures.several),
  eveningMany: () => sixBatches(fixtures.many),
};

function Screen() {
  if (name === 'sights') return <Sights />;
  if (name === 'eveningSheet')
    return (
      <main>
        <h1>{fixtures.catalogue.text({ key: 'screen.evening.title' })}</h1>
        <EveningSheet view={sixBatches(fixtures.several)} catalogue={fixtures.catalogue} onClose={() => {}} />
      </main>
    );
  return (
    <App
      view={evenings[name]?.() ?? fixtures.states[name] ?? others[name] ?? fixtures.empty}
      actions={fixtures.actions}
      settings={settings}
      catalogue={fixtures.catalogue}
      ear={ears[(asked.get('ear') as keyof typeof ears | null) ?? 'listening']}
      started
      arrival={arrival()}
    />
  );
}

createRoot(root).render(<Screen />);
