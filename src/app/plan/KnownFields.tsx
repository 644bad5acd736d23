// What else the cook knows: measurements that override the tables, liquid that goes in, the pot's own weight, the canner,
// other jars, prices.

import type { BatchRequest } from '../../core/request.ts';
import type { JarSize } from '../../core/types.ts';
import { readNumber, readTempC } from './entry.ts';
import { ChoiceField, fieldWords, MassField, NumberField } from './fields.tsx';
import type { InputsProps } from './Inputs.tsx';
import { KG_PER_LB, trim } from './units.ts';

type Rest = InputsProps['draft']['rest'];
type Measured = NonNullable<BatchRequest['measured']>;
type Prices = NonNullable<BatchRequest['prices']>;

/** The rest with one part set, or taken out where it is empty: an empty field is a field not filled in. */
function withPart<K extends keyof Rest>(rest: Rest, part: K, value: Rest[K] | undefined): Rest {
  const { [part]: _, ...others } = rest;
  return value === undefined ? (others as Rest) : { ...rest, [part]: value };
}

/** An object with one number set or taken out; nothing where no number is left. */
function withNumber<T extends object>(
  whole: T | undefined,
  key: keyof T,
  value: number | null,
): T | undefined {
  const { [key]: _, ...others } = (whole ?? {}) as T;
  const next = (value === null ? others : { ...others, [key]: value }) as T;
  return Object.keys(next).length === 0 ? undefined : next;
}

export function KnownFields(props: InputsProps) {
  const { draft, catalogue } = props;
  const word = (key: string) => catalogue.text({ key });
  const troubles = props.outcome.kind === 'refused' ? props.outcome.troubles : {};
  return (
    <details className="known" open={Object.keys(draft.rest).length > 0}>
      <summary>{word('screen.plan.known')}</summary>
      <MeasuredFields {...props} />
      <LiquidFields {...props} />
      <StoveFields {...props} />
      <PriceFields {...props} />
      {troubles.other && (
        <span className="trouble" role="alert">
          {troubles.other}
        </span>
      )}
    </details>
  );
}

function MeasuredFields({ draft, onChange, settings, catalogue }: InputsProps) {
  const { units } = settings;
  const field = fieldWords(catalogue, 'screen.plan.known');
  const { measured } = draft.rest;
  const set = (key: keyof Measured) => (value: number | null) =>
    onChange({ ...draft, rest: withPart(draft.rest, 'measured', withNumber(measured, key, value)) });
  return (
    <>
      <MassField
        {...field('prepared')}
        value={measured?.preparedMassKg ?? null}
        units={units}
        onChange={set('preparedMassKg')}
      />
      <NumberField
        {...field('refractometer')}
        value={measured?.fruitSolubleSolidsPct ?? null}
        unit="%"
        read={readNumber}
        write={(pct) => trim(pct, 1)}
        onChange={set('fruitSolubleSolidsPct')}
      />
      <NumberField
        {...field('waterBoils')}
        value={measured?.waterBoilsC ?? null}
        unit={units === 'us' ? '°F' : '°C'}
        read={(text) => readTempC(text, units)}
        write={(c) => trim(units === 'us' ? c * 1.8 + 32 : c, 1)}
        onChange={set('waterBoilsC')}
      />
      <NumberField
        {...field('pH')}
        value={measured?.fruitPH ?? null}
        unit="pH"
        read={readNumber}
        write={(pH) => trim(pH, 2)}
        onChange={set('fruitPH')}
      />
    </>
  );
}

/** What the cook pours in besides: water, or a juice whose solids count. */
function LiquidFields({ draft, onChange, settings, catalogue }: InputsProps) {
  const field = fieldWords(catalogue, 'screen.plan.known');
  const { liquid } = draft.rest;
  const set = (next: Rest['liquid']) => onChange({ ...draft, rest: withPart(draft.rest, 'liquid', next) });
  return (
    <>
      <MassField
        {...field('liquid')}
        value={liquid?.massKg ?? null}
        units={settings.units}
        onChange={(massKg) => set(massKg ? { solubleSolidsPct: 0, ...liquid, massKg } : undefined)}
      />
      {liquid && (
        <NumberField
          {...field('liquidSolids')}
          value={liquid.solubleSolidsPct}
          unit="%"
          read={readNumber}
          write={(pct) => trim(pct, 1)}
          onChange={(pct) => set({ ...liquid, solubleSolidsPct: pct ?? 0 })}
        />
      )}
    </>
  );
}

