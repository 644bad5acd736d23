// A cook that knows only what it hears: does what it is told with one pair of hands, looks at its own pots, and
// answers by voice. It never sees the screen.

import type { CannerName } from '../../../machines/dialogue/canners.ts';
import type { Prompt } from './prompts.ts';
import type { World } from './world.ts';

/** What goes otherwise on this evening. */
export interface Mischief {
  /** Whose pot it takes for thick too early, so that the plate runs. */
  impatientWith?: string;
  /** A canner's flame goes down once, so many minutes into the first full boil. */
  flameDropsAfter?: number;
  /** One sentence that it first says wrong, and what it says instead. */
  slip?: { of: string; says: string };
  /** It is called away once while something simmers, for so many minutes. */
  calledAway?: number;
  /** Whose jars have one that does not seal. */
  unsealed?: string;
}

interface Job {
  about: string;
  /** What the work is, so that it is not begun twice when the page asks again. */
  what: string;
  minutes: number;
  done: () => void;
  /** Not begun before this is so. */
  when: () => boolean;
}

interface Saying {
  sentence: string;
  about: string;
  /** What must be heard from the page before the cook believes that it was understood; null: nothing. */
  believes: ((prompt: Prompt) => boolean) | null;
  saidAt: number | null;
  tries: number;
  /** Since when it is to be said, minutes of wall time. */
  since: number;
}

/** After so long without an answer it says it again, minutes of wall time. */
const PATIENCE = 0.3;
const MOST_TRIES = 3;
/** It lets the page finish what it says for so long, and then talks over it; minutes of wall time. */
const LETS_FINISH = 0.07;
/** An answer that had to wait for so long is to a question that is gone; minutes of wall time. */
const ANSWER_STALE = 0.4;
/** Hands that have had nothing to do for so long ask what is next; of one pot not more often than the second. Minutes of wall time. */
const [IDLE, ASKS_EVERY] = [0.5, 2.5];
/** Jars are left alone for a day, as the page told when they came to rest; then their cook asks after them. */
const NIGHT_MINUTES = 24 * 60 + 5;
const JARS_READY = 'the jars are hot and ready';
const CANNER_HOT_C = 82; // 180 F, the published heat of the water for hot jars

export class RobotCook {
  readonly said: { sentence: string; tries: number }[] = [];
  readonly heard: Prompt[] = [];
  /** What each batch came to, by name. */
  readonly ends = new Map<string, string>();
  readonly #world: World;
  readonly #names: readonly string[];
  readonly #jars: ReadonlyMap<string, number>;
  readonly #mischief: Mischief;
  readonly #jobs: Job[] = [];
  readonly #sayings: Saying[] = [];
  /** Told to boil and not yet seen to; told to simmer and not yet thick; the same for a canner. */
  readonly #watching = new Map<string, 'boil' | 'thick' | 'hot' | 'full boil' | 'keeps boiling'>();
  readonly #simmeredOnce = new Set<string>();
  readonly #slipped = new Set<string>();
  /** Jars at rest, and since when: by its own clock it knows when it is morning. */
  readonly #rested = new Map<string, number>();
  /** Whose spoonful lies on a plate and was not judged yet. */
  readonly #onPlate = new Set<string>();
  readonly #boilBegan = new Map<string, number>();
  /** Canners that were set up, or are next to be. */
  readonly #begun = new Set<CannerName>();
  /** The canner whose flame went down. */
  flameDroppedUnder: string | null = null;
  #awayUntil: number | null = null;
  #held: string | null = null;
  #spokenOf: string | null = null;
  /** Of what it told by itself: what is asked back is about that. */
  #lastSaid: Saying | null = null;
  /** Which canner each fruit's jars are in. */
  readonly #loaded = new Map<string, string>();
  /** Whose jars are full and not yet in, and which canner was named for them, if one was. */
  readonly #filled = new Map<string, string | null>();
  #now = 0;
  #wall = 0;
  #busyAt = 0;
  /** When it last asked what is next for a pot, and for which it waits for the answer. */
  readonly #askedAt = new Map<string, number>();
  #asked: string | null = null;

