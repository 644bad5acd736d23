// Are two canners told apart by ear, too? A word about one must never be heard as of the other.

import { beforeAll, describe, expect, it } from 'vitest';
import { NUMBERED } from '../../machines/dialogue/canners.ts';
import type { CannerCommand } from '../../machines/dialogue/commands.ts';
import type { Hearing } from '../../src/kitchen/ports.ts';
import { readEarFiles } from '../../src/serve/earFiles.ts';
import { listenTo } from '../../src/serve/listenTo.ts';
import { openListener } from '../../src/voice/openListener.ts';
import type { Listener } from '../../src/voice/listener.ts';
import { allPhrases } from '../../src/words/phrases.en.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { seedOf } from './corpus/chance.ts';
import { inKitchen } from './corpus/kitchen.ts';
import { fliteVoice } from './corpus/voices.ts';

const voices = [fliteVoice('slt', 170), fliteVoice('kal16', 105)];
const commands: CannerCommand[] = [
  'canner.fullBoil',
  'canner.boilDropped',
  'jars.in',
  'jars.out',
  'canner.hot',
];
let hearings: Hearing[] = [];
let listener: Listener;

beforeAll(async () => {
  listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    heard: (hearing) => hearings.push(hearing),
    level: () => undefined,
  });
  listener.expect(allPhrases(['damson', 'pear', 'crab apple'], { canners: 2 }));
}, 60_000);

describe('of two canners', { timeout: 180_000 }, () => {
  it.each([
    ['in a quiet room', null],
    ['over a boil twenty decibels below', 20],
  ] as const)('the one that was named is heard, %s', async (_, noise) => {
    let right = 0;
    let said = 0;
    for (const command of commands)
      for (const name of NUMBERED)
        for (const voice of voices) {
          const words = sayIt(command, name);
          hearings = [];
          await listenTo(listener, inKitchen(voice.say(words, 1, 1), noise, seedOf(words)));
          const acted = hearings.flatMap((one) => (one.kind === 'heard' ? [one.understood] : []));
          for (const { slots } of acted) expect([name, undefined], words).toContain(slots.canner);
          said += 1;
          right += Number(acted.some((one) => one.slots.canner === name));
        }
    expect(right / said).toBeGreaterThanOrEqual(0.9);
  });
});
