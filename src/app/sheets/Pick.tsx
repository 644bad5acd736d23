// One of a few: what is chosen now, and the others beside it.

interface PickProps<V extends string> {
  name: string;
  /** Where its words stand in the catalogue. */
  under?: string;
  values: readonly V[];
  now: V;
  word: (key: string) => string;
  onPick: (value: V) => void;
  /** What to know of it before choosing. */
  tells?: string | null;
}

export function Pick<V extends string>({
  name,
  under = 'screen.settings',
  values,
  now,
  word,
  onPick,
  tells,
}: PickProps<V>) {
  return (
    <fieldset className="pick">
      <legend>
        {word(`${under}.${name}`)}
        {tells && <span className="tells">{tells}</span>}
      </legend>
      {values.map((value) => (
        <label key={value}>
          <input type="radio" name={name} checked={value === now} onChange={() => onPick(value)} />
          <span>{word(`${under}.${name}.${value}`)}</span>
        </label>
      ))}
    </fieldset>
  );
}
