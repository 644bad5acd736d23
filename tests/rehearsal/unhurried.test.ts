// Does a rehearsal's time run as on the wall while somebody speaks, or owes an answer, and at its pace otherwise?

import { describe, expect, test } from 'vitest';
import { openPacing } from '../../src/app/rehearsal/pacing.ts';
import { KitchenClock, type Anchor } from '../../src/kitchen/clock.ts';
import type { EarState, Mouth } from '../../src/kitchen/ports.ts';
import { isUnhurried, nobodySpeaks, talked, type TalkInput } from '../../src/rehearsal/index.ts';
import {
  ANSWERS_WITHIN_MS,
  LONGEST_SENTENCE_MS,
  LOOKS_WITHIN_MS,
  UNDERSTOOD_WITHIN_MS,
} from '../../src/rehearsal/unhurried.ts';
import { tablet } from '../kitchen/tablet.ts';

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const PACE = 60;

describe('the rule', () => {
  const after = (...inputs: TalkInput[]) =>
    inputs.reduce(talked, talked(nobodySpeaks, { type: 'listens', on: true }));
  const never = () => false;
  const always = () => true;

  test('lets time run where nobody has spoken', () => {
    expect(isUnhurried(nobodySpeaks, always, 0)).toBe(false);
  });

  test('holds it while the page speaks, however long', () => {
    expect(isUnhurried(after({ type: 'says', on: true, at: 0 }), never, 10 * MINUTE)).toBe(true);
  });

  test('holds it until the cook can have begun to answer, and no longer', () => {
    const said = after({ type: 'says', on: true, at: 0 }, { type: 'says', on: false, at: SECOND });
    expect(isUnhurried(said, never, SECOND + ANSWERS_WITHIN_MS - 1)).toBe(true);
    expect(isUnhurried(said, never, SECOND + ANSWERS_WITHIN_MS)).toBe(false);
  });

  test('gives whoever is asked the time to look, until the page asks again by itself', () => {
    const said = after({ type: 'says', on: true, at: 0 }, { type: 'says', on: false, at: SECOND });
    expect(isUnhurried(said, always, SECOND + LOOKS_WITHIN_MS - 1)).toBe(true);
    expect(isUnhurried(said, always, SECOND + LOOKS_WITHIN_MS)).toBe(false);
  });

  test('does not wait on for whoever has said "not yet", until the page speaks again', () => {
    const asks: TalkInput[] = [
      { type: 'says', on: true, at: 0 },
      { type: 'says', on: false, at: SECOND },
    ];
    const putOff = after(...asks, { type: 'putsOff' });
    expect(isUnhurried(putOff, always, SECOND + ANSWERS_WITHIN_MS)).toBe(false);
    expect(isUnhurried(asks.reduce(talked, putOff), always, SECOND + ANSWERS_WITHIN_MS)).toBe(true);
  });

  test('holds it while the cook speaks, and until that can have been understood', () => {
    const speaks = after({ type: 'hears', on: true, at: 0 }, { type: 'hears', on: true, at: SECOND });
    expect(isUnhurried(speaks, never, 2 * SECOND)).toBe(true);
    const spoke = talked(speaks, { type: 'hears', on: false, at: 3 * SECOND });
    expect(isUnhurried(spoke, never, 3 * SECOND + UNDERSTOOD_WITHIN_MS - 1)).toBe(true);
    expect(isUnhurried(spoke, never, 3 * SECOND + UNDERSTOOD_WITHIN_MS)).toBe(false);
  });

  test('does not hold it for whoever cooks by hand and is not listened to', () => {
    const saying = talked(nobodySpeaks, { type: 'says', on: true, at: 0 });
    expect(isUnhurried(saying, always, SECOND)).toBe(false);
    expect(isUnhurried(talked(saying, { type: 'listens', on: true }), always, SECOND)).toBe(true);
  });

  test('waits no longer for an answer once a hand has acted, but for what is said after it', () => {
    const says: TalkInput[] = [
      { type: 'says', on: true, at: 0 },
      { type: 'says', on: false, at: SECOND },
    ];
    const acted = after(...says, { type: 'acts' });
    expect(isUnhurried(acted, always, SECOND + 1)).toBe(false);
    expect(isUnhurried(says.reduce(talked, acted), always, SECOND + 1)).toBe(true);
    expect(isUnhurried(after(says[0]!, { type: 'acts' }), never, 1)).toBe(true);
  });

  test('is not held for ever by a voice that never ends', () => {
    const radio = after({ type: 'hears', on: true, at: 0 }, { type: 'hears', on: true, at: 9 * SECOND });
    expect(isUnhurried(radio, never, LONGEST_SENTENCE_MS)).toBe(false);
  });

  /** Two seconds of talk, one of silence, over and over, from 0 to 30 s. */
  const radio: TalkInput[] = Array.from({ length: 10 }).flatMap((_, i) => [
    { type: 'hears', on: true, at: 3 * i * SECOND },
    { type: 'hears', on: false, at: (3 * i + 2) * SECOND },
  ]);

  test('is not held for ever by a voice that pauses for breath, of which nothing is for the page', () => {
    const upTo = (at: number) => after(...radio.filter((input) => 'at' in input && input.at <= at));
    expect(isUnhurried(upTo(9 * SECOND), never, 9.5 * SECOND)).toBe(true);
    for (let at = LONGEST_SENTENCE_MS + 2 * SECOND; at < 30 * SECOND; at += 500)
      expect([at, isUnhurried(upTo(at), never, at)]).toEqual([at, false]);
  });

  test('is held again by a cook who is understood beside such a voice, and by one who answers', () => {
    const at = 28 * SECOND;
    expect(isUnhurried(after(...radio.slice(0, 19)), never, at)).toBe(false);
    expect(isUnhurried(after(...radio.slice(0, 19), { type: 'understood', at: at - 1 }), never, at)).toBe(
      true,
    );
    const answers = after(
      ...radio.slice(0, 18),
      { type: 'says', on: true, at: 20 * SECOND },
      { type: 'says', on: false, at: 22 * SECOND },
      ...radio.slice(18, 19),
    );
    expect(isUnhurried(answers, never, 22 * SECOND + LONGEST_SENTENCE_MS - 1)).toBe(true);
  });
});

