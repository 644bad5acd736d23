// How thick a butter should end: a slider between a loose one and a stiff one.

import { NumberField } from './fields.tsx';
import { readNumber } from './entry.ts';
import type { InputsProps } from './Inputs.tsx';
import { trim } from './units.ts';

/** A home butter ends between these, per cent soluble solids: 33 from published home yields, 50 where it scorches. */
const LOOSEST_PCT = 33;
const STIFFEST_PCT = 50;

export function SolidsField({
  draft,
  outcome,
  onChange,
  catalogue,
  trouble,
}: InputsProps & { trouble: string | undefined }) {
  if (draft.product !== 'butter') return null;
  const advised = outcome.kind === 'plan' ? outcome.plan.targetSolubleSolidsPct : null;
  const solids = draft.solidsPct ?? advised;
  const word = (key: string) => catalogue.text({ key });
  const set = (solidsPct: number | null) => onChange({ ...draft, solidsPct });
  return (
    <div className="slider-field">
      <NumberField
        label={word('screen.plan.solidsPct')}
        help={word('screen.plan.solids.help')}
        trouble={trouble}
        value={solids}
        unit={word('screen.unit.percent')}
        read={readNumber}
        write={(pct) => trim(pct, 1)}
        onChange={set}
        catalogue={catalogue}
      />
      {solids !== null && (
        <input
          type="range"
          aria-label={word('screen.plan.solidsPct')}
          min={LOOSEST_PCT}
          max={STIFFEST_PCT}
          step={0.5}
          value={solids}
          onChange={(event) => set(Number(event.target.value))}
        />
      )}
      {draft.solidsPct !== null && (
        <button type="button" className="link" onClick={() => set(null)}>
          {word('screen.plan.sugar.advised')}
        </button>
      )}
    </div>
  );
}
