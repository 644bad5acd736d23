// Every command there is.

import {
  batchCommands,
  cannerCommands,
  talkCommands,
  type CommandId,
} from '../../machines/dialogue/commands.ts';

export function commandsOf(): CommandId[] {
  return Object.keys({ ...batchCommands, ...cannerCommands, ...talkCommands }) as CommandId[];
}
