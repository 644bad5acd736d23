// What a canner is called on the screen: of two each has its number, as in the timeline.

import { whichCanner, type CannerName } from '../../machines/dialogue/canners.ts';
import type { Catalogue } from '../kitchen/ports.ts';

export function cannerLabel(name: CannerName, catalogue: Pick<Catalogue, 'text'>): string {
  const which = whichCanner(name);
  return catalogue.text({ key: which === 'only' ? 'screen.which.canner' : `screen.which.canner.${which}` });
}
