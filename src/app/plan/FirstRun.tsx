// For the first evening: what this is in three lines, and a stove without fruit to try it on.

import type { AppProps } from '../actions.ts';

export function FirstRun({ view, actions, catalogue }: Pick<AppProps, 'view' | 'actions' | 'catalogue'>) {
  const word = (key: string) => catalogue.text({ key });
  return (
    <section className="first-run" aria-labelledby="first-title">
      <h1 id="first-title">{word('screen.first.title')}</h1>
      <ol>
        {[1, 2, 3].map((n) => (
          <li key={n}>{word(`screen.first.${n}`)}</li>
        ))}
      </ol>
      <p className="examples">
        <span>{word(view.practice ? 'screen.first.practising' : 'screen.first.practice')}</span>
        {view.practice ? (
          <button type="button" className="link" onClick={() => actions.practice(0)}>
            {word('screen.first.practice.leave')}
          </button>
        ) : (
          [1, 10, 60].map((pace) => (
            <button key={pace} type="button" className="link" onClick={() => actions.practice(pace)}>
              {catalogue.text({ key: 'screen.first.practice.pace', params: { pace } })}
            </button>
          ))
        )}
      </p>
    </section>
  );
}
