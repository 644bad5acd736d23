// A figure that opens to where it came from: what it says, how it was had, and its source.

import type { ReactNode } from 'react';
import type { Why } from '../../core/types.ts';
import { sourceWords } from '../sourceWords.ts';

interface OpenerProps {
  why: Why | undefined;
  word: (key: string) => string;
  className: string;
  /** The line itself, that is read without opening it. */
  children: ReactNode;
}

/** A line without a reason is shown as a plain line: it never opens to nothing. */
export function Opener({ why, word, className, children }: OpenerProps) {
  if (!why) return <div className={className}>{children}</div>;
  return (
    <details className={className}>
      <summary>{children}</summary>
      <Reason why={why} word={word} />
    </details>
  );
}

function Reason({ why, word }: { why: Why; word: OpenerProps['word'] }) {
  return (
    <div className="why">
      <p>{why.says}</p>
      <p>
        <b>{word('screen.plan.how')}</b> {why.how}
      </p>
      <p>
        <b>{word('screen.plan.source')}</b> {sourceWords(why.source, word)}
      </p>
    </div>
  );
}
