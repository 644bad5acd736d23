// The dialogue: it acts on what it is sure of, asks when it is not, and never takes a no for a yes.

import { describe, expect, it } from 'vitest';
import { FORGET_MISSES_MS, ATTENTIVE_MS, REFUSAL_MS } from '../../machines/dialogue/rules.ts';
import { QUESTION_MS, SOONEST_ANSWER_MS } from '../../machines/dialogue/questions.ts';
import { open, Talk } from './dialogueDriver.ts';

const cannerHeating = [open('canner.fullBoil', 'c1', true), open('canner.waterLow', 'c1')];
const cannerRunning = [
  open('canner.boilHolds', 'c1', true),
  open('canner.boilDropped', 'c1'),
  open('canner.waterAdded', 'c1'),
];
const judging = (batch: string) => [
  open('plate.held', batch, true),
  open('plate.runny', batch),
  open('plate.tooThick', batch),
];
const simmering = (batch: string) => [
  open('pot.thick', batch, true),
  open('pot.stirred', batch),
  open('pot.tooThick', batch),
  open('minutes.added', batch),
];

describe('a command heard plainly', () => {
  it('is done at once, with a sound', () => {
    const talk = new Talk([open('skim.done', 'b1', true)]).hear('skim.done');
    expect(talk.acts()).toEqual([{ type: 'act', command: 'skim.done', about: 'b1', slots: {} }]);
    expect(talk.sounds()).toEqual(['heard']);
    expect(talk.said()).toEqual([]);
    expect(talk.state).toBe('listening');
  });

  it('is read back where safety hangs on it, before it acts', () => {
    const talk = new Talk([open('jars.out', 'c1', true)]).hear('jars.out');
    expect(talk.acts()).toMatchObject([{ command: 'jars.out', about: 'c1' }]);
    expect(talk.keys()).toEqual(['dialogue.readBack.jars.out']);
    const kinds = talk.effects.map(({ type }) => type);
    expect(kinds.indexOf('say')).toBeLessThan(kinds.indexOf('act'));
  });

  it.each(['canner.boilDropped', 'jars.ready', 'boil.droppedEarlier', 'boil.saidTooEarly'] as const)(
    'is not read back where the next sentence names it: %s',
    (command) => {
      const talk = new Talk([open(command, 'c1', true)]).hear(command);
      expect(talk.acts()).toMatchObject([{ command }]);
      expect(talk.keys()).toEqual([]);
    },
  );

  it('carries its numbers along', () => {
    const talk = new Talk(simmering('b1')).hear('minutes.added', { n: 7 });
    expect(talk.acts()).toMatchObject([{ command: 'minutes.added', slots: { n: 7 } }]);
  });

  it('is told to be impossible now, once and without an act, when nothing accepts it', () => {
    const talk = new Talk(simmering('b1')).hear('plate.held');
    expect(talk.keys()).toEqual(['dialogue.notNow']);
    expect(talk.acts()).toEqual([]);
  });

  it('said again of what was just told is no miss and does nothing: it is said that we have it', () => {
    const already = [{ command: 'mash.done', about: 'b1', justNow: false } as const];
    const talk = new Talk(simmering('b2'), { already }).hear('mash.done', { fruit: 'plum' });
    expect([talk.keys(), talk.acts()]).toEqual([['dialogue.haveThat'], []]);
    // Of another fruit it would be news; and where it can be done, it is done.
    expect(new Talk(simmering('b2'), { already }).hear('mash.done', { fruit: 'pear' }).keys()).toEqual([
      'dialogue.notNow',
    ]);
    const undone = new Talk([open('mash.done', 'b1', true)], { already }).hear('mash.done');
    expect(undone.acts()).toMatchObject([{ command: 'mash.done', about: 'b1' }]);
  });

  it('said again at once, naming no fruit, is not taken for another pot: it is asked which', () => {
    const told = (justNow: boolean) => ({
      already: [{ command: 'mash.done', about: 'b1', justNow } as const],
    });
    const other = [open('mash.done', 'b2', true)];
    const talk = new Talk(other, told(true)).hear('mash.done');
    expect([talk.keys(), talk.acts()]).toEqual([['dialogue.which'], []]);
    expect(new Talk(other, told(true)).hear('mash.done', { fruit: 'pear' }).acts()).toMatchObject([
      { command: 'mash.done', about: 'b2' },
    ]);
    expect(new Talk(other, told(false)).hear('mash.done').acts()).toMatchObject([{ about: 'b2' }]);
  });

  it('is told to be impossible for the fruit that was named', () => {
    const talk = new Talk(judging('b1')).hear('plate.runny', { fruit: 'pear' });
    expect(talk.keys()).toEqual(['dialogue.notNow']);
  });

  it('asks for the number that is missing', () => {
    for (const command of ['jars.filled', 'seals.failed', 'minutes.added', 'reading.taken'] as const) {
      const talk = new Talk([open(command, 'b1')]).hear(command);
      expect(talk.keys()).toEqual([`dialogue.count.${command}`]);
      expect(talk.acts()).toEqual([]);
    }
  });

  it('takes a reading that has any measure', () => {
    for (const slots of [{ massKg: 2 }, { depthM: 0.05 }, { tempC: 104 }, { fractionOfStart: 0.5 }])
      expect(new Talk([open('reading.taken', 'b1')]).hear('reading.taken', slots).acts()).toHaveLength(1);
  });
});

