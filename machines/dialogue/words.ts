// What the dialogue says: message keys and their parameters, with how urgent they are.

import { consequenceOf, type CommandId } from './commands.ts';
import { answerTo } from './answers.ts';
import type { Act, DialogueEffect, Query, Situation } from './events.ts';
import type { Message, SoundName, Urgency } from '../kitchen/effects.ts';
import { offered } from './rules.ts';

/** A read-back tells of its moment: said late, it would only puzzle. */
export const READ_BACK_SLOT = 'dialogue/readBack';

const OFFERED_AT_ONCE = 3; // more than three choices in one breath are not remembered (common practice, no source)

/** What the pot or the canner says next names these by itself: "Clock started", "The clock is void". */
const namedByTheChart: ReadonlySet<CommandId> = new Set<CommandId>([
  'canner.fullBoil',
  'canner.boilHolds',
  'canner.boilDropped',
  'jars.ready',
  'boil.droppedEarlier',
  'boil.saidTooEarly',
  'batch.mixedUp',
  'last.when',
  'told.when',
]);

export function isReadBack(command: CommandId): boolean {
  return consequenceOf(command) === 'safety' && !namedByTheChart.has(command);
}

/** Safety words are read back, so that a wrong one can be refused at once. */
export function readBack(act: Act, situation: Situation): DialogueEffect[] {
  if (!isReadBack(act.command)) return [];
  const params = { name: nameIfNeeded(act, situation) };
  return [say('clock', { key: `dialogue.readBack.${act.command}`, params }, READ_BACK_SLOT)];
}

/** The questions, as the message by which the mouth will tell us that it says them. */
export function wasThat(words: string): Message {
  return { key: 'dialogue.wasThat', params: { words } };
}

/** The plain question before something weighty: "Is the canner at a full rolling boil?" */
export function plainly(act: Act, situation: Situation): Message {
  const name = nameIfNeeded(act, situation);
  if (act.command === 'go.back')
    return { key: `dialogue.plain.takeBack.${situation.last}`, params: { name } };
  return { key: `dialogue.plain.${act.command}`, params: { name } };
}

export function whichOne(acts: readonly Act[], situation: Situation): Message {
  return { key: 'dialogue.which', params: listed(acts.map((act) => nameOf(act, situation))) };
}

export function howMany(command: CommandId): DialogueEffect {
  return ask({ key: `dialogue.count.${command}` });
}

export function clearAnswerWanted(): DialogueEffect {
  return ask({ key: 'dialogue.clearAnswer' });
}

export function haveThat(): DialogueEffect {
  return say('step', { key: 'dialogue.haveThat' });
}

export function notNow(): DialogueEffect {
  return say('step', { key: 'dialogue.notNow' });
}

export function takenBack(): DialogueEffect {
  return say('step', { key: 'dialogue.takenBack' });
}

export function pardon(): DialogueEffect {
  return say('step', { key: 'dialogue.pardon' });
}

export function choices(situation: Situation): DialogueEffect {
  return say('step', { key: 'dialogue.offer', params: listed(offered(situation, OFFERED_AT_ONCE)) });
}

export function touchScreen(): DialogueEffect {
  return say('step', { key: 'dialogue.touch' });
}

/** The meaning of a word of the trade, or that we do not know it. */
export function explained({ slots }: Query): DialogueEffect {
  return say('teaching', answerTo(slots.term)?.short ?? { key: 'dialogue.noSuchWord' });
}

/** Each in a slot of its own, so that the source does not take the place of what it stands for. */
export function more(messages: readonly Message[]): DialogueEffect[] {
  return messages.map((message, i) => say('teaching', message, i === 0 ? undefined : 'dialogue/source'));
}

export function sound(name: SoundName): DialogueEffect {
  return { type: 'sound', sound: name, about: null };
}

function nameOf(act: Act, { names }: Situation): string {
  return names.find(({ about }) => about === (act.slots.batch ?? act.about))?.name ?? '';
}

/** A batch is named only where there is more than one it could be. */
function nameIfNeeded(act: Act, situation: Situation): string {
  const batches = situation.names.filter(
    ({ about }) => about === act.about || isSibling(act, about, situation),
  );
  return batches.length > 1 ? nameOf(act, situation) : 'none';
}

function isSibling(act: Act, about: string, { choices }: Situation): boolean {
  const kind = (command: CommandId) =>
    command.startsWith('canner.') || command === 'jars.in' || command === 'jars.out';
  return choices.some((choice) => choice.about === about && kind(choice.command) === kind(act.command));
}

/** Up to four things by place, for a sentence that lists them. */
function listed(things: readonly string[]): NonNullable<Message['params']> {
  const [first = '', second = '', third = '', fourth = ''] = things;
  return { count: things.length, first, second, third, fourth };
}

export function ask(message: Message): DialogueEffect {
  return say('step', message, 'dialogue/question');
}

// One slot for all the dialogue says but for read-backs and answers: only its latest word counts.
function say(urgency: Urgency, message: Message, slot = `dialogue/${urgency}`): DialogueEffect {
  return { type: 'say', message, urgency, about: null, slot };
}
