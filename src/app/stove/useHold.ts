// Ties the guard against drips to a button: finger, key and screen reader.

import { useEffect, useLayoutEffect, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { isSpray, onTouch } from './glass.ts';
import { HoldGuard, type Phase } from './hold.ts';
import { openLift } from './lift.ts';

/** The button shows how far the hold has come by its own attribute: to draw it anew would keep the finger waiting. */
export function useHold(done: () => void) {
  const [{ guard, on, lift }] = useState(openHold);
  // With the drawing itself, not after it: a button that is seen but does not yet know its act would swallow a press.
  useLayoutEffect(() => guard.whenHeld(done), [guard, done]);
  useEffect(() => onTouch(() => guard.disturbed()), [guard]);
  useEffect(() => () => guard.cancel(), [guard]);
  return { on, handlers: handlers(guard, lift) };
}

function openHold() {
  let button: HTMLButtonElement | null = null;
  const guard = new HoldGuard((phase) => show(button, phase));
  const on = (element: HTMLButtonElement | null): void => {
    button = element;
  };
  return { guard, on, lift: openLift(guard) };
}

/** What the cook has to do next is said aloud by a screen reader; that it is held, the holder knows. */
const SAID: readonly Phase[] = ['once', 'held'];

function show(button: HTMLButtonElement | null, phase: Phase): void {
  if (!button) return;
  button.dataset['phase'] = phase;
  const live = SAID.includes(phase) ? 'assertive' : 'off';
  button.querySelector('.choice-hint')?.setAttribute('aria-live', live);
}

function handlers(guard: HoldGuard, lift: ReturnType<typeof openLift>) {
  const isPress = (event: KeyboardEvent) => event.key === 'Enter' || event.key === ' ';
  return {
    onPointerDown: (event: PointerEvent) => !isSpray() && guard.down(event),
    onPointerMove: (event: PointerEvent) => guard.move(event),
    onPointerUp: lift.pointerUp,
    onTouchEnd: lift.touchEnd,
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