describe('a command heard in doubt', () => {
  it('is asked back with the words that were heard', () => {
    const talk = new Talk(cannerRunning).mumble('canner.boilDropped', {}, 'the boil dropped');
    expect(talk.said()).toEqual([{ key: 'dialogue.wasThat', params: { words: 'the boil dropped' } }]);
    expect(talk.sounds()).toEqual(['question']);
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('askingBack');
  });

  it('is done on a plain yes', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth().hear('yes');
    expect(talk.acts()).toMatchObject([{ command: 'canner.fullBoil' }]);
    expect(talk.state).toBe('listening');
  });

  it('is dropped on a no', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth().hear('no');
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('listening');
  });

  it('is dropped when nobody answers for fifteen seconds after it was asked', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth();
    expect(talk.wait(QUESTION_MS / 1000 - 0.1).state).toBe('askingBack');
    expect(talk.wait(0.1).state).toBe('listening');
    expect(talk.hear('yes').acts()).toEqual([]);
  });

  it('needs a yes as sure as the thing itself', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth().hear('yes', {}, 0.65);
    expect(talk.acts()).toEqual([]);
    expect(talk.keys()).toEqual(['dialogue.clearAnswer']);
    expect(talk.hear('yes', {}, 0.9).acts()).toMatchObject([{ command: 'canner.fullBoil' }]);
  });

  it('is not done by a yes that came before the question was put', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').hear('yes');
    expect(talk.acts()).toEqual([]);
  });

  it('is not done by a yes that was spoken as the question began', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil');
    const [message] = talk.said();
    if (!message) throw new Error('nothing was asked');
    talk.send({ type: 'saying', at: talk.at, message, about: null });
    talk.at += SOONEST_ANSWER_MS - 200;
    expect(talk.hear('yes').acts()).toEqual([]);
    talk.at += 200;
    expect(talk.hear('yes').acts()).toHaveLength(1);
  });

  it('is not done when it is no longer possible', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth();
    talk.send({ type: 'open', at: talk.at, situation: { choices: [], names: [], focus: null, last: null } });
    expect(talk.hear('yes').acts()).toEqual([]);
  });

  it('gives way to another command said instead', () => {
    const talk = new Talk([...cannerHeating]).mumble('canner.fullBoil').mouth().hear('canner.waterLow');
    expect(talk.acts()).toMatchObject([{ command: 'canner.waterLow' }]);
    expect(talk.hear('yes').acts()).toEqual([]);
  });

  it('stays open while the cook asks for something to be said again', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth().hear('repeat');
    expect(talk.queries()).toMatchObject([{ command: 'repeat' }]);
    expect(talk.state).toBe('askingBack');
  });

  it('is answered, not asked back, where only information is wanted', () => {
    expect(new Talk(simmering('b1')).mumble('how.long').queries()).toMatchObject([{ command: 'how.long' }]);
    expect(new Talk(simmering('b1')).mumble('hush').queries()).toMatchObject([{ command: 'hush' }]);
  });

  it('is passed over where it is impossible besides', () => {
    const talk = new Talk(simmering('b1')).mumble('plate.held');
    expect(talk.effects).toEqual([]);
  });
});

describe('a yes or a no', () => {
  it('means nothing while no question is open', () => {
    const talk = new Talk(cannerHeating);
    expect(talk.hear('yes').effects).toEqual([]);
    expect(talk.hear('no').effects).toEqual([]);
  });

  it('right after something was done, a no takes it back', () => {
    const talk = new Talk(cannerHeating, { last: 'canner.waterLow' }).hear('canner.waterLow');
    talk.at += REFUSAL_MS - 200;
    talk.hear('no', {}, 0.9, 'heard', 'no that is wrong');
    expect(talk.acts()).toEqual([{ type: 'act', command: 'go.back', about: null, slots: {} }]);
  });

  it('a no takes nothing back twice, nor long after', () => {
    const talk = new Talk(cannerHeating, { last: 'canner.waterLow' }).hear('canner.waterLow').hear('no');
    expect(talk.acts()).toHaveLength(1);
    expect(talk.hear('no').acts()).toEqual([]);
    const later = new Talk(cannerHeating, { last: 'canner.waterLow' }).hear('canner.waterLow');
    later.at += REFUSAL_MS;
    expect(later.hear('no').acts()).toEqual([]);
  });

  it('"not boiling yet" takes nothing back', () => {
    const talk = new Talk([open('skim.done', 'b1')], { last: 'skim.done' }).hear('skim.done');
    expect(talk.hear('no', { notYet: true }).acts()).toEqual([]);
  });

  it('"not boiling yet" answers the question whether it boils', () => {
    const talk = new Talk(cannerHeating)
      .says({ key: 'canner.askIfFullBoil' }, 'c1')
      .hear('no', { notYet: true });
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('listening');
  });
});

