// The talk between cook and kitchen: it listens, asks back when in doubt, asks first when it is weighty,
// and after two misses offers what can be said, after three the screen. It never asks twice on its own,
// but for which of two boils dropped: a void clock must not run on for want of an answer, nor because other talk came
// between.

import { dialogue, emptyKitchen } from './vocabulary.ts';

/** While a question is open a yes or a no answers it; anything else is heard as ever. */
const untilAnswered = dialogue.createStateConfig({
  on: {
    heard: [
      { guard: 'saysYes', target: 'listening', actions: ['doWhatWasAsked', 'noteTheExchange'] },
      { guard: 'saysNo', target: 'listening', actions: ['doWhatNoMeans', 'letItRest', 'noteTheExchange'] },
      { guard: 'mumbles', actions: 'askForAClearAnswer' },
    ],
    tick: [
      { guard: 'nobodyAnsweredOfTheBoil', actions: 'askAgain' },
      { guard: 'nobodyAnswered', target: 'listening' },
    ],
    spoke: { actions: 'giveTimeToAnswer' },
    hushed: { actions: 'giveTimeToAnswer' },
    saying: [
      { guard: 'weBeginToAskIt', actions: 'openTheQuestion' },
      { guard: 'theyAsk', target: 'answering', actions: 'noteTheirQuestion' },
      { guard: 'weAskSomethingStale', target: 'listening' },
    ],
  },
});

/** Which boil dropped was asked and other things were said: when that is over we come back to it. */
const comingBack = dialogue.createStateConfig({
  on: {
    tick: [
      { guard: 'whichBoilIsOwed', target: 'choosingBatch', actions: 'comeBackToIt' },
      { guard: 'whetherItDroppedIsOwed', target: 'confirming', actions: 'comeBackToIt' },
    ],
  },
});

export const dialogueMachine = dialogue.createMachine({
  id: 'dialogue',
  context: {
    situation: emptyKitchen,
    question: null,
    owed: null,
    misses: 0,
    exchangedAt: null,
    actedAt: null,
    more: null,
  },
  initial: 'listening',
  on: {
    open: { actions: 'noteWhatIsPossible' },
    doubted: { actions: 'noteWhatIsOwed' },
    touched: { target: '.listening', actions: 'noteTheExchange' },
    called: { actions: 'noteTheCall' },
    heard: [
      { guard: 'asksForAnswer', actions: ['answer', 'noteTheExchange'] },
      { guard: 'isClear', target: '.listening', actions: ['doIt', 'noteTheExchange'] },
      { guard: 'isInDoubt', target: '.askingBack', actions: ['ask', 'noteTheExchange'] },
      { guard: 'isWeighty', target: '.confirming', actions: ['ask', 'noteTheExchange'] },
      { guard: 'saysWaterWentIn', target: '.confirming', actions: ['ask', 'noteTheExchange'] },
      { guard: 'fitsSeveral', target: '.choosingBatch', actions: ['ask', 'noteTheExchange'] },
      { guard: 'lacksANumber', target: '.listening', actions: ['askForTheNumber', 'noteTheExchange'] },
      { guard: 'wasJustTold', actions: ['sayIHaveThat', 'noteTheExchange'] },
      { guard: 'isNotPossibleNow', actions: ['sayNotNow', 'noteTheExchange'] },
      { guard: 'isFirstMiss', actions: ['countTheMiss', 'soundPardon', 'begPardon'] },
      { guard: 'isSecondMiss', target: '.offeringChoices', actions: ['countTheMiss', 'offerTheChoices'] },
      { guard: 'isThirdMiss', target: '.offeringTouch', actions: ['countTheMiss', 'offerTheScreen'] },
    ],
    saying: { guard: 'theyAsk', target: '.answering', actions: 'noteTheirQuestion' },
    tick: { guard: 'hasBeenSilentLong', actions: 'forgetTheMisses' },
  },
  states: {
    listening: {
      description: 'No question is open: a yes or a no means nothing.',
      entry: 'forgetTheQuestion',
      ...comingBack,
    },

    askingBack: {
      description: 'Was that: the boil dropped? It was not heard well enough to act on.',
      ...untilAnswered,
    },

    confirming: {
      description: 'Heard well, but too weighty to do on one word.',
      ...untilAnswered,
      exit: 'doWhatSilenceMeans',
    },

    choosingBatch: {
      description: 'Which one: the plum or the pear? Several could have been meant.',
      on: {
        ...untilAnswered.on,
        heard: [
          { guard: 'choosesClearly', target: 'listening', actions: ['doTheChosen', 'noteTheExchange'] },
          {
            guard: 'choosesInDoubt',
            target: 'askingBack',
            actions: ['askAboutTheChosen', 'noteTheExchange'],
          },
          {
            guard: 'choosesWeightily',
            target: 'confirming',
            actions: ['askAboutTheChosen', 'noteTheExchange'],
          },
          {
            guard: 'choosesWhereWaterWentIn',
            target: 'confirming',
            actions: ['askAboutTheChosen', 'noteTheExchange'],
          },
          { guard: 'saysNo', target: 'listening', actions: ['letItRest', 'noteTheExchange'] },
        ],
      },
    },

    answering: {
      description: 'A batch or the canner has asked: still at a full boil?',
      ...untilAnswered,
    },

    offeringChoices: {
      description: 'Twice not understood: said what can be said.',
      entry: 'forgetTheQuestion',
      ...comingBack,
    },

    offeringTouch: {
      description: 'Three times not understood: pointed to the screen, and quiet from then on.',
      entry: 'forgetTheQuestion',
      ...comingBack,
    },
  },
});
