// Taught at work, by voice alone: questions, reasons, more, pictures, and more or fewer words, in the real kitchen.

import { beforeEach, describe, expect, test, vi } from 'vitest';
import type { LiveKitchen } from '../../src/kitchen/live.ts';
import { planOf } from '../machines/evening.ts';
import { kitchenAtWork, settle } from './atWork.ts';
import { HandClock, ToldEar, WritingMouth } from './memory.ts';

vi.setConfig({ testTimeout: 60_000 });

let clock: HandClock;
let ear: ToldEar;
let mouth: WritingMouth;
let live: LiveKitchen;

beforeEach(async () => {
  clock = new HandClock(Date.UTC(2026, 8, 12, 17));
  ear = new ToldEar();
  mouth = new WritingMouth();
  live = await kitchenAtWork({ clock, ear, mouth });
  await live.plan(planOf());
  await settle();
});

async function say(words: string) {
  clock.turn(2_000);
  await settle();
  expect(ear.hear(words), `"${words}" can be said now`).toBe(true);
  await settle();
}

const lately = (count: number) => mouth.said.slice(-count).join(' ');

describe('a beginner', () => {
  test('hears the prompt and then how, and sees a picture without asking', () => {
    expect(mouth.said.join(' ')).toMatch(/Weigh fruit: .* Freeze a plate\./);
    expect(mouth.said.join(' ')).toContain('Say: all is ready.');
    expect(live.view.showing).toMatchObject({ sight: 'nickedRim', asked: false });
  });

  test('asks in plain words and is answered; “tell me more” says the rest, and who says so', async () => {
    await say('can i use less sugar');
    expect(lately(1)).toBe('Not in jam or jelly: it may not set. Change the plan.');
    await say('tell me more');
    expect(lately(2)).toContain('keep the sugar of the recipe');
    expect(lately(2)).toContain('State food guides say so.');
  });

  test('who has hushed the page and then asks is answered', async () => {
    await say('hush');
    await say('what is headspace');
    expect(lately(1)).toContain('The empty space under the lid');
  });

  test('asks why of what was said last, and for more; then why of a figure', async () => {
    await say('why');
    expect(lately(1)).toBe('It must be hot when the jars are full: hot jars crack in cold water.');
    await say('tell me more');
    expect(lately(2)).toContain('Half full is enough');
    await say('why the process time');
    expect(lately(1)).toBe('The published minutes for this food, this jar, your height.');
  });

  test('is shown what is asked for, until the work moves on', async () => {
    await say('show me a rolling boil');
    expect(lately(1)).toBe('The whole top heaves, and stirring can not stop it.');
    expect(live.view.showing).toMatchObject({ sight: 'rollingBoil', asked: true });
    await say('everything is ready');
    expect(live.view.showing).toMatchObject({ sight: 'mash', asked: false });
    await say('hide the picture');
    expect(live.view.showing).toBeNull();
  });
});

describe('more or fewer words', () => {
  test('come at once, and only at that step', async () => {
    await say('everything is ready');
    await say('say less');
    expect(lately(1)).toBe('Fewer words from here.');
    expect(live.view.showing).toBeNull();
    await say('say more');
    expect(lately(1)).toBe('All the words from here.');
    expect(live.view.showing).toMatchObject({ sight: 'mash' });
  });

  test('an answer to a question moves nothing: the batch stands where it stood', async () => {
    const before = live.view.batches[0]?.state;
    await say('it smells burnt');
    await say('what if i lose the boil');
    expect(live.view.batches[0]?.state).toBe(before);
  });
});

describe('how to stir', () => {
  const HOW = /Drag the spoon/;
  const CALL = /Stir (the pot|now)/;

  /** What was said in so many kitchen minutes of stirring, each time it is called for. */
  async function stirFor(minutes: number): Promise<{ calls: number; how: number }> {
    const before = mouth.said.length;
    for (let second = 0; second < minutes * 60; second += 5) {
      clock.turn(5_000);
      await settle(3);
    }
    const said = mouth.said.slice(before);
    return {
      calls: said.filter((text) => CALL.test(text)).length,
      how: said.filter((text) => HOW.test(text)).length,
    };
  }

  async function simmering() {
    await say('everything is ready');
    await say('it is mashed');
    await say('it is at a rolling boil');
  }

  test('is told when it is first called for and when the pot is nearly thick, then the call alone', async () => {
    await simmering();
    const all = await stirFor(30);
    expect(all.calls).toBeGreaterThan(4);
    expect(all.how).toBe(2);
    expect((await stirFor(5)).how).toBe(0);
  });

  test('is told again after a slip, and to whoever asks for more words', async () => {
    await simmering();
    await stirFor(30);
    await say('say more');
    const asked = await stirFor(5);
    expect(asked.calls).toBeGreaterThan(1);
    expect(asked.how).toBe(1);
    await say('it is scorching');
    await say('it is in a clean pot');
    const slipped = await stirFor(20);
    expect(slipped.calls).toBeGreaterThan(1);
    expect(slipped.how).toBeGreaterThan(0);
    expect(slipped.how).toBeLessThanOrEqual(2);
  });
});
