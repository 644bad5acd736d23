// The size of an element in CSS pixels, followed as it changes.

import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
import type { Box } from '../drawings/geometry.ts';

/** Before the first measurement (and where there is no layout, as in a test) a tablet's stage is assumed. */
const UNMEASURED: Box = { w: 760, h: 560 };

export function useBox<E extends Element>(): [RefObject<E | null>, Box] {
  const ref = useRef<E>(null);
  const [box, setBox] = useState(UNMEASURED);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === 'undefined') return;
    const measure = () => setBox({ w: element.clientWidth, h: element.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, box];
}
