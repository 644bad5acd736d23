// The plan in one line, at the thumb of whoever fills in a narrow page: there the plan itself stands far below.

import type { Catalogue } from '../../kitchen/ports.ts';
import { sayJars, saySimmer, verdictKey } from './figures.ts';
import { wanting } from './noPlan.ts';
import type { Outcome } from './outcome.ts';

interface GistProps {
  outcome: Outcome;
  catalogue: Catalogue;
  onOpen: () => void;
}

export function Gist({ outcome, catalogue, onOpen }: GistProps) {
  switch (outcome.kind) {
    case 'waiting':
      return <p className="gist">{wanting(outcome, catalogue)}</p>;
    case 'refused':
      // The field may have been scrolled away: its sentence is told here too.
      return <p className="gist">{Object.values(outcome.troubles)[0]}</p>;
    case 'plan':
      return (
        <button type="button" className="gist" onClick={onOpen}>
          <b>{catalogue.text({ key: verdictKey(outcome.plan) })}</b>
          <span>
            {sayJars(outcome.plan, catalogue)} · {saySimmer(outcome.plan, catalogue)}
          </span>
        </button>
      );
  }
}
