// A cook who rehearses by ear and voice alone, until the jars are out: knows only what the page's voice has said, and
// does what it asks by telling that it is done. It vouches for no seal: it has seen no lid.

import { sayable } from '../../../src/sound/sayable.ts';
import { english } from '../../../src/words/en.ts';
import type { Spoken } from './record.ts';

/** What the cook believes of the pretend stove, by what it was told that it would see. */
interface Seen {
  pot: string;
  spoonful: string;
  canner: string;
  plate: string;
}

interface Saying {
  sentence: string;
  /** Said again where nothing was acknowledged. */
  tries: number;
  saidAt: number | null;
}

/** A person waits so long for an answer before saying it again, wall ms. */
const PATIENCE_MS = 8_000;
const MOST_TRIES = 4;
const YES = 'yes that is right';
/** Nothing comes of these that could be seen in the log: once said they are done with. */
const ANSWERS = new Set(['no not yet', 'no that is wrong', YES]);
const SETTLED_MS = 2_500;

export class EarCook {
  readonly #seen: Seen = { pot: '', spoonful: '', canner: '', plate: '' };
  readonly #sayings: Saying[] = [];
  /** What was asked to be brought to its boil and has not been told of yet: nobody tells of a boil unasked. */
  readonly #towards = new Set<'pot' | 'canner'>();
  /** Of how much has been listened to. */
  #heard = 0;
  #plateAt = Infinity;
  #last = '';
  readonly said: string[] = [];
  readonly unheard: string[] = [];

  /** Listens to what has ended since; `acknowledged`: how many of the cook's own words the page has taken up. */
  listen(spoken: readonly Spoken[]): void {
    for (const { words, to } of spoken.slice(this.#heard)) {
      if (to === null) return;
      this.#heard += 1;
      this.#hear(words);
    }
  }

  /** What is on its lips now; null: nothing. */
  wantsToSay(wall: number, kitchen: number): string | null {
    if (kitchen >= this.#plateAt) {
      this.#plateAt = Infinity;
      this.#says('a spoonful is on the plate');
    }
    const [first] = this.#sayings;
    if (first && first.saidAt !== null && ANSWERS.has(first.sentence) && wall - first.saidAt > SETTLED_MS)
      this.#sayings.shift();
    const [next] = this.#sayings;
    if (!next || (next.saidAt !== null && wall - next.saidAt < PATIENCE_MS)) return null;
    if (next.tries === MOST_TRIES) {
      this.unheard.push(next.sentence);
      this.#sayings.shift();
      return null;
    }
    next.tries += 1;
    next.saidAt = wall;
    this.#last = next.sentence;
    this.said.push(next.sentence);
    return next.sentence;
  }

  /** The page has taken up what was said, or has answered it. */
  taken(): void {
    if (this.#sayings[0]?.saidAt !== null) this.#sayings.shift();
  }

  #says(sentence: string): void {
    if (!this.#sayings.some((one) => one.sentence === sentence))
      this.#sayings.push({ sentence, tries: 0, saidAt: null });
  }

  #hear(words: string): void {
    for (const [place, key] of SENSES) if (words.includes(key.words)) this.#sees(place, key.name);
    for (const [pattern, sentence] of STEPS) if (pattern.test(words)) this.#says(sentence);
    if (/to a rolling boil\b|Tell me: rolling boil/.test(words)) this.#towards.add('pot');
    if (/to a full rolling boil|Full boil again/.test(words)) this.#towards.add('canner');
    const plate = /Plate not cold: .*?(\w+) minutes? more/.exec(words);
    if (plate) this.#waitsForThePlate(words);
    if (/Say that again/.test(words)) this.#saysAgain();
    if (/^I have that|^Not now/.test(words)) this.taken();
    if (/^Was that|hot and ready to fill\?|out of the canner\?/.test(words)) this.#reply(YES);
    this.#answer(words);
  }

  /** To what is asked back of its own words, before anything else; they are not said again. */
  #reply(sentence: string): void {
    const { sentence: said, saidAt = null } = this.#sayings[0] ?? {};
    if (said === sentence) return;
    if (saidAt !== null) this.#sayings.shift();
    this.#sayings.unshift({ sentence, tries: 0, saidAt: null });
  }

