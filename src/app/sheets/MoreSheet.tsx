// The rest on demand: every open choice with its words, what to look for, the numbers to aim at, and the way elsewhere.

import { memo, startTransition, useEffect, useState } from 'react';
import type { Choice, KitchenView } from '../../kitchen/view.ts';
import type { AppProps } from '../actions.ts';
import { choicesOf } from '../stove/StoveScreen.tsx';
import type { Subject } from '../stove/glance.ts';
import { potWords } from '../stove/potWords.ts';
import { ChoiceButton } from '../stove/ChoiceButton.tsx';
import { TalkButton, UndoButton } from '../stove/Controls.tsx';
import { Notices } from '../stove/Notices.tsx';
import { RunningPlot } from '../drawings/RunningPlot.tsx';
import { AimTable } from './AimTable.tsx';
import { SeeIt } from './SeeIt.tsx';
import { Sheet } from './Sheet.tsx';
import { whenIdle } from '../whenIdle.ts';
import { useLater } from './useLater.ts';

interface MoreSheetProps extends Pick<AppProps, 'view' | 'actions' | 'settings' | 'catalogue'> {
  /** Until then its head waits, out of sight. */
  open: boolean;
  /** Where the press that opens it finds it. */
  dialog?: React.RefObject<HTMLDialogElement | null>;
  subject: Subject;
  onChoose: (choice: Choice) => void;
  onClose: () => void;
  onGo: (where: 'plan' | 'evening' | 'settings' | 'help') => void;
}

export function MoreSheet({
  open,
  dialog,
  view,
  actions,
  settings,
  catalogue,
  subject,
  onChoose,
  onClose,
  onGo,
}: MoreSheetProps) {
  const word = (key: string) => catalogue.text({ key });
  const thing = subject.kind === 'batch' ? subject.batch : subject.canner;
  return (
    <Sheet
      title={word('screen.more')}
      closeLabel={word('screen.close')}
      tall
      waiting={!open}
      {...(dialog && { dialog })}
      onClose={onClose}
    >
      <p className="lead">{catalogue.text(thing.doing)}</p>
      {open && (
        <OncePainted>
          <Rest
            onChoose={onChoose}
            view={view}
            actions={actions}
            settings={settings}
            catalogue={catalogue}
            subject={subject}
            onGo={onGo}
          />
        </OncePainted>
      )}
    </Sheet>
  );
}

function OncePainted({ children }: { children: React.ReactNode }) {
  return useLater() ? children : null;
}

/**
 * More, whose head is drawn once the page has nothing to do and waits out of sight: to draw, style and lay it out for
 * the first time was most of what the press cost. What waits is not drawn again with the kitchen, but when it opens.
 */
export function MoreInWaiting(props: MoreSheetProps) {
  const { open } = props;
  const [wasOpen, setWasOpen] = useState(open);
  const [drawn, setDrawn] = useState(open);
  if (wasOpen !== open) {
    // One that has been opened is taken down when it closes; a fresh one waits in its place.
    setWasOpen(open);
    setDrawn(open);
  }
  useEffect(() => (drawn ? undefined : whenIdle(() => startTransition(() => setDrawn(true)))), [drawn]);
  return drawn && <More {...props} />;
}

const More = memo(MoreSheet, (before, now) => !before.open && !now.open);

/**
 * What is said of it more closely, what can be done, and all below: once the sheet is seen. A sentence said for the
 * first time is read, parsed and set in type: the pot's was a quarter of what opening cost.
 */
