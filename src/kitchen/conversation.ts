// The talk between cook and kitchen: what is heard becomes acts and answers, what is said opens questions.

import { whichCanner } from '../../machines/dialogue/canners.ts';
import type { Slots, TalkCommand } from '../../machines/dialogue/commands.ts';
import type { Act, DialogueEffect, Query } from '../../machines/dialogue/events.ts';
import type { Message, Urgency } from '../../machines/kitchen/effects.ts';
import type { Announcer, Caption } from './announcing.ts';
import { helpWith, howLong, status, whatNext } from './answers.ts';
import { doubtedIn } from './doubtedBoil.ts';
import type { Evening } from './evening/evening.ts';
import { dressed } from './evening/waits.ts';
import { happenings } from './fold.ts';
import type { Actors } from './kitchenView.ts';
import type { Verbosity } from './fading.ts';
import type { Wish } from './live-ports.ts';
import type { Journal } from './journal.ts';
import { unnamed } from './naming.ts';
import type { Catalogue, EntrySource, Hearing, LogEntry } from './ports.ts';
import type { Situation } from '../../machines/dialogue/events.ts';
import { Talk } from './talk.ts';
import { Teaching } from './teaching.ts';
import type { BatchView, CannerView, KitchenView } from './view.ts';

/** Something the cook said or tapped. */
export type Did = Pick<Act, 'command' | 'about' | 'slots'>;

export interface ConversationPorts {
  announcer: Announcer;
  catalogue: () => Catalogue;
  /** Kitchen time and wall time, ms. */
  now: () => number;
  wall: () => number;
  actors: () => Actors;
  focus: () => string | null;
  act(did: Did, source: EntrySource): void;
  takeBack(source: EntrySource): Promise<boolean>;
  lookAt(about: string): void;
  /** The log so far: what this cook has shown. */
  entries: () => readonly LogEntry[];
  /** Grants a wish of how it speaks; null where it cannot be told otherwise. */
  wish: ((wish: Wish) => Message) | null;
  verbosity: () => Verbosity;
  journal: Journal;
  /** The plan of several batches; null where there is none to ask after. */
  evening: () => Pick<Evening, 'spoken' | 'leave' | 'stay' | 'waits'> | null;
  /** A boil dropped, and the cook has not said in which of these canners; none: it is known. */
  doubtBoils(canners: readonly string[]): void;
  /** The cook has answered whether the device slept. */
  settleDoubt(slept: boolean): void;
}

export class Conversation {
  readonly #ports: ConversationPorts;
  readonly #talk: Talk;
  readonly teaching: Teaching;
  #lastHeard: KitchenView['lastHeard'] = null;
  #caption: KitchenView['caption'] = null;

