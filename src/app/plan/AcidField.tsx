// The acid: left to the plan, or the cook's own kind and amount.

import { ChoiceField, NumberField } from './fields.tsx';
import { readNumber } from './entry.ts';
import type { InputsProps } from './Inputs.tsx';
import { trim } from './units.ts';

const G_PER_KG = 1000;

export function AcidField({
  draft,
  onChange,
  catalogue,
  trouble,
}: InputsProps & { trouble: string | undefined }) {
  const word = (key: string) => catalogue.text({ key });
  const set = (patch: Partial<InputsProps['draft']>) => onChange({ ...draft, ...patch });
  const common = { label: word('screen.plan.acid.amount'), trouble, catalogue };
  return (
    <>
      <ChoiceField
        label={word('screen.plan.acid')}
        name="acid"
        values={['auto', 'bottled-lemon-juice', 'citric-acid', 'none']}
        value={draft.acid}
        word={(value) => word(`screen.plan.acid.${value}`)}
        onChange={(acid) => set({ acid })}
      />
      {draft.acid === 'bottled-lemon-juice' && (
        <NumberField
          {...common}
          value={draft.acidVolumeMl}
          unit={word('screen.unit.ml')}
          read={readNumber}
          write={(ml) => trim(ml, 1)}
          onChange={(acidVolumeMl) => set({ acidVolumeMl })}
        />
      )}
      {draft.acid === 'citric-acid' && (
        <NumberField
          {...common}
          value={draft.acidMassKg}
          unit={word('screen.unit.g')}
          read={(text) => {
            const read = readNumber(text);
            return read.ok ? { ok: true, value: read.value / G_PER_KG } : read;
          }}
          write={(kg) => trim(kg * G_PER_KG, 1)}
          onChange={(acidMassKg) => set({ acidMassKg })}
        />
      )}
    </>
  );
}
