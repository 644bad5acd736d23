// What the cook is taught: the answer to a question, the reason for a step, the picture of a thing, and how many
// words a step gets. Holds what was explained last, what is shown, and what this cook asked for.

import type { Query } from '../../machines/dialogue/events.ts';
import type { Effect, Message } from '../../machines/kitchen/effects.ts';
import { faceOf } from './face.ts';
import {
  askedFor,
  fadingOf,
  guidanceFor,
  isSafetyStep,
  stepAt,
  wordsAt,
  type Asked,
  type Guidance,
  type Shown,
  type Step,
  type Verbosity,
} from './fading.ts';
import type { Actors } from './kitchenView.ts';
import { lessonOn, lessonOnSaid, lessonOnStep, sourceSaid, type Lesson } from './lessons.ts';
import type { LogEntry } from './ports.ts';
import { shownBy, slipsOf } from './shown.ts';
import { sightsOf, type SightId } from './sights.ts';
import type { BatchView, CannerView } from './view.ts';

export interface Showing {
  sight: SightId;
  /** The cook asked for it; else it shows itself with full words. */
  asked: boolean;
  /** The step has only just begun: a picture may stand where the vessel else shows how things are. */
  fresh: boolean;
}

/** Long enough to look, with a spoon in the hand. Common practice, no source. */
const FRESH_MS = 30_000;

export interface TeachingPorts {
  actors: () => Actors;
  focus: () => string | null;
  /** Wall time in ms. */
  wall: () => number;
  entries: () => readonly LogEntry[];
  /** What was said last, with the reasons that came with it. */
  said: () => readonly { message: Message; why?: Message | undefined; about: string | null }[];
  say: (message: Message, slot?: string) => void;
  verbosity: () => Verbosity;
}

type Actor = BatchView | CannerView;

export class Teaching {
  readonly #ports: TeachingPorts;
  #behind: Lesson | null = null;
  #asked: Asked = {};
  /** A picture that was asked for, or put away, counts until the work moves on. */
  #look: { place: string; sight: SightId | null } | null = null;
  #arrived: { place: string; at: number } | null = null;
  #shown: { length: number; shown: Shown } | null = null;
  /** What is called for again and again: of whom it was told how, and what for. */
  readonly #toldHow = new Set<string>();

  constructor(ports: TeachingPorts) {
    this.#ports = ports;
  }

  /** Answers what is asked about the work itself; false for all other talk. */
  answer({ command, about, slots }: Pick<Query, 'command' | 'about' | 'slots'>): boolean {
    const actor = this.#actor(about ?? this.#ports.focus());
    switch (command) {
      case 'ask':
        return this.#teach(lessonOn(slots.term, actor && 'plan' in actor ? actor.plan : null));
      case 'show':
        return this.#show(slots.term, actor);
      case 'why':
        return this.#why(actor);
      case 'tell.more':
        return this.#more(actor);
      case 'say.more':
      case 'say.less':
        return this.#moreOrLess(command === 'say.more' ? 1 : -1, actor);
      default:
        return false;
    }
  }

