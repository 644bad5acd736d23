// What the dialogue and the ear need to know about this moment: what is open, what it is called, what can be said.

import {
  cannerCommands,
  correctionCommands,
  type CannerCommand,
  type CommandId,
} from '../../machines/dialogue/commands.ts';
import type { Named, Open, Situation, Told } from '../../machines/dialogue/events.ts';
import { talkCommands } from '../../machines/dialogue/commands.ts';
import type { LogEntry, NumberBounds, OpenCommand, OpenPhrase } from './ports.ts';
import type { Actors } from './kitchenView.ts';
import { lastTold } from './fold.ts';
import { clockTimes, leavingTimes } from './retelling.ts';
import { toldAlready } from './toldAlready.ts';
import type { BatchView } from './view.ts';

export interface Moment {
  actors: Actors;
  focus: string | null;
  last: LogEntry | null;
  already: readonly Told[];
}

export function momentOf(
  { actors, focus }: Pick<Moment, 'actors' | 'focus'>,
  entries: readonly LogEntry[],
  now: number,
): Moment {
  return { actors, focus, last: lastTold(entries), already: toldAlready(entries, now) };
}

export function situationOf({ actors, focus, last, already }: Moment): Situation {
  const names = namesOf(actors);
  const all = [...actors.batches, ...actors.canners];
  const choices: Open[] = all.flatMap(({ id, choices: open }) =>
    open.map(({ command, main, sayIt, whose, jarsOf, told }) => ({
      command,
      about: id,
      main,
      sayIt,
      ...(whose ? { whose } : {}),
      ...(jarsOf ? { jarsOf } : {}),
      ...(told ? { told: told.map(({ what }) => what) } : {}),
    })),
  );
  return { choices, names, focus, last: last && commandOf(last), already };
}

/** A correction that "go back" can take back gave an event to another batch, or another time. */
function commandOf({ event }: LogEntry): CommandId {
  if (event.type !== 'log.corrected') return event.type as CommandId;
  return event.how.kind === 'when' ? 'told.when' : 'batch.mixedUp';
}

/** Batches go by their fruit, the canner by its name, two canners by their number; two of a fruit are told apart when they are planned. */
export function namesOf(actors: Actors): Named[] {
  return [
    ...actors.batches.map(({ id, name }) => ({ about: id, name })),
    ...actors.canners.map(({ id, name }) => ({ about: id, name })),
  ];
}

const OF_THE_EVENING = new Set<CommandId>(['cook.away', 'cook.here']);

/** What the ear may expect: whatever any machine accepts now, and what can always be said. */
export function openCommands({ actors, already }: Pick<Moment, 'actors' | 'already'>): OpenCommand[] {
  const said = [...actors.batches, ...actors.canners].flatMap(({ choices }) =>
    choices.map(({ command }) => command),
  );
  // One batch alone is not planned around its cook, who says "hold everything".
  const talk = (Object.keys(talkCommands) as CommandId[]).filter(
    (command) => actors.batches.length > 1 || !OF_THE_EVENING.has(command),
  );
  const again = already.map(({ command }) => command);
  return [...new Set<CommandId>([...said, ...talk, ...again])].map((command) => ({
    command,
    ...fruitsFor(command, actors, already),
  }));
}

function fruitsFor(command: CommandId, { batches }: Actors, already: readonly Told[]): { fruits?: string[] } {
  if (command in correctionCommands) return {}; // both the right fruit and the wrong one are named
  if (command in cannerCommands && !isLoadWord(command as CannerCommand)) return {};
  const takers = batches.filter(
    ({ id, choices }) =>
      choices.some((choice) => choice.command === command) ||
      already.some((told) => told.command === command && told.about === id),
  );
  return takers.length > 0 ? { fruits: takers.map(({ name }) => name) } : {};
}

function isLoadWord(command: CannerCommand): boolean {
  return command === 'jars.in' || command === 'jars.out' || command === 'jar.broke';
}

/** Keeps the numbers that can be said, and what can be put right, to what makes sense now. */
export function boundsOf(
  { batches, canners }: Actors,
  units: NumberBounds['units'],
  now: number,
): Partial<NumberBounds> {
  const told = [...batches, ...canners].flatMap(({ choices }) =>
    choices.flatMap((choice) => choice.told ?? []),
  );
  const pots = batches.flatMap(({ plan, choices }) =>
    choices.some(({ command }) => command === 'reading.taken') ? [plan] : [],
  );
  const masses = pots.flatMap((plan) => [plan.targetMassKg * 0.8, plan.startMassKg]);
  return {
    units,
    told: [...new Set(told.map(({ what }) => what))],
    clock: told.length > 0 ? clockTimes(now) : [],
    leave: batches.length > 1 ? leavingTimes(now) : [],
    ...(canners.length > 1 ? { canners: canners.length } : {}),
    jars: Math.max(4, ...batches.map(mostJars)),
    ...(masses.length > 0 ? { massKg: { low: Math.min(...masses), high: Math.max(...masses) } } : {}),
    // The rise at a butter's end is about one degree: no measure of it, so nobody is expected to say it.
    ...(pots.every((plan) => plan.request.product === 'butter') ? { tempC: { low: 1, high: 0 } } : {}),
  };
}

function mostJars({ plan }: BatchView): number {
  return Math.min(30, plan.jars.makeReady + 4);
}

export type PhraseBookOf = (
  open: readonly OpenCommand[],
  fruits: readonly string[],
  bounds: Partial<NumberBounds>,
) => OpenPhrase[];