describe('going back', () => {
  it('takes back the last thing at once', () => {
    const talk = new Talk(judging('b1'), { last: 'plate.runny' }).hear('go.back');
    expect(talk.acts()).toMatchObject([{ command: 'go.back' }]);
  });

  it('has nothing to take back where nothing happened', () => {
    expect(new Talk(judging('b1')).hear('go.back').keys()).toEqual(['dialogue.notNow']);
  });

  it('asks first before a dropped boil is made never to have dropped', () => {
    const talk = new Talk(cannerHeating, { last: 'canner.boilDropped' }).hear('go.back');
    expect(talk.acts()).toEqual([]);
    expect(talk.keys()).toEqual(['dialogue.plain.takeBack.canner.boilDropped']);
    expect(talk.mouth().hear('yes', {}, 0.7).acts()).toEqual([]);
    expect(talk.hear('yes', {}, 0.9).acts()).toMatchObject([{ command: 'go.back' }]);
  });

  it('asks first when a dropped boil is refused by a no', () => {
    const talk = new Talk(cannerRunning, { last: 'canner.boilDropped' })
      .hear('canner.boilDropped')
      .hear('no');
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('confirming');
  });
});

describe('a jar that breaks with two batches in the canner', () => {
  const whose = [
    { about: 'b1', name: 'plum' },
    { about: 'b2', name: 'pear' },
  ];
  const shared = [{ ...open('jar.broke', 'c1'), whose }];

  it('is asked whose it was, and told of that batch', () => {
    const talk = new Talk(shared).hear('jar.broke');
    expect(talk.said()).toMatchObject([
      { key: 'dialogue.which', params: { count: 2, first: 'plum', second: 'pear' } },
    ]);
    expect(talk.mouth().hear('switch.batch', { fruit: 'pear' }).acts()).toMatchObject([
      { command: 'jar.broke', about: 'c1', slots: { batch: 'b2' } },
    ]);
  });

  it('is told at once where the fruit was named', () => {
    const talk = new Talk(shared).hear('jar.broke', { fruit: 'plum' });
    expect(talk.acts()).toMatchObject([{ command: 'jar.broke', about: 'c1', slots: { batch: 'b1' } }]);
  });

  it('is not asked where only one batch is in it, and not believed of a fruit that is not', () => {
    const alone = [{ ...open('jar.broke', 'c1'), whose: whose.slice(0, 1) }];
    expect(new Talk(alone).hear('jar.broke').acts()).toMatchObject([{ slots: { batch: 'b1' } }]);
    expect(new Talk(alone).hear('jar.broke', { fruit: 'pear' }).keys()).toEqual(['dialogue.notNow']);
  });
});

describe('next, and done', () => {
  it('mean the one step that carries the work forward', () => {
    expect(
      new Talk([open('skim.done', 'b1', true), open('heat.off', 'b1')]).hear('next').acts(),
    ).toMatchObject([{ command: 'skim.done', about: 'b1' }]);
  });

  it('mean the step of the fruit that was named', () => {
    const talk = new Talk([open('skim.done', 'b1', true), open('mash.done', 'b2', true)]).hear('next', {
      fruit: 'pear',
    });
    expect(talk.acts()).toMatchObject([{ command: 'mash.done', about: 'b2' }]);
  });

  it('mean the batch at hand before the others', () => {
    const talk = new Talk([open('skim.done', 'b1', true), open('mash.done', 'b2', true)], {
      focus: 'b2',
    }).hear('next');
    expect(talk.acts()).toMatchObject([{ command: 'mash.done', about: 'b2' }]);
  });

  it('ask which one where two could be meant', () => {
    const talk = new Talk([open('skim.done', 'b1', true), open('mash.done', 'b2', true)]).hear('next');
    expect(talk.said()).toMatchObject([
      { key: 'dialogue.which', params: { count: 2, first: 'plum', second: 'pear' } },
    ]);
  });

  it('never stand for a safety word: the plain question is put instead', () => {
    for (const command of [
      'canner.fullBoil',
      'plate.held',
      'seals.allHeld',
      'jars.ready',
      'jars.out',
    ] as const) {
      const talk = new Talk([open(command, 'c1', true)]).hear('next', {}, 1);
      expect(talk.acts()).toEqual([]);
      expect(talk.keys()).toEqual([`dialogue.plain.${command}`]);
      expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command }]);
    }
  });

  it('never vouch for a jar by way of choosing a batch', () => {
    const talk = new Talk([...judging('b1'), ...judging('b2')])
      .hear('next')
      .mouth()
      .hear('switch.batch', { fruit: 'pear' });
    expect(talk.acts()).toEqual([]);
    expect(talk.keys()).toEqual(['dialogue.plain.plate.held']);
  });

  it('ask for the count where the step is a count', () => {
    expect(new Talk([open('jars.filled', 'b1', true)]).hear('next').keys()).toEqual([
      'dialogue.count.jars.filled',
    ]);
  });

  it('say that there is nothing to do where only time goes on', () => {
    expect(new Talk([open('ping.heard', 'b1')]).hear('next').keys()).toEqual(['dialogue.notNow']);
  });
});

