// Told aloud, what is new to eyes, ears and nose, and at the end how it went: a cook who rehearses by voice alone has no stove to look at.

import { useEffect, useRef } from 'react';
import type { Message, Urgency } from '../../../machines/kitchen/effects.ts';
import type { Catalogue } from '../../kitchen/ports.ts';
import { news, type Finding, type Noticed, type Scene } from '../../rehearsal/index.ts';
import type { CornerProps } from './RehearsalCorner.tsx';

type Told = Pick<CornerProps, 'view' | 'rehearsal' | 'catalogue'>;
type Say = (message: Message, of: string, urgency: Urgency) => void;

export function useTelling(on: boolean, { view, rehearsal, catalogue }: Told, say: Say): void {
  const before = useRef<{ keys: string[]; ends: number }>({ keys: [], ends: 0 });
  useEffect(() => {
    const scene = rehearsal.at(view.now);
    const noticed = scene ? news(scene) : [];
    const fresh = noticed.filter(({ message }) => !before.current.keys.includes(message.key));
    const ends = scene ? endsTold(scene) : 0;
    const findings = ends > before.current.ends ? rehearsal.review(view.now) : [];
    before.current = { keys: noticed.map(({ message }) => message.key), ends };
    if (!on) return;
    for (const one of fresh) say(placed(one, catalogue), `seen-${one.of}`, 'step');
    for (const [i, message] of lookedBack(findings, catalogue).entries()) say(message, `review-${i}`, 'step');
  });
}

/** The words of pot and canner are alike: a cook who does not see them hears which it is. */
const placed = ({ place, message }: Noticed, { text }: Catalogue): Message => ({
  key: 'rehearse.told',
  params: { where: text({ key: `rehearse.${place}` }), what: text(message) },
});

const lookedBack = (findings: readonly Finding[], { text }: Catalogue): Message[] =>
  findings.length === 0
    ? []
    : [
        { key: 'rehearse.review' },
        ...findings.map(({ message, grave }) =>
          grave ? { key: 'rehearse.toldGrave', params: { what: text(message) } } : message,
        ),
      ];

/** After each of these there is something to look back on. */
const ENDS: readonly string[] = ['jars.out', 'batch.stopped', 'seals.allHeld', 'seals.failed'];

const endsTold = ({ told }: Scene): number => told.filter(({ event }) => ENDS.includes(event.type)).length;