/** A practice kitchen's clock on a device in our hands, with a mouth that speaks until it is told to end. */
function rehearsing() {
  const device = tablet();
  let anchor: Anchor | null = null;
  const clock = new KitchenClock({
    sources: device.sources,
    pace: PACE,
    keepAnchor: (tie) => void (anchor = tie),
  });
  const calls: { at: number; call: () => void }[] = [];
  let asked = false;
  const pacing = openPacing({
    clock,
    pace: PACE,
    asked: () => asked,
    wall: device.truth,
    after: (ms, call) => void calls.push({ at: device.truth() + ms, call }),
  });
  /** Time goes by, and what was put off comes due. */
  const pass = (ms: number) => {
    const end = device.truth() + ms;
    while (device.truth() < end) {
      const next = Math.min(end, ...calls.map(({ at }) => at));
      device.pass(Math.max(0, next - device.truth()));
      for (const due of calls.filter(({ at }) => at <= device.truth())) {
        calls.splice(calls.indexOf(due), 1);
        due.call();
      }
    }
  };
  const ends: ((outcome: 'spoken' | 'failed') => void)[] = [];
  const mouth: Mouth = {
    unlock: async () => {},
    speak: () => new Promise((resolve) => ends.push(resolve)),
    cut() {},
    duck() {},
    sound: async () => 'played',
  };
  const spoken = pacing.over(mouth);
  pacing.hears(listening(false));
  return {
    device,
    clock,
    pacing,
    pass,
    asks: (on: boolean) => void (asked = on),
    says: () => spoken.speak({ id: 1, text: 'Stir the pot.', urgency: 'step' }),
    async ends(outcome: 'spoken' | 'failed' = 'spoken') {
      ends.shift()?.(outcome);
      await new Promise((resolve) => setImmediate(resolve));
    },
    kept: () => anchor,
  };
}

