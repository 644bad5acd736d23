// What this step looks like, what it is for, and why its figures are what they are: to look at and to read, with who says so.

import { faceOf } from '../../kitchen/face.ts';
import { lessonOnStep } from '../../kitchen/lessons.ts';
import { sightsOf, type SightId } from '../../kitchen/sights.ts';
import type { AppProps } from '../actions.ts';
import { sourceWords } from '../sourceWords.ts';
import { fruitHue } from '../drawings/hue.ts';
import { Sight } from '../drawings/sights/Sight.tsx';
import type { Subject } from '../stove/glance.ts';

interface SeeItProps extends Pick<AppProps, 'catalogue'> {
  subject: Subject;
  /** The picture that is being looked at already: it comes first and large. */
  first: SightId | null;
}

export function SeeIt({ subject, first, catalogue }: SeeItProps) {
  const thing = subject.kind === 'batch' ? subject.batch : subject.canner;
  const hue = subject.kind === 'batch' ? fruitHue(subject.batch.plan.request.fruit) : undefined;
  const others = sightsOf(subject.kind, faceOf(thing)).filter((sight) => sight !== first);
  const shown = (sight: SightId) => (
    <li key={sight} className={sight === first ? 'first' : undefined}>
      <Sight sight={sight} catalogue={catalogue} {...(hue === undefined ? {} : { hue })} />
      <p>{catalogue.text({ key: `see.${sight}.alt` })}</p>
    </li>
  );
  return (
    <>
      <ul className="sights plain-list">{[...(first ? [first] : []), ...others].map(shown)}</ul>
      <Why subject={subject} catalogue={catalogue} />
    </>
  );
}

function Why({ subject, catalogue }: Omit<SeeItProps, 'first'>) {
  const { short, more, sources } = lessonOnStep(subject.kind === 'batch' ? subject.batch : subject.canner);
  const word = (key: string) => catalogue.text({ key });
  return (
    <>
      <h3>{word('screen.why')}</h3>
      <p className="lead">{catalogue.text(short)}</p>
      <p>{catalogue.text(more)}</p>
      <p className="say-it">
        {word('screen.plan.source')}: {sources.map((source) => sourceWords(source, word)).join('; ')}
      </p>
    </>
  );
}
