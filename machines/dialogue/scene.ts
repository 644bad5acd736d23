// What an event comes to in its context, and the doing and asking that follow from it.

import { weaker } from './certainty.ts';
import { consequenceOf } from './commands.ts';
import type { Act, DialogueEffect, DialogueEvent } from './events.ts';
import { weighed, type Meaning, type Words } from './meaning.ts';
import { asked, didItKeepBoiling, mustBeAnswered, question, type Question } from './questions.ts';
import {
  actOfSilence,
  answerOf,
  stillOwed,
  takenAs,
  type Answer,
  type DialogueContext,
  type Taken,
} from './rules.ts';
import * as words from './words.ts';

export interface Scene {
  context: DialogueContext;
  event: DialogueEvent;
}

/** The scene inside an action that may emit and assign. */
export interface Doing extends Scene {
  enqueue: { emit(effect: DialogueEffect): void; assign(to: Partial<DialogueContext>): void };
}

export function taken({ context, event }: Scene): Taken {
  return event.type === 'heard' ? takenAs(context, event.hearing, event.at) : { kind: 'nothing' };
}

export function answer({ context, event }: Scene): Answer {
  return event.type === 'heard' ? answerOf(context, event.hearing, event.at) : null;
}

/** What a chosen batch comes to: as sure as the weaker of the command and the choice. */
export function chosen(scene: Scene): Meaning | null {
  const given = answer(scene);
  if (given?.kind !== 'chosen') return null;
  const first = scene.context.question?.heard ?? given.words;
  if (first.understood.command === 'next' && consequenceOf(given.act.command) === 'safety')
    return { kind: 'weighty', act: given.act };
  return weighed(given.act, weaker(first, given.words), scene.context.situation);
}

export function doAll({ context, event, enqueue }: Doing, acts: readonly (Act | null | undefined)[]): void {
  const wanted = acts.filter((act) => act !== null && act !== undefined);
  if (wanted.length === 0) return;
  enqueue.emit(words.sound('heard'));
  for (const act of wanted) {
    for (const effect of words.readBack(act, context.situation)) enqueue.emit(effect);
    enqueue.emit(act);
  }
  const tookBack = wanted.some((act) => act.command === 'go.back');
  enqueue.assign({ actedAt: tookBack ? null : event.at, more: null });
  if (wanted.some((act) => act.command === 'canner.boilDropped')) enqueue.assign({ owed: null });
}

/** Nobody answered, or the talk went elsewhere: what must not be left undone is done. */
export function settle(scene: Doing): void {
  const act = actOfSilence(scene.context);
  if (act && !isAnswered(scene, act)) doAll(scene, [act]);
}

function isAnswered(scene: Scene, silence: Act): boolean {
  const given = answer(scene)?.kind;
  const meaning = taken(scene);
  const saidInFull = meaning.kind === 'clear' && meaning.acts.some((act) => act.command === silence.command);
  return given === 'yes' || given === 'no' || saidInFull || scene.event.type === 'touched';
}

export function askAbout(scene: Doing, meaning: Taken): void {
  const { event } = scene;
  if (event.type === 'heard' && event.hearing.kind !== 'nothing') ask(scene, meaning, event.hearing);
}

/** After "which one" what is in doubt is both what was said and which was chosen. */
export function askAboutTheChosen(scene: Doing): void {
  const meaning = chosen(scene);
  const given = answer(scene);
  if (meaning === null || given?.kind !== 'chosen') return;
  const first = scene.context.question?.heard ?? given.words;
  ask(scene, meaning, { ...first, words: `${first.words}, ${given.words.words}` });
}

function ask(scene: Doing, meaning: Taken, heard: Words): void {
  const wanted = questionFor(scene, meaning, heard);
  if (!wanted) return;
  put(scene, wanted);
  if (mustBeAnswered(wanted)) scene.enqueue.assign({ owed: wanted });
}

export function askAnew(scene: Doing, before: Question | null): void {
  if (before) put(scene, asked(before, scene.event.at));
}

/** What a page before this one was owed, asked in the words of this one; nothing once it is known. */
export function owedFrom(
  context: DialogueContext,
  canners: readonly string[],
  at: number,
): DialogueContext['owed'] {
  const { situation } = context;
  const acts = canners.map((about): Act => ({
    type: 'act',
    command: 'canner.boilDropped',
    about,
    slots: {},
  }));
  const [only, another] = acts;
  if (!only) return null;
  const owed = another
    ? question(at, words.whichOne(acts, situation), { options: acts })
    : question(at, words.plainly(only, situation), { yes: only });
  return stillOwed({ owed }, situation);
}

function put({ enqueue }: Doing, wanted: Question): void {
  enqueue.emit(words.sound('question'));
  enqueue.emit(words.ask(wanted.message));
  enqueue.assign({ question: wanted });
}

function questionFor({ context, event }: Scene, meaning: Taken, heard: Words): Question | null {
  const { situation } = context;
  switch (meaning.kind) {
    case 'doubtful':
      return question(event.at, words.wasThat(heard.words), { yes: meaning.act, heard });
    case 'weighty':
      return question(event.at, words.plainly(meaning.act, situation), { yes: meaning.act, heard });
    case 'watered':
      return didItKeepBoiling(meaning.act, words.plainly(meaning.act, situation), event.at);
    case 'several':
      return question(event.at, words.whichOne(meaning.acts, situation), { options: meaning.acts, heard });
    default:
      return null;
  }
}
