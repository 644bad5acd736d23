// Which commands are said in the same words: "too thick" of a pot and of a plate, "full boil" of a pot
// and of a canner. The words give one of them; what is open, or the cook, says which is meant.

import type { CommandId } from './commands.ts';

const twins: readonly (readonly CommandId[])[] = [
  ['canner.fullBoil', 'canner.boilHolds', 'pot.rollingBoil'],
  ['canner.heatOn', 'heat.on'],
  ['canner.off', 'heat.off'],
  ['plate.held', 'pot.thick'],
  ['plate.tooThick', 'pot.tooThick'],
];

/** The command itself first, then those said in the same words. */
export function twinsOf(command: CommandId): readonly CommandId[] {
  const family = twins.find((commands) => commands.includes(command)) ?? [];
  return [command, ...family.filter((twin) => twin !== command)];
}
