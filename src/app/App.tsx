// The whole page, pure from its props: the planning page to sit down with, or the cooking screen to glance at.

import { memo, startTransition, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { TalkCommand } from '../../machines/dialogue/commands.ts';
import type { Choice } from '../kitchen/view.ts';
import type { AppProps, Answer } from './actions.ts';
import type { KeyAct } from './keys.ts';
import { EveningSheet } from './evening/EveningSheet.tsx';
import { PlanPage } from './plan/PlanPage.tsx';
import { BoilSheet } from './sheets/BoilSheet.tsx';
import { CountSheet } from './sheets/CountSheet.tsx';
import { HelpSheet } from './sheets/HelpSheet.tsx';
import { JarSheet } from './sheets/JarSheet.tsx';
import { MicrophoneSheet } from './sheets/MicrophoneSheet.tsx';
import { MoreInWaiting } from './sheets/MoreSheet.tsx';
import { seenFirst } from './sheets/seenFirst.ts';
import { SeeSheet } from './sheets/SeeSheet.tsx';
import { ReadingSheet } from './sheets/ReadingSheet.tsx';
import { SettingsSheet } from './sheets/SettingsSheet.tsx';
import { WhenSheet } from './sheets/WhenSheet.tsx';
import { WhoseSheet } from './sheets/WhoseSheet.tsx';
import { yesNo } from './stove/question.ts';
import { subjectOf, type Subject } from './stove/glance.ts';
import { choicesOf, StoveScreen } from './stove/StoveScreen.tsx';
import { TWICE_MS } from './stove/hold.ts';
import { useKeys, useTalkKey, useTwice } from './useKeys.ts';

/** Drawn anew only when the kitchen has moved: a sheet that opens over it costs it nothing. */
const Stove = memo(StoveScreen);

type Open = 'more' | 'see' | 'evening' | 'settings' | 'help' | 'microphone' | Choice | null;

export function App(props: AppProps) {
  const { view, settings, arrival } = props;
  const { batches, canners, focus } = view;
  const subject = useMemo(() => subjectOf({ batches, canners, focus }), [batches, canners, focus]);
  const [page, setPage] = useState<'plan' | 'stove'>(subject && !arrival ? 'stove' : 'plan');
  const [open, setOpen] = useState<Open>(null);
  useTheme(settings.theme);
  const cooking = page === 'stove' && subject !== null;
  const { actions } = props;
  const choose = useMemo(() => chooser(actions, setOpen), [actions]);
  const more = useRef<HTMLDialogElement>(null);
  const openMore = useCallback(() => {
    const open = () => startTransition(() => setOpen('more'));
    if (!seenFirst(more.current, open)) setOpen('more');
  }, []);
  const openSee = useCallback(() => setOpen('see'), []);
  const openEvening = useCallback(() => setOpen('evening'), []);
  const [armed, setArmed] = useArmed();
  useKeys(
    cooking && open === null,
    settings.letterKeys,
    useKeyActs(props, subject, choose, openMore, setOpen, setArmed),
  );
  useTalkKey(cooking && open === null, props.actions.call);
  return (
    <>
      {cooking ? (
        <Stove
          view={view}
          actions={actions}
          settings={settings}
          catalogue={props.catalogue}
          ear={props.ear}
          subject={subject}
          onChoose={choose}
          onMore={openMore}
          onSee={openSee}
          onEvening={openEvening}
        />
      ) : (
        <PlanPage
          {...props}
          onStart={() => setPage('stove')}
          onStove={() => setPage('stove')}
          onOpen={(what) => setOpen(what)}
        />
      )}
      <p className="armed" role="status">
        {armed && props.catalogue.text({ key: 'screen.twice.what', params: { what: armed } })}
      </p>
      {cooking && (
        <MoreInWaiting
          {...props}
          open={open === 'more'}
          dialog={more}
          subject={subject}
          onChoose={choose}
          onClose={() => setOpen(null)}
          onGo={(where) => {
            if (where === 'plan') setPage('plan');
            setOpen(where === 'plan' ? null : where);
          }}
        />
      )}
      <OpenSheet {...props} subject={subject} open={open} setOpen={setOpen} />
    </>
  );
}

/** A choice that needs a word more opens its sheet; any other goes straight to the kitchen. */
function chooser(actions: AppProps['actions'], setOpen: (open: Open) => void) {
  return (choice: Choice) => {
    if (choice.asks) return setOpen(choice);
    setOpen(null);
    actions.choose(choice);
  };
}

interface OpenSheetProps extends AppProps {
  subject: Subject | null;
  open: Open;
  setOpen: (open: Open) => void;
}

function OpenSheet(props: OpenSheetProps) {
  const { open, setOpen, subject } = props;
  const close = () => setOpen(null);
  if (open === null || open === 'more') return null;
  if (open === 'settings')
    return <SettingsSheet {...props} onClose={close} onMicrophone={() => setOpen('microphone')} />;
  if (open === 'microphone') return <MicrophoneSheet {...props} onClose={close} />;
  if (open === 'evening') return <EveningSheet {...props} onClose={close} />;
  if (open === 'help') return <HelpSheet {...props} onClose={close} />;
  if (open === 'see') return subject && <SeeSheet {...props} subject={subject} onClose={close} />;
  const answer = (given: Answer) => {
    props.actions.choose(open, given);
    close();
  };
  if (open.asks === 'reading') {
    return (
      <ReadingSheet
        {...props}
        title={props.catalogue.text(open.label)}
        foretold={subject?.kind === 'batch' ? (subject.batch.pot?.foretell() ?? null) : null}
        onAnswer={answer}
        onClose={close}
      />
    );
  }
  if (open.asks === 'jar') return <JarSheet {...props} choice={open} onAnswer={answer} onClose={close} />;
  if (open.asks === 'when')
    return <WhenSheet {...props} choice={open} now={props.view.now} onAnswer={answer} onClose={close} />;
  if (open.asks === 'keptBoiling') return <BoilSheet {...props} onAnswer={answer} onClose={close} />;
  if (open.asks === 'whose') return <WhoseSheet {...props} choice={open} onAnswer={answer} onClose={close} />;
  const expected = subject?.kind === 'batch' ? Math.round(subject.batch.plan.jars.count.likely) : 1;
  return <CountSheet {...props} choice={open} expected={expected} onAnswer={answer} onClose={close} />;
}

function useKeyActs(
  { view, actions, catalogue }: AppProps,
  subject: Subject | null,
  choose: (choice: Choice) => void,
  openMore: () => void,
  setOpen: (open: Open) => void,
  arm: (what: string | null) => void,
) {
  const twice = useTwice();
  const press = (choice: Choice | undefined) => {
    if (!choice) return;
    if (choice.consequence === 'safety' && !choice.asks && !twice(choice.command)) {
      return arm(catalogue.text(choice.label));
    }
    arm(null);
    choose(choice);
  };
  return (act: KeyAct) => {
    const choices = subject ? choicesOf(subject) : [];
    switch (act.kind) {
      case 'talk': {
        const guarded = wordOfGuarded(act.command, view.question);
        if (guarded && !twice(act.command)) return arm(catalogue.text({ key: guarded }));
        arm(null);
        return actions.talk(act.command);
      }
      case 'choice':
        return press(choices[act.index]);
      case 'main':
        return press(choices.find((choice) => choice.main));
      case 'more':
        return openMore();
      case 'help':
        return setOpen('help');
      case 'turn':
        return turn(view, subject, act.by, actions.focus);
    }
  };
}

/** What a key's word is called, where it must be pressed twice: an answer that a jar hangs on, and taking back. */
function wordOfGuarded(command: TalkCommand, question: AppProps['view']['question']): string | null {
  if (command === 'go.back') return 'screen.undo';
  const answers = command === 'yes' || command === 'no';
  return answers && yesNo(question)?.guarded ? `screen.${command}` : null;
}

function turn(
  view: AppProps['view'],
  subject: Subject | null,
  by: 1 | -1,
  focus: (id: string) => void,
): void {
  const ids = [...view.batches, ...view.canners].map((thing) => thing.id);
  const here =
    subject === null ? -1 : ids.indexOf(subject.kind === 'batch' ? subject.batch.id : subject.canner.id);
  const next = ids[(here + by + ids.length) % ids.length];
  if (next !== undefined) focus(next);
}

function useTheme(theme: AppProps['settings']['theme']): void {
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
    const ground = getComputedStyle(document.documentElement).getPropertyValue('--ground').trim();
    document.querySelector('meta[name=theme-color]')?.setAttribute('content', ground);
  }, [theme]);
}

/** What a first press has armed; it is forgotten when the time for the second has passed. */
function useArmed() {
  const [armed, setArmed] = useState<string | null>(null);
  useEffect(() => {
    if (armed === null) return;
    const timer = setTimeout(() => setArmed(null), TWICE_MS);
    return () => clearTimeout(timer);
  }, [armed]);
  return [armed, setArmed] as const;
}
