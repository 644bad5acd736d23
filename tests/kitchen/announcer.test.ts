// The one mouth: never two at once, the urgent first, nothing stale, nothing forgotten that wants an answer.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openQuestion, silence, type SayEffect } from '../../src/kitchen/announcements.ts';
import { announce, HUSH_LASTS_MS, type AnnounceInput } from '../../src/kitchen/announcer.ts';
import { READ_BACK_SLOT } from '../../machines/dialogue/words.ts';
import { raisedUrgency, repeatDueAt } from '../../src/kitchen/insistence.ts';
import type { AnnounceAction } from '../../src/kitchen/turns.ts';
import { soundNames } from '../../sounds/meanings.ts';
import type { SoundName, Urgency } from '../../machines/kitchen/effects.ts';

type More = {
  urgency?: Urgency;
  about?: string | null;
  slot?: string;
  untilAnswered?: boolean;
  takesMinutes?: number;
};

/** A mouth on paper: `heard` lists what it began, "cut" included; each turn lasts until `finish`. */
function mouth() {
  let queue = silence;
  let at = 0;
  let sounding: number | null = null;
  let isCut = false;
  const heard: string[] = [];

  function take(input: AnnounceInput): void {
    const [next, actions] = announce(queue, input);
    queue = next;
    for (const action of actions) note(action);
  }

  function note(action: AnnounceAction): void {
    if (action.type === 'cut') {
      isCut = true;
      heard.push('cut');
      return;
    }
    expect(sounding, 'two at once').toBeNull();
    [sounding, isCut] = [action.id, false];
    heard.push(
      action.type === 'sound' ? `*${action.sound}*` : action.messages.map(({ key }) => key).join(' + '),
    );
  }

  const driver = {
    say(
      key: string,
      {
        urgency = 'step',
        about = 'plum',
        slot = `${about ?? 'evening'}/${key}`,
        untilAnswered = false,
        takesMinutes = 0,
      }: More = {},
    ) {
      const how = { untilAnswered, takesMinutes };
      const effect: SayEffect = { type: 'say', message: { key }, urgency, about, slot, ...how };
      take({ type: 'effect', effect, at });
      return driver;
    },
    sound(sound: SoundName) {
      take({ type: 'effect', effect: { type: 'sound', sound, about: 'plum' }, at });
      return driver;
    },
    /** The mouth comes to the end of what it says. */
    finish(outcome?: 'spoken' | 'cut' | 'failed') {
      const id = sounding;
      sounding = null;
      if (id !== null) take({ type: 'done', id, outcome: outcome ?? (isCut ? 'cut' : 'spoken'), at });
      return driver;
    },
    finishAll() {
      while (sounding !== null) driver.finish();
      return driver;
    },
    wait(seconds: number) {
      for (let s = 0; s < seconds; s++) {
        at += 1000;
        take({ type: 'tick', at });
      }
      return driver;
    },
    answer: (slot: string) => (take({ type: 'answered', slot, at }), driver),
    moveOn: (about: string) => (take({ type: 'movedOn', about, at }), driver),
    happened: () => (take({ type: 'happened', at }), driver),
    repeat: () => (take({ type: 'repeat', at }), driver),
    hush: () => (take({ type: 'hush', at }), driver),
    interrupt: (about: string | null = null) => (take({ type: 'interrupted', about, at }), driver),
    call: (on: boolean) => (take({ type: 'yield', on, at }), driver),
    quiet: (...about: string[]) => (take({ type: 'quiet', about, at }), driver),
    heard: () => heard.splice(0),
    question: () => openQuestion(queue)?.say.message.key ?? null,
    isSounding: () => sounding !== null,
  };
  return driver;
}