  #saysAgain(): void {
    const said = this.#sayings.find(({ sentence }) => sentence === this.#last);
    if (said) said.saidAt = -Infinity;
  }

  #sees(place: keyof Seen, name: string): void {
    this.#seen[place] = name;
    if (place === 'pot' && name === 'rolling' && this.#towards.delete('pot'))
      this.#says('the pot is at a rolling boil');
    if (place === 'spoonful' && name === 'mounds') this.#says('it is thick enough');
    if (place === 'canner' && name === 'steaming') this.#says('the canner is hot');
    if (place === 'canner' && name === 'rolling' && this.#towards.delete('canner'))
      this.#says('the canner is at a full rolling boil');
    if (place === 'canner' && name === 'flat') this.#says('the boil dropped');
  }

  #answer(words: string): void {
    const { pot, spoonful, canner, plate } = this.#seen;
    const is = (yes: boolean, sentence: string, otherwise: string) => this.#says(yes ? sentence : otherwise);
    if (/Is it at a rolling boil/.test(words))
      is(pot === 'rolling', 'the pot is at a rolling boil', 'no not yet');
    if (/thick enough\?|Is it thick\?/.test(words))
      is(spoonful === 'mounds', 'it is thick enough', 'no not yet');
    if (/Is the canner hot/.test(words))
      is(canner !== '' && canner !== 'still', 'the canner is hot', 'no not yet');
    // Asked by itself, or because it was told so.
    if (/Is the canner at a full/.test(words)) this.#reply(canner === 'rolling' ? YES : 'no not yet');
    if (/hold all along\?/.test(words)) this.#reply(canner === 'rolling' ? YES : 'no that is wrong');
    if (/hold on the cold plate\?/.test(words)) this.#reply(plate !== 'runny' ? YES : 'no that is wrong');
    if (/Still at a full boil|Not confirmed|Unconfirmed|boil hard the whole/.test(words))
      is(canner === 'rolling', 'the full boil is holding', 'the boil dropped');
    if (/Does it hold/.test(words)) is(plate !== 'runny', 'the plate test passed', 'it is still runny');
  }

  #waitsForThePlate(words: string): void {
    const minutes = NUMBERS.findIndex((number) => words.includes(`: ${number} minute`));
    this.#plateAt = -Math.max(1, minutes); // minutes from the next look on
  }

  /** A wait in kitchen minutes begins when it is first looked at the clock. */
  looksAtClock(kitchen: number): void {
    if (this.#plateAt < 0) this.#plateAt = kitchen - this.#plateAt * 60_000;
  }
}

const NUMBERS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen'.split(' ');

const sense = (key: string, name = key.split('.').at(-1) ?? '') => ({
  name,
  words: sayable(english.messages[key as keyof typeof english.messages] ?? key),
});

const SENSES: [keyof Seen, { name: string; words: string }][] = [
  ...['still', 'steaming', 'simmer', 'boil', 'rolling'].map(
    (name) => ['pot', sense(`sense.pot.${name}`)] as [keyof Seen, ReturnType<typeof sense>],
  ),
  ...['coats', 'mounds'].map(
    (name) => ['spoonful', sense(`sense.spoonful.${name}`)] as [keyof Seen, ReturnType<typeof sense>],
  ),
  ...['still', 'steaming', 'simmer', 'boil', 'rolling', 'flat'].map(
    (name) => ['canner', sense(`sense.canner.${name}`)] as [keyof Seen, ReturnType<typeof sense>],
  ),
  ...['held', 'runny', 'tooThick'].map(
    (name) => ['plate', sense(`sense.plate.${name}`)] as [keyof Seen, ReturnType<typeof sense>],
  ),
];

/** What a step asks for, and what is said once it is done: at once, for there is no fruit. */
const STEPS: [RegExp, string][] = [
  [/Freeze a plate/, 'everything is ready'],
  [/\bMash\b/, 'the mash is done'],
  [/Fill the canner half full/, 'the canner is filled'],
  [/Fill the canner half full/, 'the canner is heating'],
  [/Stir the pot|Stir now|stir often|stir to the bottom/, 'i stirred it'],
  [/Skim the foam off/, 'the foam is off'],
  [/Strain it/, 'straining is done'],
  [/Blend it smooth/, 'blending is done'],
  [/Put a spoonful on the cold plate/, 'a spoonful is on the plate'],
  [/Too thick: heat off/, 'i loosened it'],
  [/Say: the jars are ready/, 'the jars are hot and ready'],
  [/Fill hot jars/, 'six jars filled'],
  [/Jars into the canner now|to the canner now/, 'the jars are in the canner'],
  [/Add boiling water/, 'i added water and it kept boiling'],
  [/Lift jars straight up/, 'the jars are out'],
];