  /** What its canners are called, by itself and by the page. */
  readonly canners: readonly CannerName[];

  constructor(
    world: World,
    jars: ReadonlyMap<string, number>,
    canners: readonly CannerName[],
    mischief: Mischief = {},
  ) {
    this.#world = world;
    this.#jars = jars;
    this.canners = canners;
    this.#names = [...jars.keys()];
    this.#mischief = mischief;
  }

  get #isAway(): boolean {
    return this.#awayUntil !== null && this.#now < this.#awayUntil;
  }

  /** Nothing on the stove, nothing to do: jars rest, and it is not yet the next day. */
  get resting(): boolean {
    return (
      this.#jobs.length === 0 &&
      this.#sayings.length === 0 &&
      this.#watching.size === 0 &&
      this.#names.every((name) => this.ends.has(name) || this.#sleeps(name))
    );
  }

  #sleeps(fruit: string): boolean {
    return this.#now - (this.#rested.get(fruit) ?? -Infinity) < NIGHT_MINUTES;
  }

  /** In words, for whoever reads the log of a long evening. */
  get waitsFor(): string {
    const sayings = this.#sayings.map(
      ({ sentence, tries }) => `to be understood: "${sentence}" (said ${tries} times)`,
    );
    const jobs = this.#jobs.map(
      ({ about, what, minutes, when }) =>
        `hands: ${about}, ${what}, ${when() ? `${minutes.toFixed(1)} min` : 'not yet its turn'}`,
    );
    const watching = [...this.#watching].map(([about, what]) => `eyes: ${about}, ${what}`);
    const left = this.#names.filter((name) => !this.#rested.has(name) && !this.ends.has(name));
    const away = this.#isAway ? [`away for ${((this.#awayUntil ?? 0) - this.#now).toFixed(1)} min`] : [];
    const all = [...away, ...sayings, ...jobs, ...watching];
    return `${all.length === 0 ? 'a word from the page' : all.join('; ')}; not yet at rest: ${left.join(', ')}`;
  }

  get finished(): boolean {
    if ([...this.ends.values()].some((end) => end.startsWith('spoilt'))) return true;
    return this.#names.every((name) => this.ends.has(name));
  }

  /** Kitchen minutes and wall minutes go by: hands work, eyes look. */
  passes(minutes: number, wallMinutes: number): void {
    this.#now += minutes;
    this.#wall += wallMinutes;
    this.#world.step(minutes * 60);
    if (this.#isAway) return;
    this.#comeBack();
    this.#work(minutes);
    this.#askWhatIsNext();
    for (const [about, what] of [...this.#watching]) this.#look(about, what);
  }

  /** What it wants to say now that the page is silent, or in spite of the page's speaking, if anything. */
  wantsToSay(pageSpeaks = false): string | null {
    const stale = (saying: Saying) => saying.believes === null && this.#wall - saying.since > ANSWER_STALE;
    while (this.#sayings[0] && stale(this.#sayings[0])) this.#sayings.shift();
    const [next] = this.#sayings;
    if (!next || (this.#isAway && !next.sentence.startsWith('hold '))) return null;
    if (next.saidAt !== null && this.#wall - next.saidAt < PATIENCE) return null;
    const waited = this.#wall - (next.saidAt === null ? next.since : next.saidAt + PATIENCE);
    if (pageSpeaks && waited < LETS_FINISH) return null;
    next.saidAt = this.#wall;
    next.tries += 1;
    if (next.about !== '') this.#lastSaid = next;
    if (next.believes === null || next.tries >= MOST_TRIES) this.#settle(next);
    return this.#slip(next.sentence);
  }

  hears(prompts: readonly Prompt[]): void {
    for (const prompt of prompts) {
      this.heard.push(prompt);
      const [next] = this.#sayings;
      if (next?.saidAt != null && next.believes?.(prompt)) this.#settle(next);
      this.#obey(prompt);
    }
  }

  // --- What it is told ---

  #obey(prompt: Prompt): void {
    const key = prompt.key.replace(/^two\./, '');
    // What is said without a name is about the only one left, or about what the cook has just spoken of.
    const named = this.#names.find((name) => name === prompt.name) ?? null;
    const fruit = named ?? this.#only() ?? (key === 'batch.askIfItHolds' ? this.#plate() : this.#spokenOf);
    const [area] = key.split('.');
    if (area === 'canner') return this.#obeyCanner(key, this.#cannerIn(prompt));
    if (area === 'screen') return this.#obeyInShort(prompt);
    if (area === 'dialogue') return this.#talk(prompt);
    if (area === 'evening') this.#followPlan(prompt);
    if (fruit !== null) this.#obeyBatch(key, fruit, prompt.words);
    else if (key === 'batch.askIfItHolds') this.#reply('say that again');
  }

  /** What it asked for is told in the few words that stand on the screen; nothing else is believed to be meant for it. */
  #obeyInShort({ key, words }: Prompt): void {
    const fruit = this.#asked;
    const means = IN_SHORT[key];
    if (fruit === null || means === undefined || this.#isBusyWith(fruit)) return;
    this.#asked = null;
    if (!(means === 'batch.spoonOnPlate' && this.#onPlate.has(fruit))) this.#obeyBatch(means, fruit, words);
  }

  #obeyBatch(key: string, fruit: string, words: string): void {
    switch (key) {
      case 'batch.setUp':
        return this.#then(fruit, 4, 'everything is ready');
      case 'batch.mash':
        return this.#then(fruit, 6, `the ${fruit} is mashed`);
      case 'batch.bringToBoil':
        this.#world.heat(fruit, 1);
        return void this.#watching.set(fruit, 'boil');
      case 'batch.askIfRollingBoil':
        return this.#answer(
          fruit,
          this.#world.look(fruit).boil === 'rolling' ? `the ${fruit} is at a rolling boil` : 'no not yet',
        );
      case 'batch.simmer':
        this.#onPlate.delete(fruit);
        this.#world.heat(fruit, words.includes('hard') ? 0.9 : 0.75);
        this.#watching.set(fruit, 'thick');
        return this.#calledAway(fruit);
      case 'batch.stir':
      case 'batch.nearlyThick':
        return this.#hands(fruit, 'stir', 0.3, () => {
          this.#world.stir(fruit);
          // A cook with more to say leaves that unsaid: the page does not wait for it.
          if (this.#sayings.length === 0) this.#says(`i stirred the ${fruit}`, fruit, null);
        });
      case 'batch.askIfThick':
        return this.#answer(fruit, this.#isThick(fruit) ? `the ${fruit} is thick enough` : 'no not yet');
      case 'batch.skim':
        this.#world.heat(fruit, 0);
        return this.#then(fruit, 2, `the ${fruit} is skimmed`);
      case 'batch.strain':
        return this.#then(fruit, 5, `the ${fruit} is strained`);
      case 'batch.blend':
        return this.#then(fruit, 3, `the ${fruit} is blended`);
      case 'batch.spoonOnPlate':
        this.#world.heat(fruit, 0);
        return this.#then(fruit, words.includes('wants') ? 12 : 0.5, `the ${fruit} is on the plate`, () =>
          this.#onPlate.add(fruit),
        );
      case 'batch.askIfItHolds':
        return this.#answer(
          fruit,
          this.#world.look(fruit).holds
            ? `the ${fruit} passed the plate test`
            : `the ${fruit} is still runny`,
        );
      case 'batch.loosen':
        this.#onPlate.delete(fruit);
        return this.#then(fruit, 1, `the ${fruit} is loosened`);
      case 'batch.readyJars':
        this.#onPlate.delete(fruit);
        if (this.#sayings.some((one) => one.about === fruit && one.sentence === JARS_READY)) return;
        return this.#hands(
          fruit,
          'ready jars',
          3,
          () =>
            // To be told of the jars once more is no answer; to be asked which is not the end of it.
            this.#says(JARS_READY, fruit, ({ key }) => key === 'batch.fill'),
          // Filled jars cannot wait, the pot can: no cook fills jars for a canner that is taken.
          () => new Set(this.#loaded.values()).size + this.#filled.size < this.canners.length,
        );
      case 'batch.fill':
        return this.#then(fruit, 5, `${counted(this.#jars.get(fruit) ?? 0)} jars of ${fruit}`, () =>
          this.#filled.set(fruit, null),
        );
      case 'batch.toTheCanner':
        if (this.#filled.has(fruit)) this.#filled.set(fruit, this.#cannerIn({ name: null, words }));
        return;
      case 'batch.rest':
        this.#rested.set(fruit, this.#now);
        return this.#settleAbout(fruit);
      case 'batch.checkSeals':
        return this.#then(
          fruit,
          2,
          this.#mischief.unsealed === fruit ? 'one did not seal' : `all the ${fruit} jars sealed`,
        );
      case 'batch.putAway':
        return this.#then(fruit, 2, `the ${fruit} is put away`);
      case 'batch.done':
        return void this.ends.set(fruit, words);
      case 'batch.itCaught':
      case 'batch.wentCold':
      case 'batch.notServed':
      case 'batch.stopped':
        return void this.ends.set(fruit, `spoilt: ${words}`);
      default: // for the cook to know, not to do
    }
  }

  /** Which one a sentence is about; where there is one, that. */
  #cannerIn({ name, words }: Pick<Prompt, 'name' | 'words'>): CannerName {
    const [first = 'canner'] = this.canners;
    return this.canners.find((one) => one === name || words.includes(one)) ?? first;
  }

  /** Who missed how a canner is set up is told by the plan, in time, to put it on. */
  #followPlan({ name, words }: Prompt): void {
    const canner = this.#cannerIn({ name, words });
    if (!words.startsWith(`put the ${canner} on now`) || this.#begun.has(canner)) return;
    this.#obeyCanner('canner.fillIt', canner);
  }

  #obeyCanner(key: string, canner: CannerName): void {
    const world = this.#world;
    switch (key) {
      case 'canner.fillIt':
        this.#begun.add(canner);
        return this.#hands(canner, 'fill', 4, () => {
          this.#says(`the ${canner} is filled`, canner, null);
          world.cannerHeat(canner, 1);
          this.#says(`the ${canner} is heating`, canner, spokeOfCanner);
          this.#watching.set(canner, 'hot');
        });
      case 'canner.askIfHot':
        return this.#answer(
          canner,
          world.cannerC(canner) >= CANNER_HOT_C ? `the ${canner} is hot` : 'no not yet',
        );
      case 'canner.hot':
        return world.cannerHeat(canner, 0.35);
      case 'canner.loadNow':
        return this.#load(canner);
      case 'canner.bringToFullBoil':
      case 'canner.askIfFullBoil':
        world.cannerHeat(canner, 1);
        if (key === 'canner.askIfFullBoil' && !world.fullBoil(canner))
          return this.#answer(canner, 'no not yet');
        return void this.#watching.set(canner, 'full boil');
      case 'canner.clockStarted':
        this.#boilBegan.set(canner, this.#now);
        return void this.#watching.set(canner, 'keeps boiling');
      case 'canner.askIfItHolds':
      case 'canner.askPlainly':
        return this.#answer(canner, world.fullBoil(canner) ? ofBoil(canner).holds : ofBoil(canner).dropped);
      case 'canner.clockVoid':
        world.cannerHeat(canner, 1);
        return void this.#watching.set(canner, 'full boil');
      case 'canner.served':
        world.cannerHeat(canner, 0);
        return void this.#watching.delete(canner);
      case 'canner.liftOut': {
        const inside = [...this.#loaded].flatMap(([fruit, its]) => (its === canner ? [fruit] : []));
        if (inside.length === 0) return; // asked once more while it said that they are out
        return this.#hands(canner, 'lift', 3, () => {
          world.lift(canner);
          for (const fruit of inside) this.#loaded.delete(fruit);
          this.#says(ofBoil(canner).out, canner, (prompt) => prompt.key === 'batch.rest');
        });
      }
      case 'canner.addWater':
        return this.#then(canner, 1, ofBoil(canner).topped);
      default: // for the cook to know, not to do
    }
  }

  #talk(prompt: Prompt): void {
    const { key, words } = prompt;
    const [next] = this.#sayings;
    const last = this.#lastSaid;
    if (key === 'dialogue.wasThat')
      return this.#reply(last && alike(words, last.sentence) ? 'yes that is right' : 'no that is wrong');
    if (key.startsWith('dialogue.plain.'))
      return this.#reply(this.#isSo(prompt) ? 'yes that is right' : 'no that is wrong');
    if (key === 'dialogue.which' && last) return this.#reply(`the ${last.about}`);
    if (key === 'dialogue.pardon' && next) next.saidAt = -Infinity;
  }

  /** What is asked before it is believed: of a boil and a plate it looks again before it says yes. */
  #isSo(prompt: Prompt): boolean {
    const fruit = this.#spokenOf ?? this.#plate();
    switch (prompt.key) {
      case 'dialogue.plain.canner.fullBoil':
      case 'dialogue.plain.canner.boilHolds':
        return this.#world.fullBoil(this.#cannerIn(prompt));
      case 'dialogue.plain.plate.held':
        return fruit !== null && this.#world.look(fruit).holds;
      default:
        return true;
    }
  }

  // --- What it sees ---

  #look(about: string, what: string): void {
    const canner = this.canners.find((one) => one === about);
    if (canner) return this.#lookAtCanner(canner, what);
    if (what === 'boil' && this.#world.look(about).boil === 'rolling') {
      this.#watching.delete(about);
      this.#says(`the ${about} is at a rolling boil`, about, spokeOf(about));
    } else if (what === 'thick' && this.#isThick(about)) {
      this.#watching.delete(about);
      this.#simmeredOnce.add(about);
      this.#says(`the ${about} is thick enough`, about, spokeOf(about));
    }
  }

  #lookAtCanner(canner: CannerName, what: string): void {
    if (what === 'hot' && this.#world.cannerC(canner) >= CANNER_HOT_C) {
      this.#watching.delete(canner);
      this.#says(`the ${canner} is hot`, canner, spokeOfCanner);
    } else if (what === 'full boil' && this.#world.fullBoil(canner)) {
      this.#watching.delete(canner);
      this.#says(`the ${canner} is at a full rolling boil`, canner, (prompt) =>
        this.#tells(prompt, 'canner.clockStarted', canner),
      );
    } else if (what === 'keeps boiling') this.#mindTheFlame(canner);
  }

  /** Of this canner, where it says of which. */
  #tells(prompt: Prompt, key: string, canner: CannerName): boolean {
    return prompt.key.replace(/^two\./, '') === key && this.#cannerIn(prompt) === canner;
  }

  #isThick(fruit: string): boolean {
    const early = this.#mischief.impatientWith === fruit && !this.#simmeredOnce.has(fruit);
    return this.#world.look(fruit).holds || (early && this.#watching.get(fruit) === 'thick');
  }

  #mindTheFlame(canner: CannerName): void {
    const { flameDropsAfter } = this.#mischief;
    const boiledFor = this.#now - (this.#boilBegan.get(canner) ?? this.#now);
    if (flameDropsAfter !== undefined && boiledFor > flameDropsAfter && this.flameDroppedUnder === null) {
      this.flameDroppedUnder = canner;
      this.#world.cannerHeat(canner, 0);
    }
    if (this.#world.fullBoil(canner)) return;
    this.#watching.delete(canner);
    this.#says(ofBoil(canner).dropped, canner, (prompt) => this.#tells(prompt, 'canner.clockVoid', canner));
  }

  // --- What its hands do ---

  #hands(about: string, what: string, minutes: number, done: () => void, when = () => true): void {
    if (this.#jobs.some((job) => job.about === about && job.what === what)) return;
    // Hot jars cannot wait: they go before whatever else the hands were asked for.
    if (what === 'load') this.#jobs.unshift({ about, what, minutes, done, when });
    else this.#jobs.push({ about, what, minutes, done, when });
  }

  #then(about: string, minutes: number, sentence: string, also: () => void = () => {}): void {
    this.#hands(about, sentence, minutes, () => {
      this.#says(sentence, about, this.canners.some((one) => one === about) ? spokeOfCanner : spokeOf(about));
      also();
    });
  }

  #work(minutes: number): void {
    const job = this.#jobs.find(({ when }) => when());
    if (!job) return;
    job.minutes -= minutes;
    if (job.minutes > 0) return;
    this.#jobs.splice(this.#jobs.indexOf(job), 1);
    job.done();
  }

  /** A pot that nobody has spoken of: what was to be done with it went unheard, or there is nothing to do yet. */
  #askWhatIsNext(): void {
    if (this.#sayings.length > 0 || this.#jobs.some(({ when }) => when())) this.#busyAt = this.#wall;
    if (this.#wall - this.#busyAt < IDLE) return;
    const lastAsked = (fruit: string) => this.#askedAt.get(fruit) ?? -Infinity;
    const [fruit] = this.#names
      .filter((name) => !this.#isBusyWith(name) && this.#wall - lastAsked(name) >= ASKS_EVERY)
      .toSorted((a, b) => lastAsked(a) - lastAsked(b));
    if (fruit === undefined) return;
    this.#askedAt.set(fruit, this.#wall);
    this.#asked = fruit;
    this.#says(`what is next for the ${fruit}`, fruit, null);
  }

  /** Its hands or its eyes are on it, or it needs neither. */
  #isBusyWith(fruit: string): boolean {
    return (
      this.#sleeps(fruit) ||
      this.ends.has(fruit) ||
      this.#watching.has(fruit) ||
      this.#loaded.has(fruit) ||
      this.#jobs.some(({ about }) => about === fruit) ||
      this.#sayings.some(({ about }) => about === fruit)
    );
  }

  #load(canner: CannerName): void {
    const ready = [...this.#filled].flatMap(([fruit, its]) => ((its ?? canner) === canner ? [fruit] : []));
    if (ready.length === 0) return;
    this.#hands(canner, 'load', 3, () => {
      for (const fruit of ready) {
        this.#world.load(canner, this.#jars.get(fruit) ?? 0, fruit.length);
        this.#loaded.set(fruit, canner);
        this.#filled.delete(fruit);
      }
      this.#says(`the jars are in the ${canner}`, canner, (prompt) =>
        this.#tells(prompt, 'canner.bringToFullBoil', canner),
      );
    });
  }

  #calledAway(fruit: string): void {
    if (this.#mischief.calledAway === undefined || this.#awayUntil !== null) return;
    this.#awayUntil = this.#now + this.#mischief.calledAway;
    this.#held = fruit;
    this.#world.heat(fruit, 0);
    this.#sayings.unshift({
      sentence: `hold the ${fruit}`,
      about: fruit,
      believes: null,
      saidAt: null,
      tries: 0,
      since: this.#wall,
    });
  }

  #comeBack(): void {
    if (this.#held === null || this.#awayUntil === null) return;
    const fruit = this.#held;
    this.#held = null;
    this.#world.heat(fruit, 0.75);
    this.#says(`carry on with the ${fruit}`, fruit, spokeOf(fruit));
    this.#says('what is the plan', '', ({ key }) => key.startsWith('evening.plan.'));
  }

  // --- What it says ---

  #says(sentence: string, about: string, believes: Saying['believes']): void {
    if (this.#sayings.some((saying) => saying.sentence === sentence && saying.about === about)) return;
    this.#sayings.push({ sentence, about, believes, saidAt: null, tries: 0, since: this.#wall });
  }

  /** Before what it tells of itself, and behind what is on its lips: a question about a boil cannot wait. */
  #answer(about: string, sentence: string): void {
    if (this.#sayings.some((saying) => saying.sentence === sentence && saying.about === about)) return;
    const answer: Saying = { sentence, about, believes: null, saidAt: null, tries: 0, since: this.#wall };
    const at = this.#sayings.findLastIndex((saying) => saying.about === '' && saying.believes === null);
    this.#sayings.splice(at + 1, 0, answer);
  }

  /** A word back at once, before anything else. */
  #reply(sentence: string): void {
    this.#sayings.unshift({ sentence, about: '', believes: null, saidAt: null, tries: 0, since: this.#wall });
  }

  #slip(sentence: string): string {
    const { slip } = this.#mischief;
    if (slip === undefined || slip.of !== sentence || this.#slipped.has(sentence)) return sentence;
    this.#slipped.add(sentence);
    return slip.says;
  }

  #settle(saying: Saying): void {
    const at = this.#sayings.indexOf(saying);
    if (at >= 0) this.#sayings.splice(at, 1);
    this.said.push({ sentence: saying.sentence, tries: saying.tries });
    if (this.#names.includes(saying.about)) this.#spokenOf = saying.about;
  }

  #settleAbout(about: string): void {
    for (const saying of this.#sayings.filter((one) => one.about === about)) this.#settle(saying);
  }

  /** Where the name was not caught it is the only plate there is; of two, no plate is judged for another. */
  #plate(): string | null {
    return this.#onPlate.size === 1 ? ([...this.#onPlate][0] ?? null) : null;
  }

  #only(): string | null {
    const left = this.#names.filter((name) => !this.ends.has(name));
    return left.length === 1 ? (left[0] ?? null) : null;
  }
}