describe('the cook talks over it', () => {
  it('and asks something: what was cut comes after the answer', () => {
    const it = mouth().say('fill the jars').interrupt();
    it.say('ten minutes', { urgency: 'clock', slot: 'kitchen/answer' });
    expect(it.finishAll().heard()).toEqual(['fill the jars', 'cut', 'ten minutes', 'fill the jars']);
  });

  it('a clock that was cut comes after the answer, too', () => {
    const it = mouth().say('clock started', { urgency: 'clock' }).interrupt();
    it.say('answer', { urgency: 'clock', slot: 'kitchen/answer' });
    expect(it.finishAll().heard()).toEqual(['clock started', 'cut', 'answer', 'clock started']);
  });

  it('and tells what is being said: it needs no end', () => {
    const it = mouth().say('stir the plum', { about: 'plum' }).interrupt('plum');
    expect(it.finishAll().heard()).toEqual(['stir the plum', 'cut']);
  });

  it('in the middle of teaching, which is not taken up again', () => {
    expect(mouth().say('teach', { urgency: 'teaching' }).interrupt().finishAll().heard()).toEqual([
      'teach',
      'cut',
    ]);
  });

  it('a danger goes on', () => {
    expect(mouth().say('danger', { urgency: 'danger' }).interrupt('plum').finishAll().heard()).toEqual([
      'danger',
    ]);
  });

  it('a question that was cut still waits for its answer', () => {
    const it = mouth()
      .say('full boil?', { untilAnswered: true, about: 'canner' })
      .interrupt('canner')
      .finish();
    expect(it.question()).toBe('full boil?');
  });
});

describe('the cook calls', () => {
  it('and nothing begins before the cook is done', () => {
    const it = mouth().call(true).say('step').say('clock', { urgency: 'clock' });
    expect(it.heard()).toEqual([]);
    expect(it.call(false).finishAll().heard()).toEqual(['clock', 'step']);
  });

  it('in the middle of a sentence, which is said afterwards', () => {
    const it = mouth().say('step').call(true).finish();
    expect(it.heard()).toEqual(['step', 'cut']);
    expect(it.call(false).heard()).toEqual(['step']);
  });

  it('a danger does not wait', () => {
    expect(mouth().call(true).say('danger', { urgency: 'danger' }).heard()).toEqual(['danger']);
  });
});

describe('the quiet hours', () => {
  it('hold what a resting batch would say until the morning, and say so', () => {
    const it = mouth().quiet('plum').say('you may check', { about: 'plum' }).sound('nudge').wait(60);
    expect(it.heard()).toEqual([]);
    expect(it.quiet().finishAll().heard()).toEqual(['kitchen.whileQuiet', 'you may check']);
  });

  it('do not hold a pot that is on, nor an answer to the cook', () => {
    const it = mouth().quiet('plum').say('stir', { about: 'pear' });
    it.finish().say('answer', { about: 'kitchen', urgency: 'clock' });
    expect(it.finishAll().heard()).toEqual(['stir', 'answer']);
  });

  it('never hold a danger', () => {
    expect(mouth().quiet('plum').say('danger', { urgency: 'danger' }).heard()).toEqual(['danger']);
  });

  it('end a question’s asking; it comes back in the morning', () => {
    const it = mouth().say('how many sealed?', { untilAnswered: true }).finish().quiet('plum').wait(600);
    expect(it.heard()).toEqual(['how many sealed?']);
    expect(it.quiet().wait(1).finishAll().heard()).toContain('how many sealed?');
  });

  it('have nothing to say in the morning where nothing fell in them', () => {
    expect(mouth().quiet('plum').wait(60).quiet().finishAll().heard()).toEqual([]);
  });
});

describe('the order of speech', () => {
  it('says one thing after the other', () => {
    const it = mouth().say('a', { about: 'plum' }).say('b', { about: 'pear' });
    expect(it.heard()).toEqual(['a']);
    expect(it.finish().heard()).toEqual(['b']);
    expect(it.finish().heard()).toEqual([]);
  });

  it('a clock comes before a step, a step before teaching, whatever came first', () => {
    const it = mouth().say('talking', { about: 'crab apple' });
    it.say('teach', { urgency: 'teaching' }).say('step').say('clock', { urgency: 'clock' });
    expect(it.finishAll().heard()).toEqual(['talking', 'clock', 'step', 'teach']);
  });

  it('a sound comes before the words of its moment', () => {
    const it = mouth().say('talking', { about: 'pear' }).say('served', { urgency: 'clock' }).sound('time-up');
    expect(it.finishAll().heard()).toEqual(['talking', '*time-up*', 'served']);
  });

  it('the same sound asked for twice at once is played once', () => {
    expect(mouth().say('talking').sound('step').sound('step').finishAll().heard()).toEqual([
      'talking',
      '*step*',
    ]);
  });

  it('a voice that fails does not stall the kitchen', () => {
    const it = mouth().say('a').say('b', { about: 'pear' });
    expect(it.finish('failed').finish('failed').heard()).toEqual(['a', 'b']);
    expect(it.isSounding()).toBe(false);
  });
});

