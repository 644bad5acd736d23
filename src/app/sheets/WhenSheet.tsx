// Something happened at another time than it was told: what, and how long ago it really was.

import { useState } from 'react';
import { consequenceOf } from '../../../machines/dialogue/commands.ts';
import type { Choice } from '../../kitchen/view.ts';
import type { Answer, AppProps } from '../actions.ts';
import { HoldButton } from '../stove/ChoiceButton.tsx';
import { Stepper } from './CountSheet.tsx';
import { Sheet } from './Sheet.tsx';

interface WhenSheetProps extends Pick<AppProps, 'catalogue'> {
  choice: Choice;
  now: number;
  onAnswer: (answer: Answer) => void;
  onClose: () => void;
}

type Told = NonNullable<Choice['told']>[number];

export function WhenSheet({ choice, now, catalogue, onAnswer, onClose }: WhenSheetProps) {
  const told = choice.told ?? [];
  const ago = ({ at }: Told) => Math.max(1, Math.round((now - at) / 60_000));
  const [picked, setPicked] = useState(told[0]);
  const [minutes, setMinutes] = useState(told[0] ? ago(told[0]) : 1);
  const word = (key: string) => catalogue.text({ key });
  if (!picked) return null;
  const pick = (one: Told) => {
    setPicked(one);
    setMinutes(ago(one));
  };
  const done = () => onAnswer({ kind: 'when', what: picked.what, agoMinutes: minutes });
  const guarded = consequenceOf(picked.what) === 'safety';
  return (
    <Sheet title={catalogue.text(choice.label)} closeLabel={word('screen.cancel')} onClose={onClose}>
      <fieldset className="pick">
        <legend>{word('screen.when.what')}</legend>
        {told.map((one) => (
          <label key={one.what}>
            <input type="radio" name="what" checked={one === picked} onChange={() => pick(one)} />
            <span>
              {catalogue.text({
                key: 'screen.when.one',
                params: { what: catalogue.text(one.label), ago: ago(one) },
              })}
            </span>
          </label>
        ))}
      </fieldset>
      <Stepper
        label={word('screen.count.ago')}
        value={minutes}
        least={0}
        onChange={setMinutes}
        catalogue={catalogue}
      />
      {guarded ? (
        <HoldButton label={word('screen.count.done')} digit={null} main catalogue={catalogue} onDone={done} />
      ) : (
        <button type="button" className="choice main" onClick={done}>
          <span className="choice-label">{word('screen.count.done')}</span>
        </button>
      )}
    </Sheet>
  );
}
