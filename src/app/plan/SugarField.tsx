// The sugar, as advised or as the cook likes it, within the bounds of the plan.

import { MassField } from './fields.tsx';
import type { InputsProps } from './Inputs.tsx';
import type { Word } from './figures.ts';
import { Opener } from './Opener.tsx';
import { sugarBoundsReason } from './reasons.ts';
import { sayMass } from './units.ts';

export function SugarField({
  draft,
  outcome,
  onChange,
  settings,
  catalogue,
  trouble,
}: InputsProps & { trouble: string | undefined }) {
  const plan = outcome.kind === 'plan' ? outcome.plan : null;
  const { units } = settings;
  const word: Word = (key, params) => catalogue.text(params ? { key, params } : { key });
  const sugar = draft.sugarMassKg ?? plan?.sugarMassKg ?? null;
  const bounds = plan?.sugarBoundsKg;
  const set = (sugarMassKg: number | null) => onChange({ ...draft, sugarMassKg });
  return (
    <div className="slider-field">
      <MassField
        label={word('screen.plan.sugar')}
        trouble={trouble}
        value={sugar}
        units={units}
        onChange={set}
        catalogue={catalogue}
      />
      {plan && bounds && (
        <Opener className="bounds" why={sugarBoundsReason(plan, units, word)} word={word}>
          <span>
            {word('screen.plan.sugar.bounds', {
              low: sayMass(bounds.low, units),
              high: sayMass(bounds.high, units),
            })}
          </span>
        </Opener>
      )}
      {bounds && sugar !== null && (
        <input
          type="range"
          aria-label={word('screen.plan.sugar')}
          aria-valuetext={sayMass(sugar, units)}
          min={bounds.low}
          max={bounds.high}
          step={(bounds.high - bounds.low) / 200 || 0.001}
          value={sugar}
          onChange={(event) => set(Number(event.target.value))}
        />
      )}
      {draft.sugarMassKg !== null && (
        <button type="button" className="link" onClick={() => set(null)}>
          {word('screen.plan.sugar.advised')}
        </button>
      )}
    </div>
  );
}
