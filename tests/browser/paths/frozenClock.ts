// The page's clock in the test's hand: it stands still until it is moved, and goes on across a reload. Sent to the
// page before anything else runs there: no imports.

export interface Hand {
  /** Moves the page's clock, wall and monotonic alike, as if that much time had gone by. */
  pass(ms: number): void;
  /** The same, but seen only by the next page: nobody was here meanwhile. */
  passUnseen(ms: number): void;
}

declare global {
  var clockInHand: Hand;
}

export function holdTheClock(): void {
  const KEPT = 'test-clock';
  const START = Date.UTC(2026, 8, 12, 17);
  let wall = Number(localStorage.getItem(KEPT) ?? START);
  let mono = 1000;
  Date.now = () => wall;
  performance.now = () => mono;
  globalThis.clockInHand = {
    pass(ms) {
      wall += ms;
      mono += ms;
      localStorage.setItem(KEPT, String(wall));
    },
    passUnseen: (ms) => localStorage.setItem(KEPT, String(wall + ms)),
  };
}
