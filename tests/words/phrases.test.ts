// What a cook can say, and what it means: the sentences that must be understood, word for word.

import { describe, expect, it } from 'vitest';
import {
  batchCommands,
  cannerCommands,
  correctionCommands,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';
import { twinsOf } from '../../machines/dialogue/twins.ts';
import { numberWords } from '../../src/words/numbers.en.ts';
import { allPhrases, openPhrases } from '../../src/words/phrases.en.ts';

const fruits = ['plum', 'pear', 'crab apple'];
const all = allPhrases(fruits);
const commands = Object.keys({
  ...batchCommands,
  ...cannerCommands,
  ...correctionCommands,
  ...talkCommands,
}) as CommandId[];

function meaning(words: string, open?: CommandId[]) {
  const phrases =
    open === undefined
      ? all
      : openPhrases(
          open.map((command) => ({ command })),
          fruits,
        );
  return phrases.find((phrase) => phrase.words === words);
}

describe('the sentences that must be understood', () => {
  it.each<[string, CommandId]>([
    ['rolling boil', 'canner.fullBoil'],
    ['full boil', 'canner.fullBoil'],
    ['it is at a full rolling boil', 'canner.fullBoil'],
    ['the boil dropped', 'canner.boilDropped'],
    ['it stopped boiling', 'canner.boilDropped'],
    ['next', 'next'],
    ['next step', 'next'],
    ['done', 'next'],
    ['that is done', 'next'],
    ['say that again', 'repeat'],
    ['repeat that', 'repeat'],
    ['go back', 'go.back'],
    ['how much time is left', 'how.long'],
    ['how long', 'how.long'],
    ['what is next', 'what.next'],
    ['plate test passed', 'plate.held'],
    ['it holds', 'plate.held'],
    ['it is still runny', 'plate.runny'],
    ['it is thick enough', 'plate.held'],
    ['too thick', 'pot.tooThick'],
    ['the jars are in', 'jars.in'],
    ['the jars are out', 'jars.out'],
    ['all jars sealed', 'seals.allHeld'],
    ['one did not seal', 'seals.failed'],
    ['stop talking', 'hush'],
    ['hush', 'hush'],
    ['yes', 'yes'],
    ['yes that is right', 'yes'],
    ['no', 'no'],
    ['no that is wrong', 'no'],
    ['why', 'why'],
    ['what is a rolling boil', 'what.is'],
    ['what is headspace', 'what.is'],
    ['status', 'status'],
    ['status of all batches', 'status'],
    ['hold everything', 'batch.held'],
    ['the foam is off', 'skim.done'],
    ['foam is off', 'skim.done'],
    ['heat is on', 'heat.on'],
    ['heat is off', 'heat.off'],
    ['help', 'help'],
    ['water is low', 'canner.waterLow'],
  ])('"%s" is %s', (words, command) => {
    expect(meaning(words)?.command).toBe(command);
  });

  it.each<[string, CommandId]>([
    ['start the * batch', 'switch.batch'],
    ['switch to *', 'switch.batch'],
    ['* next', 'switch.batch'],
    ['* is done', 'next'],
    ['the * is runny', 'plate.runny'],
    ['the * is thick enough', 'plate.held'],
    ['how long for the *', 'how.long'],
  ])('"%s" is %s of each fruit in hand', (words, command) => {
    for (const fruit of fruits)
      expect(meaning(words.replace('*', fruit))).toMatchObject({ command, slots: { fruit } });
  });

  it('understands every count from one to thirty of jars, minutes and failed seals', () => {
    for (let n = 1; n <= 30; n++) {
      const s = n === 1 ? '' : 's';
      expect(meaning(`${numberWords(n)} did not seal`)).toMatchObject({
        command: 'seals.failed',
        slots: { n },
      });
      expect(meaning(`add ${numberWords(n)} minute${s}`)).toMatchObject({
        command: 'minutes.added',
        slots: { n },
      });
      expect(meaning(`${numberWords(n)} more minute${s}`)).toMatchObject({
        command: 'minutes.added',
        slots: { n },
      });
      expect(meaning(`${numberWords(n)} jar${s} filled`)).toMatchObject({
        command: 'jars.filled',
        slots: { n },
      });
    }
  });

  it('understands what a pot is measured at, in the cook’s units', () => {
    const words = (units: 'us' | 'metric') => (said: string) =>
      openPhrases([{ command: 'reading.taken' }], fruits, { units }).find((phrase) => phrase.words === said)
        ?.slots;
    // 1 lb = 0.45359237 kg and 1 in = 25.4 mm, exact: NIST SP 811, appendix B.8.
    expect(words('us')('it weighs four pounds three ounces')?.massKg).toBeCloseTo(4.1875 * 0.45359237, 9);
    expect(words('us')('it weighs four and a half pounds')?.massKg).toBeCloseTo(4.5 * 0.45359237, 9);
    expect(words('us')('depth two inches')?.depthM).toBeCloseTo(0.0508, 9);
    expect(words('us')('depth one and a half inches')?.depthM).toBeCloseTo(0.0381, 9);
    expect(words('us')('temperature two hundred twelve degrees')?.tempC).toBeCloseTo(100, 9);
    expect(words('us')('temperature two twelve degrees')?.tempC).toBeCloseTo(100, 9);
    expect(words('metric')('it weighs two point one kilos')?.massKg).toBeCloseTo(2.1, 9);
    expect(words('metric')('it weighs one kilo')?.massKg).toBeCloseTo(1, 9);
    expect(words('metric')('depth five centimetres')?.depthM).toBeCloseTo(0.05, 9);
    expect(words('metric')('temperature one hundred four degrees')?.tempC).toBeCloseTo(104, 9);
    expect(words('metric')('it weighs four pounds three ounces')).toBeUndefined();
  });

  it('understands how far it has boiled down, by what is left and by what is gone', () => {
    for (const [said, fractionOfStart] of [
      ['it is at half', 1 / 2],
      ["it's down to two thirds", 2 / 3],
      ['the plum is at three quarters', 3 / 4],
      ['it has boiled down to a third', 1 / 3],
      ['one quarter of it is left', 1 / 4],
      ['a third of it has boiled away', 2 / 3],
      ['three quarters of it has boiled away', 1 / 4],
    ] as const) {
      const read = meaning(said);
      expect(read?.command, said).toBe('reading.taken');
      expect(read?.slots.fractionOfStart, said).toBeCloseTo(fractionOfStart, 9);
    }
  });

  it('tells a small jar from the whole ones', () => {
    expect(meaning('nine jars and a small one')?.slots).toEqual({ n: 9, spare: 1 });
    expect(meaning('i filled nine jars')?.slots).toEqual({ n: 9 });
  });

  it('tells topped-up water that kept boiling from water that broke the boil, and leaves the rest open', () => {
    expect(meaning('i added water and it kept boiling')?.slots).toEqual({ keptBoiling: true });
    expect(meaning('i added water and the boil dropped')?.slots).toEqual({ keptBoiling: false });
    expect(meaning('i topped up the water')?.slots).toEqual({});
  });
});

describe('putting right what was told before', () => {
  it('says how many minutes ago the boil dropped', () => {
    for (const [words, agoMinutes] of [
      ['it dropped two minutes ago', 2],
      ['the boil dropped one minute ago', 1],
      ['it stopped boiling fifteen minutes ago', 15],
    ] as const)
      expect(meaning(words)).toMatchObject({ command: 'boil.droppedEarlier', slots: { agoMinutes } });
  });

  it('names the right fruit and the wrong one, which are never the same', () => {
    expect(meaning('that was the plum not the crab apple')).toMatchObject({
      command: 'batch.mixedUp',
      slots: { fruit: 'plum', insteadOf: 'crab apple' },
    });
    expect(meaning('that was the plum not the plum')).toBeUndefined();
  });

  it('takes "full boil too early" for no full boil', () => {
    expect(meaning('i said full boil too early')?.command).toBe('boil.saidTooEarly');
  });
});

describe('one sentence means one command', () => {
  it('lets two commands share words only where they are known twins, or a plain no', () => {
    const meanings = new Map<string, Set<CommandId>>();
    for (const command of commands)
      for (const { words } of openPhrases([{ command }], fruits))
        meanings.set(words, (meanings.get(words) ?? new Set()).add(command));
    for (const [words, shared] of meanings) {
      const [first, ...others] = [...shared];
      if (first === undefined) continue;
      for (const other of others) {
        // A plain no, and a jar that broke where none is in the canner: the dearer command keeps the sentence.
        const bothWays = ['canner.boilDropped,no', 'no,plate.runny', 'ask,jar.broke'].includes(
          [first, other].sort().join(),
        );
        expect(bothWays || twinsOf(first).includes(other), `${words}: ${first} or ${other}`).toBe(true);
      }
    }
  });

  it('gives a shared sentence to the command that needs the surest ear', () => {
    expect(meaning('full boil', ['pot.rollingBoil', 'canner.fullBoil'])?.command).toBe('canner.fullBoil');
    expect(meaning('full boil', ['pot.rollingBoil'])?.command).toBe('pot.rollingBoil');
    expect(meaning('it is thick enough', ['pot.thick'])?.command).toBe('pot.thick');
    expect(meaning('too thick', ['plate.tooThick'])?.command).toBe('plate.tooThick');
  });

  it('marks the words that two open commands share, and only those', () => {
    const both = openPhrases([{ command: 'pot.rollingBoil' }, { command: 'canner.fullBoil' }], fruits);
    const either = (words: string) => both.find((phrase) => phrase.words === words)?.slots.either ?? false;
    expect(either('full boil')).toBe(true);
    expect(either('the canner is at a full boil')).toBe(false);
    expect(either('the pear is at a full boil')).toBe(false);
    expect(meaning('full boil', ['canner.fullBoil', 'no'])?.slots.either).toBeUndefined();
    expect(meaning('it is not boiling', ['canner.boilDropped', 'no'])?.slots.either).toBeUndefined();
  });

  it('never takes "not at a full boil" for a full boil', () => {
    expect(meaning('it is not at a full boil', ['canner.fullBoil', 'no'])?.command).toBe('no');
    expect(meaning('it is not boiling', ['canner.boilDropped', 'canner.boilHolds', 'no'])?.command).toBe(
      'canner.boilDropped',
    );
  });

  it('never takes "not thick enough" for thick enough', () => {
    expect(meaning('it is not thick enough', ['pot.thick', 'no'])?.command).toBe('no');
    expect(meaning('it is not thick enough', ['plate.held', 'plate.runny', 'no'])?.command).toBe(
      'plate.runny',
    );
  });

  it('never takes "four jars sealed" for all of them, nor for a count of failures', () => {
    expect(meaning('four jars sealed')).toMatchObject({ command: 'seals.failed', slots: {} });
    expect(meaning('not all jars sealed')).toMatchObject({ command: 'seals.failed', slots: {} });
  });

  it('says each sentence once, in lower case, with nothing but words', () => {
    expect(new Set(all.map((phrase) => phrase.words)).size).toBe(all.length);
    for (const { words } of all) expect(words).toMatch(/^[a-z']+( [a-z']+)*$/);
  });

  it('has at least two ways to say every command, and two that are longer than one word', () => {
    for (const command of commands) {
      const ways = openPhrases([{ command }], fruits).map((phrase) => phrase.words);
      expect(ways.filter((words) => words.includes(' ')).length, command).toBeGreaterThanOrEqual(2);
    }
  });
});

