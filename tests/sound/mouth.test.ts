// The mouth with hand-made parts: a player that keeps a tape, and voices that speak, fail or hang on request.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { meanings, soundNames } from '../../sounds/meanings.ts';
import type { SoundName } from '../../machines/kitchen/effects.ts';
import { createBundledVoice, sentencesOf } from '../../src/sound/bundledVoice.ts';
import { chooseVoice, findBrowserVoice } from '../../src/sound/browserVoice.ts';
import { createMouth, type MouthParts, type MouthState } from '../../src/sound/mouth.ts';
import type { Played, Player, Playing } from '../../src/sound/player.ts';
import type { Synthesiser } from '../../src/sound/synthesiser.ts';
import type { Voice } from '../../src/sound/voice.ts';

/** Lets promises run. */
const settle = async () => {
  for (let i = 0; i < 20; i++) await Promise.resolve();
};

/** A player whose sounds last until the test ends them. */
function tapePlayer() {
  const faded: number[] = [];
  const tape: { what: string; volume: number; end: (played: Played) => void }[] = [];
  function play(what: string, volume: number): Playing {
    let end: (played: Played) => void = () => {};
    const done = new Promise<Played>((resolve) => (end = resolve));
    tape.push({ what, volume, end });
    return {
      started: Promise.resolve(),
      done,
      stop: () => end('stopped'),
      fade: (to) => void faded.push(to),
    };
  }
  const player: Player = {
    unlock: async () => true,
    playBytes: (wav, volume) => play(new TextDecoder().decode(wav), volume),
    playUrl: play,
    prepare: () => {},
  };
  return { player, tape, faded };
}

/** A synthesiser whose "sound" is the text itself. */
function writtenSynthesiser(): Synthesiser & { made: string[]; works: boolean } {
  return {
    made: [],
    works: true,
    async load() {
      return this.works;
    },
    async make({ text, rate }) {
      this.made.push(`${text} @${rate}`);
      return this.works ? { wav: new TextEncoder().encode(text).buffer, lastsMs: 1000 } : null;
    },
    onLoading: () => () => {},
  };
}

function setUp(change: Partial<MouthParts> = {}) {
  const { player, tape, faded } = tapePlayer();
  const synthesiser = writtenSynthesiser();
  const sounds = Object.fromEntries(soundNames.map((name) => [name, `${name}.wav`])) as Record<
    SoundName,
    string
  >;
  const bundled = createBundledVoice(synthesiser, player);
  const mouth = createMouth({
    player,
    sounds,
    bundled,
    own: async () => null,
    breathMs: 0,
    standsMs: () => 0,
    ...change,
  });
  const states: MouthState[] = [];
  const speaking: boolean[] = [];
  mouth.onState((state) => states.push(state));
  mouth.onSpeaking((now) => speaking.push(now));
  const say = (text: string) => mouth.speak({ id: 1, text, urgency: 'step' });
  return { mouth, tape, faded, synthesiser, states, speaking, say, player };
}

const ownVoice = (outcome: 'spoken' | 'failed', loads = true): Voice & { said: string[] } => ({
  name: 'own',
  said: [],
  load: async () => loads,
  say(text, _manner, onSound) {
    this.said.push(text);
    if (outcome === 'spoken') onSound();
    return { done: Promise.resolve(outcome), cut: () => {}, loudness: () => {} };
  },
  prepare: () => {},
});

describe('being talked over', () => {
  it('goes on, a quarter as loud, and comes back to its full voice', async () => {
    const { mouth, tape, faded, say } = setUp({ settings: { loudness: 0.8 } });
    void say('One. Two.');
    await settle();
    mouth.duck(true);
    mouth.duck(true);
    expect(faded).toEqual([0.2]);
    tape[0]!.end('ended');
    await settle();
    expect(tape[1]).toMatchObject({ what: 'Two.', volume: 0.2 });
    mouth.duck(false);
    expect(faded).toEqual([0.2, 0.8]);
  });

  it('a louder kitchen raises the sentence that is being said', async () => {
    const { mouth, faded, say } = setUp({ settings: { loudness: 0.5 } });
    void say('One.');
    await settle();
    mouth.set({ loudness: 0.9 });
    expect(faded).toEqual([0.9]);
  });

  it('says a danger as loud as its alarm, and what is no danger at its own level', async () => {
    const { mouth, tape } = setUp({ settings: { loudness: 0.3, alarmLoudness: 0.7 } });
    for (const urgency of ['clock', 'danger', 'step'] as const) {
      void mouth.speak({ id: 1, text: `${urgency}.`, urgency });
      await settle();
    }
    expect(tape.map(({ volume }) => volume)).toEqual([0.3, 0.7, 0.3]);
  });

  it('tells the ear which words are its own', async () => {
    const { mouth, say } = setUp();
    const own: string[] = [];
    mouth.onSpeaking((speaking, words) => speaking && own.push(words));
    void say('Wait 2 min.');
    await settle();
    expect(own).toEqual(['Wait two minutes.']);
  });
});