describe('several batches at once', () => {
  it('the only one that accepts it is meant', () => {
    const talk = new Talk([...simmering('b1'), ...judging('b2')]).hear('plate.runny');
    expect(talk.acts()).toMatchObject([{ command: 'plate.runny', about: 'b2' }]);
  });

  it('the fruit that is named is meant', () => {
    const talk = new Talk([...judging('b1'), ...judging('b2')]).hear('plate.runny', { fruit: 'plum' });
    expect(talk.acts()).toMatchObject([{ command: 'plate.runny', about: 'b1' }]);
  });

  it('the batch at hand is meant for a step, but never guessed where safety hangs on it', () => {
    const both = [...judging('b1'), ...judging('b2')];
    expect(new Talk(both, { focus: 'b1' }).hear('plate.runny').acts()).toMatchObject([{ about: 'b1' }]);
    const talk = new Talk(both, { focus: 'b1' }).hear('plate.held');
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('choosingBatch');
  });

  it('whose jar did not seal is asked, and not guessed by which is at hand', () => {
    const checking = (batch: string) => [open('seals.allHeld', batch, true), open('seals.failed', batch)];
    const both = [...checking('b1'), ...checking('b2')];
    const talk = new Talk(both, { focus: 'b1' }).hear('seals.failed', { n: 1 }).mouth();
    expect([talk.acts(), talk.state]).toEqual([[], 'choosingBatch']);
    expect(talk.hear('switch.batch', { fruit: 'pear' }).acts()).toMatchObject([
      { command: 'seals.failed', about: 'b2', slots: { n: 1 } },
    ]);
    // Put away long since: a lid may come up there, too, but it is the other that is being looked at.
    const later = new Talk([open('seals.failed', 'b1'), ...checking('b2')], { focus: 'b1' });
    expect(later.hear('seals.failed', { n: 1 }).acts()).toMatchObject([{ about: 'b2' }]);
  });

  it('the one chosen is done', () => {
    const talk = new Talk([...judging('b1'), ...judging('b2')]).hear('plate.runny').mouth();
    expect(talk.state).toBe('choosingBatch');
    talk.hear('switch.batch', { fruit: 'pear' });
    expect(talk.acts()).toMatchObject([{ command: 'plate.runny', about: 'b2' }]);
    expect(talk.state).toBe('listening');
  });

  it('a name heard in doubt is asked back before a safety word is believed', () => {
    const talk = new Talk([...judging('b1'), ...judging('b2')])
      .hear('plate.held', {}, 0.95, 'heard', 'it holds')
      .mouth();
    talk.hear('switch.batch', { fruit: 'pear' }, 0.6, 'heard', 'the pear');
    expect(talk.acts()).toEqual([]);
    expect(talk.said()).toEqual([{ key: 'dialogue.wasThat', params: { words: 'it holds, the pear' } }]);
    expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command: 'plate.held', about: 'b2' }]);
  });

  it('no to "which one" does nothing', () => {
    const talk = new Talk([...judging('b1'), ...judging('b2')]).hear('plate.runny').mouth().hear('no');
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('listening');
  });

  it('"hold everything" holds every batch, and "carry on" every one that is held', () => {
    const talk = new Talk([open('batch.held', 'b1'), open('batch.held', 'b2')]).hear('batch.held');
    expect(talk.acts().map(({ about }) => about)).toEqual(['b1', 'b2']);
    const back = new Talk([open('batch.resumed', 'b1'), open('batch.resumed', 'b2')]).hear('batch.resumed');
    expect(back.acts()).toHaveLength(2);
  });

  it('"hold the plum" holds the plum', () => {
    const talk = new Talk([open('batch.held', 'b1'), open('batch.held', 'b2')]).hear('batch.held', {
      fruit: 'plum',
    });
    expect(talk.acts().map(({ about }) => about)).toEqual(['b1']);
  });

  it('"full boil" of a pot or of the canner is asked', () => {
    const talk = new Talk([open('pot.rollingBoil', 'b2', true), ...cannerHeating]).hear('canner.fullBoil', {
      either: true,
    });
    expect(talk.said()).toMatchObject([
      { key: 'dialogue.which', params: { first: 'pear', second: 'canner' } },
    ]);
    expect(talk.mouth().hear('switch.batch', { fruit: 'pear' }).acts()).toMatchObject([
      { command: 'pot.rollingBoil' },
    ]);
  });

  it('"full boil" answers the question about the one that was asked after, and is not asked back', () => {
    const both = [open('pot.rollingBoil', 'b2', true), ...cannerHeating];
    for (const [key, about, command] of [
      ['canner.askIfFullBoil', 'c1', 'canner.fullBoil'],
      ['batch.askIfRollingBoil', 'b2', 'pot.rollingBoil'],
    ] as const) {
      const talk = new Talk(both).says({ key }, about).wait(2);
      expect(talk.hear('canner.fullBoil', { either: true }).acts()).toMatchObject([{ command, about }]);
    }
  });

  it('"full boil" of another by name is no answer, and neither is one said before the question, or half heard', () => {
    const both = [open('pot.rollingBoil', 'b2', true), ...cannerHeating];
    const asked = () => new Talk(both).says({ key: 'canner.askIfFullBoil' }, 'c1');
    expect(asked().wait(2).hear('pot.rollingBoil', { either: true, fruit: 'pear' }).acts()).toMatchObject([
      { command: 'pot.rollingBoil', about: 'b2' },
    ]);
    const justBegun = new Talk(both);
    const saying = {
      type: 'saying',
      at: justBegun.at,
      message: { key: 'canner.askIfFullBoil' },
      about: 'c1',
    } as const;
    expect(justBegun.send(saying).hear('canner.fullBoil', { either: true }).said()).toMatchObject([
      { key: 'dialogue.which' },
    ]);
    expect(asked().wait(2).hear('canner.fullBoil', { either: true }, 0.6, 'unsure').acts()).toEqual([]);
  });

  it('"the canner is at a full boil" is of the canner, whatever the pots do', () => {
    const talk = new Talk([open('pot.rollingBoil', 'b2', true), ...cannerHeating]).hear('canner.fullBoil');
    expect(talk.keys()).toEqual(['dialogue.plain.canner.fullBoil']);
    expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command: 'canner.fullBoil', about: 'c1' }]);
  });

  it('a plate word is never taken for a pot word', () => {
    const talk = new Talk([...simmering('b1'), ...judging('b2')]).hear('plate.held').mouth().hear('yes');
    expect(talk.acts()).toMatchObject([{ command: 'plate.held', about: 'b2' }]);
  });

  it('"full boil" of a pot needs no more than a step does, where only the pot is coming to one', () => {
    const talk = new Talk([open('pot.rollingBoil', 'b2', true)]).hear('pot.rollingBoil', {}, 0.65);
    expect(talk.acts()).toMatchObject([{ command: 'pot.rollingBoil', about: 'b2' }]);
  });

  it('a pot word that turns out to mean the canner needs to be heard as surely as the canner word', () => {
    const talk = new Talk(cannerHeating).hear('pot.rollingBoil', { either: true }, 0.65);
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('askingBack');
  });

  it('"the plum jars are out" is told to the canner', () => {
    const talk = new Talk([open('jars.out', 'c1', true)]).hear('jars.out', { fruit: 'plum' });
    expect(talk.acts()).toMatchObject([{ command: 'jars.out', about: 'c1' }]);
  });

  it('a fruit that is looked at is a question of the cook’s, with the batch it is about', () => {
    expect(new Talk(judging('b1')).hear('switch.batch', { fruit: 'pear' }).queries()).toMatchObject([
      { about: 'b2' },
    ]);
    expect(new Talk(judging('b1')).hear('how.long', { fruit: 'pear' }).queries()).toMatchObject([
      { command: 'how.long', about: 'b2' },
    ]);
  });
});

