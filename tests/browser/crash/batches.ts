// Kills the real page in a real browser again and again over whole batches, and counts what was lost or wrong.

import { setTimeout as pause } from 'node:timers/promises';
import { isDeepStrictEqual } from 'node:util';
import type { LogEntry } from '../../../src/kitchen/ports.ts';
import { startBrowser } from '../../store/crash/stage.ts';
import { inPage, type Acknowledged } from './hurry.ts';
import { entriesIn, lookAt, nextAddress, said, type Look } from './look.ts';

export interface Toll {
  kills: number;
  /** Starts after which everything was compared. */
  checked: number;
  /** Entries that the page had acknowledged, over all lives. */
  acknowledged: number;
  /** Acknowledged entries that were not in the log afterwards, or were another. */
  lost: number;
  /** Starts on which a batch or a canner was not in the state, or its clock not at the end, that the log says. */
  wrong: number;
  /** How far the time left was off after a start, wall milliseconds. Not compared where the pace was changed. */
  worstTimeLeftErrorMs: number;
  timesCompared: number;
  /** Batches that reached the shelf, states seen, and the longest log. */
  putAway: number;
  statesSeen: string[];
  entries: number;
  slowestOpenMs: number;
  troubles: string[];
}

/** One in four dies while it opens; the others at a random instant while the cook presses. */
const DIES_YOUNG = 0.25;
const OPENS_WITHIN_MS = 1500;
const COOKS_AT_MOST_MS = 3000;
/** A write that had begun when we looked settles well within this. */
const SETTLES_WITHIN_MS = 5000;

interface Place {
  url: string;
  profile: string;
}

interface Seen {
  states: string;
  pace: number;
  now: number;
  wall: number;
}

export async function crashBatches(
  { url, profile }: Place,
  kills: number,
  random: () => number,
  onKill: (n: number, toll: Toll) => void = () => {},
): Promise<Toll> {
  const toll: Toll = {
    kills: 0,
    checked: 0,
    acknowledged: 0,
    lost: 0,
    wrong: 0,
    worstTimeLeftErrorMs: 0,
    timesCompared: 0,
    putAway: 0,
    statesSeen: [],
    entries: 0,
    slowestOpenMs: 0,
    troubles: [],
  };
  /** What the page has acknowledged; what was in flight when it died is known from the next look. */
  const known = new Map<number, LogEntry>();
  let last: Seen | null = null;
  for (let n = 1; n <= kills + 1; n++) {
    const next = nextAddress(url, last?.states ?? '');
    const began = Date.now();
    const { page, kill } = await startBrowser<Acknowledged>(
      { url: next.url, profile },
      ({ entry }) => void known.set(entry.seq, entry),
      inPage,
    );
    try {
      if (n <= kills && random() < DIES_YOUNG) await pause(random() * OPENS_WITHIN_MS);
      else {
        last = await check(next.pace, await settled(() => lookAt(page)), known, last, toll);
        toll.slowestOpenMs = Math.max(toll.slowestOpenMs, Date.now() - began);
        if (n <= kills) {
          await page.evaluate(() => globalThis.hurry());
          await pause(random() * COOKS_AT_MOST_MS);
        }
      }
    } catch (error) {
      toll.troubles.push(`life ${n}: ${String(error).split('\n')[0]}`);
    } finally {
      await kill();
    }
    if (n > kills) break;
    toll.kills++;
    onKill(n, toll);
  }
  return toll;
}

/** Looks until page and log agree; where they never do, the last look says how they differ. */
async function settled(look: () => Promise<Look>): Promise<Look> {
  const until = Date.now() + SETTLES_WITHIN_MS;
  for (;;) {
    const seen = await look();
    const due = said(entriesIn(seen.log), seen.now);
    if ((seen.states === due.states && seen.clockUntil === due.clockUntil) || Date.now() > until) return seen;
    await pause(100);
  }
}

async function check(
  pace: number,
  seen: Look,
  known: Map<number, LogEntry>,
  last: Seen | null,
  toll: Toll,
): Promise<Seen> {
  const entries = entriesIn(seen.log);
  const due = said(entries, seen.now);
  toll.checked++;
  toll.acknowledged = known.size;
  for (const [seq, entry] of known)
    if (!isDeepStrictEqual(entries[seq - 1], entry)) {
      toll.lost++;
      toll.troubles.push(`entry ${seq} (${entry.event.type}) is gone or another`);
    }
  known.clear();
  for (const entry of entries) known.set(entry.seq, entry);
  if (seen.states !== due.states || seen.clockUntil !== due.clockUntil) {
    toll.wrong++;
    toll.troubles.push(
      `the page: ${seen.states} ${seen.clockUntil}; its log: ${due.states} ${due.clockUntil}`,
    );
  }
  if (last && last.pace === pace) {
    // The clock's end is the log's; so the time left is off by as much as the page's now is.
    const expected = last.now + (seen.wall - last.wall) * pace;
    toll.worstTimeLeftErrorMs = Math.max(toll.worstTimeLeftErrorMs, Math.abs(seen.now - expected) / pace);
    toll.timesCompared++;
  }
  const states = seen.states.split('; ').map((state) => state.replace(/^.*: /, ''));
  toll.statesSeen = [...new Set([...toll.statesSeen, ...states])].filter(Boolean).sort();
  toll.putAway = states.filter((state) => state === 'putAway').length;
  toll.entries = entries.length;
  return { states: seen.states, pace, now: seen.now, wall: seen.wall };
}
