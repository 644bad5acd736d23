// One of a few: what is chosen now, and the others beside it.

interface PickProps<V extends string> {
  name: string;
  values: readonly V[];
  now: V;
  word: (key: string) => string;
  onPick: (value: V) => void;
}

export function Pick<V extends string>({ name, values, now, word, onPick }: PickProps<V>) {
  return (
    <fieldset className="pick">
      <legend>{word(`screen.settings.${name}`)}</legend>
      {values.map((value) => (
        <label key={value}>
          <input type="radio" name={name} checked={value === now} onChange={() => onPick(value)} />
          <span>{word(`screen.settings.${name}.${value}`)}</span>
        </label>
      ))}
    </fieldset>
  );
}