  constructor(ports: ConversationPorts) {
    this.#ports = ports;
    const { actors, focus, wall, entries, announcer } = ports;
    this.teaching = new Teaching({
      actors,
      focus,
      wall,
      entries,
      said: () => announcer.last().map(({ say }) => ({ ...unnamed(say), why: say.why })),
      say: (message, slot) => this.say(message, slot),
      verbosity: ports.verbosity,
    });
    this.#talk = new Talk({
      act: (act) => this.#act(act),
      query: (query) => this.#answer(query),
      effect: (effect) => ports.announcer.effect(effect),
      doubts: (canners) => ports.doubtBoils(canners),
    });
  }

  /** What the screen shows of the talk. */
  get seen(): Pick<KitchenView, 'lastHeard' | 'caption' | 'talked'> {
    return { lastHeard: this.#lastHeard, caption: this.#caption, talked: this.#ports.journal.lines };
  }

  /** The question that the talk itself has put: a yes or a no on the screen answers it as one that is said. */
  get asks(): Message | null {
    return this.#talk.asks;
  }

  // --- In ---

  hear(hearing: Hearing): void {
    const at = this.#ports.wall();
    const before = this.#talk.state;
    const overTheMouth = this.#caption?.speaking === true;
    // Who hushed the page and now speaks to it wants an answer.
    if (hearing.kind !== 'nothing' && hearing.understood.command !== 'hush') this.#ports.announcer.happened();
    const came = this.#talk.take({
      type: 'heard',
      at,
      hearing: hearing.kind === 'nothing' ? { kind: 'nothing' } : hearing,
    });
    // A plea for silence and "say that again" see to the mouth themselves.
    if (overTheMouth && came.length > 0) this.#ports.announcer.interrupted(aboutOf(came));
    const askedBack = this.#talk.state !== before && this.#talk.state !== 'listening';
    const heardAt = this.#ports.now();
    if (hearing.kind !== 'nothing')
      this.#ports.journal.note({ at: heardAt, who: 'cook', words: hearing.words });
    this.#lastHeard =
      hearing.kind === 'nothing'
        ? { words: '', verdict: 'nothing', at: heardAt }
        : { words: hearing.words, verdict: askedBack ? 'asked-back' : 'done', at: heardAt };
  }

  /** The cook has pressed to talk: what is said next is meant for us. */
  called(): void {
    this.#talk.take({ type: 'called', at: this.#ports.wall() });
  }

  /** A button or a key of the assistant itself. */
  async press(command: TalkCommand, source: EntrySource): Promise<void> {
    // A tapped answer belongs to the question that is open; only another touch closes it.
    if (command === 'yes' || command === 'no') return this.#answerOpenQuestion(command);
    this.touched();
    if (command === 'go.back') return this.#takeBack(source);
    this.#answer({ type: 'query', command, about: null, slots: {} });
  }

  touched(): void {
    this.#talk.take({ type: 'touched', at: this.#ports.wall() });
  }

  beat(): void {
    this.#talk.take({ type: 'tick', at: this.#ports.wall() });
  }

  /** What can be accepted now, and what it would mean. */
  open(situation: Situation): void {
    this.#talk.take({ type: 'open', at: this.#ports.wall(), situation });
  }

  /** What was owed an answer before the page was closed. */
  recall(): void {
    const canners = doubtedIn(happenings(this.#ports.entries()));
    if (canners.length > 0) this.#talk.take({ type: 'doubted', at: this.#ports.wall(), canners });
  }

  /** Another language: what was said last, in the old one, makes room for what there is to do. */
  reworded(): void {
    if (this.#caption === null) return;
    const { focus, catalogue } = this.#ports;
    const word = (message: Message) => catalogue().text(message);
    const text = word(whatNext(this.#actor(focus()), word));
    this.#caption = { ...this.#caption, text, urgency: 'step' };
  }

  /** The mouth begins or ends a sentence: a question can be answered from its beginning on. */
  saying(caption: Caption): void {
    // The end of a sentence leaves standing what stands there: the language may have changed meanwhile.
    this.#caption = caption.speaking ? caption : { ...(this.#caption ?? caption), speaking: false };
    const at = this.#ports.wall();
    if (caption.speaking)
      this.#ports.journal.note({ at: this.#ports.now(), who: 'kitchen', words: caption.text });
    if (!caption.speaking) return void this.#talk.take({ type: 'spoke', at });
    for (const line of this.#ports.announcer.last())
      this.#talk.take({ type: 'saying', at, ...unnamed(line.say) });
  }

  // --- Out ---

  #act({ command, about, slots }: Act): void {
    if (command === 'go.back') return void this.#takeBack('voice');
    if (command === 'yes' || command === 'no') return this.#ports.settleDoubt(command === 'yes');
    this.#ports.act({ command, about, slots }, 'voice');
  }

  async #takeBack(source: EntrySource): Promise<void> {
    if (!(await this.#ports.takeBack(source))) this.say({ key: 'kitchen.nothingToTakeBack' });
  }

  /** Yes and no on the screen answer the question that is open, or else what the mouth has asked last. */
  #answerOpenQuestion(command: 'yes' | 'no'): void {
    const at = this.#ports.wall();
    const asked = this.#ports.announcer.question();
    // As if it had been asked a second ago: a tap is never meant for something else.
    if (!this.#talk.hasQuestion && asked)
      this.#talk.take({ type: 'saying', at: at - 1000, ...unnamed(asked.say) });
    const understood = { command, slots: {} } as const;
    this.#talk.take({
      type: 'heard',
      at,
      hearing: { kind: 'heard', words: command, understood, confidence: 1 },
    });
  }

  #answer(query: Query): void {
    if (this.teaching.answer(query)) return;
    const { command, about, slots } = query;
    const { announcer, catalogue, now, wall } = this.#ports;
    const actors = this.#actors();
    const actor = this.#actor(about ?? this.#ports.focus());
    const word = (message: Message) => catalogue().text(message);
    switch (command) {
      case 'repeat':
        return announcer.repeat();
      case 'hush':
        announcer.hush();
        return void this.#talk.take({ type: 'hushed', at: wall() });
      case 'how.long':
        return this.say(howLong(actor, actors, now()));
      case 'status':
        return status(actors, word, now()).forEach((line, i) => this.say(line, `status-${i}`));
      case 'what.next':
        return this.say(whatNext(actor, word));
      case 'why':
      case 'tell.more':
        return this.say({ key: 'kitchen.noReason' });
      case 'ask':
        return this.say({ key: 'dialogue.noSuchWord' });
      case 'switch.batch':
        return this.#lookAt(about, slots);
      case 'speak.slower':
      case 'speak.faster':
      case 'speak.louder':
      case 'speak.softer':
        return this.#grant(command.slice('speak.'.length) as Wish);
      case 'plan':
        return this.#plan(whatNext(actor, word)).forEach((line, i) => this.say(line, `plan-${i}`));
      case 'cook.away':
        return this.say(this.#ports.evening()?.leave(slots) ?? NO_PLAN);
      case 'cook.here':
        return this.say(this.#ports.evening()?.stay() ?? NO_PLAN);
      case 'help':
        return this.say(helpWith(actor));
      default:
        return;
    }
  }

  /** Where there is none, what comes next. */
  #plan(next: Message): Message[] {
    const spoken = this.#ports.evening()?.spoken() ?? [NO_PLAN];
    return spoken[0]?.key === NO_PLAN.key ? [NO_PLAN, next] : spoken;
  }

  #grant(wish: Wish): void {
    if (this.#ports.wish) this.say(this.#ports.wish(wish));
  }

  #lookAt(about: string | null, { fruit }: Slots): void {
    const actor = this.#actor(about);
    if (!actor) return this.say({ key: 'kitchen.nothingOn' });
    this.#ports.lookAt(actor.id);
    const doing = this.#ports.catalogue().text(actor.doing);
    if ('plan' in actor) this.say({ key: 'kitchen.nowWith', params: { name: fruit ?? '', doing } });
    else this.say({ key: 'kitchen.nowWithCanner', params: { which: whichCanner(actor.name), doing } });
  }

  #actor(id: string | null): BatchView | CannerView | null {
    const { batches, canners } = this.#actors();
    return [...batches, ...canners].find((actor) => actor.id === id) ?? null;
  }

  /** As the screen shows them: what is to wait is said to wait. */
  #actors(): Actors {
    return dressed(this.#ports.actors(), this.#ports.evening()?.waits ?? []);
  }

  /** An answer, to nobody's work in particular. */
  say(message: Message, slot = 'answer', urgency: Urgency = 'clock'): void {
    this.#ports.announcer.effect({
      type: 'say',
      message,
      urgency,
      about: null,
      slot: `kitchen/${slot}`,
    });
  }
}

const NO_PLAN: Message = { key: 'evening.plan.alone' };

/** What the cook spoke of, where it was something that happened. */
function aboutOf(came: readonly DialogueEffect[]): string | null {
  return came.find((effect) => effect.type === 'act')?.about ?? null;
}
