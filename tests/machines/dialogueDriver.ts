// A fluent driver of the dialogue: a cook speaks, a mouth speaks, time passes, and what came of it is kept.

import { initialTransition, transition, type SnapshotFrom } from 'xstate';
import { dialogueMachine } from '../../machines/dialogue/chart.ts';
import { isOurQuestion } from '../../machines/dialogue/questions.ts';
import type { CommandId, Slots } from '../../machines/dialogue/commands.ts';
import type {
  Act,
  DialogueEffect,
  DialogueEvent,
  Open,
  Query,
  Situation,
} from '../../machines/dialogue/events.ts';
import type { Message } from '../../machines/kitchen/effects.ts';

export type DialogueSnapshot = SnapshotFrom<typeof dialogueMachine>;

export function step(before: DialogueSnapshot, event: DialogueEvent): [DialogueSnapshot, DialogueEffect[]] {
  const [after, actions] = transition(dialogueMachine, before, event);
  const emitted = (actions as readonly { type: string; params?: unknown }[])
    .filter(({ type }) => type === 'xstate.emit')
    .map(({ params }) => (params as { event: DialogueEffect }).event);
  return [after as DialogueSnapshot, emitted];
}

export function atRest(): DialogueSnapshot {
  return initialTransition(dialogueMachine)[0] as DialogueSnapshot;
}

export function open(command: CommandId, about: string, main = false): Open {
  return { command, about, main, sayIt: `say ${command}` };
}

export const evening: Situation = {
  names: [
    { about: 'b1', name: 'plum' },
    { about: 'b2', name: 'pear' },
    { about: 'c1', name: 'canner' },
  ],
  choices: [],
  focus: null,
  last: null,
};

export class Talk {
  at = 1_000_000;
  snapshot = atRest();
  effects: DialogueEffect[] = [];

  constructor(choices: readonly Open[], rest: Partial<Situation> = {}) {
    this.send({ type: 'open', at: this.at, situation: { ...evening, choices, ...rest } });
  }

  send(event: DialogueEvent): this {
    [this.snapshot, this.effects] = step(this.snapshot, event);
    return this;
  }

  wait(seconds: number): this {
    this.at += seconds * 1000;
    return this.send({ type: 'tick', at: this.at });
  }

  hear(
    command: CommandId,
    slots: Slots = {},
    confidence = 0.95,
    kind: 'heard' | 'unsure' = 'heard',
    words = '',
  ): this {
    this.at += 100;
    const said = words === '' ? command : words;
    return this.send({
      type: 'heard',
      at: this.at,
      hearing: { kind, words: said, understood: { command, slots }, confidence },
    });
  }

  mumble(command: CommandId, slots: Slots = {}, words = ''): this {
    return this.hear(command, slots, 0.5, 'unsure', words);
  }

  babble(): this {
    this.at += 100;
    return this.send({ type: 'heard', at: this.at, hearing: { kind: 'nothing' } });
  }

  /** The mouth says, to its end, what was last asked; then the cook draws breath. */
  mouth(): this {
    const asked = this.said().find(isOurQuestion);
    return asked ? this.says(asked, null) : this;
  }

  says(message: Message, about: string | null): this {
    this.at += 200;
    this.send({ type: 'saying', at: this.at, message, about });
    const { effects } = this;
    this.at += 1500;
    this.send({ type: 'spoke', at: this.at });
    this.effects = effects;
    return this;
  }

  acts(): Act[] {
    return this.effects.filter((effect): effect is Act => effect.type === 'act');
  }

  queries(): Query[] {
    return this.effects.filter((effect): effect is Query => effect.type === 'query');
  }

  said(): Message[] {
    return this.effects.flatMap((effect) => (effect.type === 'say' ? [effect.message] : []));
  }

  keys(): string[] {
    return this.said().map(({ key }) => key);
  }

  sounds(): string[] {
    return this.effects.flatMap((effect) => (effect.type === 'sound' ? [effect.sound] : []));
  }

  get state(): string {
    return this.snapshot.value as string;
  }
}
