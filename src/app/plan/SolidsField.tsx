// How thick a butter should end: a slider between a loose one and a stiff one.

import { butterEnd } from '../../tables/recipes.ts';
import { NumberField } from './fields.tsx';
import { readNumber } from './entry.ts';
import type { InputsProps } from './Inputs.tsx';
import type { Word } from './figures.ts';
import { Opener } from './Opener.tsx';
import { solidsBoundsReason } from './reasons.ts';
import { trim } from './units.ts';

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
  const word: Word = (key, params) => catalogue.text(params ? { key, params } : { key });
  const { thinBelowPct, mostPct } = butterEnd.value;
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
      <Opener className="bounds" why={solidsBoundsReason(word)} word={word}>
        <span>{word('screen.plan.solids.bounds', { low: thinBelowPct, high: mostPct })}</span>
      </Opener>
      {solids !== null && (
        <input
          type="range"
          aria-label={word('screen.plan.solidsPct')}
          min={thinBelowPct}
          max={mostPct}
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
