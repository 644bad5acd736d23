// The vocabulary of the dialogue's chart: what its guards ask of a hearing, what its actions do.

import { assign, emit, enqueueActions, setup } from 'xstate';
import { answerTo } from './answers.ts';
import type { DialogueEffect, DialogueEvent, Situation } from './events.ts';
import { begun, isOurQuestion, isTheSame, mustBeAnswered, questionOf, saidToItsEnd } from './questions.ts';
import {
  comesBack,
  hasLapsed,
  isLongSilent,
  isStillInDoubt,
  stillOwed,
  type DialogueContext,
  type Taken,
} from './rules.ts';
import {
  answer,
  askAbout,
  askAboutTheChosen,
  askAnew,
  chosen,
  doAll,
  owedFrom,
  settle,
  taken,
  type Scene,
} from './scene.ts';
import * as words from './words.ts';

export const emptyKitchen: Situation = { choices: [], names: [], focus: null, last: null };

const isTaken = (kind: Taken['kind']) => (scene: Scene) => taken(scene).kind === kind;
const isAnswered = (kind: 'yes' | 'no' | 'mumbled') => (scene: Scene) => answer(scene)?.kind === kind;
const isMiss = (before: number) => (scene: Scene) =>
  taken(scene).kind === 'missed' && scene.context.misses === before;

export const dialogue = setup({
  types: {
    context: {} as DialogueContext,
    events: {} as DialogueEvent,
    emitted: {} as DialogueEffect,
  },
  guards: {
    asksForAnswer: isTaken('query'),
    isClear: isTaken('clear'),
    isInDoubt: isTaken('doubtful'),
    isWeighty: isTaken('weighty'),
    saysWaterWentIn: isTaken('watered'),
    fitsSeveral: isTaken('several'),
    lacksANumber: isTaken('uncounted'),
    wasJustTold: isTaken('already'),
    isNotPossibleNow: isTaken('notNow'),
    isFirstMiss: isMiss(0),
    isSecondMiss: isMiss(1),
    isThirdMiss: isMiss(2),

    saysYes: isAnswered('yes'),
    saysNo: isAnswered('no'),
    mumbles: isAnswered('mumbled'),
    choosesClearly: (scene) => chosen(scene)?.kind === 'clear',
    choosesInDoubt: (scene) => chosen(scene)?.kind === 'doubtful',
    choosesWeightily: (scene) => chosen(scene)?.kind === 'weighty',
    choosesWhereWaterWentIn: (scene) => chosen(scene)?.kind === 'watered',
    nobodyAnswered: ({ context, event }) => hasLapsed(context, event.at),
    nobodyAnsweredOfTheBoil: ({ context, event }) => hasLapsed(context, event.at) && isStillInDoubt(context),
    whichBoilIsOwed: ({ context, event }) =>
      comesBack(context, event.at) && context.owed?.message.key === 'dialogue.which',
    whetherItDroppedIsOwed: ({ context, event }) => comesBack(context, event.at),
    weBeginToAskIt: ({ context, event }) =>
      event.type === 'saying' &&
      context.question !== null &&
      isTheSame(event.message, context.question.message),
    theyAsk: ({ event }) =>
      event.type === 'saying' && questionOf(event.message, event.about, event.at) !== null,
    weAskSomethingStale: ({ event }) => event.type === 'saying' && isOurQuestion(event.message),
    hasBeenSilentLong: ({ context, event }) => isLongSilent(context, event.at),
  },
  actions: {
    noteWhatIsPossible: assign(({ context, event }) =>
      event.type === 'open' ? { situation: event.situation, owed: stillOwed(context, event.situation) } : {},
    ),
    noteWhatIsOwed: assign(({ context, event }) =>
      event.type === 'doubted' ? { owed: owedFrom(context, event.canners, event.at) } : {},
    ),
    noteTheExchange: assign({ exchangedAt: ({ event }) => event.at, misses: 0 }),
    noteTheCall: assign({ exchangedAt: ({ event }) => event.at }),
    countTheMiss: assign({
      misses: ({ context }) => context.misses + 1,
      exchangedAt: ({ event }) => event.at,
    }),
    forgetTheMisses: assign({ misses: 0 }),
    forgetTheQuestion: assign({ question: null }),
    askAgain: enqueueActions((scene) => askAnew(scene, scene.context.question)),
    comeBackToIt: enqueueActions((scene) => askAnew(scene, scene.context.owed)),
    letItRest: assign(({ context }) =>
      context.question && mustBeAnswered(context.question) ? { owed: null } : {},
    ),
    openTheQuestion: assign(({ context, event }) => ({
      question: context.question && begun(context.question, event.at),
    })),
    giveTimeToAnswer: assign(({ context, event }) => ({
      question: context.question && saidToItsEnd(context.question, event.at),
    })),

    answer: enqueueActions((scene) => {
      const meaning = taken(scene);
      if (meaning.kind !== 'query') return;
      const { query } = meaning;
      const { context, enqueue } = scene;
      if (query.command === 'what.is') {
        enqueue.emit(words.explained(query));
        enqueue.assign({ more: answerTo(query.slots.term)?.more ?? null });
      } else if ((query.command === 'why' || query.command === 'tell.more') && context.more) {
        for (const one of words.more(context.more)) enqueue.emit(one);
        enqueue.assign({ more: null });
      } else {
        enqueue.emit(query.command === 'help' ? words.choices(context.situation) : query);
        enqueue.assign({ more: null });
      }
    }),
    doIt: enqueueActions((scene) => {
      const meaning = taken(scene);
      if (meaning.kind === 'clear') doAll(scene, meaning.acts);
    }),
    doWhatWasAsked: enqueueActions((scene) => {
      const given = answer(scene);
      if (given?.kind === 'yes') doAll(scene, [given.act]);
    }),
    doWhatNoMeans: enqueueActions((scene) => doAll(scene, [scene.context.question?.no])),
    doTheChosen: enqueueActions((scene) => {
      const meaning = chosen(scene);
      if (meaning?.kind === 'clear') doAll(scene, meaning.acts);
    }),
    doWhatSilenceMeans: enqueueActions((scene) => settle(scene)),

    ask: enqueueActions((scene) => askAbout(scene, taken(scene))),
    askAboutTheChosen: enqueueActions((scene) => askAboutTheChosen(scene)),
    noteTheirQuestion: assign(({ event }) =>
      event.type === 'saying'
        ? { question: questionOf(event.message, event.about, event.at), exchangedAt: event.at }
        : {},
    ),
    askForAClearAnswer: emit(() => words.clearAnswerWanted()),
    askForTheNumber: enqueueActions((scene) => {
      const meaning = taken(scene);
      if (meaning.kind === 'uncounted') scene.enqueue.emit(words.howMany(meaning.command));
    }),
    sayIHaveThat: emit(() => words.haveThat()),
    sayNotNow: emit(() => words.notNow()),
    begPardon: emit(() => words.pardon()),
    soundPardon: emit(() => words.sound('pardon')),
    offerTheChoices: emit(({ context }) => words.choices(context.situation)),
    offerTheScreen: emit(() => words.touchScreen()),
  },
});