describe('what a jar goes to the shelf by, said unasked', () => {
  const vouched = [
    ['canner.fullBoil', 'c1', cannerHeating],
    ['canner.boilHolds', 'c1', cannerRunning],
    ['plate.held', 'b1', judging('b1')],
    ['seals.allHeld', 'b1', [open('seals.allHeld', 'b1', true), open('seals.failed', 'b1')]],
  ] as const;

  it.each(vouched)(
    'is asked, however well it was heard, and done on a yes: %s',
    (command, about, choices) => {
      const talk = new Talk(choices).hear(command, {}, 1);
      expect([talk.acts(), talk.keys()]).toEqual([[], [`dialogue.plain.${command}`]]);
      expect(talk.state).toBe('confirming');
      expect(talk.mouth().hear('yes').acts()).toEqual([{ type: 'act', command, about, slots: {} }]);
      expect(talk.state).toBe('listening');
    },
  );

  it.each(vouched)(
    'is not done on a no, nor on silence, nor on a yes that comes too late: %s',
    (command, _, choices) => {
      const refused = new Talk(choices).hear(command).mouth().hear('no');
      expect([refused.acts(), refused.said(), refused.state]).toEqual([[], [], 'listening']);
      expect(refused.hear('yes').acts()).toEqual([]);
      const unanswered = new Talk(choices)
        .hear(command)
        .mouth()
        .wait(QUESTION_MS / 1000);
      expect([unanswered.acts(), unanswered.state]).toEqual([[], 'listening']);
      expect(unanswered.hear('yes').acts()).toEqual([]);
    },
  );

  it.each(vouched)('is left to the screen when the cook turns to it meanwhile: %s', (command, _, choices) => {
    const talk = new Talk(choices).hear(command).mouth();
    talk.send({ type: 'touched', at: talk.at });
    expect([talk.acts(), talk.state]).toEqual([[], 'listening']);
    expect(talk.hear('yes').acts()).toEqual([]);
  });

  it.each(vouched)('needs a sure yes, or the same said again: %s', (command, _, choices) => {
    const asked = () => new Talk(choices).hear(command).mouth();
    expect(asked().hear('yes', {}, 0.65).acts()).toEqual([]);
    expect(asked().hear(command).acts()).toMatchObject([{ command }]);
    expect(asked().hear(command, {}, 0.5, 'unsure').acts()).toEqual([]);
    expect(asked().hear('next').acts()).toEqual([]);
  });

  it.each(vouched)('heard in doubt is asked once, not twice: %s', (command, _, choices) => {
    const talk = new Talk(choices).mumble(command);
    expect(talk.keys()).toEqual(['dialogue.wasThat']);
    expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command }]);
  });

  it.each([
    ['canner.fullBoil', 'canner.askIfFullBoil', 'c1', cannerHeating],
    ['canner.boilHolds', 'canner.askIfItHolds', 'c1', cannerRunning],
    ['canner.boilHolds', 'canner.askPlainly', 'c1', cannerRunning],
    ['plate.held', 'batch.askIfItHolds', 'b1', judging('b1')],
  ] as const)('is done at once where it was just asked: %s, by %s', (command, key, about, choices) => {
    const asked = () => new Talk(choices).says({ key }, about);
    expect(asked().hear(command).acts()).toEqual([{ type: 'act', command, about, slots: {} }]);
    // Heard in doubt it is asked after, and asked long ago it is as good as unasked.
    expect(asked().hear(command, {}, 0.5, 'unsure').acts()).toEqual([]);
    expect(asked().wait(16).hear(command).keys()).toEqual([`dialogue.plain.${command}`]);
  });

  it('"does it hold, or is it runny" takes no yes and no no, and a plate asked after is not another', () => {
    const both = [...judging('b1'), ...judging('b2')];
    const asked = () => new Talk(both).says({ key: 'batch.askIfItHolds' }, 'b1');
    expect(asked().hear('yes').acts()).toEqual([]);
    expect(asked().hear('no').acts()).toEqual([]);
    expect(asked().hear('plate.runny', { fruit: 'plum' }).acts()).toMatchObject([{ command: 'plate.runny' }]);
    expect(asked().hear('plate.held', { fruit: 'plum' }).acts()).toMatchObject([{ about: 'b1' }]);
    expect(asked().hear('plate.held', { fruit: 'pear' }).keys()).toEqual(['dialogue.plain.plate.held']);
  });

  it('chosen of two is asked in full: "which one" does not say of what', () => {
    const talk = new Talk([...judging('b1'), ...judging('b2')]).hear('plate.held').mouth();
    talk.hear('switch.batch', { fruit: 'pear' });
    expect(talk.said()).toEqual([{ key: 'dialogue.plain.plate.held', params: { name: 'pear' } }]);
    expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command: 'plate.held', about: 'b2' }]);
  });

  it('given another time or another batch, it is asked too; a step is not', () => {
    const when = (what: 'canner.fullBoil' | 'heat.on') => [
      { ...open('told.when', 'c1'), told: [what] },
      open('last.when', 'c1'),
      open('batch.mixedUp', 'b2'),
    ];
    const boil = () => new Talk(when('canner.fullBoil'), { last: 'canner.fullBoil' });
    expect(boil().hear('last.when', { agoMinutes: 10 }).keys()).toEqual(['dialogue.plain.last.when']);
    expect(boil().hear('told.when', { what: 'canner.fullBoil', agoMinutes: 10 }).keys()).toEqual([
      'dialogue.plain.told.when',
    ]);
    expect(boil().hear('batch.mixedUp', { fruit: 'pear' }).keys()).toEqual(['dialogue.plain.batch.mixedUp']);
    const plate = new Talk(when('heat.on'), { last: 'plate.held' });
    expect(plate.hear('batch.mixedUp', { fruit: 'pear' }).keys()).toEqual(['dialogue.plain.batch.mixedUp']);
    const step = () => new Talk(when('heat.on'), { last: 'mash.done' });
    for (const [command, slots] of [
      ['last.when', { agoMinutes: 10 }],
      ['told.when', { what: 'heat.on', agoMinutes: 10 }],
      ['batch.mixedUp', { fruit: 'pear' }],
    ] as const)
      expect(step().hear(command, slots).acts()).toMatchObject([{ command }]);
  });

  it('needs no question where a mistake leads to no shelf: jars that are ready, jars that are out', () => {
    for (const command of ['jars.ready', 'jars.out'] as const)
      expect(new Talk([open(command, 'b1', true)]).hear(command).acts()).toMatchObject([{ command }]);
  });
});

