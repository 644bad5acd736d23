// The announcer driving a mouth: what it says is captioned, what it cannot say does not stop it.

import { describe, expect, it } from 'vitest';
import { createAnnouncer, type Caption } from '../../src/kitchen/announcing.ts';
import type { Catalogue, Mouth, Utterance } from '../../src/kitchen/ports.ts';
import type { Urgency } from '../../machines/kitchen/effects.ts';

/** Lets promises run. */
const settle = async () => {
  for (let i = 0; i < 20; i++) await Promise.resolve();
};

/** A mouth that speaks until the test lets it end. */
function handMouth() {
  const said: Utterance[] = [];
  const heard: string[] = [];
  let end: (outcome: 'spoken' | 'cut' | 'failed') => void = () => {};
  const mouth: Mouth = {
    unlock: async () => {},
    speak(utterance) {
      said.push(utterance);
      heard.push(utterance.text);
      return new Promise((resolve) => (end = resolve));
    },
    cut() {
      heard.push('cut');
      end('cut');
    },
    duck() {},
    async sound(name) {
      heard.push(`*${name}*`);
      return 'played';
    },
  };
  return { mouth, said, heard, end: (outcome: 'spoken' | 'failed' = 'spoken') => (end(outcome), settle()) };
}

function setUp(
  { text = ({ key }) => `${key}!` }: Partial<Pick<Catalogue, 'text'>> = {},
  mouthChange: Partial<Mouth> = {},
) {
  const hand = handMouth();
  const captions: Caption[] = [];
  const troubles: unknown[] = [];
  let now = 0;
  const announcer = createAnnouncer({
    mouth: { ...hand.mouth, ...mouthChange },
    catalogue: () => ({ text, listed: (items) => items.join(' and ') }),
    now: () => now,
    onCaption: (caption) => captions.push(caption),
    onTrouble: (error) => troubles.push(error),
  });
  const say = (
    key: string,
    urgency: Urgency = 'step',
    more: { untilAnswered?: boolean; about?: string } = {},
  ) =>
    announcer.effect({ type: 'say', message: { key }, urgency, about: 'plum', slot: `plum/${key}`, ...more });
  async function wait(seconds: number) {
    for (let s = 0; s < seconds; s++) {
      now += 1000;
      announcer.beat();
      await settle();
    }
  }
  return { ...hand, announcer, captions, troubles, say, wait };
}

describe('the announcer', () => {
  it('puts messages into words, says them one by one and captions each', async () => {
    const { say, end, said, captions } = setUp();
    say('mash', 'step', { about: 'pear' });
    say('stir');
    expect(said).toMatchObject([{ text: 'mash!', urgency: 'step' }]);
    expect(captions).toEqual([{ text: 'mash!', speaking: true, urgency: 'step' }]);
    await end();
    expect(captions.slice(1)).toEqual([
      { text: 'mash!', speaking: false, urgency: 'step' },
      { text: 'stir!', speaking: true, urgency: 'step' },
    ]);
  });

  it('says the name of a batch once in a breath', async () => {
    const { announcer, say, end, said } = setUp({
      text: ({ key, params }) =>
        key === 'kitchen.named' ? `${params?.['name']}: ${params?.['words']}` : key,
    });
    const about = (name: string, words: string) =>
      announcer.effect({
        type: 'say',
        message: { key: 'kitchen.named', params: { name, words } },
        urgency: 'step',
        about: 'b1',
        slot: words,
      });
    say('first', 'step', { about: 'pear' });
    about('Plum', 'Skim it.');
    about('Plum', 'Push it aside.');
    about('Pear', 'Stir.');
    await end();
    expect(said.at(-1)!.text).toBe('Plum: Skim it. Push it aside. Pear: Stir.');
  });

  it('calls for the spoon once for all the pots that want it, in the words of the thickest', async () => {
    const { announcer, say, end, said } = setUp({
      text: ({ key, params }) =>
        key === 'kitchen.named' ? `${params?.['name']}: ${params?.['words']}` : key,
    });
    const stir = (name: string, words: string, near: boolean, slot = `${name}/stir`) =>
      announcer.effect({
        type: 'say',
        message: { key: 'kitchen.named', params: { name, words, near, of: 'batch.stir' } },
        urgency: near ? 'clock' : 'step',
        about: name,
        slot,
      });
    say('is it hot', 'danger', { about: 'canner' });
    stir('plum', 'Stir the pot.', false);
    stir('pear', 'Stir now, right to the bottom.', true);
    say('skim', 'step', { about: 'plum' });
    await end();
    expect(said.at(-1)!.text).toBe('pear and plum: Stir now, right to the bottom.');
    await end();
    expect(said.at(-1)!.text).toBe('skim');
    await end();
    expect(said).toHaveLength(3);
  });

  it('lets a danger through a sentence, and then says the sentence', async () => {
    const { announcer, say, end, heard } = setUp();
    say('mash');
    announcer.effect({ type: 'sound', sound: 'danger', about: 'plum' });
    say('scorching', 'danger');
    await settle();
    expect(heard).toEqual(['mash!', 'cut', '*danger*', 'scorching!']);
    await end();
    expect(heard.at(-1)).toBe('mash!');
  });

  it('leaves messages between machines alone', () => {
    const { announcer, heard } = setUp();
    announcer.effect({ type: 'pass', at: 0, to: 'plum', message: { type: 'canner.jarBroke', canner: 'c1' } });
    expect(heard).toEqual([]);
  });

  it('asks again until it is answered, and knows the open question', async () => {
    const { announcer, say, end, heard, wait } = setUp();
    say('is it thick', 'step', { untilAnswered: true });
    await end();
    await wait(20);
    expect(heard).toEqual(['is it thick!', '*nudge*', 'is it thick!']);
    await end();
    expect(announcer.question()?.say.message).toEqual({ key: 'is it thick' });
    announcer.answered('plum/is it thick');
    await wait(300);
    expect(announcer.question()).toBeNull();
    expect(heard).toHaveLength(3);
  });

  it('goes on after a sentence for which there are no words, and tells of it', async () => {
    const text: Catalogue['text'] = ({ key }) => {
      if (key === 'lost') throw new Error('no words for lost');
      return key;
    };
    const { say, heard, troubles } = setUp({ text });
    say('lost', 'clock');
    say('stir');
    await settle();
    expect(heard).toEqual(['stir']);
    expect(troubles).toMatchObject([{ message: 'no words for lost' }]);
  });

  it('goes on after a mouth that breaks its word and throws', async () => {
    let times = 0;
    const { say, troubles, announcer, heard } = setUp(undefined, {
      speak: async () => {
        times++;
        throw new Error('no mouth');
      },
    });
    say('mash');
    await settle();
    say('stir');
    await settle();
    expect(times).toBe(2);
    expect(troubles).toHaveLength(2);
    announcer.effect({ type: 'sound', sound: 'step', about: null });
    expect(heard).toEqual(['*step*']);
  });

  it('remembers what it said last, with the words behind "why"', async () => {
    const { announcer, end, heard } = setUp();
    announcer.effect({
      type: 'say',
      message: { key: 'wait' },
      why: { key: 'wait.why' },
      urgency: 'step',
      about: null,
      slot: 's',
    });
    await end();
    expect(announcer.last().map((line) => line.say.why)).toEqual([{ key: 'wait.why' }]);
    announcer.repeat();
    expect(heard).toEqual(['wait!', 'wait!']);
    announcer.hush();
    expect(heard.at(-1)).toBe('cut');
  });
});
