// Ties the guard against drips to a button: finger, key and screen reader.

import { useEffect, useLayoutEffect, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { isSpray, onTouch } from './glass.ts';
import { HoldGuard, type Phase } from './hold.ts';

export function useHold(done: () => void) {
  const [phase, setPhase] = useState<Phase>('idle');
  const [guard] = useState(() => new HoldGuard(setPhase));
  // With the drawing itself, not after it: a button that is seen but does not yet know its act would swallow a press.
  useLayoutEffect(() => guard.whenHeld(done), [guard, done]);
  useEffect(() => onTouch(() => guard.disturbed()), [guard]);
  useEffect(() => () => guard.cancel(), [guard]);
  return { phase, handlers: handlers(guard) };
}

function handlers(guard: HoldGuard) {
  const isPress = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' ';
  return {
    onPointerDown: (event: PointerEvent) => !isSpray() && guard.down(event),
    onPointerMove: (event: PointerEvent) => guard.move(event),
    onPointerUp: () => guard.up(),
    onPointerCancel: () => guard.cancel(),
    onPointerLeave: () => guard.cancel(),
    onKeyDown(event: KeyboardEvent) {
      if (!isPress(event)) return;
      event.preventDefault();
      if (event.repeat) guard.keepPressing();
      else guard.press();
    },
    onKeyUp: (event: KeyboardEvent) => isPress(event) && guard.letGo(),
    onBlur: () => guard.cancel(),
    // A screen reader clicks without a pointer: its press counts like a key's.
    onClick: (event: { detail: number }) => event.detail === 0 && guard.press(),
    onContextMenu: (event: { preventDefault(): void }) => event.preventDefault(),
  };
}
