// Listens for keys on the whole cooking screen and hands on what they mean.

import { useEffect, useLayoutEffect, useRef } from 'react';
import { keyAct, type KeyAct } from './keys.ts';
import { TWICE_MS } from './stove/hold.ts';

/** The space bar is held to talk; a button in focus keeps it for itself. */
export function useTalkKey(on: boolean, call: (how: 'down' | 'up') => void): void {
  const latest = useRef(call);
  useLayoutEffect(() => {
    latest.current = call;
  });
  useEffect(() => {
    if (!on) return;
    let isDown = false;
    const up = () => {
      if (isDown) latest.current('up');
      isDown = false;
    };
    const down = (event: KeyboardEvent) => {
      const target = event.target instanceof Element ? event.target : null;
      if (event.key !== ' ' || target?.closest('input, textarea, select, dialog, button, a, summary')) return;
      event.preventDefault(); // held down it would scroll the page
      if (!event.repeat && !isDown) latest.current('down');
      isDown = true;
    };
    const release = (event: KeyboardEvent) => event.key === ' ' && up();
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', release);
    window.addEventListener('blur', up);
    return () => {
      up();
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', release);
      window.removeEventListener('blur', up);
    };
  }, [on]);
}

export function useKeys(on: boolean, letterKeys: boolean, act: (what: KeyAct) => void): void {
  const latest = useRef(act);
  // With the drawing itself: a digit must mean what stands beside it.
  useLayoutEffect(() => {
    latest.current = act;
  });
  useEffect(() => {
    if (!on) return;
    const listen = (event: KeyboardEvent) => {
      if (event.repeat) return;
      const target = event.target instanceof Element ? event.target : null;
      const what = keyAct(
        {
          key: event.key,
          ctrlKey: event.ctrlKey,
          metaKey: event.metaKey,
          altKey: event.altKey,
          inField: target?.closest('input, textarea, select, dialog') !== null && target !== null,
          onButton: target !== null && target.closest('button, a, summary') !== null,
        },
        letterKeys,
      );
      if (!what) return;
      event.preventDefault();
      latest.current(what);
    };
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [on, letterKeys]);
}

/** A key that does something grave must be pressed twice: this remembers the first press. */
export function useTwice(): (name: string) => boolean {
  const armed = useRef<{ name: string; at: number } | null>(null);
  return (name) => {
    const at = performance.now();
    const again = armed.current?.name === name && at - armed.current.at < TWICE_MS;
    armed.current = again ? null : { name, at };
    return again;
  };
}
