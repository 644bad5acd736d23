// Kills a real browser again and again while it writes the log, and counts what was lost. It must be nothing.

import { setTimeout as pause } from 'node:timers/promises';
import type { Report } from './report.ts';
import { setStage, startBrowser, type Stage } from './stage.ts';

export interface Toll {
  kills: number;
  /** Starts that came as far as reading the log. */
  opened: number;
  acknowledged: number;
  /** Acknowledged entries that were not there on the next start. */
  lost: number;
  /** Entries that came back as something else than was written. */
  wrong: number;
  /** Starts after which the two copies differed. */
  notMended: number;
  /** Entries that survived without having been acknowledged to us: in flight when the browser died. */
  spared: number;
  /** Starts on which a copy had been emptied or damaged. */
  mendedAloud: number;
  /** How far kitchen time was off after a start, in kitchen milliseconds. */
  worstClockErrorMs: number;
  medianAppendMs: number;
  slowestOpenMs: number;
  troubles: string[];
}

/** The browser dies at a random instant. One in four dies while it starts and mends; the others while they write. */
const LIVES_AT_MOST_MS = 2000;
const DIES_YOUNG = 0.25;
/** The last start is left to open in peace, so that the last kill is checked too. */
const OPENS_WITHIN_MS = 60_000;

type Opened = Extract<Report, { kind: 'opened' }>;

export async function crash(
  kills: number,
  random: () => number,
  onKill: (n: number, toll: Toll) => void = () => {},
): Promise<Toll> {
  const stage = await setStage();
  const tally = new Tally();
  try {
    for (let n = 1; n <= kills; n++) {
      await oneLife(stage, tally, random);
      onKill(n, tally.toll);
    }
    await lastLife(stage, tally);
  } finally {
    await stage.close();
  }
  return tally.toll;
}

async function oneLife(stage: Stage, tally: Tally, random: () => number): Promise<void> {
  const { opened, kill } = await startLife(stage, tally);
  if (random() >= DIES_YOUNG) await opened;
  await pause(random() * LIVES_AT_MOST_MS);
  await kill();
  tally.toll.kills++;
}

async function lastLife(stage: Stage, tally: Tally): Promise<void> {
  const { opened, kill } = await startLife(stage, tally);
  if (!(await opened)) tally.toll.troubles.push('the last start did not open the log');
  await kill();
}

/** `opened` becomes false where the log was not opened in good time. */
async function startLife(
  stage: Stage,
  tally: Tally,
): Promise<{ opened: Promise<boolean>; kill: () => Promise<void> }> {
  let hearOpened = (_well: boolean) => {};
  const opened = new Promise<boolean>((resolve) => (hearOpened = resolve));
  const { kill } = await startBrowser(stage, (report: Report) => {
    tally.hear(report);
    if (report.kind === 'opened' || report.kind === 'broke') hearOpened(report.kind === 'opened');
  });
  const late = pause(OPENS_WITHIN_MS, false, { ref: false });
  return { opened: Promise.race([opened, late]), kill };
}

class Tally {
  readonly toll: Toll = {
    kills: 0,
    opened: 0,
    acknowledged: 0,
    lost: 0,
    wrong: 0,
    notMended: 0,
    spared: 0,
    mendedAloud: 0,
    worstClockErrorMs: 0,
    medianAppendMs: 0,
    slowestOpenMs: 0,
    troubles: [],
  };
  readonly #appendMs: number[] = [];
  #first: Opened | null = null;

  hear(report: Report): void {
    const { toll } = this;
    if (report.kind === 'opened') this.#check(report);
    else if (report.kind === 'acknowledged') {
      toll.acknowledged = Math.max(toll.acknowledged, report.seq);
      this.#appendMs.push(report.ms);
      toll.medianAppendMs = median(this.#appendMs);
    } else if (report.kind === 'trouble') toll.troubles.push(...report.trouble.map(({ says }) => says));
    else toll.troubles.push(report.says);
  }

  #check(opened: Opened): void {
    const { toll } = this;
    toll.opened++;
    toll.lost += Math.max(0, toll.acknowledged - opened.entries);
    toll.spared += Math.max(0, opened.entries - toll.acknowledged);
    toll.acknowledged = opened.entries;
    toll.wrong += opened.wrong.length;
    if (!opened.copiesAgree) toll.notMended++;
    if (opened.trouble.length > 0) toll.mendedAloud++;
    toll.troubles.push(...opened.trouble.map(({ says }) => says));
    toll.slowestOpenMs = Math.max(toll.slowestOpenMs, opened.openMs);
    this.#first ??= opened;
    const due = this.#first.kitchen + (opened.wall - this.#first.wall) * opened.pace;
    toll.worstClockErrorMs = Math.max(toll.worstClockErrorMs, Math.abs(opened.kitchen - due));
  }
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
}
