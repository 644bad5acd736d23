// What is drawn a frame after the words beside it: they answer a touch, and the picture must not keep them waiting.

import { startTransition, useEffect, useState } from 'react';
import { afterPaint } from '../afterPaint.ts';

/** Null for the first painting, then one frame behind. Where nothing is painted, as in a test, nothing waits. */
export function useOncePainted<T>(value: T): T | null {
  const [painted, setPainted] = useState<T | null>(typeof window === 'undefined' ? value : null);
  useEffect(() => afterPaint(() => startTransition(() => setPainted(() => value))), [value]);
  return painted;
}