const SIZES: readonly JarSize[] = ['quarter-pint', 'half-pint', 'pint', 'quart'];

function StoveFields({ draft, onChange, settings, catalogue }: InputsProps) {
  const field = fieldWords(catalogue, 'screen.plan.known');
  const word = (key: string) => catalogue.text({ key });
  const { pot, burnerKind, alsoJars, jarsPerLoad } = draft.rest;
  const set = <K extends keyof Rest>(part: K, value: Rest[K] | undefined) =>
    onChange({ ...draft, rest: withPart(draft.rest, part, value) });
  const others = SIZES.filter((size) => size !== draft.jar);
  return (
    <>
      <MassField
        {...field('emptyPot')}
        value={pot?.emptyMassKg ?? null}
        units={settings.units}
        onChange={(kg) => set('pot', withNumber(pot, 'emptyMassKg', kg))}
      />
      <ChoiceField
        label={word('screen.plan.known.burnerKind')}
        name="burnerKind"
        values={['unsaid', 'gas', 'electric', 'induction']}
        value={burnerKind ?? 'unsaid'}
        word={(kind) => word(`screen.plan.known.burnerKind.${kind}`)}
        onChange={(kind) => set('burnerKind', kind === 'unsaid' ? undefined : kind)}
      />
      <ChoiceField
        label={word('screen.plan.known.alsoJars')}
        name="alsoJars"
        values={['no', ...others]}
        value={alsoJars?.find((size) => size !== draft.jar) ?? 'no'}
        word={(size) => word(size === 'no' ? 'screen.plan.known.noOthers' : `screen.plan.jar.${size}`)}
        onChange={(size) => set('alsoJars', size === 'no' ? undefined : [size])}
      />
      <NumberField
        {...field('jarsPerLoad')}
        value={jarsPerLoad ?? null}
        unit=""
        read={readNumber}
        write={(jars) => trim(jars, 0)}
        onChange={(jars) => set('jarsPerLoad', jars ?? undefined)}
      />
    </>
  );
}

const PER_MASS = ['fruitPerKg', 'sugarPerKg', 'acidPerKg'] as const;
const EACH = ['lidEach', 'jarEach', 'energyPerKWh'] as const;
const NOTHING: Prices = {
  fruitPerKg: 0,
  sugarPerKg: 0,
  acidPerKg: 0,
  lidEach: 0,
  jarEach: 0,
  energyPerKWh: 0,
};

function PriceFields({ draft, onChange, settings, catalogue }: InputsProps) {
  const { units } = settings;
  const field = fieldWords(catalogue, 'screen.plan.known');
  const { prices } = draft.rest;
  const set = (key: keyof Prices) => (value: number | null) => {
    const next = { ...(prices ?? NOTHING), [key]: value ?? 0 };
    const free = Object.values(next).every((price) => price === 0);
    onChange({ ...draft, rest: withPart(draft.rest, 'prices', free ? undefined : next) });
  };
  const perUnit = units === 'us' ? KG_PER_LB : 1;
  return (
    <>
      {PER_MASS.map((key) => (
        <NumberField
          key={key}
          {...field(key)}
          value={prices?.[key] || null}
          unit={units === 'us' ? '/ lb' : '/ kg'}
          // A price by the pound is less than one by the kilogram, as a pound is.
          read={(text) => {
            const read = readNumber(text);
            return read.ok ? { ok: true, value: read.value / perUnit } : read;
          }}
          write={(perKg) => trim(perKg * perUnit, 4)}
          onChange={set(key)}
        />
      ))}
      {EACH.map((key) => (
        <NumberField
          key={key}
          {...field(key)}
          value={prices?.[key] || null}
          unit={key === 'energyPerKWh' ? '/ kWh' : ''}
          read={readNumber}
          write={(price) => trim(price, 4)}
          onChange={set(key)}
        />
      ))}
    </>
  );
}
