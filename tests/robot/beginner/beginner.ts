// A robot that knows nothing: it does what it is told, word for word, and knows things only by the pictures' words.

import type { Place } from '../../../src/rehearsal/index.ts';
import type { Bench } from './bench.ts';
import { doings, inWords, likeness, numberIn, toSay, vesselIn, type Doing } from './instructions.ts';
import type { Page, Screen } from './page.ts';

const MIN = 60_000;
/** Longer than this, and the work hangs somewhere. */
/** No step but the rest takes so long. */
const LONGEST_STEP_MS = 3 * 60 * MIN;
const LONGEST_MS = 40 * 60 * MIN;
/** It looks round this often while the work runs. */
const LOOK_MS = 20_000;
/** Told nothing more, it waits this long and then says what the screen offers. */
const PATIENCE_MS = 3 * MIN;
/** This much of what it sees must have been told under a name. */
const ALIKE = 0.6;

/** So long it listens to what comes back when it has said something. */
const BREATH_MS = 1000;
/** The question, and nothing else, that the page puts before it believes what a jar's safety hangs on. */
const ASKED_BACK = /^(Is|Does|Did) [^.?!]*\?$/;

/** Sentences that claim what only eyes can tell. */
const SEEN = /boil|thick|holds?\b|runny|hot\b|seal/i;

export class Beginner {
  readonly #page: Page;
  readonly #bench: Bench;
  readonly record: string[] = [];
  #vessel: 'pot' | 'canner' = 'pot';
  /** What it has been told to say as soon as it is true, or done. */
  #toSay: { words: string; from: number } | null = null;
  #question: string | null = null;
  /** What it is answering at once, and need not answer again when it listens to the rest. */
  #answered: string | null = null;
  #stirs = false;
  #watches = false;
  #lastNews = 0;
  /** Everything told, sentence by sentence. */
  readonly #told: string[] = [];
  #busyUntil = 0;
  #leavesAlone = false;
  /** The state in which the empty jars were put on to boil. */
  #jarsBoilIn = '';
  #movedAt = 0;
  #state = '';

  constructor(page: Page, bench: Bench) {
    this.#page = page;
    this.#bench = bench;
  }