describe('danger', () => {
  it('cuts whatever is being said, and what was cut is said again afterwards', () => {
    const it = mouth().say('a long step');
    it.say('it is scorching', { urgency: 'danger', about: 'pear' });
    expect(it.heard()).toEqual(['a long step', 'cut']);
    expect(it.finishAll().heard()).toEqual(['it is scorching', 'a long step']);
  });

  it('its sound comes first, then its words', () => {
    const it = mouth().say('a step').sound('danger').say('water is low', { urgency: 'danger' });
    expect(it.finishAll().heard()).toEqual(['a step', 'cut', '*danger*', 'water is low', 'a step']);
  });

  it('does not cut another danger', () => {
    const it = mouth()
      .say('first', { urgency: 'danger' })
      .say('second', { urgency: 'danger', about: 'pear' });
    expect(it.heard()).toEqual(['first']);
    expect(it.finish().heard()).toEqual(['second']);
  });

  it('what ended just before the cut is not said twice', () => {
    const it = mouth().say('a step').say('danger', { urgency: 'danger' });
    it.heard();
    expect(it.finish('spoken').finishAll().heard()).toEqual(['danger']);
  });

  it('a sentence replaced while it was cut is not said again', () => {
    const it = mouth().say('twelve minutes left', { slot: 'plum/left' });
    it.say('danger', { urgency: 'danger', about: 'pear' }).say('eleven minutes left', { slot: 'plum/left' });
    expect(it.finishAll().heard()).toEqual(['twelve minutes left', 'cut', 'danger', 'eleven minutes left']);
  });
});

describe('nothing stale is spoken', () => {
  it('a newer sentence of the same slot replaces the one that waits', () => {
    const it = mouth().say('talking', { about: 'pear' });
    it.say('nine minutes left', { slot: 'plum/left' }).say('eight minutes left', { slot: 'plum/left' });
    expect(it.finishAll().heard()).toEqual(['talking', 'eight minutes left']);
  });

  it('the very same sentence is not queued behind itself', () => {
    expect(mouth().say('stir').say('stir').finishAll().heard()).toEqual(['stir']);
  });

  it('teaching waits 20 seconds and no longer', () => {
    const taught = (seconds: number) => {
      const it = mouth().say('talking').say('teach', { urgency: 'teaching' }).wait(seconds);
      return it.finishAll().heard().includes('teach');
    };
    expect(taught(20)).toBe(true);
    expect(taught(21)).toBe(false);
  });

  it('a read-back comes before the words that follow from it, or not at all', () => {
    const readBack = { urgency: 'clock', slot: READ_BACK_SLOT } as const;
    const after = (urgency: Urgency, seconds: number) =>
      mouth().say('jars out', readBack).say('what follows', { urgency }).wait(seconds).finishAll().heard();
    expect(after('clock', 1)).toEqual(['jars out', 'what follows']);
    expect(after('danger', 5)).toEqual(['jars out', 'cut', 'what follows']);
  });

  it('a sound waits 3 seconds and no longer, but a danger sound always comes', () => {
    const played = (sound: SoundName, seconds: number) =>
      mouth()
        .say('first', { urgency: 'danger' })
        .sound(sound)
        .wait(seconds)
        .finishAll()
        .heard()
        .includes(`*${sound}*`);
    expect(played('step', 3)).toBe(true);
    expect(played('step', 4)).toBe(false);
    expect(played('danger', 30)).toBe(true);
  });

  it("a batch that moved on takes its waiting sentences with it, and nobody else's", () => {
    const it = mouth().say('talking', { about: 'crab apple' }).say('mash it').say('stir', { about: 'pear' });
    expect(it.moveOn('plum').finishAll().heard()).toEqual(['talking', 'stir']);
  });

  it('a plain sentence is finished although its batch moved on', () => {
    expect(mouth().say('mash it').moveOn('plum').heard()).toEqual(['mash it']);
  });
});

