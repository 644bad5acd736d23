// What the screen and the voice tell a cook to say is what the ear expects.

import { describe, expect, it } from 'vitest';
import {
  batchCommands,
  cannerCommands,
  correctionCommands,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { sayIt } from '../../src/words/sayit.en.ts';

const commands = Object.keys({
  ...batchCommands,
  ...cannerCommands,
  ...correctionCommands,
  ...talkCommands,
}) as CommandId[];

describe('the sentence offered for a command', () => {
  it.each(commands)('is one by which %s is understood', (command) => {
    const understood = openPhrases([{ command }], ['plum']).map(({ words }) => words);
    expect(understood).toContain(sayIt(command));
    expect(understood).toContain(sayIt(command, 'Plum'));
  });

  it('is never a single word', () => {
    for (const command of commands) expect(sayIt(command)).toContain(' ');
  });
});