function Rest({
  view,
  actions,
  settings,
  catalogue,
  subject,
  onChoose,
  onGo,
}: Omit<MoreSheetProps, 'open' | 'dialog' | 'onClose'>) {
  const word = (key: string) => catalogue.text({ key });
  const batch = subject.kind === 'batch' ? subject.batch : null;
  const { warning } = subject.kind === 'batch' ? subject.batch : subject.canner;
  return (
    <>
      {batch?.detail && <p>{catalogue.text(batch.detail)}</p>}
      {warning && <p className="warning-line">{catalogue.text(warning)}</p>}
      {batch?.pot && <p>{potWords(batch.pot, catalogue, settings.units)}</p>}
      <h3>{word('screen.more.choices')}</h3>
      <ul className="choice-list">
        {choicesOf(subject).map((choice, i) => (
          <li key={choice.command + (choice.about ?? '')}>
            <ChoiceButton
              choice={choice}
              digit={i < 9 ? i + 1 : null}
              catalogue={catalogue}
              onChoose={onChoose}
            />
            <p className="say-it">
              {catalogue.text({ key: 'screen.more.say', params: { words: choice.sayIt } })}
            </p>
          </li>
        ))}
      </ul>
      <h3>{word('screen.more.ask')}</h3>
      <AskRow talk={actions.talk} word={word} catalogue={catalogue} />
      <h3>{word('screen.seeIt')}</h3>
      <SeeIt subject={subject} first={null} catalogue={catalogue} />
      {batch?.pot && (
        <RunningPlot
          fruit={batch.plan.request.fruit}
          pot={batch.pot}
          clock={batch.clock}
          now={view.now}
          units={settings.units}
          catalogue={catalogue}
        />
      )}
      {batch && <AimTable plan={batch.plan} units={settings.units} catalogue={catalogue} />}
      {batch && <PlateTests tests={batch.plateTests} now={view.now} word={catalogue.text} />}
      <Talked lines={view.talked ?? []} word={word} />
      <Notices notices={view.notices} catalogue={catalogue} takeOver={actions.takeOver} />
      <nav className="ways" aria-label={word('screen.more.ways')}>
        {ways(view).map((where) => (
          <button key={where} type="button" className="choice" onClick={() => onGo(where)}>
            {word(`screen.go.${where}`)}
          </button>
        ))}
      </nav>
    </>
  );
}

/** The evening has a plan once there is something in it. */
function ways(view: KitchenView) {
  return view.evening
    ? (['plan', 'evening', 'settings', 'help'] as const)
    : (['plan', 'settings', 'help'] as const);
}

interface AskRowProps extends Pick<AppProps, 'catalogue'> {
  talk: AppProps['actions']['talk'];
  word: (key: string) => string;
}

function AskRow({ talk, word, catalogue }: AskRowProps) {
  return (
    <div className="ask-row">
      <TalkButton talk={talk} command="how.long" letter="L" label={word('screen.howLong')} />
      <TalkButton talk={talk} command="what.next" letter="W" label={word('screen.whatNext')} />
      <TalkButton talk={talk} command="why" letter="E" label={word('screen.why')} />
      <TalkButton talk={talk} command="tell.more" letter="T" label={word('screen.tellMore')} />
      <TalkButton talk={talk} command="show" letter="V" label={word('screen.show')} />
      <TalkButton talk={talk} command="say.less" letter="-" label={word('screen.sayLess')} />
      <TalkButton talk={talk} command="say.more" letter="+" label={word('screen.sayMore')} />
      <TalkButton talk={talk} command="status" letter="S" label={word('screen.status')} />
      <TalkButton talk={talk} command="repeat" letter="R" label={word('screen.repeat')} />
      <TalkButton talk={talk} command="hush" letter="Q" label={word('screen.hush')} />
      <UndoButton talk={talk} catalogue={catalogue} />
    </div>
  );
}

/** The last words of both, the newest first. */
const SHOWN = 30;

function Talked({
  lines,
  word,
}: {
  lines: NonNullable<KitchenView['talked']>;
  word: (key: string) => string;
}) {
  if (lines.length === 0) return null;
  return (
    <details className="talked">
      <summary>{word('screen.more.talked')}</summary>
      <ol className="plain-list">
        {lines
          .slice(-SHOWN)
          .toReversed()
          .map((line, i) => (
            <li key={lines.length - i} className={line.who}>
              <time>{new Date(line.at).toLocaleTimeString([], { hour: 'numeric', minute: '2-digit' })}</time>{' '}
              {line.who === 'cook' ? `“${line.words}”` : line.words}
            </li>
          ))}
      </ol>
    </details>
  );
}

interface PlateTestsProps {
  tests: KitchenView['batches'][number]['plateTests'];
  now: number;
  word: AppProps['catalogue']['text'];
}

function PlateTests({ tests, now, word }: PlateTestsProps) {
  if (tests.length === 0) return null;
  return (
    <>
      <h3>{word({ key: 'screen.more.plateTests' })}</h3>
      <ol className="plain-list">
        {tests.map((test) => (
          <li key={test.at}>
            {word({
              key: 'screen.more.plateTest',
              params: { verdict: test.verdict, ago: Math.round((now - test.at) / 60_000) },
            })}
          </li>
        ))}
      </ol>
    </>
  );
}
