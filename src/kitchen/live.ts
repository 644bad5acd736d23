// The kitchen at work: the one place where events come in and effects go out.
//
// What comes in is a cook's word, touch or key, or the clock's beat. It is written to the log, the
// machines move, and what they ask for goes to the mouth, the ear and the screen.

import type { Slots, TalkCommand } from '../../machines/dialogue/commands.ts';
import type { Message, Urgency } from '../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { BatchPlan } from '../core/types.ts';
import { createAnnouncer, type Announcer } from './announcing.ts';
import { calledFor } from './calledFor.ts';
import { Calling } from './calling.ts';
import { eventTold } from './told.ts';
import { Conversation, type Did } from './conversation.ts';
import { Doubt } from './doubt.ts';
import { Errands } from './errands.ts';
import type { Evening } from './evening/evening.ts';
import { openEvening } from './evening/open.ts';
import { Expecting } from './expecting.ts';
import { happenings } from './fold.ts';
import { LogKeeper, type Acted } from './keeper.ts';
import { doingOf } from './naming.ts';
import { look } from './look.ts';
import { Lookout } from './lookout.ts';
import { Journal } from './journal.ts';
import { Notices, sentenceOf, type Telling } from './notices.ts';
import { Picture } from './picture.ts';
import { planned } from './planned.ts';
import { Presence, wasAway } from './presence.ts';
import { QuietHours } from './quietHours.ts';
import { Speaker } from './speaker.ts';
import { plainManners, type LivePorts } from './live-ports.ts';
import type { EntrySource, LogEntry, LogStore } from './ports.ts';
import { momentOf, situationOf } from './situation.ts';
import type { Choice, KitchenView } from './view.ts';

export class LiveKitchen {
  readonly #ports: LivePorts;
  readonly #announcer: Announcer;
  readonly #conversation: Conversation;
  readonly #picture: Picture;
  readonly #doubt: Doubt;
  readonly #quiet: QuietHours;
  readonly calling: Calling;
  readonly #notices = new Notices();
  #keeper: LogKeeper | null = null;
  #opening: LogKeeper | null = null;
  #stopBeat: () => void = () => {};
  readonly #presence: Presence;
  readonly #speaker: Speaker;
  readonly #errands: Errands;
  readonly #lookout: Lookout<KitchenView>;
  readonly #expecting: Expecting;
  readonly #evening: Evening | null;

