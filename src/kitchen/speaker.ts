// What a machine asked to be said, on its way to the mouth: worded for this cook, named, told by notice where it matters.

import type { Effect } from '../../machines/kitchen/effects.ts';
import type { Announcer } from './announcing.ts';
import type { Actors } from './kitchenView.ts';
import { named } from './naming.ts';
import type { Catalogue, Reminder } from './ports.ts';
import type { QuietHours } from './quietHours.ts';
import type { Teaching } from './teaching.ts';

export interface SpeakerPorts {
  announcer: Pick<Announcer, 'effect'>;
  teaching: Pick<Teaching, 'worded'>;
  quiet: Pick<QuietHours, 'isQuiet'>;
  reminder: Pick<Reminder, 'notify'>;
  catalogue: () => Catalogue;
  actors: () => Actors;
}

export class Speaker {
  readonly #ports: SpeakerPorts;
  /** Before a gesture nothing can sound: what is to be said waits. */
  #unsaid: Effect[] | null = [];

  constructor(ports: SpeakerPorts) {
    this.#ports = ports;
  }

  /** The gesture has come: what waited is said. */
  start(): void {
    const waiting = this.#unsaid ?? [];
    this.#unsaid = null;
    for (const effect of waiting) this.#ports.announcer.effect(effect);
  }

  say(effect: Effect): void {
    const { announcer, teaching, quiet, reminder, actors } = this.#ports;
    const catalogue = this.#ports.catalogue();
    for (const worded of teaching.worded(effect)) {
      const spoken = named(worded, actors(), catalogue);
      if (this.#unsaid) this.#unsaid.push(spoken);
      else announcer.effect(spoken);
    }
    if (effect.type !== 'say' || (effect.urgency !== 'danger' && quiet.isQuiet(effect.about))) return;
    if (effect.urgency !== 'clock' && effect.urgency !== 'danger') return;
    const notice = named(effect, actors(), catalogue);
    if (notice.type === 'say') reminder.notify(catalogue.text(notice.message));
  }
}
