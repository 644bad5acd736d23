// What this step is for, what it looks like, and why its figures are what they are: to read, with who says so.

import { lessonOnStep } from '../../kitchen/lessons.ts';
import { sightsOf } from '../../kitchen/sights.ts';
import type { AppProps } from '../actions.ts';
import { fruitHue } from '../drawings/hue.ts';
import { Sight } from '../drawings/sights/Sight.tsx';
import type { Subject } from '../stove/glance.ts';

interface SeeItProps extends Pick<AppProps, 'catalogue'> {
  subject: Subject;
}

export function SeeIt({ subject, catalogue }: SeeItProps) {
  const thing = subject.kind === 'batch' ? subject.batch : subject.canner;
  const { short, more, sources } = lessonOnStep(thing);
  const hue = subject.kind === 'batch' ? fruitHue(subject.batch.plan.request.fruit) : undefined;
  return (
    <>
      <h3>{catalogue.text({ key: 'screen.why' })}</h3>
      <p className="lead">{catalogue.text(short)}</p>
      <p>{catalogue.text(more)}</p>
      <p className="say-it">
        {catalogue.text({ key: 'screen.plan.source' })}: {sources.join('; ')}
      </p>
      <h3>{catalogue.text({ key: 'screen.seeIt' })}</h3>
      <ul className="sights plain-list">
        {sightsOf(subject.kind, thing.state).map((sight) => (
          <li key={sight}>
            <Sight sight={sight} catalogue={catalogue} {...(hue === undefined ? {} : { hue })} />
            <p>{catalogue.text({ key: `see.${sight}.alt` })}</p>
          </li>
        ))}
      </ul>
    </>
  );
}
