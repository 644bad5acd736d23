// What the kitchen looks like, drawn a few milliseconds at a time: a touch, or a word to be said, need not wait for all of it.

import { startTransition, useEffect, useState } from 'react';

interface Shown<View> {
  readonly view: View;
  subscribe(listener: () => void): () => void;
}

export function useInSlices<View>(shown: Shown<View>): View {
  const [view, setView] = useState(shown.view);
  useEffect(() => {
    const look = () => {
      const { view: now } = shown;
      startTransition(() => setView(() => now));
    };
    look(); // it may have moved before we listened
    return shown.subscribe(look);
  }, [shown]);
  return view;
}
