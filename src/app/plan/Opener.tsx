// A figure that opens to where it came from: what it says, how it was had, and its source.

import type { ReactNode } from 'react';
import type { Why } from '../../core/types.ts';
import { sourceWords } from '../sourceWords.ts';

interface OpenerProps {
  why: Why | undefined;
  word: (key: string) => string;
  className: string;
  /** What stands in the line already is not said again under it. */
  shown?: string | undefined;
  /** The line itself, that is read without opening it. */
  children: ReactNode;
}

/** A line without a reason is shown as a plain line: it never opens to nothing. */
export function Opener({ why, word, className, shown, children }: OpenerProps) {
  if (!why) return <div className={className}>{children}</div>;
  return (
    <details className={className}>
      <summary>{children}</summary>
      <Reason why={why} word={word} shown={shown} />
    </details>
  );
}

function Reason({ why, word, shown }: { why: Why } & Pick<OpenerProps, 'word' | 'shown'>) {
  return (
    <div className="why">
      {why.says !== shown && <p>{why.says}</p>}
      <p>
        <b>{word('screen.plan.how')}</b> {why.how}
      </p>
      <p>
        <b>{word('screen.plan.source')}</b> {sourceWords(why.source, word)}
      </p>
    </div>
  );
}