describe('steps about one thing are said in one breath', () => {
  it('but what concerns the whole evening is one thing at a time, in its order', () => {
    const it = mouth()
      .say('first')
      .say('canner at four', { about: null })
      .say('pear at five', { about: null });
    it.say('late', { about: null }).finishAll();
    expect(it.heard()).toEqual(['first', 'canner at four', 'pear at five', 'late']);
  });

  it('up to three', () => {
    const it = mouth().say('talking', { about: 'pear' });
    for (const key of ['a', 'b', 'c', 'd']) it.say(key);
    expect(it.finishAll().heard()).toEqual(['talking', 'a + b + c', 'd']);
  });

  it('but not across batches, nor with teaching', () => {
    const it = mouth().say('talking', { about: 'crab apple' });
    it.say('a').say('b', { about: 'pear' }).say('why', { urgency: 'teaching' }).say('c');
    expect(it.finishAll().heard()).toEqual(['talking', 'a + c', 'b', 'why']);
  });

  it('when one of them is answered, the other is said again without it', () => {
    const it = mouth()
      .say('talking', { about: 'pear' })
      .say('is it thick', { untilAnswered: true })
      .say('stir');
    expect(it.finish().heard()).toEqual(['talking', 'is it thick + stir']);
    expect(it.answer('plum/is it thick').finishAll().heard()).toEqual(['cut', 'stir']);
    expect(it.question()).toBeNull();
  });
});

describe('what wants an answer', () => {
  const asked = () => {
    const it = mouth()
      .say('is it a full boil', { untilAnswered: true, urgency: 'clock', slot: 'c1/boil' })
      .finish();
    it.heard();
    return it;
  };

  it('comes back after 20, 45 and 90 seconds, then every 90, with a nudge and then with danger', () => {
    const it = asked();
    const heardWithin = (seconds: number) => {
      const before = it
        .wait(seconds - 1)
        .finishAll()
        .heard();
      expect(before).toEqual([]);
      return it.wait(1).finishAll().heard();
    };
    expect(heardWithin(20)).toEqual(['*nudge*', 'is it a full boil']);
    expect(heardWithin(25)).toEqual(['*danger*', 'is it a full boil']);
    expect(heardWithin(45)).toEqual(['*danger*', 'is it a full boil']);
    expect(heardWithin(90)).toEqual(['*danger*', 'is it a full boil']);
    expect(heardWithin(90)).toEqual(['*danger*', 'is it a full boil']);
  });

  it('is silent once it is answered', () => {
    expect(asked().answer('c1/boil').wait(600).heard()).toEqual([]);
  });

  it('is settled by the next state of its batch', () => {
    expect(asked().moveOn('plum').wait(600).heard()).toEqual([]);
    expect(asked().moveOn('pear').wait(20).heard()).toEqual(['*nudge*']);
  });

  it('is replaced, not doubled, when the machine asks again', () => {
    const it = asked()
      .wait(10)
      .say('does it still boil', { urgency: 'clock', slot: 'c1/boil', untilAnswered: true });
    it.finishAll().heard();
    expect(it.wait(20).finishAll().heard()).toEqual(['*nudge*', 'does it still boil']);
  });

  it('is cut when the cook answers into it', () => {
    const it = mouth().say('are the jars in', { untilAnswered: true, slot: 'q' }).answer('q');
    expect(it.heard()).toEqual(['are the jars in', 'cut']);
    expect(it.finishAll().wait(600).heard()).toEqual([]);
  });

  it('is the open question until it is answered; the most urgent one counts', () => {
    const it = asked();
    it.say('are the jars in', { untilAnswered: true, about: 'pear' });
    expect(it.question()).toBe('is it a full boil');
    expect(it.answer('c1/boil').question()).toBe('are the jars in');
    expect(it.finish().question()).toBe('are the jars in');
    expect(it.moveOn('pear').question()).toBeNull();
  });

  it('two of them due at once share one nudge', () => {
    const it = mouth()
      .say('a', { untilAnswered: true })
      .say('b', { untilAnswered: true, about: 'pear' })
      .finishAll();
    it.heard();
    expect(it.wait(20).finishAll().heard()).toEqual(['*nudge*', 'a', 'b']);
  });

  it('work that takes minutes is not asked after while it is in hand', () => {
    const it = mouth().say('get hot jars', { untilAnswered: true, takesMinutes: 3 }).finish();
    it.heard();
    expect(it.wait(199).finishAll().heard()).toEqual([]);
    expect(it.wait(1).finishAll().heard()).toEqual(['*nudge*', 'get hot jars']);
  });

  it('a step never rises to danger, however long it is ignored', () => {
    for (const repeats of [0, 1, 2, 10, 100]) expect(raisedUrgency('step', repeats)).not.toBe('danger');
    expect(raisedUrgency('clock', 1)).toBe('clock');
    expect(raisedUrgency('clock', 2)).toBe('danger');
  });

  it('each repeat is later than the one before', () => {
    const due = Array.from({ length: 8 }, (_, n) => repeatDueAt(0, n));
    expect(due.slice(0, 5)).toEqual([20_000, 45_000, 90_000, 180_000, 270_000]);
    expect([...due].sort((a, b) => a - b)).toEqual(due);
  });
});