/** The few words of a step, as the page answers "what is next" with, and what it says when the step comes. */
const IN_SHORT: Partial<Record<Prompt['key'], Prompt['key']>> = {
  'screen.act.batch.settingUp': 'batch.setUp',
  'screen.act.batch.mashing': 'batch.mash',
  'screen.act.batch.mashWithPectin': 'batch.mash',
  'screen.act.batch.stirPectinIn': 'batch.mash',
  'screen.act.batch.melting': 'batch.mash',
  'screen.act.batch.softening': 'batch.mash',
  'screen.act.batch.comingToBoil': 'batch.bringToBoil',
  'screen.act.batch.sugarIn': 'batch.intoTheBoil',
  'screen.act.batch.pectinIn': 'batch.intoTheBoil',
  'screen.act.batch.simmering': 'batch.simmer',
  'screen.act.batch.boilingHard': 'batch.simmer',
  'screen.act.batch.skimming': 'batch.skim',
  'screen.act.batch.straining': 'batch.strain',
  'screen.act.batch.blending': 'batch.blend',
  'screen.act.batch.plateTesting': 'batch.spoonOnPlate',
  'screen.act.batch.judging': 'batch.askIfItHolds',
  'screen.act.batch.loosening': 'batch.loosen',
  'screen.act.batch.readyingJars': 'batch.readyJars',
  'screen.act.batch.filling': 'batch.fill',
  'screen.act.batch.checkingSeals': 'batch.checkSeals',
  'screen.act.batch.puttingAway': 'batch.putAway',
};

