// What can happen to one jar.

export type JarEvent =
  | { type: 'process.served' } // the full time at an unbroken full boil
  | { type: 'rest.over' } // at least twelve hours undisturbed
  | { type: 'seal.held' }
  | { type: 'seal.failed' }
  | { type: 'seal.foundOpen' } // on the shelf, within a day of the canner
  | { type: 'put.onShelf' }
  | { type: 'put.inFridge' }
  | { type: 'put.inFreezer' }
  | { type: 'jar.emptied' }
  | { type: 'jar.broke' }
  | { type: 'jar.eaten' }
  | { type: 'jar.givenAway' }
  | { type: 'jar.discarded' };

export type JarState =
  | 'filled'
  | 'processed'
  | 'rested'
  | 'sealed'
  | 'unsealed'
  | 'onShelf'
  | 'inFridge'
  | 'inFreezer'
  | 'emptied'
  | 'broken'
  | 'discarded'
  | 'eaten'
  | 'givenAway';