describe('opening the book', () => {
  it('gives only sentences that name the fruit where the fruit is needed', () => {
    const phrases = openPhrases([{ command: 'plate.runny', fruitNeeded: true }], ['plum', 'pear']);
    expect(phrases.length).toBeGreaterThan(0);
    for (const { words, slots } of phrases) {
      expect(words).toMatch(/plum|pear/);
      expect(slots.fruit).toBeDefined();
    }
  });

  it('names only the fruits a command can be said of', () => {
    const phrases = openPhrases([{ command: 'plate.runny', fruits: ['pear'] }], ['plum', 'pear']);
    expect(phrases.some(({ words }) => words.includes('pear'))).toBe(true);
    expect(phrases.some(({ words }) => words.includes('plum'))).toBe(false);
  });

  it('has no fruit sentence without a fruit in hand', () => {
    expect(openPhrases([{ command: 'switch.batch' }], []).map((phrase) => phrase.words)).toEqual([
      'the canner',
      'switch to the canner',
    ]);
  });

  it('narrows the numbers to what can be true now', () => {
    const narrow = {
      massKg: { low: 1.6, high: 1.7 },
      depthM: { low: 1, high: 0 },
      tempC: { low: 1, high: 0 },
    };
    const numbered = openPhrases([{ command: 'reading.taken' }], [], narrow).filter(
      ({ slots }) => slots.fractionOfStart === undefined,
    );
    expect(numbered.map((phrase) => phrase.words)).toEqual([
      'it weighs three pounds nine ounces',
      'it weighs three pounds ten ounces',
      'it weighs three pounds eleven ounces',
    ]);
    expect(
      openPhrases([{ command: 'jars.filled' }], [], { jars: 2 }).map((phrase) => phrase.words),
    ).not.toContain('three jars filled');
  });
});