const listening = (speech: boolean): EarState => ({ kind: 'listening', levelDb: -30, speech });

describe('the clock of a rehearsal', () => {
  test('runs at its pace while nobody speaks', () => {
    const { clock, pass } = rehearsing();
    const from = clock.now();
    pass(10 * SECOND);
    expect(clock.now() - from).toBe(10 * MINUTE);
  });

  test('lets no more go by than on the wall while a sentence is told, and picks its pace up again', async () => {
    const { clock, pass, says, ends, pacing } = rehearsing();
    pass(SECOND);
    const from = clock.now();
    void says();
    pass(4 * SECOND);
    await ends();
    expect(pacing.unhurried).toBe(true);
    pass(ANSWERS_WITHIN_MS);
    expect(clock.now() - from).toBe(4 * SECOND + ANSWERS_WITHIN_MS);
    expect(pacing.unhurried).toBe(false);
    pass(SECOND);
    expect(clock.now() - from).toBe(4 * SECOND + ANSWERS_WITHIN_MS + MINUTE);
  });

  test('waits through several sentences, and for a voice that failed no longer than for one that spoke', async () => {
    const { clock, pass, says, ends } = rehearsing();
    const from = clock.now();
    void says();
    void says();
    pass(SECOND);
    await ends('failed');
    pass(10 * SECOND);
    await ends();
    expect(clock.now() - from).toBe(11 * SECOND);
  });

  test('waits for an answer, and not once it has come', async () => {
    const { clock, pass, says, ends, asks } = rehearsing();
    const from = clock.now();
    asks(true);
    void says();
    await ends();
    pass(12 * SECOND);
    expect(clock.now() - from).toBe(12 * SECOND);
    asks(false);
    pass(SECOND); // seen within a quarter of a second
    pass(SECOND);
    expect(clock.now() - from).toBeGreaterThan(13 * SECOND + MINUTE);
  });

  test('hears the cook out', () => {
    const { clock, pass, pacing } = rehearsing();
    const from = clock.now();
    pacing.hears(listening(true));
    pass(2 * SECOND);
    pacing.hears(listening(false));
    pass(UNDERSTOOD_WITHIN_MS);
    expect(clock.now() - from).toBe(2 * SECOND + UNDERSTOOD_WITHIN_MS);
    expect(pacing.unhurried).toBe(false);
  });

  test('lets nothing go by that cannot be told yet', () => {
    const { clock, pass, pacing } = rehearsing();
    const from = clock.now();
    pacing.waits(true);
    pass(MINUTE);
    expect(clock.now() - from).toBe(MINUTE);
    pacing.waits(false);
    pass(SECOND);
    expect(clock.now() - from).toBe(2 * MINUTE);
  });

  test('goes on, after a reload in the middle of a sentence, from where it stood: the time away was real', () => {
    const first = rehearsing();
    first.pass(SECOND);
    void first.says();
    first.pass(2 * SECOND);
    const stood = first.clock.now();
    first.device.pass(3 * SECOND);
    const again = new KitchenClock({ sources: first.device.sources, anchor: first.kept(), pace: PACE });
    expect(again.now() - stood).toBe(3 * SECOND);
  });

  test('never runs backwards, whoever speaks when', async () => {
    const { clock, pass, says, ends, pacing } = rehearsing();
    let before = clock.now();
    for (let i = 0; i < 60; i++) {
      if (i % 7 === 0) void says();
      if (i % 7 === 3) await ends();
      pacing.hears(listening(i % 5 < 2));
      pass(1 + ((i * 977) % 3_000));
      const now = clock.now();
      expect(now).toBeGreaterThan(before);
      before = now;
    }
  });
});
