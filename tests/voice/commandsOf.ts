// Every command there is.

import {
  batchCommands,
  cannerCommands,
  correctionCommands,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';

export function commandsOf(): CommandId[] {
  return Object.keys({
    ...batchCommands,
    ...cannerCommands,
    ...correctionCommands,
    ...talkCommands,
  }) as CommandId[];
}
