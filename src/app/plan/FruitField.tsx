// Choosing the fruit: type any of its names, or pick it from the list.

import { useId, useState } from 'react';
import { allFruits } from '../../tables/fruits/index.ts';
import type { AppProps } from '../actions.ts';

interface FruitFieldProps extends Pick<AppProps, 'catalogue'> {
  value: string | null;
  trouble: string | undefined;
  onChange: (fruit: string) => void;
}

export function FruitField({ value, trouble, onChange, catalogue }: FruitFieldProps) {
  const id = useId();
  const [search, setSearch] = useState('');
  const found = fruitsFor(search);
  const word = (key: string) => catalogue.text({ key });
  const pickOnly = (event: React.KeyboardEvent) => {
    const first = found[0];
    if (event.key !== 'Enter' || !first) return;
    event.preventDefault();
    onChange(first.id);
  };
  return (
    <fieldset className="field fruit-field">
      <legend>{word('screen.plan.fruit')}</legend>
      <input
        id={id}
        type="search"
        placeholder={word('screen.plan.fruit.search')}
        aria-label={word('screen.plan.fruit.search')}
        value={search}
        onChange={(event) => setSearch(event.target.value)}
        onKeyDown={pickOnly}
      />
      <div className="fruit-list">
        {found.map((fruit) => (
          <label key={fruit.id}>
            <input
              type="radio"
              name="fruit"
              value={fruit.id}
              checked={fruit.id === value}
              onChange={() => onChange(fruit.id)}
            />
            <span>{fruit.name}</span>
          </label>
        ))}
        {found.length === 0 && <p>{word('screen.plan.fruit.none')}</p>}
      </div>
      {trouble && (
        <span className="trouble" role="alert">
          {trouble}
        </span>
      )}
    </fieldset>
  );
}

export function fruitsFor(search: string) {
  const wanted = search.trim().toLowerCase();
  return allFruits
    .filter((fruit) => [fruit.name, ...fruit.aliases].some((name) => name.toLowerCase().includes(wanted)))
    .toSorted(
      (a, b) =>
        Number(b.name.startsWith(wanted)) - Number(a.name.startsWith(wanted)) || a.name.localeCompare(b.name),
    );
}
