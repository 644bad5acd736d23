// What of a long sheet can wait until its top has been painted: a touch is answered at once, the rest follows.

import { startTransition, useEffect, useState } from 'react';
import { afterPaint } from '../afterPaint.ts';

/** False for the first painting, true after it. Where nothing is painted, as in a test, nothing waits. */
export function useLater(): boolean {
  const [later, setLater] = useState(typeof window === 'undefined');
  useEffect(() => afterPaint(() => startTransition(() => setLater(true))), []);
  return later;
}
