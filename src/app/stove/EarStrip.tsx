// What the ear does: whether it listens, how loud it is, what it made of the last words.

import { useSyncExternalStore } from 'react';
import type { Catalogue, EarState } from '../../kitchen/ports.ts';
import type { KitchenView } from '../../kitchen/view.ts';
import type { EarFeed } from '../actions.ts';

interface EarStripProps {
  ear: EarFeed;
  view: KitchenView;
  catalogue: Catalogue;
}

export function EarStrip({ ear, view, catalogue }: EarStripProps) {
  const state = useSyncExternalStore(ear.subscribe, ear.now, ear.now);
  return (
    <section
      className={`ear ${state.kind} ${isCalled(state) ? 'called' : ''}`}
      aria-label={catalogue.text({ key: 'screen.region.ear' })}
    >
      <Meter state={state} label={catalogue.text({ key: 'screen.ear.meter' })} />
      {view.practice && (
        <p className="practice">{catalogue.text({ key: 'screen.practice', params: { pace: view.pace } })}</p>
      )}
      <p className="ear-words" role="status">
        {earWords(state, view, catalogue)}
      </p>
    </section>
  );
}

const isCalled = (state: EarState): boolean => state.kind === 'listening' && state.called === true;

function earWords(state: EarState, view: KitchenView, catalogue: Catalogue): string {
  const { lastHeard } = view;
  if (isCalled(state)) return catalogue.text({ key: 'screen.ear.called' });
  if (state.kind === 'listening' && lastHeard && view.now - lastHeard.at < HEARD_STAYS_MS * view.pace) {
    return catalogue.text({ key: `screen.heard.${lastHeard.verdict}`, params: { words: lastHeard.words } });
  }
  switch (state.kind) {
    case 'off':
      return catalogue.text({ key: 'screen.ear.off' });
    case 'refused':
      return catalogue.text({ key: 'screen.ear.refused' });
    case 'loading':
      return catalogue.text({
        key: 'screen.ear.loading',
        params: { percent: Math.round(state.fraction * 100) },
      });
    case 'listening':
      if (state.speech) return catalogue.text({ key: 'screen.ear.speech' });
      return catalogue.text({ key: state.whole === false ? 'screen.ear.dull' : 'screen.ear.listening' });
  }
}

/** What was heard stays readable this long before the strip says that it listens again. */
const HEARD_STAYS_MS = 12_000;

const BARS = 9;
/** The quietest and loudest sound the meter shows, in dB below full scale. */
const QUIET_DB = -60;
const LOUD_DB = -12;

function Meter({ state, label }: { state: EarState; label: string }) {
  const level = state.kind === 'listening' ? (state.levelDb - QUIET_DB) / (LOUD_DB - QUIET_DB) : 0;
  const lit = Math.round(Math.min(1, Math.max(0, level)) * BARS);
  return (
    <svg className="meter" viewBox="0 0 76 30" width="76" height="30" role="img" aria-label={label}>
      {Array.from({ length: BARS }, (_, i) => {
        const height = 8 + (20 * i) / (BARS - 1);
        return (
          <rect
            key={i}
            className={i < lit ? 'lit' : ''}
            x={i * 8 + 2}
            y={29 - height}
            width={5}
            height={height}
          />
        );
      })}
      {(state.kind === 'off' || state.kind === 'refused') && <path className="meter-off" d="M4 27 L70 4" />}
    </svg>
  );
}
