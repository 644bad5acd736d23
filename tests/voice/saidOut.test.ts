// A sentence that is certain to be over is answered before the silence after it has lasted; none is cut in two for it.

import { beforeAll, beforeEach, describe, expect, it } from 'vitest';

import type { Hearing } from '../../src/kitchen/ports.ts';
import { readEarFiles } from '../../src/serve/earFiles.ts';
import { listenTo } from '../../src/serve/listenTo.ts';
import type { Listener } from '../../src/voice/listener.ts';
import { openListener } from '../../src/voice/openListener.ts';
import { SEGMENTER } from '../../src/voice/segmenter.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { seedOf } from './corpus/chance.ts';
import { inKitchen } from './corpus/kitchen.ts';
import { spokenWithPause } from './corpus/pause.ts';
import { fliteVoice } from './corpus/voices.ts';

const book = allPhrases(['damson', 'pear', 'crab apple']);
const slt = fliteVoice('slt', 170);
const kal = fliteVoice('kal16', 105);
let hearings: Hearing[] = [];
let listener: Listener;

beforeAll(async () => {
  listener = await openListener(await readEarFiles(), {
    now: () => 0, // a reading takes no time here: only the silence counts
    heard: (hearing) => hearings.push(hearing),
    level: () => undefined,
  });
}, 60_000);
beforeEach(() => listener.expect(book));

/** The words before and after a pause of so many ms; without one, a sentence as it is said. */
async function hear(voice: typeof slt, before: string, pauseMs = 0, after = ''): Promise<Hearing[]> {
  hearings = [];
  const words = `${before} ${after}`.trim();
  const pause = after === '' ? null : { after: before.split(' ').length, ms: pauseMs };
  await listenTo(listener, inKitchen(spokenWithPause(voice, words, pause), null, seedOf(words)));
  return hearings;
}
const soon = (hearing: Hearing | undefined) => (hearing?.ms ?? Infinity) < SEGMENTER.hangoverMs;

describe('a sentence that is over', { timeout: 120_000 }, () => {
  it.each(['what is headspace', 'the pear is skimmed', 'add seven minutes'])(
    '"%s" is answered before the whole silence, and once',
    async (words) => {
      for (const voice of [slt, kal]) {
        const heard = await hear(voice, words);
        expect(heard, voice.name).toMatchObject([{ kind: 'heard', words }]);
        expect(soon(heard[0]), voice.name).toBe(true);
      }
    },
  );

  it.each(['it is at a full rolling boil', 'the jars are out', 'the plate test passed'])(
    '"%s", on which safety hangs, has its whole silence',
    async (words) => {
      for (const voice of [slt, kal]) {
        const heard = await hear(voice, words);
        expect(heard, voice.name).toMatchObject([{ kind: 'heard', words }]);
        expect(soon(heard[0]), voice.name).toBe(false);
      }
    },
  );

  it.each(['how long', 'no', 'go back'])('"%s", which may go on, is waited for', async (words) => {
    for (const voice of [slt, kal])
      for (const hearing of await hear(voice, words)) expect(soon(hearing), voice.name).toBe(false);
  });
});

describe('a pause within a sentence', { timeout: 240_000 }, () => {
  it.each([
    ['three', 'jars filled'],
    ['how long', 'for the pear'],
    ['no', 'that is wrong'],
    ['add seven', 'minutes'],
    ['the pear', 'is skimmed'],
    ['one', 'did not seal'],
  ])('"%s ... %s" is one sentence, or is not acted on', async (before, after) => {
    for (const pauseMs of [190, 270]) {
      const acted = (await hear(slt, before, pauseMs, after)).filter(({ kind }) => kind === 'heard');
      for (const hearing of acted)
        expect(hearing, `${pauseMs} ms`).toMatchObject({ words: `${before} ${after}` });
      expect(acted.length).toBeLessThanOrEqual(1);
    }
  });

  it('what is said on after an answered sentence is heard too, and talk after it asks for nothing', async () => {
    const [first, ...more] = await hear(slt, 'what is headspace', 290, 'no');
    expect(first).toMatchObject({ words: 'what is headspace' });
    expect(more.map((hearing) => hearing.kind !== 'nothing' && hearing.words)).toEqual(['no']);
    expect(await hear(slt, 'what is headspace', 240, 'grandmother always did')).toMatchObject([
      { words: 'what is headspace' },
    ]);
  });
});
