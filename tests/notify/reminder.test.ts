// The reminder against browsers made by hand: one that grants, one that refuses, one that has nothing.

import { describe, expect, it } from 'vitest';
import { decodeWav } from '../../src/sound/wav.ts';
import { faintWav } from '../../src/notify/faintLoop.ts';
import { listenToHeadset, type HeadsetHost } from '../../src/notify/headset.ts';
import { createNotices, type NoticeHost } from '../../src/notify/notices.ts';
import { createWakeLockKeeper, type WakeLockHost } from '../../src/notify/wakeLock.ts';

/** Lets promises run. */
const settle = async () => {
  for (let i = 0; i < 10; i++) await Promise.resolve();
};

describe('the screen', () => {
  class Lock extends EventTarget {
    released = false;
    async release() {
      this.released = true;
      this.dispatchEvent(new Event('release'));
    }
  }

  function tablet({ has = true, refuses = false } = {}) {
    const locks: Lock[] = [];
    let visible = true;
    let changed = () => {};
    const request = async () => {
      if (refuses) throw new Error('battery low');
      const lock = new Lock();
      locks.push(lock);
      return lock as unknown as WakeLockSentinel;
    };
    const host: WakeLockHost = {
      request: has ? request : null,
      isVisible: () => visible,
      onVisibilityChange: (listener) => (changed = listener),
    };
    const refusals: string[] = [];
    const keeper = createWakeLockKeeper(host, (says) => refusals.push(says));
    async function turn(toVisible: boolean) {
      visible = toVisible;
      if (!toVisible) await locks.at(-1)?.release(); // what the browser does
      changed();
      await settle();
    }
    return { keeper, locks, refusals, turn };
  }

  it('is kept awake, once, until that is no longer wanted', async () => {
    const { keeper, locks } = tablet();
    keeper.keepAwake(true);
    keeper.keepAwake(true);
    await settle();
    expect(locks).toHaveLength(1);
    expect(keeper.isHeld()).toBe(true);
    keeper.keepAwake(false);
    expect(locks[0]!.released).toBe(true);
    expect(keeper.isHeld()).toBe(false);
  });

  it('is kept awake again when the page comes back', async () => {
    const { keeper, locks, turn } = tablet();
    keeper.keepAwake(true);
    await settle();
    await turn(false);
    expect(keeper.isHeld()).toBe(false);
    await turn(true);
    expect(keeper.isHeld()).toBe(true);
    expect(locks).toHaveLength(2);
  });

  it('is let go when the wish ends while the browser still thinks', async () => {
    const { keeper, locks } = tablet();
    keeper.keepAwake(true);
    keeper.keepAwake(false);
    await settle();
    expect(locks.every((lock) => lock.released)).toBe(true);
    expect(keeper.isHeld()).toBe(false);
  });

  it('that cannot be kept awake is told to the cook', async () => {
    const refusing = tablet({ refuses: true });
    refusing.keeper.keepAwake(true);
    await settle();
    refusing.keeper.keepAwake(true);
    await settle();
    expect(refusing.refusals).toEqual(['The screen may go dark by itself: battery low']);
    const without = tablet({ has: false });
    without.keeper.keepAwake(true);
    without.keeper.keepAwake(true);
    expect(without.refusals).toEqual([
      'This browser cannot keep the screen awake: set the tablet to stay on.',
    ]);
  });
});

