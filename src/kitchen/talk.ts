// Runs the dialogue's chart: hearings go in; acts, questions to the kitchen and words come out.

import { initialTransition, transition, type SnapshotFrom } from 'xstate';
import { dialogueMachine } from '../../machines/dialogue/chart.ts';
import type { Act, DialogueEffect, DialogueEvent, Query } from '../../machines/dialogue/events.ts';
import { isOurQuestion } from '../../machines/dialogue/questions.ts';
import type { DialogueContext } from '../../machines/dialogue/rules.ts';
import type { Message } from '../../machines/kitchen/effects.ts';
import { emittedBy } from '../../machines/kitchen/step.ts';

export interface TalkOut {
  act(act: Act): void;
  query(query: Query): void;
  effect(effect: Exclude<DialogueEffect, Act | Query>): void;
  /** In which of these canners did the boil drop? Or in none: nobody is owed that any more. */
  doubts(canners: readonly string[]): void;
}

export class Talk {
  #snapshot: SnapshotFrom<typeof dialogueMachine> = initialTransition(dialogueMachine)[0];
  readonly #out: TalkOut;

  constructor(out: TalkOut) {
    this.#out = out;
  }

  /** Which of its states the talk is in: "listening", "askingBack" ... */
  get state(): string {
    return String(this.#snapshot.value);
  }

  /** A yes or a no would be an answer now. */
  get hasQuestion(): boolean {
    return this.#snapshot.context.question !== null;
  }

  /** What we have asked the cook ourselves, from when the mouth has begun to say it until it lapses. */
  get asks(): Message | null {
    const { question } = this.#snapshot.context;
    const isPut = question !== null && question.begunAt !== null && isOurQuestion(question.message);
    return isPut ? question.message : null;
  }

  /** What came of it, which has been handed on. */
  take(event: DialogueEvent): DialogueEffect[] {
    const [next, actions] = transition(dialogueMachine, this.#snapshot, event);
    const before = doubtedIn(this.#snapshot.context);
    this.#snapshot = next;
    const now = doubtedIn(next.context);
    if (event.type !== 'doubted' && now.join(' ') !== before.join(' ')) this.#out.doubts(now);
    const effects = emittedBy<DialogueEffect>(actions);
    for (const effect of effects) this.#hand(effect);
    return effects;
  }

  #hand(effect: DialogueEffect): void {
    switch (effect.type) {
      case 'act':
        return this.#out.act(effect);
      case 'query':
        return this.#out.query(effect);
      default:
        return this.#out.effect(effect);
    }
  }
}

const doubtedIn = ({ owed }: DialogueContext): string[] =>
  (owed === null ? [] : [owed.yes, ...owed.options]).flatMap((act) =>
    act?.command === 'canner.boilDropped' && act.about !== null ? [act.about] : [],
  );
