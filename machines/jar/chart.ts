// The life of one jar, from the fill to the day it is eaten.
//
// A jar reaches the shelf by one road only: filled hot, processed for the whole unbroken time,
// rested, and found sealed. Every other road ends in the cold or in the bin.

import { setup } from 'xstate';
import type { JarEvent } from './events.ts';

export const jarMachine = setup({
  types: {
    context: {} as { mayShelve: boolean },
    input: {} as { mayShelve: boolean },
    events: {} as JarEvent,
  },
  guards: {
    mayGoOnTheShelf: ({ context }) => context.mayShelve,
  },
}).createMachine({
  id: 'jar',
  context: ({ input }) => ({ mayShelve: input.mayShelve }),
  initial: 'filled',
  on: {
    'jar.broke': '.broken',
    'jar.discarded': '.discarded',
  },
  states: {
    filled: {
      on: {
        'process.served': { guard: 'mayGoOnTheShelf', target: 'processed' },
        'jar.emptied': 'emptied',
        'put.inFridge': 'inFridge',
        'put.inFreezer': 'inFreezer',
      },
    },
    processed: {
      description:
        'Cooling undisturbed. A ping is welcome and proves nothing: only the check after the rest does.',
      on: {
        'rest.over': 'rested',
        'put.inFridge': 'inFridge',
      },
    },
    rested: {
      on: {
        'seal.held': 'sealed',
        'seal.failed': 'unsealed',
      },
    },
    sealed: {
      on: {
        'seal.failed': 'unsealed',
        'put.onShelf': { guard: 'mayGoOnTheShelf', target: 'onShelf' },
        'put.inFridge': 'inFridge',
        'put.inFreezer': 'inFreezer',
      },
    },
    unsealed: {
      description: 'Into the fridge now, or processed again with a new lid within 24 hours.',
      on: {
        'jar.emptied': 'emptied',
        'put.inFridge': 'inFridge',
        'put.inFreezer': 'inFreezer',
      },
    },
    onShelf: {
      on: {
        'seal.failed': { target: 'discarded', description: 'A seal lost on the shelf: do not taste.' },
        'seal.foundOpen': {
          target: 'unsealed',
          description: 'Not a day out of the canner: it can still be refrigerated or processed again.',
        },
        'put.inFridge': 'inFridge',
        'put.inFreezer': 'inFreezer',
        'jar.eaten': 'eaten',
        'jar.givenAway': 'givenAway',
      },
    },
    inFridge: {
      on: {
        'jar.eaten': 'eaten',
        'jar.givenAway': 'givenAway',
        'jar.emptied': 'emptied',
        'put.inFreezer': 'inFreezer',
      },
    },
    inFreezer: { on: { 'jar.eaten': 'eaten', 'jar.givenAway': 'givenAway', 'put.inFridge': 'inFridge' } },
    emptied: { type: 'final', description: 'Back in the pot: what is filled next is a new jar.' },
    broken: { type: 'final', description: 'Nothing from a broken jar is eaten.' },
    discarded: { type: 'final' },
    eaten: { type: 'final' },
    givenAway: { type: 'final' },
  },
});