describe('a notice', () => {
  function browser(change: Partial<NoticeHost> = {}) {
    const shown: string[] = [];
    const buzzes: number[][] = [];
    const troubles: unknown[] = [];
    const host: NoticeHost = {
      isVisible: () => false,
      permission: () => 'granted',
      ask: async () => 'granted',
      show: async (_title, { body }) => void shown.push(body ?? ''),
      vibrate: (pattern) => buzzes.push(pattern),
      ...change,
    };
    return { notices: createNotices(host, (error) => troubles.push(error)), shown, buzzes, troubles };
  }

  it('is shown while the page is hidden, with a buzz', () => {
    const { notices, shown, buzzes } = browser();
    notices.notify('The clock has run out.');
    expect(shown).toEqual(['The clock has run out.']);
    expect(buzzes).toHaveLength(1);
  });

  it('only buzzes while the cook can see the page, or when notices are not allowed', () => {
    const hidden: Partial<NoticeHost>[] = [
      { isVisible: () => true },
      { permission: () => 'denied' },
      { permission: () => 'unsupported' },
    ];
    for (const change of hidden) {
      const { notices, shown, buzzes } = browser(change);
      notices.notify('x');
      expect(shown).toEqual([]);
      expect(buzzes).toHaveLength(1);
    }
  });

  it('that fails is told, not thrown', async () => {
    const { notices, troubles } = browser({ show: async () => Promise.reject(new Error('no')) });
    notices.notify('x');
    await settle();
    expect(troubles).toHaveLength(1);
  });

  it('is asked for only when the cook has not decided yet', async () => {
    const asked = (permission: NotificationPermission | 'unsupported', answer: NotificationPermission) => {
      let times = 0;
      const ask = async () => {
        times++;
        return answer;
      };
      const { notices } = browser({ permission: () => permission, ask });
      return notices.askPermission().then((may) => ({ may, times }));
    };
    expect(await asked('default', 'granted')).toEqual({ may: true, times: 1 });
    expect(await asked('default', 'denied')).toEqual({ may: false, times: 1 });
    expect(await asked('denied', 'granted')).toEqual({ may: false, times: 0 });
    expect(await asked('unsupported', 'granted')).toEqual({ may: false, times: 0 });
  });
});

describe('the faint loop', () => {
  it('is a sound of more than five seconds that nobody hears', () => {
    const { samples, sampleRateHz } = decodeWav(faintWav());
    expect(samples.length / sampleRateHz).toBeGreaterThan(5);
    const peak = samples.reduce((max, sample) => Math.max(max, Math.abs(sample)), 0);
    expect(20 * Math.log10(peak)).toBeLessThan(-85);
    expect(peak).toBeGreaterThan(0);
  });
});

describe("the headset's button", () => {
  function headset({ knows = (_action: string): boolean => true, plays = true } = {}) {
    const handlers = new Map<string, (() => void) | null>();
    const session = {
      metadata: null,
      playbackState: 'none' as MediaSessionPlaybackState,
      setActionHandler(action: string, handler: MediaSessionActionHandler | null) {
        if (!knows(action)) throw new TypeError('unknown action');
        handlers.set(action, handler as (() => void) | null);
      },
    };
    let loops = false;
    const host: HeadsetHost = {
      mediaSession: session,
      playFaintLoop: async () => {
        if (!plays) throw new Error('not allowed');
        loops = true;
      },
      stopFaintLoop: () => (loops = false),
    };
    let presses = 0;
    const troubles: unknown[] = [];
    const stop = listenToHeadset(
      host,
      () => presses++,
      (error) => troubles.push(error),
    );
    return { handlers, session, stop, presses: () => presses, loops: () => loops, troubles };
  }

  it('calls back on every press, be it "play" or "pause"', async () => {
    const { handlers, session, presses } = headset();
    await settle();
    expect(session.playbackState).toBe('playing');
    handlers.get('pause')?.();
    handlers.get('play')?.();
    expect(presses()).toBe(2);
  });

  it('is given back', async () => {
    const { handlers, session, stop, loops } = headset();
    await settle();
    expect(loops()).toBe(true);
    stop();
    expect([...handlers.values()].every((handler) => handler === null)).toBe(true);
    expect(session.playbackState).toBe('none');
    expect(loops()).toBe(false);
  });

  it('works with the actions that the browser knows, and tells when it may not play', async () => {
    const known = headset({ knows: (action) => action === 'play' });
    known.handlers.get('play')?.();
    expect(known.presses()).toBe(1);
    const silent = headset({ plays: false });
    await settle();
    expect(silent.troubles).toHaveLength(1);
  });

  it('is no trouble where there is no media session', () => {
    const host: HeadsetHost = { mediaSession: null, playFaintLoop: async () => {}, stopFaintLoop: () => {} };
    expect(() =>
      listenToHeadset(
        host,
        () => {},
        () => {},
      )(),
    ).not.toThrow();
  });
});
