// What comes of what the ear has made of a saying, put through the talk to its end, while nobody answers what is asked.

import {
  cannerCommands,
  consequenceOf,
  type CommandId,
  type Understood,
} from '../../../machines/dialogue/commands.ts';
import type { Act, Open, Situation } from '../../../machines/dialogue/events.ts';
import { twinsOf } from '../../../machines/dialogue/twins.ts';
import { Talk } from '../../machines/dialogueDriver.ts';
import type { HeardWords, Tried } from './found.ts';

/** Longer than any question stays open. */
const LONG_S = 61;

const names: Situation['names'] = [
  { about: 'b1', name: 'damson' },
  { about: 'b2', name: 'pear' },
  { about: 'b3', name: 'crab apple' },
  { about: 'c1', name: 'canner' },
];

/** What may have been told last: what is asked first, what is not and yet weighs, and what does not weigh. */
const LAST: readonly (CommandId | null)[] = [
  null,
  'canner.fullBoil',
  'canner.boilDropped',
  'jars.out',
  'heat.on',
];

export interface End {
  /** Done without anybody's yes, as a matter of safety: in any of the kitchens in which it means something. */
  done: readonly CommandId[];
  /** Whether something was asked in one of them. */
  asked: boolean;
}

/**
 * Kitchens in which the one thing that was understood can happen, and nothing else that would bring a doubt as to which
 * is meant: there a mistake of the ear goes furthest.
 */
function kitchensFor({ command, slots }: Understood): Situation[] {
  const named = names.find(({ name }) => name === slots.fruit)?.about;
  return twinsOf(command).flatMap((twin) => {
    const about = named ?? (twin in cannerCommands ? 'c1' : 'b1');
    const choice: Open = {
      command: twin,
      about,
      main: true,
      sayIt: '',
      told: slots.what ? [slots.what] : [],
    };
    return LAST.map((last) => ({ names, choices: [choice], focus: about, last }));
  });
}

export function endUnanswered(heard: readonly HeardWords[]): End {
  const ends = heard
    .flatMap(({ understood }) => kitchensFor(understood))
    .map((kitchen) => endIn(kitchen, heard));
  return {
    done: [...new Set(ends.flatMap(({ done }) => done))],
    asked: ends.some(({ asked }) => asked),
  };
}

function endIn(kitchen: Situation, heard: readonly HeardWords[]): End {
  const talk = new Talk(kitchen.choices, kitchen);
  const acts: Act[] = [];
  let asked = false;
  const note = () => {
    acts.push(...talk.acts());
    asked ||= talk.snapshot.context.question !== null;
  };
  for (const { words, kind, confidence, understood } of heard) {
    talk.hear(understood.command, understood.slots, confidence, kind, words);
    note();
  }
  talk.mouth().send({ type: 'tick', at: talk.at });
  note();
  talk.wait(LONG_S);
  note();
  return { done: acts.filter(hangsOnSafety).map(({ command }) => command), asked };
}

/** Water that kept boiling vouches for a clock as much as a full boil does. */
function hangsOnSafety({ command, slots }: Act): boolean {
  return consequenceOf(command) === 'safety' || slots.keptBoiling === true;
}

/** Of what was no command: how much was said, what the ear acted on, and what came of it. */
export function unansweredIn(tried: readonly Tried[]): string {
  const others = tried.filter(({ kind }) => kind !== 'command');
  const ends = others.map(({ heard }) => endUnanswered(heard));
  const done = ends.filter((end) => end.done.length > 0);
  const kinds = done.flatMap((end) => end.done);
  const each = [...new Set(kinds)].map(
    (command) => `${command} ${kinds.filter((other) => other === command).length}`,
  );
  return (
    `no commands, nobody answering: ${others.length} said, ${others.filter(({ unsafe }) => unsafe).length} acted on ` +
    `by the ear as a matter of safety, ${done.length} done (${each.join(', ') || 'none'}), ` +
    `${ends.filter((end) => end.asked && end.done.length === 0).length} asked`
  );
}