describe('drawing breath', () => {
  const breathing = () => {
    const { mouth, tape, speaking } = setUp({ breathMs: 60_000 });
    const over: string[] = [];
    const speak = async (urgency: 'step' | 'danger') => {
      void mouth.speak({ id: 1, text: 'One.', urgency }).then((outcome) => over.push(outcome));
      await settle();
      tape.at(-1)!.end('ended');
      await settle();
    };
    return { mouth, speaking, over, speak };
  };

  it('is not over before a breath, and listens meanwhile', async () => {
    const { speaking, over, speak } = breathing();
    await speak('step');
    expect(over).toEqual([]);
    expect(speaking.at(-1)).toBe(false);
  });

  it('gives its breath up at once when it is cut, for a danger or for the cook', async () => {
    const { mouth, over, speak } = breathing();
    await speak('step');
    mouth.cut();
    await settle();
    expect(over).toEqual(['spoken']);
  });

  it('does not breathe after a danger', async () => {
    const { over, speak } = breathing();
    await speak('danger');
    expect(over).toEqual(['spoken']);
  });
});

describe('speaking', () => {
  it('says a text sentence by sentence, numbers in words, and tells when it is over', async () => {
    const { tape, say } = setUp();
    const outcome = say('The boil dropped. Wait 5 min.');
    await settle();
    expect(tape.map(({ what }) => what)).toEqual(['The boil dropped.']);
    tape[0]!.end('ended');
    await settle();
    expect(tape.map(({ what }) => what)).toEqual(['The boil dropped.', 'Wait five minutes.']);
    tape[1]!.end('ended');
    expect(await outcome).toBe('spoken');
  });

  it('makes the second sentence while the first is heard', async () => {
    const { synthesiser, say } = setUp();
    void say('One. Two. Three.');
    await settle();
    expect(synthesiser.made).toEqual(['One. @1', 'Two. @1']);
  });

  it('is masked from the first sound to the last', async () => {
    const { tape, speaking, say } = setUp();
    const outcome = say('One. Two.');
    expect(speaking).toEqual([false]);
    await settle();
    expect(speaking).toEqual([false, true]);
    tape[0]!.end('ended');
    await settle();
    tape[1]!.end('ended');
    await outcome;
    expect(speaking).toEqual([false, true, false]);
  });

  it('cuts at once, and says nothing more of it', async () => {
    const { mouth, tape, speaking, say } = setUp();
    const outcome = say('One. Two.');
    await settle();
    mouth.cut();
    expect(speaking.at(-1)).toBe(false);
    expect(await outcome).toBe('cut');
    await settle();
    expect(tape).toHaveLength(1);
  });

  it('cuts what has not even begun', async () => {
    const { mouth, tape, say } = setUp();
    const outcome = say('One.');
    mouth.cut();
    expect(await outcome).toBe('cut');
    await settle();
    expect(tape).toHaveLength(0);
  });

  it('a new sentence takes the place of one that still sounds', async () => {
    const { tape, say } = setUp();
    const first = say('One.');
    await settle();
    const second = say('Two.');
    expect(await first).toBe('cut');
    await settle();
    tape[1]!.end('ended');
    expect(await second).toBe('spoken');
  });

  it('obeys speed and loudness from the next sentence on', async () => {
    const { mouth, tape, synthesiser, say } = setUp({ settings: { rate: 1.2, loudness: 0.8 } });
    void say('One.');
    await settle();
    mouth.set({ rate: 0.9, loudness: 0.3 });
    void say('Two.');
    await settle();
    expect(synthesiser.made).toEqual(['One. @1.2', 'Two. @0.9']);
    expect(tape.map(({ volume }) => volume)).toEqual([0.8, 0.3]);
  });

  it('fails, and does not throw, when there is no sound', async () => {
    const { tape, synthesiser, say } = setUp();
    const failing = say('One. Two.');
    await settle();
    tape[0]!.end('failed');
    expect(await failing).toBe('failed');
    synthesiser.works = false;
    expect(await say('Three.')).toBe('failed');
  });

  it('a text without words is over at once', async () => {
    expect(await setUp().say(' … ')).toBe('spoken');
    expect(sentencesOf('Stop! Now? Yes. ')).toEqual(['Stop!', 'Now?', 'Yes.']);
  });
});

describe('a voice that never comes', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('does not hold up the kitchen', async () => {
    const { say } = setUp({ own: () => new Promise(() => {}) });
    const outcome = say('One.');
    await vi.advanceTimersByTimeAsync(15_000);
    expect(await outcome).toBe('failed');
  });
});

