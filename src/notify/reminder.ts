// The reminder of a real page: screen wake lock, system notices, buzzing, the headset's button.

import type { Reminder } from '../kitchen/ports.ts';
import { faintWav } from './faintLoop.ts';
import { listenToHeadset, type HeadsetHost } from './headset.ts';
import { createNotices, type NoticeHost } from './notices.ts';
import { createWakeLockKeeper, type WakeLockHost } from './wakeLock.ts';

export interface PageReminder extends Reminder {
  /** From a gesture: asks whether notices may be shown. */
  askPermission(): Promise<boolean>;
  /** From a gesture: a press on the headset calls back. Returns a function that stops it. */
  onHeadsetPress(onPress: () => void): () => void;
}

/** `onTrouble` hears a plain sentence whenever the browser refuses something. */
export function createReminder(
  onTrouble: (says: string) => void = (says) => console.warn(says),
): PageReminder {
  const tell = (error: unknown) => onTrouble(error instanceof Error ? error.message : String(error));
  const lock = createWakeLockKeeper(wakeLockHost(), onTrouble);
  const notices = createNotices(noticeHost(), tell);
  const headset = headsetHost();
  return {
    keepAwake: lock.keepAwake,
    notify: notices.notify,
    askPermission: notices.askPermission,
    onHeadsetPress: (onPress) => listenToHeadset(headset, onPress, tell),
  };
}

const isVisible = () => document.visibilityState === 'visible';

const wakeLockHost = (): WakeLockHost => ({
  request: 'wakeLock' in navigator ? () => navigator.wakeLock.request('screen') : null,
  isVisible,
  onVisibilityChange: (listener) => document.addEventListener('visibilitychange', listener),
});

const noticeHost = (): NoticeHost => ({
  isVisible,
  permission: () => ('Notification' in globalThis ? Notification.permission : 'unsupported'),
  ask: () => Notification.requestPermission(),
  async show(title, options) {
    // Phones show notices only through the service worker; a page without one shows them itself.
    const worker = await navigator.serviceWorker?.getRegistration();
    if (worker?.active) await worker.showNotification(title, options);
    else new Notification(title, options);
  },
  vibrate: (pattern) => void navigator.vibrate?.(pattern),
});

function headsetHost(): HeadsetHost {
  let loop: HTMLAudioElement | null = null;
  return {
    mediaSession: 'mediaSession' in navigator ? navigator.mediaSession : null,
    async playFaintLoop() {
      loop ??= faintLoop();
      await loop.play();
    },
    stopFaintLoop: () => loop?.pause(),
  };
}

function faintLoop(): HTMLAudioElement {
  const audio = new Audio(URL.createObjectURL(new Blob([faintWav()], { type: 'audio/wav' })));
  audio.loop = true;
  return audio;
}
