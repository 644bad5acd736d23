// What the page shows while it speaks, kept for the proof afterwards: the cook never sees it.

import type { Page } from 'playwright-core';

/** What the page began to say, with the agenda that stood on its screen then; `at` is wall time, ms. */
export interface Shown {
  at: number;
  words: string;
  agenda: string;
  /** Kitchen time, ms. */
  now: number;
}

type Watched = Window & { shown?: Shown[] };
declare const window: Watched;

/** From now on, also after a reload. */
export async function watchWhatIsShown(page: Page): Promise<void> {
  await page.addInitScript(watch);
  await page.evaluate(watch);
}

/** What has come since the last time. */
export function takeShown(page: Page): Promise<Shown[]> {
  return page.evaluate(() => window.shown?.splice(0) ?? []);
}

/** Runs in the page: it can use nothing from out here, nor give a function a name, which the compiler would see to. */
function watch(): void {
  const shown: Shown[] = (window.shown = []);
  let saying = '';
  // A page that is only being loaded has no root element yet.
  new MutationObserver(() => {
    const root = document.documentElement.dataset;
    const words = root['saying'] ?? '';
    if (words === saying) return;
    saying = words;
    const agenda = document.querySelector('.short-box svg')?.getAttribute('aria-label') ?? '';
    if (words !== '') shown.push({ at: Date.now(), words, agenda, now: Number(root['now']) });
  }).observe(document, {
    attributes: true,
    attributeFilter: ['data-saying'],
    subtree: true,
    childList: true,
  });
}