  /** Works until the kitchen says that all is put away, or it has gone on for three days. */
  async work(): Promise<string> {
    const began = this.#page.now();
    this.#lastNews = began;
    this.#movedAt = began;
    while (this.#stateNow() !== 'putAway' && this.#stateNow() !== 'stopped') {
      if (this.#page.now() - began > LONGEST_MS) return 'never finished';
      if (!this.#leavesAlone && this.#page.now() - this.#movedAt > LONGEST_STEP_MS) return 'stuck';
      await this.#page.wait(this.#leavesAlone ? 15 * MIN : LOOK_MS);
      this.#bench.runTo(this.#page.now());
      await this.#turn();
    }
    return this.#stateNow();
  }

  async #turn(): Promise<void> {
    const said = this.#page.heard();
    for (const utterance of said) this.#listen(utterance, said.join(' '));
    if (this.#stateNow() !== this.#state) {
      this.#state = this.#stateNow();
      this.#movedAt = this.#page.now();
      this.#lastNews = this.#page.now();
    }
    if (this.#stirs) this.#bench.hands({ do: 'stir' });
    if (this.#page.now() < this.#busyUntil) return;
    if (this.#watches && (await this.#tellLostBoil())) return;
    if (this.#question !== null) return this.#answer(this.#question);
    if (this.#toSay) return this.#sayWhenTrue();
    if (this.#page.now() - this.#lastNews > PATIENCE_MS) await this.#sayWhatIsOffered();
  }

  // --- Ears ---

  #listen(utterance: string, all: string): void {
    if (!this.#told.slice(-6).includes(sentences(utterance)[0] ?? '')) this.#lastNews = this.#page.now();
    this.record.push(`    page: ${utterance}`);
    this.#told.push(...sentences(utterance));
    this.#vessel = vesselIn(utterance, this.#vessel);
    const done = doings(utterance, this.#vessel);
    const most = numberIn(/only ([a-z0-9-]+):/i.exec(all)?.[1] ?? '') ?? Infinity;
    for (const doing of done) this.#do(doing.do === 'fill' ? { ...doing, most } : doing);
    if (/check (all|the jar)/i.test(utterance)) this.#leavesAlone = false;
    const words = toSay(utterance);
    if (words !== null) this.#toSay = { words, from: this.#page.now() };
    if (/say how many/i.test(utterance)) this.#toSay = { words: 'how many jars', from: this.#page.now() };
    // A question that nothing was asked to be done for waits for its answer.
    if (/\?/.test(utterance) && utterance !== this.#answered) this.#question = utterance;
    if (utterance === this.#answered) this.#answered = null;
  }

  #do(doing: Doing): void {
    if (doing.do === 'stirAllTheTime') this.#stirs = true;
    if (doing.do === 'takeOff' || (doing.do === 'heat' && doing.under === 'pot' && doing.heat !== 'high'))
      this.#stirs = false;
    if (doing.do === 'watchCanner') this.#watches = true;
    if (doing.do === 'liftJars') this.#watches = false;
    if (doing.do === 'leaveJars') this.#leavesAlone = true;
    if (doing.do === 'heat') this.#leavesAlone = false;
    // Told again what it is doing already, it does not start over.
    if (doing.do === 'heatJars' && this.#jarsBoilIn === this.#state) return;
    if (doing.do === 'heatJars') {
      this.#jarsBoilIn = this.#stateNow();
      this.#busyUntil = this.#page.now() + doing.minutes * MIN;
    }
    this.#bench.hands(doing);
    if (doing.do === 'spoonOnPlate') this.#busyUntil = this.#page.now() + waitIn(this.#told.slice(-3)) * MIN;
  }

  // --- Eyes ---

  #sees(place: Place): string[] {
    return this.#bench.sees(place);
  }

  /** The screen with the pot's or the canner's own pictures on it: it taps what it is asked about. */
  #screenOf(vessel: 'pot' | 'canner'): Screen {
    const { live } = this.#page;
    const about = vessel === 'canner' ? live.view.canners[0]?.id : live.view.batches[0]?.id;
    if (about) live.focus(about);
    return this.#page.screen();
  }

  /** Is what is seen what was shown under this name? Shown nothing, it takes the page's word for it. */
  #isIt(name: RegExp, place: 'pot' | 'canner' | 'plate'): boolean {
    const seen = this.#sees(place)[0] ?? '';
    const { pictures } = this.#screenOf(place === 'canner' ? 'canner' : 'pot');
    if (!pictures.some((picture) => name.test(picture.name))) return !/not hot/.test(seen);
    const best = pictures
      .map((picture) => ({ ...picture, like: likeness(seen, picture.alt) }))
      .reduce((most, one) => (one.like > most.like ? one : most));
    return best.like >= ALIKE && name.test(best.name);
  }

  /** Thick is known by what was said of a spoonful; "not done" beside it counts against. */
  #isThick(): boolean {
    const spoonful = this.#sees('pot')[1] ?? '';
    const { pictures, lines } = this.#screenOf('pot');
    const known = [...pictures.map(({ alt }) => alt), ...lines, ...this.#told.slice(-30)]
      .flatMap(sentences)
      .filter((line) => /spoon|drops|sheet|mound/i.test(line));
    if (known.length === 0) return true;
    const like = (unlike: boolean): number =>
      Math.max(
        0,
        ...known
          .filter((line) => /not done|not yet/i.test(line) === unlike)
          .flatMap((line) => sentences(spoonful).map((part) => likeness(part, line))),
      );
    return like(false) >= ALIKE && like(false) > like(true);
  }

  // --- Mouth ---

  async #say(words: string): Promise<boolean> {
    const understood = await this.#page.say(words);
    this.record.push(`    beginner: ${words}${understood ? '' : ' (not understood)'}`);
    if (!understood) return false;
    if (this.#toSay?.words === words || this.#toSay?.words === 'how many jars') this.#toSay = null;
    this.#question = null;
    this.#lastNews = this.#page.now();
    await this.#answerBack();
    return true;
  }

  /** What is asked back of what it has just said, it answers before it turns to anything else. */
  async #answerBack(): Promise<void> {
    await this.#page.wait(BREATH_MS);
    const asked = this.#page.lastSaid();
    if (!ASKED_BACK.test(asked) || asked === this.#answered) return;
    this.#answered = asked;
    await this.#answer(asked);
  }

  async #answer(question: string): Promise<void> {
    const asked = question.split(/(?<=[.!])\s/).findLast((part) => part.includes('?')) ?? question;
    if (/or is it runny/i.test(asked)) return this.#judgePlate();
    if (/cold plate/i.test(asked)) return this.#yesOrNo(this.#isIt(/holds|wrinkles/i, 'plate'));
    if (/no flex/i.test(asked)) return this.#countSeals();
    if (/down and firm/i.test(asked)) return this.#yesOrNo(this.#lidsUp() === 0);
    if (/how many did not/i.test(asked)) return this.#countSeals();
    if (/boil/i.test(asked)) {
      const place =
        /canner|still|hard|all along/i.test(asked) || this.#vessel === 'canner' ? 'canner' : 'pot';
      return this.#yesOrNo(this.#isIt(/rolling boil/i, place));
    }
    if (/thick/i.test(asked))
      return this.#isThick() ? this.#sayOnce('it is thick enough') : this.#yesOrNo(false);
    if (/hot/i.test(asked)) return this.#yesOrNo(!/not hot/i.test(this.#sees('canner')[0] ?? ''));
    this.#question = null; // nothing that eyes or hands can settle
  }

  #yesOrNo(yes: boolean): Promise<void> {
    return this.#sayOnce(yes ? 'yes' : 'no');
  }

  /** An answer that is not understood came too late: the work has moved on. */
  async #sayOnce(words: string): Promise<void> {
    await this.#say(words);
    this.#question = null;
  }

  async #judgePlate(): Promise<void> {
    const seen = this.#sees('plate')[0] ?? '';
    if (/still hot/.test(seen)) return;
    const held = this.#isIt(/holds|wrinkles/i, 'plate');
    const runny = !held && this.#isIt(/runny/i, 'plate');
    if (!(await this.#say(runny ? 'it is still runny' : 'it holds'))) this.#question = null;
  }

  async #countSeals(): Promise<void> {
    this.#question = null;
    this.#toSay = null;
    const up = this.#lidsUp();
    await this.#say(up === 0 ? 'all jars sealed' : `${inWords(up)} did not seal`);
  }

  #lidsUp(): number {
    const seen = this.#sees('jars').join(' ');
    return numberIn(/(\S+) lids? stands? up/i.exec(seen)?.[1] ?? 'zero') ?? 0;
  }

  async #sayWhenTrue(): Promise<void> {
    const { words } = this.#toSay ?? { words: '' };
    if (words === 'how many jars') return this.#sayJars();
    if (/more in the pot/.test(words) && !this.#bench.hasMore()) {
      this.#toSay = null; // it never says what is not so
      return;
    }
    if (/all jars sealed/.test(words)) return this.#countSeals();
    if (/canner is hot/.test(words) && /not hot/.test(this.#sees('canner')[0] ?? '')) return;
    if (/rolling boil/.test(words) && !this.#isIt(/rolling boil/i, this.#vessel)) return;
    if (!(await this.#say(words))) this.#toSay = null;
  }

  async #sayJars(): Promise<void> {
    const jars = this.#bench.filled();
    // Less than a whole jar in the pot: it goes into one all the same, and that is told.
    if (jars === 0) {
      if (await this.#say('only a small one')) this.#toSay = null;
      return;
    }
    await this.#say(`${inWords(jars)} ${jars === 1 ? 'jar' : 'jars'} filled`);
    this.#toSay = null;
  }

  /** Told to stay close, it tells at once when the boil is gone; nothing shown, anything that steams is a boil. */
  async #tellLostBoil(): Promise<boolean> {
    if (this.#page.live.view.canners[0]?.state !== 'fullBoil' || this.#isIt(/rolling boil/i, 'canner'))
      return false;
    return this.#say('the boil dropped');
  }

  /** Nothing was said for a while: what the screen offers to go on with, if it is so as far as it knows. */
  async #sayWhatIsOffered(): Promise<void> {
    const { view } = this.#page.live;
    for (const actor of [...view.batches, ...view.canners]) {
      const main = actor.choices.find((choice) => choice.main);
      if (!main || (actor.state === 'hot' && main.command === 'jars.in')) continue;
      if (SEEN.test(main.sayIt) && !this.#isSo(main.sayIt, 'plan' in actor ? 'pot' : 'canner')) continue;
      if (main.command === 'jars.filled') return this.#sayJars();
      if (await this.#say(main.sayIt)) return;
    }
    this.#lastNews = this.#page.now();
  }

  #isSo(words: string, vessel: 'pot' | 'canner'): boolean {
    if (/thick/.test(words)) return this.#isThick();
    if (/boil/.test(words)) return this.#isIt(/rolling boil/i, vessel);
    if (/hot/.test(words) && vessel === 'canner') return !/not hot/i.test(this.#sees('canner')[0] ?? '');
    return true;
  }

  #stateNow(): string {
    const [batch] = this.#page.live.view.batches;
    return batch?.state ?? '';
  }
}

const sentences = (text: string): string[] => text.split(/(?<=[.?!])\s+/);

/** "Plate not cold: nine minutes more": so long it waits before the spoonful. */
function waitIn(told: string[]): number {
  const match = /not cold: (\S+) minutes? more/i.exec(told.join(' '));
  return match?.[1] ? (numberIn(match[1]) ?? 0) : 0;
}
