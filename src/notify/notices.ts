// Tells the cook something while the page is hidden: a notice of the system, and a buzz.

export interface NoticeHost {
  isVisible(): boolean;
  permission(): NotificationPermission | 'unsupported';
  ask(): Promise<NotificationPermission>;
  /** Rejects where the notice could not be shown. */
  show(title: string, options: NotificationOptions): Promise<void>;
  vibrate(pattern: number[]): void;
}

export interface Notices {
  /** Must be called from a gesture. True when notices may be shown. */
  askPermission(): Promise<boolean>;
  notify(text: string): void;
}

/** One notice at a time: a newer one takes the place of the older. */
const TAG = 'kitchen';
const TITLE = 'Your kitchen';
const BUZZ_MS = [200, 100, 200];

export function createNotices(host: NoticeHost, onTrouble: (error: unknown) => void): Notices {
  return {
    async askPermission() {
      if (host.permission() !== 'default') return host.permission() === 'granted';
      return (await host.ask()) === 'granted';
    },
    notify(text) {
      host.vibrate(BUZZ_MS);
      // In front of the cook the page shows and says it itself.
      if (host.isVisible() || host.permission() !== 'granted') return;
      host.show(TITLE, { body: text, tag: TAG, requireInteraction: true }).catch(onTrouble);
    },
  };
}
