// What a canner is called on the screen: of two each has its number, as in the timeline.

import { whichCanner, type CannerName } from '../../machines/dialogue/canners.ts';
import type { Catalogue } from '../kitchen/ports.ts';

export function cannerLabel(name: CannerName, catalogue: Pick<Catalogue, 'text'>): string {
  return cannerWord(whichCanner(name), (key) => catalogue.text({ key }));
}

export function cannerWord(which: 'only' | 'first' | 'second' | null, word: (key: string) => string): string {
  return word(
    which === 'first' || which === 'second' ? `screen.which.canner.${which}` : 'screen.which.canner',
  );
}
