// Drives a real mouth by the announcer's queue: carries out its actions and tells it when each is over.

import type { Effect, Message, Urgency } from '../../machines/kitchen/effects.ts';
import { openQuestion, silence, type Announcements, type Line } from './announcements.ts';
import { announce, type AnnounceInput } from './announcer.ts';
import type { Catalogue, Mouth } from './ports.ts';
import { isCallToStir, type AnnounceAction } from './turns.ts';

export interface Caption {
  text: string;
  speaking: boolean;
  urgency: Urgency;
}

export interface Announcer {
  /** What a machine asked to be said or sounded; other effects are none of the mouth's business. */
  effect(effect: Effect): void;
  answered(slot: string): void;
  /** Before the effects of the new state. */
  movedOn(about: string): void;
  happened(): void;
  /** The cook was understood while the mouth spoke; it gives way. */
  interrupted(about: string | null): void;
  /** The cook calls, and is done. */
  yield(on: boolean): void;
  /** Whose words wait for the morning. */
  quiet(about: readonly string[]): void;
  repeat(): void;
  hush(): void;
  /** About once a second, for what comes back unanswered. */
  beat(): void;
  /** The question that waits for its answer. */
  question(): Line | null;
  /** What was said last, with the words behind "why". */
  last(): readonly Line[];
}

export interface AnnouncerParts {
  mouth: Mouth;
  /** Asked anew for each sentence, so that a change of language or units counts at once. */
  catalogue: () => Pick<Catalogue, 'text' | 'listed'>;
  /** Wall time in ms. */
  now: () => number;
  /** Everything said stands on the screen too. */
  onCaption: (caption: Caption) => void;
  /** A sentence that could not be put into words, or a mouth that broke its word. */
  onTrouble: (error: unknown) => void;
}

export function createAnnouncer({ mouth, catalogue, now, onCaption, onTrouble }: AnnouncerParts): Announcer {
  let queue: Announcements = silence;

  function take(input: AnnounceInput): void {
    const [next, actions] = announce(queue, input);
    queue = next;
    for (const action of actions) carryOut(action);
  }

  function carryOut(action: AnnounceAction): void {
    if (action.type === 'cut') return mouth.cut();
    const { id } = action;
    const sounding = action.type === 'speak' ? speak(action) : sound(action);
    const failed = (error: unknown): Spoken => {
      onTrouble(error);
      return 'failed';
    };
    void sounding.catch(failed).then((outcome) => take({ type: 'done', id, outcome, at: now() }));
  }

  async function speak({
    id,
    messages,
    urgency,
  }: Extract<AnnounceAction, { type: 'speak' }>): Promise<Spoken> {
    const text = inOneBreath(messages, catalogue());
    onCaption({ text, speaking: true, urgency });
    const outcome = await mouth.speak({ id, text, urgency });
    onCaption({ text, speaking: false, urgency });
    return outcome;
  }

  async function sound({ sound: name }: Extract<AnnounceAction, { type: 'sound' }>): Promise<Spoken> {
    return (await mouth.sound(name)) === 'played' ? 'spoken' : 'failed';
  }

  return {
    effect(effect) {
      if (effect.type !== 'pass') take({ type: 'effect', effect, at: now() });
    },
    answered: (slot) => take({ type: 'answered', slot, at: now() }),
    movedOn: (about) => take({ type: 'movedOn', about, at: now() }),
    happened: () => take({ type: 'happened', at: now() }),
    interrupted: (about) => take({ type: 'interrupted', about, at: now() }),
    yield: (on) => take({ type: 'yield', on, at: now() }),
    quiet: (about) => take({ type: 'quiet', about, at: now() }),
    repeat: () => take({ type: 'repeat', at: now() }),
    hush: () => take({ type: 'hush', at: now() }),
    beat: () => take({ type: 'tick', at: now() }),
    question: () => openQuestion(queue),
    last: () => queue.last,
  };
}

type Spoken = 'spoken' | 'cut' | 'failed';

/** Of several sentences about one batch only the first bears its name; pots to be stirred are named together. */
function inOneBreath(said: readonly Message[], catalogue: Pick<Catalogue, 'text' | 'listed'>): string {
  const calls = said.filter(isCallToStir);
  const rest = said.filter((message) => message !== calls[0] && calls.includes(message));
  const messages = said.filter((message) => !rest.includes(message));
  const nameOf = (message: Message | undefined) =>
    message?.key === 'kitchen.named' ? message.params?.['name'] : undefined;
  return messages
    .map((message, i) => {
      const name = nameOf(message);
      const again = name !== undefined && name === nameOf(messages[i - 1]);
      if (again) return String(message.params?.['words']);
      return catalogue.text(message === calls[0] ? allStirred(calls, message, catalogue.listed) : message);
    })
    .join(' ');
}

/** One call for all of them, in the words of the one that is nearest to burning. */
function allStirred(calls: readonly Message[], first: Message, listed: Catalogue['listed']): Message {
  const nearest = calls.find(({ params }) => params?.['near'] === true) ?? first;
  const names = calls.map(({ params }) => String(params?.['name']));
  return { ...nearest, params: { ...nearest.params, name: listed([...new Set(names)]) } };
}