  constructor(ports: LivePorts) {
    this.#ports = ports;
    this.#presence = new Presence(ports.pace);
    this.#errands = new Errands(ports.later);
    this.#lookout = new Lookout(() => this.#look(), this.#errands);
    const now = () => ports.clock.now();
    this.#expecting = new Expecting({ ear: ports.ear, phrases: ports.phrases, errands: this.#errands });
    this.#picture = new Picture({ now, wall: ports.wall, sayIt: ports.sayIt });
    this.#announcer = createAnnouncer({
      mouth: ports.mouth,
      catalogue: ports.catalogue,
      now: ports.wall,
      onCaption: (caption) => {
        this.#conversation.saying(caption);
        this.#refresh();
      },
      onTrouble: (error) => this.trouble('voice', sentenceOf(error), false),
    });
    this.#doubt = new Doubt(ports.clock, this.#announcer);
    const manners = () => ports.manners?.() ?? plainManners;
    this.#quiet = new QuietHours(this.#announcer, manners);
    this.#conversation = new Conversation({
      announcer: this.#announcer,
      catalogue: ports.catalogue,
      now,
      wall: ports.wall,
      actors: () => this.#picture.actors,
      focus: () => this.#picture.focus,
      act: (act, source) => void this.#act(act, source),
      takeBack: async (source) => (await this.#keeper?.takeBack(now(), source)) != null,
      lookAt: (about) => this.focus(about),
      entries: () => this.#keeper?.log.entries ?? [],
      doubtBoils: (canners) => void this.#tell({ type: 'boil.doubted', at: now(), canners }, 'clock'),
      settleDoubt: (slept) => this.#doubt.settle(slept),
      wish: ports.wish ?? null,
      verbosity: () => manners().words,
      journal: ports.journal ?? new Journal(),
      evening: () => this.#evening,
    });
    this.#speaker = new Speaker({
      ...ports,
      announcer: this.#announcer,
      teaching: this.#conversation.teaching,
      quiet: this.#quiet,
      actors: () => this.#picture.actors,
    });
    this.calling = new Calling({
      ear: ports.ear,
      wall: ports.wall,
      yield: (on) => this.#announcer.yield(on),
      called: () => this.#conversation.called(),
    });
    ports.ear.onHearing((hearing) => {
      this.#errands.now('listen'); // it is understood by what is open now
      if (hearing.kind !== 'nothing') this.#quiet.cookIsAbout(now());
      this.#conversation.hear(hearing);
      this.calling.heard(hearing);
      this.#refresh();
    });
    this.#evening = openEvening(ports, {
      actors: () => this.#picture.actors,
      events: () => happenings(this.#keeper?.log.entries ?? []),
      say: (effect) => this.#speaker.say(effect),
      note: (event) => void this.#tell(event, 'clock'),
      openCanner: (event) => void this.#tell(event, 'clock'),
      changed: () => this.#refresh(),
    });
  }

  // --- In ---
  /** Opens the log; a leading tab then beats and speaks, a mirroring one only looks. */
  async open(store: LogStore, leads: boolean): Promise<void> {
    this.#stopBeat();
    const keeper = (this.#opening = new LogKeeper(store, {
      acted: (acted) => this.#acted(acted, leads),
      caughtUp: (log) => this.#picture.of(log), // the next beat shows it
      trouble: ({ kind, says }) => this.trouble(`store-${kind}`, says, true),
      madeBy: this.#ports.madeBy,
    }));
    const lastSeenAt = await keeper.open();
    this.#keeper = keeper;
    this.#picture.of(keeper.log);
    if (leads) await this.#wake(lastSeenAt);
    this.#expect();
    if (leads) this.#conversation.recall();
    this.#stopBeat = this.#ports.clock.beat((now) =>
      leads ? this.#beat(now, keeper, store) : this.#refresh(),
    );
    this.#refresh();
  }

  close(): void {
    this.#stopBeat();
    this.#opening?.leave();
    this.#announcer.hush();
  }

  /** A tab that only looks follows what the leading one has written. */
  follow(entry: LogEntry): void {
    this.#opening?.follow(entry);
  }

  /** The gesture has come: what waited to be said is said. */
  readonly startSpeaking = (): void => this.#speaker.start();

  async plan(plan: BatchPlan, source: EntrySource = 'touch'): Promise<void> {
    const events = planned(plan, this.#picture.actors.batches, this.#keeper?.log, this.#ports.clock.now());
    for (const event of events) await this.#tell(event, source);
  }

  /** The cook tapped or pressed a choice. */
  async choose({ command, about, slots }: Choice, answer: Slots, source: EntrySource): Promise<void> {
    this.#quiet.cookIsAbout(this.#ports.clock.now());
    this.#conversation.touched();
    await this.#act({ command, about, slots: { ...slots, ...answer } }, source);
  }

  /** The cook used a button or a key of the assistant itself. */
  async ask(command: TalkCommand, source: EntrySource): Promise<void> {
    this.#quiet.cookIsAbout(this.#ports.clock.now());
    this.#errands.now('listen');
    await this.#conversation.press(command, source);
    this.#refresh();
  }

  trySaying(message: Message, slot = 'sample', urgency: Urgency = 'clock'): void {
    this.#conversation.say(message, slot, urgency);
  }

  readonly focus = (about: string): void => this.#seenAnew(() => this.#picture.lookAt(about));
  readonly trouble = (id: string, says: Telling, grave: boolean): void =>
    this.#seenAnew(() => this.#notices.put(id, says, grave));
  readonly calm = (id: string): void => this.#seenAnew(() => this.#notices.clear(id));
  /** The words are those of another language, or of other units, from now on. */
  readonly reworded = (): void => this.#seenAnew(() => this.#conversation.reworded());

  get view(): KitchenView {
    return this.#lookout.view;
  }

  readonly subscribe = (listener: () => void): (() => void) => this.#lookout.subscribe(listener);

  // --- The log moves ---

  /** The cook's evening was set otherwise: other hands, another end. */
  replan(): void {
    this.#evening?.happened();
  }

  #beat(now: number, keeper: LogKeeper, store: LogStore): void {
    const asleepSince = this.#presence.beat(now, (at) => store.seen(at));
    if (asleepSince !== null) void this.#wake(asleepSince);
    void keeper.tell({ type: 'tick', at: now }, 'clock').catch((error: unknown) => this.#failed(error));
    this.#doubt.beat();
    this.#conversation.beat();
    this.calling.beat();
    this.#quiet.beat(now, this.#picture.actors.batches);
    this.#evening?.beat();
    this.#announcer.beat();
    this.#refresh();
  }

  async #tell(event: KitchenEvent, source: EntrySource): Promise<void> {
    try {
      await this.#keeper?.tell(event, source);
    } catch (error) {
      this.#failed(error);
    }
  }

  /** What the cook said or tapped, as an event of the log; one that puts an earlier one right may not fit. */
  async #act(did: Did, source: EntrySource): Promise<void> {
    const { log, startOf } = this.#keeper ?? {};
    const cannerFor = (batch: string) => this.#evening?.cannerFor(batch) ?? null;
    const told = log && eventTold(log, did, this.#ports.clock.now(), startOf, cannerFor);
    if (told?.kind === 'event') await this.#tell(told.event, source);
    else if (told?.kind === 'refused') this.#conversation.say(told.message);
  }

  /** Coming back: whoever has a pot or a canner on says what went on meanwhile. */
  async #wake(lastSeenAt: number | null): Promise<void> {
    const now = this.#ports.clock.now();
    if (!wasAway(lastSeenAt, now) || this.#picture.allOver) return;
    await this.#tell({ type: 'kitchen.returned', at: now, awaySince: lastSeenAt }, 'clock');
  }

  /** Seen at once; what it calls for comes in tasks of its own. */
  #acted(acted: Acted, leads: boolean): void | Promise<void> {
    this.#picture.of(acted.step);
    const said = leads ? this.#callFor(acted) : undefined;
    // After that: what a pot is told of its heat is a fact of the next plan.
    if (leads && (acted.entry.source !== 'clock' || acted.step.rewritten))
      this.#errands.put('plan', () => this.#evening?.happened());
    this.#refresh();
    return said;
  }

  async #callFor(acted: Acted): Promise<void> {
    const works = calledFor(acted, {
      announcer: this.#announcer,
      speaker: this.#speaker,
      doing: (id) => doingOf(id, this.#picture.actors, this.#ports.catalogue()),
      planned: (effect) => this.#evening?.worded(effect) ?? [effect],
      passOn: (entry) => {
        this.#ports.onEntry?.(entry);
        this.#ports.reminder.keepAwake(!this.#picture.allOver);
        this.#refresh();
      },
    });
    await Promise.all(works.map((work) => this.#errands.task(work)));
  }

  #look(): KitchenView {
    return look({
      ports: this.#ports,
      picture: this.#picture,
      conversation: this.#conversation,
      evening: this.#evening,
      question: this.#announcer.question(),
      notices: [...this.#notices.list],
    });
  }

  #seenAnew(change: () => void): void {
    change();
    this.#refresh();
  }

  #refresh(): void {
    this.#lookout.moved();
    this.#errands.put('listen', () => this.#expect());
  }

  #expect(): void {
    const now = this.#ports.clock.now();
    const moment = momentOf(this.#picture, this.#keeper?.log.entries ?? [], now);
    this.#conversation.open(situationOf(moment));
    this.#errands.put('foresee', () => this.#expecting.of(moment, this.#ports.units(), now));
  }

  #failed(error: unknown): void {
    this.trouble('log', sentenceOf(error), true);
  }
}
