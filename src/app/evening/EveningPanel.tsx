// The evening's plan to sit down with: what to start when and why, the picture of it, what the cook has for it.

import { useSyncExternalStore } from 'react';
import type { AppProps } from '../actions.ts';
import { cannerWord } from '../cannerLabel.ts';
import type { AgendaLine } from '../../kitchen/evening/agenda.ts';
import { proofWords } from '../../kitchen/evening/planWords.ts';
import type { EveningSettings } from '../../kitchen/evening/settings.ts';
import { useBox } from '../stove/useBox.ts';
import { timeOfPlan } from '../../kitchen/evening/times.ts';
import { Timeline } from './Timeline.tsx';
import { eveningPreference } from './preference.ts';

type EveningPanelProps = Pick<AppProps, 'view' | 'catalogue'>;

/** `headed` false: what it lies in says already what it is. */
export function EveningPanel({ view, catalogue, headed = true }: EveningPanelProps & { headed?: boolean }) {
  const { evening } = view;
  const [ref, box] = useBox<HTMLDivElement>('evening');
  if (!evening) return null;
  const { plan, advice, agenda } = evening;
  const word = (key: string, params: Record<string, string | number> = {}) => catalogue.text({ key, params });
  if (plan.tasks.length === 0)
    return (
      <section className="evening" aria-label={word('screen.evening.title')}>
        {headed && <h2>{word('screen.evening.title')}</h2>}
        <p role="status">{word('screen.evening.none')}</p>
        <EveningInputs word={word} />
      </section>
    );
  const at = (minute: number): string => timeOfPlan(plan.request, minute);
  const { low, likely, high } = plan.finish;
  return (
    <section className="evening" aria-label={word('screen.evening.title')}>
      {headed && <h2>{word('screen.evening.title')}</h2>}
      {agenda.length > 0 && (
        <ol className="evening-agenda">
          {agenda.map((line) => {
            const whose = line.names.join(', ') || numberedCanner(line.canner, word);
            return (
              <li key={line.id}>
                <b>{at(line.at)}</b>
                {whose && <span>{whose}</span>}
                <span className="next-step">{word(`screen.evening.step.${line.step}`)}</span>
              </li>
            );
          })}
        </ol>
      )}
      {advice.length > 0 && (
        <ul className="evening-advice">
          {advice.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <p className="evening-finish">
        {word('screen.evening.finish', { likely: at(likely), low: at(low), high: at(high) })}{' '}
        <span className="evening-by">{catalogue.text(proofWords(plan))}</span>
      </p>
      <div className="timeline-frame" ref={ref}>
        <Timeline evening={evening} now={view.now} catalogue={catalogue} width={Math.max(300, box.w)} />
      </div>
      <EveningInputs word={word} />
      <p className="ask-row no-print">
        <button type="button" className="choice small" onClick={() => window.print()}>
          {word('screen.evening.print')}
        </button>
      </p>
    </section>
  );
}

function EveningInputs({ word }: { word: (key: string) => string }) {
  const settings = useSyncExternalStore(eveningPreference.subscribe, eveningPreference.now);
  const set = (patch: Partial<EveningSettings>) => eveningPreference.change(patch);
  return (
    <fieldset className="evening-inputs no-print">
      <legend>{word('screen.evening.have')}</legend>
      <Count
        label={word('screen.evening.cooks')}
        value={settings.cooks}
        most={3}
        onPick={(cooks) => set({ cooks })}
      />
      <Count
        label={word('screen.evening.rings')}
        value={settings.rings}
        most={6}
        onPick={(rings) => set({ rings })}
      />
      <Count
        label={word('screen.evening.canners')}
        value={settings.canners}
        most={2}
        onPick={(canners) => set({ canners })}
      />
      <label>
        <span>{word('screen.evening.overBy')}</span>
        <input
          type="time"
          value={settings.overBy ?? ''}
          onChange={({ target }) => set({ overBy: target.value === '' ? null : target.value })}
        />
      </label>
      <label>
        <span>{word('screen.evening.away')}</span>
        <input
          type="time"
          value={settings.away?.from ?? ''}
          onChange={({ target }) =>
            set({
              away:
                target.value === '' ? null : { from: target.value, minutes: settings.away?.minutes ?? 30 },
            })
          }
        />
      </label>
      {settings.away && (
        <label>
          <span>{word('screen.evening.awayMinutes')}</span>
          <select
            value={settings.away.minutes}
            onChange={({ target }) =>
              settings.away && set({ away: { ...settings.away, minutes: Number(target.value) } })
            }
          >
            {[10, 15, 20, 30, 45, 60, 90, 120].map((minutes) => (
              <option key={minutes} value={minutes}>
                {minutes} {word('screen.unit.min')}
              </option>
            ))}
          </select>
        </label>
      )}
    </fieldset>
  );
}

interface CountProps {
  label: string;
  value: number;
  most: number;
  onPick: (value: number) => void;
}

function Count({ label, value, most, onPick }: CountProps) {
  return (
    <label>
      <span>{label}</span>
      <select value={value} onChange={({ target }) => onPick(Number(target.value))}>
        {Array.from({ length: most }, (_, i) => i + 1).map((n) => (
          <option key={n} value={n}>
            {n}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Of two canners, which; a lone one is named by its step. */
function numberedCanner(which: AgendaLine['canner'], word: (key: string) => string): string {
  return which === 'first' || which === 'second' ? cannerWord(which, word) : '';
}
