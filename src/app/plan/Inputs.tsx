// What the cook has: fruit, weight, kitchen, jars, and the few things that may be changed within bounds.

import type { AppProps } from '../actions.ts';
import type { Draft } from './draft.ts';
import { readElevationM, readNumber } from './entry.ts';
import { lowerFirst } from '../../kitchen/lowerFirst.ts';
import { ChoiceField, MassField, NumberField } from './fields.tsx';
import { FruitField } from './FruitField.tsx';
import { KnownFields } from './KnownFields.tsx';
import type { Outcome } from './outcome.ts';
import { SugarField } from './SugarField.tsx';
import { AcidField } from './AcidField.tsx';
import { SolidsField } from './SolidsField.tsx';
import { M_PER_FT, M_PER_IN, trim } from './units.ts';

export interface InputsProps extends Pick<AppProps, 'settings' | 'catalogue'> {
  draft: Draft;
  outcome: Outcome;
  onChange: (draft: Draft) => void;
}

export function Inputs(props: InputsProps) {
  const { draft, outcome, onChange, settings, catalogue } = props;
  const { units } = settings;
  const word = (key: string) => catalogue.text({ key });
  const troubles = outcome.kind === 'refused' ? outcome.troubles : {};
  const set = (patch: Partial<Draft>) => onChange({ ...draft, ...patch });
  return (
    <section className="inputs" aria-labelledby="inputs-title">
      <h2 id="inputs-title">{word('screen.plan.inputs')}</h2>
      <FruitField
        value={draft.fruit}
        trouble={troubles.fruit}
        onChange={(fruit) => set({ fruit })}
        catalogue={catalogue}
      />
      <MassField
        label={word('screen.plan.fruitMassKg')}
        trouble={troubles.fruitMassKg}
        value={draft.massKg}
        units={units}
        onChange={(massKg) => set({ massKg })}
        catalogue={catalogue}
      />
      <ChoiceField
        label={word('screen.plan.product')}
        name="product"
        values={['butter', 'jam', 'jelly', 'marmalade']}
        value={draft.product}
        word={(value) => word(`screen.plan.product.${value}`)}
        onChange={(product) => set({ product, solidsPct: null, sugarMassKg: null })}
      />
      <NumberField
        label={word('screen.plan.elevationM')}
        help={word('screen.plan.elevation.help')}
        trouble={troubles.elevationM}
        value={draft.elevationM}
        unit={lowerFirst(word(`screen.unit.elevation.${units}`))}
        read={(text) => readElevationM(text, units)}
        write={(m) => trim(units === 'us' ? m / M_PER_FT : m, 1)}
        onChange={(elevationM) => set({ elevationM })}
        catalogue={catalogue}
      />
      <ChoiceField
        label={word('screen.plan.keep')}
        name="keep"
        values={['shelf', 'fridge', 'freezer']}
        value={draft.keep}
        word={(value) => word(`screen.plan.keep.${value}`)}
        onChange={(keep) => set({ keep })}
      />
      <ChoiceField
        label={word('screen.plan.jar')}
        name="jar"
        values={['quarter-pint', 'half-pint', 'pint', 'quart']}
        value={draft.jar}
        word={(value) => word(`screen.plan.jar.${value}`)}
        onChange={(jar) => set({ jar })}
      />
      <SugarField {...props} trouble={troubles.sugarMassKg} />
      <AcidField {...props} trouble={troubles.acid} />
      <SolidsField {...props} trouble={troubles.targetSolubleSolidsPct} />
      <Kitchen {...props} />
      <KnownFields {...props} />
    </section>
  );
}

/** The things that sharpen the plan when they are known. */
function Kitchen({ draft, outcome, onChange, settings, catalogue }: InputsProps) {
  const { units } = settings;
  const word = (key: string) => catalogue.text({ key });
  const troubles = outcome.kind === 'refused' ? outcome.troubles : {};
  const set = (patch: Partial<Draft>) => onChange({ ...draft, ...patch });
  const perUnit = units === 'us' ? M_PER_IN : 0.01;
  return (
    <>
      <NumberField
        label={`${word('screen.plan.pot')} (${word('screen.plan.optional').toLowerCase()})`}
        help={word('screen.plan.pot.help')}
        trouble={troubles.pot}
        value={draft.potDiameterM}
        unit={lowerFirst(word(`screen.unit.width.${units}`))}
        read={(text) => scaled(readNumber(text), perUnit)}
        write={(m) => trim(m / perUnit, 2)}
        onChange={(potDiameterM) => set({ potDiameterM })}
        catalogue={catalogue}
      />
      <NumberField
        label={`${word('screen.plan.burner')} (${word('screen.plan.optional').toLowerCase()})`}
        help={word('screen.plan.burner.help')}
        trouble={troubles.burner}
        value={draft.burnerW}
        unit={word('screen.unit.power')}
        read={readNumber}
        write={(w) => trim(w, 0)}
        onChange={(burnerW) => set({ burnerW })}
        catalogue={catalogue}
      />
      {(draft.product === 'jam' || draft.product === 'jelly') && (
        <ChoiceField
          label={word('screen.plan.pectin')}
          name="pectin"
          values={['none', 'powdered', 'liquid']}
          value={draft.pectin}
          word={(value) => word(`screen.plan.pectin.${value}`)}
          onChange={(pectin) => set({ pectin })}
        />
      )}
      {draft.product === 'jelly' && (
        <MassField
          label={word('screen.plan.juiceMassKg')}
          trouble={troubles.juiceMassKg}
          value={draft.juiceMassKg}
          units={units}
          onChange={(juiceMassKg) => set({ juiceMassKg })}
          catalogue={catalogue}
        />
      )}
    </>
  );
}

function scaled(read: ReturnType<typeof readNumber>, by: number): ReturnType<typeof readNumber> {
  return read.ok ? { ok: true, value: read.value * by } : read;
}
