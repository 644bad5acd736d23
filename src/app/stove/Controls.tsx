// What the thumb reaches: the answer to the question, or the step that carries the work on, and at most two more.

import { memo } from 'react';
import { correctionCommands } from '../../../machines/dialogue/commands.ts';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { Choice, KitchenView } from '../../kitchen/view.ts';
import type { Actions } from '../actions.ts';
import { yesNo } from './question.ts';
import { ChoiceButton, HoldButton, takesNoFocus } from './ChoiceButton.tsx';

interface ControlsProps {
  question: KitchenView['question'];
  choices: Choice[];
  catalogue: Catalogue;
  talk: Actions['talk'];
  onChoose: (choice: Choice) => void;
  onMore: () => void;
}

export const Controls = memo(function Controls({
  question,
  choices,
  catalogue,
  talk,
  onChoose,
  onMore,
}: ControlsProps) {
  const asked = yesNo(question);
  const ordered = inReach(choices);
  const near = ordered.slice(0, asked ? 0 : NEAR);
  const digitOf = (choice: Choice) => choices.indexOf(choice) + 1;
  return (
    <section
      className="controls"
      id="controls"
      aria-label={catalogue.text({ key: 'screen.region.controls' })}
    >
      {asked && <Answers guarded={asked.guarded} catalogue={catalogue} talk={talk} />}
      {near.map((choice) => (
        <ChoiceButton
          key={choice.command + (choice.about ?? '')}
          choice={choice}
          digit={digitOf(choice) <= 9 ? digitOf(choice) : null}
          catalogue={catalogue}
          onChoose={onChoose}
        />
      ))}
      <div className="talk-row">
        <UndoButton talk={talk} catalogue={catalogue} />
        <TalkButton
          talk={talk}
          command="repeat"
          letter="R"
          label={catalogue.text({ key: 'screen.repeat' })}
        />
        <button type="button" className="choice small" aria-haspopup="dialog" onClick={onMore}>
          <span className="choice-label">{catalogue.text({ key: 'screen.more' })}</span>
        </button>
      </div>
    </section>
  );
});

interface AnswersProps extends Pick<ControlsProps, 'catalogue' | 'talk'> {
  guarded: boolean;
}

function Answers({ guarded, catalogue, talk }: AnswersProps) {
  const [yes, no] = [catalogue.text({ key: 'screen.yes' }), catalogue.text({ key: 'screen.no' })];
  return (
    <div className="answers">
      {guarded ? (
        <>
          <HoldButton label={yes} digit="Y" main catalogue={catalogue} onDone={() => talk('yes')} />
          <HoldButton label={no} digit="N" catalogue={catalogue} onDone={() => talk('no')} />
        </>
      ) : (
        <>
          <TalkButton talk={talk} command="yes" letter="Y" label={yes} main />
          <TalkButton talk={talk} command="no" letter="N" label={no} />
        </>
      )}
    </div>
  );
}

/** One main step and two beside it; a fourth target would push the words off a small screen. */
const NEAR = 3;

/** What is told of jars long after, often of another batch's evening. */
const LATER: readonly Choice['command'][] = [
  'jars.eaten',
  'jars.givenAway',
  'jars.discarded',
  'jars.intoFridge',
  'jars.intoFreezer',
];

/** Giving up, what puts an earlier word right, and what becomes of jars later stand under "More". */
const seldom = (command: Choice['command']): boolean =>
  command === 'batch.stopped' || command in correctionCommands || LATER.includes(command);

/** The step that carries the work on comes first, what a warning asks for, then what a jar's safety hangs on; giving up is never near. */
export function inReach(choices: Choice[]): Choice[] {
  const rank = ({ main, wanted, consequence }: Choice) =>
    main ? 0 : wanted ? 1 : consequence === 'safety' ? 2 : 3;
  const asksForWater = choices.some(({ wanted }) => wanted);
  return choices
    .filter(({ consequence, command }) => consequence !== 'ask' && !seldom(command))
    .filter(({ command }) => !(asksForWater && command === 'canner.waterLow'))
    .toSorted((a, b) => rank(a) - rank(b));
}

/** It may take back the boil a clock hangs on: held like any such word. */
export function UndoButton({ talk, catalogue }: Pick<ControlsProps, 'catalogue' | 'talk'>) {
  const label = catalogue.text({ key: 'screen.undo' });
  return <HoldButton label={label} digit="U" catalogue={catalogue} onDone={() => talk('go.back')} />;
}

interface TalkButtonProps {
  talk: Actions['talk'];
  command: Parameters<Actions['talk']>[0];
  letter: string;
  label: string;
  main?: boolean;
}

export function TalkButton({ talk, command, letter, label, main }: TalkButtonProps) {
  return (
    <button
      type="button"
      className={main ? 'choice main' : 'choice small'}
      aria-keyshortcuts={letter}
      onMouseDown={takesNoFocus}
      onClick={() => talk(command)}
    >
      <kbd className="digit" aria-hidden="true">
        {letter}
      </kbd>
      <span className="choice-label">{label}</span>
    </button>
  );
}