export const SHORT_STEPS = Object.keys(IN_SHORT) as Prompt['key'][];

const spokeOfCanner = ({ key }: Prompt): boolean => /^(two\.)?canner\./.test(key);

/** What a cook calls it by who has two; who has one need not. */
function ofBoil(canner: CannerName): { holds: string; dropped: string; topped: string; out: string } {
  return canner === 'canner'
    ? {
        holds: 'the full boil is holding',
        dropped: 'the boil dropped',
        topped: 'i added water and it kept boiling',
        out: 'the jars are out',
      }
    : {
        holds: `the ${canner} is still at a full boil`,
        dropped: `the ${canner} stopped boiling`,
        topped: `i added water to the ${canner} and it kept boiling`,
        out: `the jars are out of the ${canner}`,
      };
}

const spokeOf =
  (fruit: string) =>
  ({ key, name }: Prompt): boolean =>
    // To be told to wait is an answer too.
    /^(two\.)?(batch|evening\.wait)\./.test(key) && (name === fruit || name === null);

/** Most words the same, and of the same canner. */
function alike(heard: string, said: string): boolean {
  const canner = (words: string) => /(first|second) canner/.exec(words)?.[0];
  if (canner(heard) !== canner(said)) return false;
  const words = new Set(heard.split(' '));
  const shared = said.split(' ').filter((word) => words.has(word)).length;
  return shared >= 0.7 * said.split(' ').length;
}

const COUNTS = 'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen'.split(
  ' ',
);

function counted(n: number): string {
  return COUNTS[n] ?? String(n);
}
