// Keeps the screen awake while there is something to look at: a dark tablet cannot be read with wet hands.

/** The little of the browser that it needs. */
export interface WakeLockHost {
  /** Null where the browser has no screen wake lock. */
  request: (() => Promise<WakeLockSentinel>) | null;
  isVisible(): boolean;
  onVisibilityChange(listener: () => void): void;
}

export interface WakeLockKeeper {
  keepAwake(on: boolean): void;
  /** Whether the lock is held right now. */
  isHeld(): boolean;
}

/** `onRefused` hears why the screen may go dark, so that the cook can be told. */
export function createWakeLockKeeper(host: WakeLockHost, onRefused: (says: string) => void): WakeLockKeeper {
  let wanted = false;
  let lock: WakeLockSentinel | null = null;
  let asking = false;
  /** Refused once, it is not asked again before the page comes back: it would be refused at every beat. */
  let refused = false;

  async function hold(): Promise<void> {
    if (!wanted || lock !== null || asking || refused || !host.isVisible() || host.request === null) return;
    asking = true;
    try {
      const got = await host.request();
      // The browser lets go whenever the page is hidden; it is asked again when the page comes back.
      got.addEventListener('release', () => (lock = lock === got ? null : lock));
      if (wanted) lock = got;
      else void got.release();
    } catch (error) {
      refused = true;
      onRefused(
        `The screen may go dark by itself: ${error instanceof Error ? error.message : String(error)}`,
      );
    } finally {
      asking = false;
    }
  }

  host.onVisibilityChange(() => {
    refused = false;
    void hold();
  });
  return {
    keepAwake(on) {
      if (on && !wanted && host.request === null)
        onRefused('This browser cannot keep the screen awake: set the tablet to stay on.');
      wanted = on;
      if (on) void hold();
      else {
        void lock?.release();
        lock = null;
      }
    },
    isHeld: () => lock !== null,
  };
}