describe('what cannot be undone', () => {
  it('is asked first, however well it was heard', () => {
    const talk = new Talk([open('batch.stopped', 'b1')]).hear('batch.stopped', {}, 1);
    expect(talk.acts()).toEqual([]);
    expect(talk.state).toBe('confirming');
    expect(talk.mouth().hear('yes').acts()).toMatchObject([{ command: 'batch.stopped' }]);
  });

  it('is let be on a no and on silence', () => {
    expect(new Talk([open('batch.stopped', 'b1')]).hear('batch.stopped').mouth().hear('no').acts()).toEqual(
      [],
    );
    expect(new Talk([open('batch.stopped', 'b1')]).hear('batch.stopped').mouth().wait(16).acts()).toEqual([]);
  });
});

describe('water added to the canner', () => {
  const added = () => new Talk(cannerRunning).hear('canner.waterAdded');

  it('is asked whether it kept boiling', () => {
    expect(added().keys()).toEqual(['dialogue.plain.canner.waterAdded']);
    expect(added().acts()).toEqual([]);
  });

  it('kept boiling only on a sure yes', () => {
    expect(added().mouth().hear('yes').acts()).toMatchObject([{ slots: { keptBoiling: true } }]);
    expect(added().mouth().hear('yes', {}, 0.65).acts()).toEqual([]);
  });

  it('broke the boil on a no, and on silence', () => {
    expect(added().mouth().hear('no').acts()).toMatchObject([{ slots: { keptBoiling: false } }]);
    expect(added().mouth().wait(16).acts()).toMatchObject([{ slots: { keptBoiling: false } }]);
  });

  it('broke the boil when the talk went elsewhere without an answer', () => {
    const talk = added().mouth().hear('canner.boilHolds');
    expect(talk.acts().map(({ command }) => command)).toEqual(['canner.waterAdded']);
    expect(talk.acts()[0]?.slots).toEqual({ keptBoiling: false });
  });

  it('is not told twice when the cook says the whole of it', () => {
    expect(added().mouth().hear('canner.waterAdded', { keptBoiling: true }).acts()).toMatchObject([
      { slots: { keptBoiling: true } },
    ]);
  });

  it('is left to the screen when the cook answers there', () => {
    const talk = added().mouth();
    expect(talk.send({ type: 'touched', at: talk.at }).acts()).toEqual([]);
  });

  it('said to have kept boiling needs as sure an ear as a full boil', () => {
    expect(new Talk(cannerRunning).hear('canner.waterAdded', { keptBoiling: true }, 0.65).acts()).toEqual([]);
  });
});

