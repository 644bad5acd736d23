// The size of an element in CSS pixels, followed as it changes.

import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
import { flushSync } from 'react-dom';
import type { Box } from '../drawings/geometry.ts';

/** Before the first measurement (and where there is no layout, as in a test) a tablet's stage is assumed. */
const UNMEASURED: Box = { w: 760, h: 560 };

/** What was last measured of each kind: one that comes in the place of another of its kind is mostly as large. */
const last = new Map<string, Box>();

export function useBox<E extends Element>(kind: string): [RefObject<E | null>, Box] {
  const ref = useRef<E>(null);
  const [box, setBox] = useState(() => last.get(kind) ?? UNMEASURED);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === 'undefined') return;
    // The browser calls when it has laid out, before it paints: to ask for the size now would make it lay out twice.
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const next = { w: Math.round(entry.contentRect.width), h: Math.round(entry.contentRect.height) };
      last.set(kind, next);
      flushSync(() => setBox((known) => (known.w === next.w && known.h === next.h ? known : next)));
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [kind]);
  return [ref, box];
}
