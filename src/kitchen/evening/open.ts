// The evening's plan where this page can work one out, and nothing where it cannot.

import type { LivePorts } from '../live-ports.ts';
import { Evening } from './evening.ts';
import { usualEvening } from './settings.ts';

type Rest = Omit<
  ConstructorParameters<typeof Evening>[0],
  'planner' | 'settings' | 'setAway' | 'now' | 'word' | 'tongue'
>;

export function openEvening(ports: LivePorts, rest: Rest): Evening | null {
  const { planner, eveningSettings = () => usualEvening, clock } = ports;
  return planner
    ? new Evening({
        planner,
        settings: eveningSettings,
        setAway: ports.setAway,
        word: (message) => ports.catalogue().text(message),
        tongue: ports.catalogue,
        now: () => clock.now(),
        ...rest,
      })
    : null;
}
