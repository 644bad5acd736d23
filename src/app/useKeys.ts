// Listens for keys on the whole cooking screen and hands on what they mean.

import { useEffect, useRef } from 'react';
import { keyAct, type KeyAct } from './keys.ts';
import { TWICE_MS } from './stove/hold.ts';

export function useKeys(on: boolean, letterKeys: boolean, act: (what: KeyAct) => void): void {
  const latest = useRef(act);
  useEffect(() => {
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
