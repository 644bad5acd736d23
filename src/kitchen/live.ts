// The kitchen at work: the one place where events come in and effects go out.
//
// What comes in is a cook's word, touch or key, or the clock's beat. It is written to the log, the
// machines move, and what they ask for goes to the mouth, the ear and the screen.

import type { BatchCommand, CannerCommand, Slots, TalkCommand } from '../../machines/dialogue/commands.ts';
import type { Act, Query } from '../../machines/dialogue/events.ts';
import type { Effect, Message } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { emptyKitchen, MAIN_CANNER, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import type { BatchPlan } from '../core/types.ts';
import { createAnnouncer, type Announcer, type Caption } from './announcing.ts';
import { howLong, status } from './answers.ts';
import { eventOf, type SayIt } from './choices.ts';
import { lastTold } from './fold.ts';
import { LogKeeper, type Acted } from './keeper.ts';
import { actorsOf, focusOf, isOver, type Actors } from './kitchenView.ts';
import { movesBetween, wordsForRewrite } from './moves.ts';
import { named, nameFor, unnamed } from './naming.ts';
import { Notices } from './notices.ts';
import type {
  Catalogue,
  Clock,
  Ear,
  EntrySource,
  Hearing,
  LogEntry,
  LogStore,
  Mouth,
  Reminder,
} from './ports.ts';
import { boundsOf, openCommands, situationOf, type PhraseBookOf } from './situation.ts';
import { Talk } from './talk.ts';
import type { BatchView, CannerView, Choice, KitchenView } from './view.ts';

/** Away for less than this is a reload; longer, and it says what went on meanwhile. */
const AWAY_MS = 20_000;
/** A cook who asked to see another batch sees it for this long, wall time. */
const ASKED_FOCUS_MS = 90_000;

export interface LivePorts {
  clock: Clock;
  /** Wall time, ms: people answer at the same speed in a practice kitchen. */
  wall: () => number;
  ear: Ear;
  mouth: Mouth;
  reminder: Reminder;
  catalogue: () => Catalogue;
  units: () => 'us' | 'metric';
  phrases: PhraseBookOf;
  sayIt: SayIt;
  pace: () => number;
  practice: boolean;
  /** Every entry that has acted, for the tabs that mirror this one. */
  onEntry?: (entry: LogEntry) => void;
}

export class LiveKitchen {
  readonly #ports: LivePorts;
  readonly #announcer: Announcer;
  readonly #talk: Talk;
  readonly #notices = new Notices();
  readonly #listeners = new Set<() => void>();
  #keeper: LogKeeper | null = null;
  #stopBeat: () => void = () => {};
  /** Before a gesture nothing can sound: what is to be said waits. */
  #unsaid: Effect[] | null = [];
  #askedFocus: { on: string; until: number } | null = null;
  #caption: KitchenView['caption'] = null;
  #lastHeard: KitchenView['lastHeard'] = null;
  #view: KitchenView;
  #seen: { kitchen: Kitchen; now: number; actors: Actors } | null = null;
  /** What the ear was last told to expect. */
  #expected = '';

  constructor(ports: LivePorts) {
    this.#ports = ports;
    this.#talk = new Talk({
      act: (act) => this.#act(act),
      query: (query) => this.#answer(query),
      effect: (effect) => this.#announcer.effect(effect),
    });
    this.#announcer = createAnnouncer({
      mouth: ports.mouth,
      catalogue: ports.catalogue,
      now: ports.wall,
      onCaption: (caption) => this.#showCaption(caption),
      onTrouble: (error) => this.trouble('voice', sentenceOf(error), false),
    });
    ports.ear.onHearing((hearing) => this.#hear(hearing));
    this.#view = this.#look();
  }

  // --- In ---

  /** Opens the log; a leading tab then beats and speaks, a mirroring one only looks. */
  async open(store: LogStore, leads: boolean): Promise<void> {
    this.#stopBeat();
    const keeper = new LogKeeper(store, {
      acted: (acted) => this.#acted(acted),
      trouble: ({ kind, says }) => this.trouble(`store-${kind}`, says, true),
    });
    const lastSeenAt = await keeper.open();
    this.#keeper = keeper;
    if (leads) await this.#wake(lastSeenAt);
    let lastSeen = 0;
    this.#stopBeat = this.#ports.clock.beat((now) => {
      if (!leads) return this.#refresh();
      void keeper.tell({ type: 'tick', at: now }, 'clock').catch((error: unknown) => this.#failed(error));
      if (now - lastSeen >= 1000 * this.#ports.pace()) store.seen((lastSeen = now));
      this.#talk.take({ type: 'tick', at: this.#ports.wall() });
      this.#announcer.beat();
      this.#refresh();
    });
    this.#refresh();
  }

  close(): void {
    this.#stopBeat();
    this.#announcer.hush();
  }

  /** A tab that only looks follows what the leading one has written. */
  follow(entry: LogEntry): void {
    this.#keeper?.follow(entry);
    this.#refresh();
  }

  /** The gesture has come: what waited to be said is said. */
  startSpeaking(): void {
    const waiting = this.#unsaid ?? [];
    this.#unsaid = null;
    for (const effect of waiting) this.#announcer.effect(effect);
  }

  async plan(plan: BatchPlan, source: EntrySource = 'touch'): Promise<void> {
    const at = this.#ports.clock.now();
    const name = nameFor(plan, this.#actors().batches);
    const { canner } = plan;
    if (canner && !this.#keeper?.log.kitchen.canners[MAIN_CANNER]) {
      const { jarsPerLoad, preheatMinutes } = canner;
      await this.#tell(
        { type: 'canner.set', at, canner: MAIN_CANNER, jarsPerLoad, preheatMinutes: preheatMinutes.likely },
        source,
      );
    }
    await this.#tell(
      { type: 'batch.planned', at, batch: `${name.replaceAll(' ', '-')}-${at}`, name, plan },
      source,
    );
  }

  /** The cook tapped or pressed a choice. */
  async choose(choice: Choice, slots: Slots, source: EntrySource): Promise<void> {
    this.#talk.take({ type: 'touched', at: this.#ports.wall() });
    const { command, about } = choice;
    const event =
      about &&
      eventOf(
        command as BatchCommand | CannerCommand,
        about,
        { ...choice.slots, ...slots },
        this.#ports.clock.now(),
      );
    if (event) await this.#tell(event, source);
  }

  /** The cook used a button or a key of the assistant itself. */
  async ask(command: TalkCommand, source: EntrySource): Promise<void> {
    this.#talk.take({ type: 'touched', at: this.#ports.wall() });
    if (command === 'go.back') return this.#takeBack(source);
    if (command === 'yes' || command === 'no') return this.#answerOpenQuestion(command);
    this.#answer({ type: 'query', command, about: null, slots: {} });
  }

  focus(on: string): void {
    this.#askedFocus = { on, until: this.#ports.wall() + ASKED_FOCUS_MS };
    this.#refresh();
  }

  trouble(id: string, says: string, grave: boolean): void {
    this.#notices.put(id, says, grave);
    this.#refresh();
  }

  calm(id: string): void {
    this.#notices.clear(id);
    this.#refresh();
  }

  // --- Out ---

  get view(): KitchenView {
    return this.#view;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  // --- The log moved ---

  async #tell(event: KitchenEvent, source: EntrySource): Promise<boolean> {
    const keeper = this.#keeper;
    if (!keeper) return false;
    try {
      return await keeper.tell(event, source);
    } catch (error) {
      this.#failed(error);
      return false;
    }
  }

  /** Coming back: whoever has a pot or a canner on says what went on meanwhile. */
  async #wake(lastSeenAt: number | null): Promise<void> {
    const now = this.#ports.clock.now();
    if (lastSeenAt === null || now - lastSeenAt < AWAY_MS || this.#allOver()) return;
    await this.#tell({ type: 'kitchen.returned', at: now, awaySince: lastSeenAt }, 'clock');
  }

  #acted({ step, entry, before }: Acted): void {
    const moved = movesBetween(before.kitchen, step.kitchen);
    for (const about of moved) this.#announcer.movedOn(about);
    if (entry.source !== 'clock') this.#announcer.happened();
    const effects = step.rewritten
      ? wordsForRewrite(before.kitchen, step.kitchen, (id) => this.#doing(id))
      : step.effects;
    for (const effect of effects) this.#announce(effect);
    this.#ports.onEntry?.(entry);
    this.#ports.reminder.keepAwake(!this.#allOver());
    this.#refresh();
  }

  #announce(effect: Effect): void {
    const spoken = named(effect, this.#actors(), this.#ports.catalogue());
    if (this.#unsaid) this.#unsaid.push(spoken);
    else this.#announcer.effect(spoken);
    if (effect.type === 'say' && (effect.urgency === 'clock' || effect.urgency === 'danger'))
      this.#ports.reminder.notify(this.#ports.catalogue().text(effect.message));
  }

  #doing(id: string): string {
    const actor = this.#actor(id);
    return actor ? this.#ports.catalogue().text(actor.doing) : '';
  }

  // --- The talk ---

  #hear(hearing: Hearing): void {
    const at = this.#ports.wall();
    const before = this.#talk.state;
    if (hearing.kind === 'nothing') this.#talk.take({ type: 'heard', at, hearing: { kind: 'nothing' } });
    else this.#talk.take({ type: 'heard', at, hearing });
    const words = hearing.kind === 'nothing' ? '' : hearing.words;
    const askedBack = this.#talk.state !== before && this.#talk.state !== 'listening';
    const verdict = hearing.kind === 'nothing' ? 'nothing' : askedBack ? 'asked-back' : 'done';
    this.#lastHeard = { words, verdict, at };
    this.#refresh();
  }

  #act({ command, about, slots }: Act): void {
    if (command === 'go.back') return void this.#takeBack('voice');
    if (about === null) return;
    const event = eventOf(command as BatchCommand | CannerCommand, about, slots, this.#ports.clock.now());
    if (event) void this.#tell(event, 'voice');
  }

  async #takeBack(source: EntrySource): Promise<void> {
    const taken = await this.#keeper?.takeBack(this.#ports.clock.now(), source);
    if (!taken) this.#say({ key: 'kitchen.nothingToTakeBack' });
  }

  /** Yes and no on the screen answer what the mouth has asked. */
  #answerOpenQuestion(command: 'yes' | 'no'): void {
    const question = this.#announcer.question();
    if (!question) return;
    const at = this.#ports.wall();
    const { message, about } = unnamed(question.say);
    // Opened anew, and answered a second later as the dialogue wants it: a tap is never meant for something else.
    this.#talk.take({ type: 'saying', at: at - 1000, message, about });
    const understood = { command, slots: {} } as const;
    this.#talk.take({
      type: 'heard',
      at,
      hearing: { kind: 'heard', words: command, understood, confidence: 1 },
    });
  }

  #answer({ command, about, slots }: Query): void {
    const actors = this.#actors();
    const now = this.#ports.clock.now();
    const actor = this.#actor(about ?? this.#view.focus);
    switch (command) {
      case 'repeat':
        return this.#announcer.repeat();
      case 'hush':
        this.#announcer.hush();
        return this.#talk.take({ type: 'hushed', at: this.#ports.wall() });
      case 'how.long':
        return this.#say(howLong(actor, actors, now));
      case 'status':
        return status(actors, (message) => this.#ports.catalogue().text(message), now).forEach((line, i) =>
          this.#say(line, `status-${i}`),
        );
      case 'what.next':
        return this.#say({
          key: actor ? 'kitchen.whatNext' : 'kitchen.nothingOn',
          params: { doing: actor ? this.#whatToLookFor(actor) : '' },
        });
      case 'why':
        return this.#say(
          this.#announcer.last().findLast((line) => line.say.why)?.say.why ?? { key: 'kitchen.noReason' },
        );
      case 'switch.batch':
        return this.#switchTo(about, slots);
      case 'help':
        return this.#say(this.#help(actor));
      default:
        return;
    }
  }

  #switchTo(about: string | null, { fruit }: Slots): void {
    if (about === null) return this.#say({ key: 'kitchen.nothingOn' });
    this.focus(about);
    const key =
      about in (this.#keeper?.log.kitchen.canners ?? {}) ? 'kitchen.nowWithCanner' : 'kitchen.nowWith';
    this.#say({ key, params: { name: fruit ?? '', doing: this.#doing(about) } });
  }

  #whatToLookFor(actor: BatchView | CannerView): string {
    const { catalogue } = this.#ports;
    const doing = catalogue().text(actor.doing);
    return 'detail' in actor && actor.detail ? `${doing}. ${catalogue().text(actor.detail)}` : doing;
  }

  #help(actor: BatchView | CannerView | null): Message {
    if (!actor) return { key: 'kitchen.helpNothing' };
    const sentences = actor.choices
      .toSorted((a, b) => Number(b.main) - Number(a.main))
      .map(({ sayIt }) => sayIt);
    return { key: 'kitchen.help', params: { sentences: sentences.slice(0, 3).join('; ') } };
  }

  #say(message: Message, slot = 'answer'): void {
    this.#announcer.effect({ type: 'say', message, urgency: 'clock', about: null, slot: `kitchen/${slot}` });
  }

  #showCaption(caption: Caption): void {
    this.#caption = caption;
    const at = this.#ports.wall();
    if (caption.speaking)
      for (const line of this.#announcer.last()) {
        const { message, about } = unnamed(line.say);
        this.#talk.take({ type: 'saying', at, message, about });
      }
    else this.#talk.take({ type: 'spoke', at });
    this.#refresh();
  }

  // --- The view ---

  /** Asked for many times in one moment, and worked out once. */
  #actors(): Actors {
    const kitchen = this.#keeper?.log.kitchen ?? emptyKitchen;
    const now = this.#ports.clock.now();
    if (this.#seen?.kitchen !== kitchen || this.#seen.now !== now)
      this.#seen = { kitchen, now, actors: actorsOf(kitchen, now, this.#ports.sayIt) };
    return this.#seen.actors;
  }

  #actor(id: string | null): BatchView | CannerView | null {
    const { batches, canners } = this.#actors();
    return [...batches, ...canners].find((actor) => actor.id === id) ?? null;
  }

  #allOver(): boolean {
    return this.#actors().batches.every(isOver);
  }

  #look(): KitchenView {
    const actors = this.#actors();
    const asked =
      this.#askedFocus && this.#ports.wall() < this.#askedFocus.until ? this.#askedFocus.on : null;
    const now = this.#ports.clock.now();
    const question = this.#announcer.question();
    return {
      now,
      pace: this.#ports.pace(),
      practice: this.#ports.practice,
      focus: focusOf(actors, asked, now),
      ...actors,
      question: question && { message: question.say.message, urgency: question.urgency },
      caption: this.#caption,
      lastHeard: this.#lastHeard,
      notices: [...this.#notices.list],
    };
  }

  #refresh(): void {
    this.#view = this.#look();
    this.#expect();
    for (const listener of this.#listeners) listener();
  }

  /** The ear listens for what can be accepted now, the talk knows what it would mean. */
  #expect(): void {
    const { batches, canners, focus } = this.#view;
    const last = lastTold(this.#keeper?.log.entries ?? []);
    const moment = { actors: { batches, canners }, focus, last };
    this.#talk.take({ type: 'open', at: this.#ports.wall(), situation: situationOf(moment) });
    const fruits = batches.filter((batch) => !isOver(batch)).map(({ name }) => name);
    const asked = [openCommands(moment), fruits, boundsOf(moment.actors, this.#ports.units())] as const;
    const key = JSON.stringify(asked);
    if (key === this.#expected) return; // the same sentences as a second ago: the ear keeps its grammar
    this.#expected = key;
    this.#ports.ear.expect(this.#ports.phrases(...asked));
  }

  #failed(error: unknown): void {
    this.trouble('log', sentenceOf(error), true);
  }
}

function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