describe('"say that again"', () => {
  it('says the last sentence again', () => {
    const it = mouth().say('mash it').finish().repeat();
    expect(it.heard()).toEqual(['mash it', 'mash it']);
  });

  it('says steps that were said in one breath in one breath', () => {
    const it = mouth().say('talking', { about: 'pear' }).say('a').say('b').finishAll();
    it.heard();
    expect(it.repeat().finishAll().heard()).toEqual(['a + b']);
  });

  it('begins anew in the middle of a sentence', () => {
    expect(mouth().say('mash it').repeat().finishAll().heard()).toEqual(['mash it', 'cut', 'mash it']);
  });

  it('is said before what waits in its rank, and works twice', () => {
    const it = mouth().say('a').finish().sound('step').say('b', { about: 'pear' }).repeat();
    expect(it.finishAll().heard()).toEqual(['a', '*step*', 'a', 'b']);
    expect(
      it
        .repeat()
        .repeat()
        .finishAll()
        .heard()
        .filter((s) => s !== 'cut'),
    ).toEqual(['b', 'b']);
  });

  it('says nothing when nothing was said', () => {
    expect(mouth().repeat().heard()).toEqual([]);
  });

  it('does not make a question of an answered one', () => {
    const it = mouth().say('q', { untilAnswered: true }).finish().answer('plum/q').repeat().finishAll();
    expect(it.question()).toBeNull();
    it.heard();
    expect(it.wait(300).heard()).toEqual([]);
  });
});

describe('"hush"', () => {
  it('cuts at once and empties what waits', () => {
    const it = mouth().say('a').say('b', { about: 'pear' }).say('c', { urgency: 'clock' }).hush();
    expect(it.finishAll().heard()).toEqual(['a', 'cut']);
  });

  it('cuts even a danger, but its repeats go on', () => {
    const it = mouth().say('water is low', { urgency: 'danger', untilAnswered: true }).hush().finishAll();
    expect(it.heard()).toEqual(['water is low', 'cut']);
    expect(it.wait(20).finishAll().heard()).toEqual(['*danger*', 'water is low']);
  });

  it('lets a danger that waits come through', () => {
    const it = mouth()
      .say('one', { urgency: 'danger' })
      .say('two', { urgency: 'danger', about: 'pear' })
      .hush();
    expect(it.finishAll().heard()).toEqual(['one', 'cut', 'two']);
  });

  it('silences steps and teaching until something happens', () => {
    const it = mouth().hush().say('a').say('t', { urgency: 'teaching' }).sound('nudge').wait(10);
    expect(it.heard()).toEqual([]);
    expect(it.happened().say('b').finishAll().heard()).toEqual(['b']);
  });

  it('does not cover a clock that runs out', () => {
    expect(mouth().hush().sound('time-up').say('served', { urgency: 'clock' }).finishAll().heard()).toEqual([
      '*time-up*',
      'served',
    ]);
  });

  it('keeps open questions, which begin their patience anew afterwards', () => {
    const it = mouth()
      .say('q', { untilAnswered: true })
      .finish()
      .hush()
      .say('q2', { untilAnswered: true, about: 'pear' });
    it.heard();
    expect(it.wait(60).heard()).toEqual([]);
    expect(it.question()).not.toBeNull();
    expect(it.happened().wait(19).heard()).toEqual([]);
    expect(it.wait(1).finishAll().heard()).toEqual(['*nudge*', 'q', 'q2']);
  });

  it('ends by itself, so that a forgotten hush does not burn a pot', () => {
    const it = mouth()
      .hush()
      .wait(HUSH_LASTS_MS / 1000 - 1);
    expect(it.say('stir').heard()).toEqual([]);
    expect(it.wait(1).say('stir').heard()).toEqual(['stir']);
  });
});

