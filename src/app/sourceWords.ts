// A source as the cook reads it: citations stay as they are printed, what stands for the lack of one is in the cook's language.

import { lowerFirst } from '../kitchen/lowerFirst.ts';

export function sourceWords(source: string, word: (key: string) => string): string {
  return source
    .replaceAll('common practice, no source', lowerFirst(word('screen.source.common')))
    .replaceAll('from memory', lowerFirst(word('screen.source.memory')));
}
