// The fields of the planning page: each keeps what was typed, hands on SI, and says plainly what is wrong.

import { useId, useState } from 'react';
import type { AppProps, Units } from '../actions.ts';
import { readMassPair, writeMassPair, type Read } from './entry.ts';

interface FieldProps extends Pick<AppProps, 'catalogue'> {
  label: string;
  help?: string | undefined;
  /** The calculator's sentence about this field. */
  trouble: string | undefined;
}

interface NumberFieldProps extends FieldProps {
  value: number | null;
  unit: string;
  read: (text: string) => Read<number>;
  write: (value: number) => string;
  onChange: (value: number | null) => void;
}

/** Label, help and catalogue of fields whose words share a beginning; their troubles stand elsewhere. */
export const fieldWords =
  (catalogue: AppProps['catalogue'], under: string) =>
  (name: string): FieldProps => ({
    label: catalogue.text({ key: `${under}.${name}` }),
    help: undefined,
    trouble: undefined,
    catalogue,
  });

/** What is being typed stands until the value comes from elsewhere: a slider, an example, a change of units. */
function useTyped<T>(
  value: number | null,
  units: string,
  write: () => T,
): [T, (typed: T, value: number | null) => void] {
  const [kept, keep] = useState({ typed: write(), value, units });
  const fresh = kept.value === value && kept.units === units ? kept.typed : write();
  return [fresh, (typed, next) => keep({ typed, value: next, units })];
}

export function NumberField({
  label,
  help,
  trouble,
  value,
  unit,
  read,
  write,
  onChange,
  catalogue,
}: NumberFieldProps) {
  const id = useId();
  const [typed, keep] = useTyped(value, unit, () => (value === null ? '' : write(value)));
  const [wrong, setWrong] = useState<string | null>(null);
  const change = (text: string) => {
    const result = text.trim() === '' ? null : read(text);
    setWrong(result && !result.ok ? catalogue.text(result.says) : null);
    const next = result === null ? null : result.ok ? result.value : value;
    keep(text, next);
    if (next !== value) onChange(next);
  };
  const says = wrong ?? trouble;
  return (
    <div className={says ? 'field wrong' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <span className="entry">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={says !== undefined && says !== null}
          aria-describedby={`${id}-says`}
          onChange={(event) => change(event.target.value)}
        />
        <span className="unit">{unit}</span>
      </span>
      <Says id={`${id}-says`} trouble={says} help={help} />
    </div>
  );
}

interface MassFieldProps extends FieldProps {
  value: number | null;
  units: Units;
  onChange: (kg: number | null) => void;
}

export function MassField({ label, help, trouble, value, units, onChange, catalogue }: MassFieldProps) {
  const id = useId();
  const [typed, keep] = useTyped(value, units, () => writeMassPair(value, units));
  const [wrong, setWrong] = useState<string | null>(null);
  const change = (next: { big: string; small: string }) => {
    const result = readMassPair(next.big, next.small, units);
    setWrong(result.ok ? null : catalogue.text(result.says));
    const kg = result.ok ? result.value : value;
    keep(next, kg);
    if (kg !== value) onChange(kg);
  };
  const says = wrong ?? trouble;
  const [bigUnit, smallUnit] = units === 'us' ? (['lb', 'oz'] as const) : (['kg', 'g'] as const);
  return (
    <fieldset className={says ? 'field wrong' : 'field'} aria-describedby={`${id}-says`}>
      <legend>{label}</legend>
      <span className="entry">
        {(['big', 'small'] as const).map((part) => {
          const unit = part === 'big' ? bigUnit : smallUnit;
          return (
            <span key={part} className="entry">
              <input
                inputMode="decimal"
                autoComplete="off"
                aria-label={`${label}, ${unit}`}
                aria-invalid={says !== undefined && says !== null}
                value={typed[part]}
                onChange={(event) => change({ ...typed, [part]: event.target.value })}
              />
              <span className="unit">{unit}</span>
            </span>
          );
        })}
      </span>
      <Says id={`${id}-says`} trouble={says} help={help} />
    </fieldset>
  );
}

function Says({
  id,
  trouble,
  help,
}: {
  id: string;
  trouble: string | null | undefined;
  help: string | undefined;
}) {
  return (
    <span id={id} className="says">
      {trouble ? (
        <span className="trouble" role="alert">
          {trouble}
        </span>
      ) : (
        help
      )}
    </span>
  );
}

interface ChoiceFieldProps<V extends string> {
  label: string;
  name: string;
  values: readonly V[];
  value: V;
  word: (value: V) => string;
  onChange: (value: V) => void;
}

export function ChoiceField<V extends string>({
  label,
  name,
  values,
  value,
  word,
  onChange,
}: ChoiceFieldProps<V>) {
  return (
    <fieldset className="field choices-field">
      <legend>{label}</legend>
      <span className="segments">
        {values.map((one) => (
          <label key={one}>
            <input
              type="radio"
              name={name}
              value={one}
              checked={one === value}
              onChange={() => onChange(one)}
            />
            <span>{word(one)}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
}