// Hundreds of evenings, on a machine that may be busy.
describe('whatever comes, in whatever order', { timeout: 60_000 }, () => {
  type Move = (it: ReturnType<typeof mouth>) => unknown;
  const urgency = fc.constantFrom<Urgency>('danger', 'clock', 'step', 'teaching');
  const about = fc.constantFrom('plum', 'pear', 'c1');
  const move: fc.Arbitrary<Move> = fc.oneof(
    fc.tuple(urgency, about, fc.nat(5), fc.boolean()).map(
      ([u, a, n, asks]): Move =>
        (it) =>
          it.say(`s${n}`, { urgency: u, about: a, untilAnswered: asks }),
    ),
    fc.constantFrom(...soundNames).map(
      (name): Move =>
        (it) =>
          it.sound(name),
    ),
    fc.constant<Move>((it) => it.finish()),
    fc.nat(30).map(
      (seconds): Move =>
        (it) =>
          it.wait(seconds),
    ),
    about.map(
      (a): Move =>
        (it) =>
          it.moveOn(a),
    ),
    fc.constantFrom<Move>(
      (it) => it.hush(),
      (it) => it.repeat(),
      (it) => it.happened(),
      (it) => it.interrupt(),
      (it) => it.interrupt('plum'),
      (it) => it.call(true).wait(3).call(false),
      (it) => it.quiet('plum').wait(30).quiet(),
    ),
  );
  const moves = fc.array(move, { maxLength: 40 });

  it('never are there two at once, and the mouth always comes to rest when all is answered', () => {
    fc.assert(
      fc.property(moves, (list) => {
        const it = mouth();
        for (const step of list) step(it); // two at once fails inside
        for (const a of ['plum', 'pear', 'c1']) it.moveOn(a);
        it.finishAll().heard();
        expect(it.wait(600).heard()).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('a new danger always begins as soon as the mouth lets go', () => {
    fc.assert(
      fc.property(moves, (list) => {
        const it = mouth();
        for (const step of list) step(it);
        it.say('the newest danger', { urgency: 'danger', about: 'new' });
        expect(it.finishAll().heard()).toContain('the newest danger');
      }),
      { numRuns: 300 },
    );
  });

  it('a question is never lost: unanswered, it is heard again', () => {
    fc.assert(
      fc.property(moves, (list) => {
        const it = mouth().say('the question', { untilAnswered: true, about: 'new' });
        for (const step of list) step(it);
        it.happened().finishAll().heard();
        expect(it.question()).not.toBeNull();
        for (let n = 0; n < 10; n++) it.wait(30).finishAll();
        expect(it.heard().join()).toContain('the question');
      }),
      { numRuns: 300 },
    );
  });
});

describe('whoever asks again what nobody answered', () => {
  const ask = { urgency: 'clock', about: 'canner', slot: 'canner/check', untilAnswered: true } as const;

  it('goes on as urgently as the question had become, its sound before it', () => {
    const it = mouth().say('does it boil', ask).finishAll().wait(50).finishAll();
    it.heard();
    expect(it.say('does it boil', ask).finishAll().heard()).toEqual(['*danger*', 'does it boil']);
    // It is not patient anew: 90 seconds after it was first asked it is back.
    expect(it.wait(39).finishAll().heard()).toEqual([]);
    expect(it.wait(2).finishAll().heard()).toEqual(['*danger*', 'does it boil']);
  });

  it('begins anew after an answer', () => {
    const it = mouth().say('does it boil', ask).finishAll().wait(50).finishAll().answer(ask.slot);
    it.heard();
    expect(it.say('does it boil', ask).finishAll().heard()).toEqual(['does it boil']);
  });

  it('and so does another question in its place', () => {
    const it = mouth().say('is it hot', ask).finishAll().wait(50).finishAll();
    it.heard();
    expect(it.say('does it boil', ask).finishAll().heard()).toEqual(['does it boil']);
  });
});