describe('what a batch or the canner asks', () => {
  it('is answered by a yes', () => {
    const talk = new Talk(cannerHeating).says({ key: 'canner.askIfFullBoil' }, 'c1');
    expect(talk.state).toBe('answering');
    expect(talk.hear('yes').acts()).toMatchObject([{ command: 'canner.fullBoil', about: 'c1' }]);
  });

  it('whether the boil holds: a plain no says that it dropped', () => {
    const talk = new Talk(cannerRunning).says(
      { key: 'canner.askIfItHolds', params: { minutes: 4, silences: 0 } },
      'c1',
    );
    expect(talk.hear('no').acts()).toMatchObject([{ command: 'canner.boilDropped' }]);
  });

  it('whether the boil holds: "not done yet" does not say that it dropped', () => {
    const talk = new Talk(cannerRunning).says(
      { key: 'canner.askIfItHolds', params: { minutes: 4, silences: 0 } },
      'c1',
    );
    expect(talk.hear('no', { notYet: true }).acts()).toEqual([]);
  });

  it('takes no answer from silence', () => {
    const talk = new Talk(cannerRunning)
      .says({ key: 'canner.askIfItHolds', params: { minutes: 4, silences: 0 } }, 'c1')
      .wait(16);
    expect(talk.acts()).toEqual([]);
    expect(talk.hear('yes').acts()).toEqual([]);
  });

  it('takes the place of a question of ours, whose yes then means nothing', () => {
    const talk = new Talk([...cannerRunning, open('skim.done', 'b1')]).mumble(
      'skim.done',
      {},
      'the foam is off',
    );
    const [ours] = talk.said();
    if (!ours) throw new Error('nothing was asked');
    talk.says({ key: 'canner.askIfItHolds', params: { minutes: 4, silences: 0 } }, 'c1');
    expect(talk.state).toBe('answering');
    talk.says(ours, null);
    expect(talk.state).toBe('listening');
    expect(talk.hear('yes').acts()).toEqual([]);
  });

  it('opens nothing when it is only a statement', () => {
    expect(new Talk(cannerRunning).says({ key: 'canner.itHolds', params: { minutes: 4 } }, 'c1').state).toBe(
      'listening',
    );
  });
});