describe('what cannot be said', () => {
  const muted = async (urgency: 'step' | 'danger', words = 'The plum has reached its weight.') => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
    const { mouth, synthesiser } = setUp({ standsMs: undefined });
    synthesiser.works = false;
    const over: string[] = [];
    void mouth.speak({ id: 1, text: words, urgency }).then((outcome) => over.push(outcome));
    await vi.advanceTimersByTimeAsync(0);
    return { mouth, over };
  };
  afterEach(() => void vi.useRealTimers());

  it('stands as long as it would have sounded, 32 letters about two seconds', async () => {
    const { over } = await muted('step');
    await vi.advanceTimersByTimeAsync(2000);
    expect(over).toEqual([]);
    await vi.advanceTimersByTimeAsync(200);
    expect(over).toEqual(['failed']);
  });

  it('makes way at once when it is cut, and is then not taken for read', async () => {
    const { mouth, over } = await muted('step');
    await vi.advanceTimersByTimeAsync(500);
    mouth.cut();
    await vi.advanceTimersByTimeAsync(0);
    expect(over).toEqual(['cut']);
  });

  it('holds up no alarm', async () => {
    const { over } = await muted('danger');
    expect(over).toEqual(['failed']);
  });
});

describe('the choice of voice', () => {
  it("takes the browser's own where it speaks", async () => {
    const own = ownVoice('spoken');
    const { mouth, states, tape, say } = setUp({ own: async () => own });
    await mouth.unlock();
    expect(states.at(-1)).toEqual({ kind: 'ready', voice: 'own' });
    expect(await say('Wait 5 min.')).toBe('spoken');
    expect(own.said).toEqual(['Wait five minutes.']);
    expect(tape).toHaveLength(0);
  });

  it('takes the bundled one where there is none, and where it does not prove itself', async () => {
    for (const own of [null, ownVoice('spoken', false)]) {
      const { mouth, states } = setUp({ own: async () => own });
      await mouth.unlock();
      expect(states.at(-1)).toEqual({ kind: 'ready', voice: 'bundled' });
    }
  });

  it('says the sentence with the bundled one when the own voice fails, and trusts that no more', async () => {
    const own = ownVoice('failed');
    const { mouth, tape, states, say } = setUp({ own: async () => own });
    await mouth.unlock();
    const outcome = say('One.');
    await settle();
    expect(tape.map(({ what }) => what)).toEqual(['One.']);
    tape[0]!.end('ended');
    expect(await outcome).toBe('spoken');
    expect(states.at(-1)).toEqual({ kind: 'ready', voice: 'bundled' });
    void say('Two.');
    await settle();
    expect(own.said).toEqual(['One.']);
  });

  it('says plainly that it is mute, when no voice loads or the browser gives no sound', async () => {
    const noVoice = setUp();
    noVoice.synthesiser.works = false;
    await noVoice.mouth.unlock();
    expect(noVoice.states.at(-1)).toMatchObject({ kind: 'mute', why: 'voice' });

    const locked = tapePlayer().player;
    const noSound = setUp({ player: { ...locked, unlock: async () => false } });
    await noSound.mouth.unlock();
    expect(noSound.states.at(-1)).toMatchObject({ kind: 'mute', why: 'sound' });
  });

  it('never takes a voice that may send the words away, nor one of another language', () => {
    const voice = (name: string, lang: string, localService: boolean, isDefault = false) =>
      ({ name, lang, localService, default: isDefault, voiceURI: name }) as SpeechSynthesisVoice;
    const away = voice('away', 'en-US', false, true);
    expect(chooseVoice([away])).toBeNull();
    expect(chooseVoice([voice('deutsch', 'de-DE', true)])).toBeNull();
    expect(chooseVoice([away, voice('a', 'en-GB', true), voice('b', 'en_US', true, true)])?.name).toBe('b');
    expect(chooseVoice([away, voice('a', 'en-GB', true)])?.name).toBe('a');
  });

  it('does without where the browser cannot speak at all', async () => {
    expect(await findBrowserVoice(undefined)).toBeNull();
  });
});

describe('sounds', () => {
  it.each(soundNames)('plays %s', async (name) => {
    const { mouth, tape } = setUp({ settings: { soundLoudness: 0.7, alarmLoudness: 0.9 } });
    const played = mouth.sound(name);
    expect(tape).toMatchObject([{ what: `${name}.wav`, volume: meanings[name].alarm ? 0.9 : 0.7 }]);
    tape[0]!.end('ended');
    expect(await played).toBe('played');
  });

  it('are cut too, and say when they fail', async () => {
    const { mouth, tape } = setUp();
    const cut = mouth.sound('danger');
    mouth.cut();
    expect(await cut).toBe('played');
    const failed = mouth.sound('danger');
    tape[1]!.end('failed');
    expect(await failed).toBe('failed');
  });
});
