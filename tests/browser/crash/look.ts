// What does a page that was opened again show, and what does its log say? Both at one moment.

import type { Page } from 'playwright-core';
import { batchRequestSchema } from '../../../src/core/index.ts';
import { foldLog, type Folded } from '../../../src/kitchen/fold.ts';
import { actorsOf } from '../../../src/kitchen/kitchenView.ts';
import type { LogEntry } from '../../../src/kitchen/ports.ts';
import { planLink } from '../../../src/app/plan/share.ts';
import { decode } from '../../../src/store/decode.ts';
import { damsons } from '../../machines/evening.ts';

export interface Look {
  /** As the page shows it. */
  states: string;
  now: number;
  wall: number;
  clockUntil: string;
  /** The log's file, as it lies on the disk. */
  log: string;
}

/** Waits for the page's next beat, so that its clock and ours are read at the same instant. */
export async function lookAt(page: Page): Promise<Look> {
  await page.waitForFunction(() => document.documentElement.dataset['now'] !== undefined, undefined, {
    timeout: 60_000,
  });
  return page.evaluate(async () => {
    const shown = document.documentElement.dataset;
    const root = await navigator.storage.getDirectory();
    const folder = await (await root.getDirectoryHandle('stovehand')).getDirectoryHandle('practice');
    const nextBeat = new Promise<{ states: string; now: number; wall: number; clockUntil: string }>(
      (resolve) => {
        const observer = new MutationObserver(() => {
          observer.disconnect();
          resolve({
            states: shown['kitchen'] ?? '',
            now: Number(shown['now']),
            wall: Date.now(),
            clockUntil: shown['clockUntil'] ?? '',
          });
        });
        observer.observe(document.documentElement, { attributeFilter: ['data-now'] });
      },
    );
    const beat = await nextBeat;
    const file = await folder.getFileHandle('kitchen.log').catch(() => null);
    return { ...beat, log: file ? await (await file.getFile()).text() : '' };
  });
}

export function entriesIn(log: string): LogEntry[] {
  const lines = log.split('\n').slice(0, -1);
  const read = decode(lines);
  return read.kind === 'unknown-version' ? [] : read.entries;
}

/** The same facts, worked out here from the whole log and nothing else. */
export function said(
  entries: readonly LogEntry[],
  now: number,
): { folded: Folded; states: string; clockUntil: string } {
  const folded = foldLog(entries);
  const { batches, canners } = actorsOf(folded.kitchen, now, () => '');
  const states = [
    ...batches.map(({ name, state }) => `${name}: ${state}`),
    ...canners.map(({ state }) => `canner: ${state}`),
  ].join('; ');
  const until = canners.flatMap(({ clock }) => (clock?.kind === 'until' ? [clock.until] : []))[0];
  return { folded, states, clockUntil: until === undefined ? '' : String(Math.round(until)) };
}

const request = batchRequestSchema.parse(damsons);

/** Quick enough for the work of hands, and for a day of rest. */
const PACE = { atWork: 60, atRest: 3600 };

/** Where to open the page next: another batch once all are put away, and faster where one only rests. */
export function nextAddress(url: string, states: string): { url: string; pace: number } {
  const each = states.split('; ').filter((state) => state !== '' && !state.startsWith('canner'));
  const left = each.filter((state) => !state.endsWith(': putAway'));
  const rests =
    left.length > 0 && left.every((state) => /: (resting|checkingSeals|puttingAway)$/.test(state));
  const pace = rests ? PACE.atRest : PACE.atWork;
  const address = `${url}/?practice=${pace}&voice=bundled&stove=elsewhere`;
  return { pace, url: left.length === 0 ? planLink(request, address) : address };
}