describe('what was not understood', () => {
  it('is the radio’s, unless we have just spoken with the cook', () => {
    const talk = new Talk(simmering('b1'));
    expect(talk.babble().effects).toEqual([]);
    talk.hear('how.long');
    expect(talk.babble().keys()).toEqual(['dialogue.pardon']);
    const later = new Talk(simmering('b1')).hear('how.long');
    later.at += ATTENTIVE_MS;
    expect(later.babble().effects).toEqual([]);
  });

  it('twice brings the choices, three times the screen, and then silence', () => {
    const talk = new Talk(simmering('b1')).hear('status');
    expect(talk.babble().keys()).toEqual(['dialogue.pardon']);
    expect(talk.babble().keys()).toEqual(['dialogue.offer']);
    expect(talk.state).toBe('offeringChoices');
    expect(talk.babble().keys()).toEqual(['dialogue.touch']);
    expect(talk.state).toBe('offeringTouch');
    for (let i = 0; i < 20; i++) expect(talk.babble().effects).toEqual([]);
  });

  it('is forgotten once something is understood', () => {
    const talk = new Talk(simmering('b1')).hear('status').babble().babble().hear('pot.stirred');
    expect(talk.state).toBe('listening');
    expect(talk.babble().keys()).toEqual(['dialogue.pardon']);
  });

  it('is forgotten after a minute without a word', () => {
    const talk = new Talk(simmering('b1')).hear('status').babble().babble().babble();
    talk.wait(FORGET_MISSES_MS / 1000).hear('status');
    expect(talk.babble().keys()).toEqual(['dialogue.pardon']);
  });

  it('is forgotten when the cook turns to the screen', () => {
    const talk = new Talk(simmering('b1')).hear('status').babble().babble();
    talk.send({ type: 'touched', at: talk.at });
    expect(talk.state).toBe('listening');
    expect(talk.babble().keys()).toEqual(['dialogue.pardon']);
  });

  it('leaves an open question open the first time', () => {
    const talk = new Talk(cannerHeating).mumble('canner.fullBoil').mouth().babble();
    expect(talk.keys()).toEqual(['dialogue.pardon']);
    expect(talk.hear('yes').acts()).toHaveLength(1);
  });

  it('offers the steps that carry the work forward first, those of the batch at hand before the others', () => {
    const talk = new Talk([...judging('b1'), ...simmering('b2')], { focus: 'b2' }).hear('help');
    expect(talk.said()).toMatchObject([
      {
        key: 'dialogue.offer',
        params: { first: 'say pot.thick', second: 'say plate.held', third: 'say pot.stirred' },
      },
    ]);
  });
});

describe('words of the trade', () => {
  it('are explained in short, and "tell me more" brings the rest, once', () => {
    const talk = new Talk(simmering('b1')).hear('what.is', { term: 'headspace' });
    expect(talk.said()).toEqual([{ key: 'teach.headspace', params: { headspaceMm: 6.35 } }]);
    expect(talk.hear('why').keys()).toEqual(['teach.headspace.more', 'teach.source']);
    expect(talk.hear('why').queries()).toMatchObject([{ command: 'why' }]);
  });

  it('that we do not know are said not to be known', () => {
    expect(new Talk([]).hear('what.is', { term: 'toString' }).keys()).toEqual(['dialogue.noSuchWord']);
  });
});