  /** A sentence with as many words as this cook still wants at its step. */
  worded(effect: Effect): Effect[] {
    if (effect.type !== 'say') return [effect];
    const fading = fadingOf(effect.message.key);
    if (!fading) return [effect];
    const { prompt, how } = wordsAt(effect.message, this.#guidance(fading.step));
    const said: Effect = { ...effect, message: prompt };
    if (!how || (fading.often && !this.#wantsHow(effect, fading.step))) return [said];
    const added: Effect = {
      type: 'say',
      message: how,
      urgency: 'step',
      about: effect.about,
      slot: `${effect.slot}/how`,
    };
    return [said, added];
  }

  /**
   * A cook with three pots stirs every half minute: how it is done is told once while there is time and once when
   * the pot gets thick; anew after a slip, and to whoever has asked for more words.
   */
  #wantsHow({ about, message }: Extract<Effect, { type: 'say' }>, step: Step): boolean {
    const slips = slipsOf(this.#ports.entries(), step, about);
    const what = `${message.key} ${String(message.params?.['near'])}`;
    const told = JSON.stringify([step, about, what, slips]);
    if (this.#toldHow.has(told)) return false;
    this.#toldHow.add(told);
    return true;
  }

  /** What the screen shows of the thing in hand: what was asked for, or by itself while words are full. */
  get showing(): Showing | null {
    const actor = this.#actor(this.#ports.focus());
    if (!actor) return null;
    const place = placeOf(actor);
    if (this.#look?.place === place)
      return this.#look.sight && { sight: this.#look.sight, asked: true, fresh: true };
    const step = stepAt(actor.state);
    const [sight] = sightsOf(kindOf(actor), faceOf(actor));
    const byItself = step !== null && sight !== undefined && this.#guidance(step) === 'full';
    return byItself ? { sight, asked: false, fresh: this.#isFresh(place) } : null;
  }

  #isFresh(place: string): boolean {
    const at = this.#ports.wall();
    if (this.#arrived?.place !== place) this.#arrived = { place, at };
    return at - this.#arrived.at < FRESH_MS;
  }

  #guidance(step: Step): Guidance {
    return guidanceFor(step, this.#experience(), this.#asked, this.#ports.verbosity());
  }

  /** The array of the log grows at its end, so its length tells whether it is still the same. */
  #experience(): Shown {
    const entries = this.#ports.entries();
    if (this.#shown?.length !== entries.length)
      this.#shown = { length: entries.length, shown: shownBy(entries) };
    return this.#shown.shown;
  }

  #teach(lesson: Lesson | null): boolean {
    if (!lesson) return false;
    this.#behind = lesson;
    this.#ports.say(lesson.short);
    if (lesson.sight) this.#lookAt(lesson.sight);
    return true;
  }

  #show(term: string | undefined, actor: Actor | null): boolean {
    if (term === 'nothing') {
      this.#lookAt(null);
      this.#ports.say({ key: 'teach.hidden' });
      return true;
    }
    const [own] = actor ? sightsOf(kindOf(actor), faceOf(actor)) : [];
    const taught = this.#teach(lessonOn(term ?? own, null));
    if (!taught) this.#ports.say({ key: 'teach.nothingToShow' });
    return true;
  }

  /** The reason that came with the last words, else their own, else that of the step. */
  #why(actor: Actor | null): boolean {
    const said = this.#ports.said();
    const last = said.findLast(({ message }) => isPrompt(message));
    const own = last && lessonOnSaid(last.message);
    const step = this.#actor(last?.about ?? said.at(-1)?.about ?? null) ?? actor;
    const lesson = own ?? (step && lessonOnStep(step));
    if (!lesson) return false;
    return this.#teach(
      last?.why && !own ? { ...lesson, short: last.why, sight: null } : { ...lesson, sight: null },
    );
  }

  #more(actor: Actor | null): boolean {
    const lesson = this.#behind ?? (actor && lessonOnStep(actor));
    if (!lesson) return false;
    this.#behind = null;
    const source = sourceSaid(lesson.sources);
    this.#ports.say(lesson.more);
    if (source) this.#ports.say(source, 'answer-source');
    return true;
  }

  #moreOrLess(by: 1 | -1, actor: Actor | null): boolean {
    const step = actor && stepAt(actor.state);
    if (!step) return false;
    const safe = by === -1 && isSafetyStep(step);
    if (by === 1) this.#toldHow.clear();
    this.#asked = askedFor(step, this.#experience(), this.#asked, by, this.#ports.verbosity());
    this.#ports.say({
      key: safe ? 'teach.neverLess' : 'teach.words',
      params: { level: this.#guidance(step) },
    });
    return true;
  }

  #lookAt(sight: SightId | null): void {
    const actor = this.#actor(this.#ports.focus());
    if (actor) this.#look = { place: placeOf(actor), sight };
  }

  #actor(id: string | null): Actor | null {
    const { batches, canners } = this.#ports.actors();
    return [...batches, ...canners].find((actor) => actor.id === id) ?? null;
  }
}

/** Answers and read-backs are no prompts: "why" after them is about what was said before. */
function isPrompt({ key }: Message): boolean {
  return /^(batch|canner|bare|kitchen\.(named|clock|not|did))/.test(key);
}

const kindOf = (actor: Actor): 'batch' | 'canner' => ('plan' in actor ? 'batch' : 'canner');
const placeOf = (actor: Actor): string => `${actor.id}/${actor.state}`;
