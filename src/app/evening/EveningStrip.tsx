// The evening in one line, read from two metres: what wants the hands next, and when.

import type { AppProps } from '../actions.ts';
import { clockTime } from './Timeline.tsx';
import { nowAndNext } from './rows.ts';

type EveningStripProps = Pick<AppProps, 'view' | 'catalogue'> & { onOpen: () => void };

export function EveningStrip({ view, catalogue, onOpen }: EveningStripProps) {
  const { evening } = view;
  if (!evening || evening.plan.request.batches.length < 2) return null;
  const { plan } = evening;
  const { next } = nowAndNext(plan, (view.now - plan.request.beganAt) / 60_000);
  const word = (key: string) => catalogue.text({ key });
  return (
    <button
      type="button"
      className="evening-strip"
      onClick={onOpen}
      aria-label={word('screen.evening.title')}
    >
      {next ? (
        <>
          <b>{clockTime(plan.request.beganAt + next.from * 60_000)}</b>
          <span>{`${next.names}: ${word(`screen.evening.step.${next.step}`)}`}</span>
        </>
      ) : (
        <span>{word('screen.evening.title')}</span>
      )}
    </button>
  );
}
