// Whether it may stand on a shelf, said loud and plain, with the reasons and what would help.

import type { BatchPlan, Why } from '../../core/types.ts';
import type { AppProps, Units } from '../actions.ts';
import { verdictKey } from './figures.ts';
import { Opener } from './Opener.tsx';
import { inUnits } from './units.ts';

interface VerdictProps extends Pick<AppProps, 'catalogue'> {
  plan: BatchPlan;
  units: Units;
}

export function Verdict({ plan, units, catalogue }: VerdictProps) {
  const word = (key: string, params?: Record<string, number>) =>
    catalogue.text(params ? { key, params } : { key });
  const { process, request } = plan;
  const shelf = inCooksUnits(plan.shelf, units);
  if (request.keep === 'shelf' && !shelf.allowed) {
    return (
      <div className="verdict refused" role="alert">
        <Mark refused />
        <div>
          <p className="verdict-word">{word(verdictKey(plan))}</p>
          <Reasons reasons={shelf.reasons} why={plan.why.shelf} word={word} />
          {shelf.remedy && (
            <p>
              <b>{word('screen.verdict.remedy')}</b> {shelf.remedy}
            </p>
          )}
        </div>
      </div>
    );
  }
  if (request.keep !== 'shelf') {
    return (
      <div className="verdict cold">
        <Mark cold />
        <div>
          <p className="verdict-word">{word(verdictKey(plan))}</p>
          <Reasons reasons={shelf.reasons} why={plan.why.shelf} word={word} />
        </div>
      </div>
    );
  }
  return (
    <div className="verdict allowed">
      <Mark />
      <div>
        <p className="verdict-word">{word(verdictKey(plan))}</p>
        {process && (
          <Opener className="verdict-line" why={plan.why.process} word={word}>
            <span>{word('screen.verdict.minutes', { count: process.minutes })}</span>
          </Opener>
        )}
        <Reasons reasons={shelf.reasons} why={plan.why.shelf} word={word} />
      </div>
    </div>
  );
}

/** The calculator's sentences name weights in kilograms. */
function inCooksUnits({ allowed, reasons, remedy }: BatchPlan['shelf'], units: Units): BatchPlan['shelf'] {
  return {
    allowed,
    reasons: reasons.map((reason) => inUnits(reason, units)),
    remedy: remedy && inUnits(remedy, units),
  };
}

interface ReasonsProps {
  reasons: string[];
  why: Why | undefined;
  word: (key: string) => string;
}

function Reasons({ reasons, why, word }: ReasonsProps) {
  if (reasons.length === 0) return null;
  const shown =
    reasons.length === 1 ? (
      <span>{reasons[0]}</span>
    ) : (
      <ul>
        {reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    );
  return (
    <Opener
      className="verdict-line"
      why={why && { ...why, says: reasons.join(' ') }}
      word={word}
      shown={reasons.join(' ')}
    >
      {shown}
    </Opener>
  );
}

/** A jar on a board, a jar struck out, a jar under a crystal of frost: three shapes, before any colour. */
function Mark({ refused, cold }: { refused?: boolean; cold?: boolean }) {
  return (
    <svg className="verdict-mark" width="56" height="60" viewBox="0 0 56 60" aria-hidden="true">
      <path d="M15 10 H41 M17 12 V17 C11 19 11 21 11 24 V48 H45 V24 C45 21 45 19 39 17 V12" />
      {!refused && !cold && <path className="strong" d="M2 54 H54" />}
      {refused && <path className="strong" d="M5 5 L51 55 M51 5 L5 55" />}
      {cold && <path className="strong" d="M28 24 V44 M19 29 L37 39 M37 29 L19 39" />}
    </svg>
  );
}
