// The guard against drips: what matters is held for a moment, or pressed twice by key. A droplet does neither.

import { useCallback, useEffect, useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';

/** Long enough that a splash or a sleeve does not do it, short enough not to annoy. Chosen by hand, no source. */
export const HOLD_MS = 700;
/** A second press within this time confirms the first. */
export const TWICE_MS = 3000;
/** A finger that slides further than this is wiping, not pressing. */
const DRIFT_PX = 24;

export interface Hold {
  phase: 'idle' | 'holding' | 'once';
  handlers: {
    onPointerDown: (event: PointerEvent) => void;
    onPointerMove: (event: PointerEvent) => void;
    onPointerUp: () => void;
    onPointerCancel: () => void;
    onPointerLeave: () => void;
    onKeyDown: (event: KeyboardEvent) => void;
    onKeyUp: (event: KeyboardEvent) => void;
    onBlur: () => void;
    onClick: (event: { detail: number }) => void;
    onContextMenu: (event: { preventDefault(): void }) => void;
  };
}

export function useHold(done: () => void): Hold {
  const [phase, setPhase] = useState<Hold['phase']>('idle');
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const start = useRef<{ x: number; y: number; id: number } | null>(null);
  const act = useRef(done);
  useEffect(() => {
    act.current = done;
  });

  const stop = useCallback((next: Hold['phase'] = 'idle') => {
    clearTimeout(timer.current);
    start.current = null;
    setPhase(next);
  }, []);
  useEffect(() => () => clearTimeout(timer.current), []);

  const hold = useCallback(() => {
    setPhase('holding');
    clearTimeout(timer.current);
    timer.current = setTimeout(() => {
      stop();
      act.current();
    }, HOLD_MS);
  }, [stop]);

  /** A short press by key arms it; the second one acts. */
  const press = useCallback(() => {
    if (phase === 'once') {
      stop();
      act.current();
      return;
    }
    stop('once');
    timer.current = setTimeout(() => setPhase('idle'), TWICE_MS);
  }, [phase, stop]);

  return { phase, handlers: handlers({ phase, start, hold, stop, press }) };
}

interface Parts {
  phase: Hold['phase'];
  start: { current: { x: number; y: number; id: number } | null };
  hold: () => void;
  stop: (next?: Hold['phase']) => void;
  press: () => void;
}

function handlers({ phase, start, hold, stop, press }: Parts): Hold['handlers'] {
  const release = () => {
    if (start.current) stop();
  };
  return {
    onPointerDown(event) {
      // Two touches at once are water, not a cook.
      if (start.current || !event.isPrimary || event.button !== 0) return stop();
      hold();
      start.current = { x: event.clientX, y: event.clientY, id: event.pointerId };
    },
    onPointerMove(event) {
      const from = start.current;
      if (from && Math.hypot(event.clientX - from.x, event.clientY - from.y) > DRIFT_PX) stop();
    },
    onPointerUp: release,
    onPointerCancel: release,
    onPointerLeave: release,
    onKeyDown(event) {
      if (event.key !== 'Enter' && event.key !== ' ') return;
      event.preventDefault();
      if (event.repeat) {
        if (phase === 'once') hold();
        return;
      }
      press();
    },
    onKeyUp(event) {
      if ((event.key === 'Enter' || event.key === ' ') && phase === 'holding') stop();
    },
    onBlur: () => stop(),
    // A screen reader clicks without a pointer: its press counts like a key's.
    onClick(event) {
      if (event.detail === 0) press();
    },
    onContextMenu: (event) => event.preventDefault(),
  };
}
