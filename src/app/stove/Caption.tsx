// The words that are being said, or the question that waits: read what the ear would hear.

import { cannerLabel } from '../cannerLabel.ts';
import type { Catalogue } from '../../kitchen/ports.ts';
import type { KitchenView } from '../../kitchen/view.ts';

/** Letters that two lines of a phone hold; more are set smaller. */
const LONG = 84;
/** Letters that two lines hold beside the picture of a phone on its side. */
const BRIEF = 66;
/** Letters of three sentences about the evening: smaller still, so that they cover none of the pots. */
const LONGEST = 150;

export function Caption({ view, catalogue }: { view: KitchenView; catalogue: Catalogue }) {
  const text = view.question ? questionText(view, catalogue) : (view.caption?.text ?? '');
  const urgency = view.question?.urgency ?? view.caption?.urgency ?? 'step';
  const speaking = view.caption?.speaking === true;
  const length = lengthOf(text);
  return (
    <p
      className={`caption ${urgency} ${speaking ? 'speaking' : ''} ${length}`}
      aria-live={urgency === 'danger' ? 'assertive' : 'polite'}
    >
      <svg className="mouth" width="26" height="22" viewBox="0 0 26 22" aria-hidden="true">
        <path d="M2 3 H24 V16 H12 L6 21 V16 H2 Z" />
        {speaking && <path d="M7 7.5 H19 M7 11.5 H16" />}
      </svg>
      {/* Another sentence is another thing, not the last one moved. */}
      <span key={text}>{text}</span>
    </p>
  );
}

function lengthOf({ length }: string): string {
  if (length > LONGEST) return 'long longest';
  if (length > LONG) return 'long';
  if (length > BRIEF) return 'full';
  return length === 0 ? 'silent' : '';
}

/** With several pots on the stove the question is told by its pot. */
function questionText({ question, batches, canners }: KitchenView, catalogue: Catalogue): string {
  if (!question) return '';
  const text = catalogue.text(question.message);
  const batch = batches.find((one) => one.id === question.about);
  if (batch) return batches.length + canners.length > 1 ? `${batch.name}: ${text}` : text;
  const canner = canners.find((one) => one.id === question.about);
  return canner && canner.name !== 'canner' ? `${cannerLabel(canner.name, catalogue)}: ${text}` : text;
}
