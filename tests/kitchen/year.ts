// A kitchen of many batches over a year, as its log: each a whole evening with its stirs, its canner run and its rest.

import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { MAIN_CANNER } from '../../machines/kitchen/kitchen.ts';
import type { LogEntry } from '../../src/kitchen/ports.ts';
import { planOf } from '../machines/evening.ts';

const SECOND = 1000;
const MIN = 60 * SECOND;
const HOUR = 60 * MIN;
const WEEK = 7 * 24 * HOUR;
const FIRST_EVENING = Date.UTC(2025, 8, 1, 17);

/** Everything of one batch but its stirs. */
const STEPS = 26;

/** @param perBatch entries of each batch; the last batch is left at its simmer */
export function yearOfLogs(batches: number, perBatch = 400): LogEntry[] {
  const entries: LogEntry[] = [];
  let at = FIRST_EVENING;
  const put = (event: object, source: LogEntry['source'] = 'touch') =>
    entries.push({ seq: entries.length + 1, event: { at, ...event } as KitchenEvent, source });
  const canner = (type: string) => put({ type, canner: MAIN_CANNER });
  const plan = planOf();
  put({ type: 'canner.set', canner: MAIN_CANNER, jarsPerLoad: 7, preheatMinutes: 25 });
  canner('canner.filled');
  canner('canner.heatOn');
  canner('canner.hot');
  for (let n = 1; n <= batches; n++) {
    const batch = `plum-${n}`;
    const tell = (type: string, more: object = {}) => put({ type, batch, ...more });
    const wait = (ms: number) => {
      at += ms;
      put({ type: 'tick' }, 'clock');
    };
    tell('batch.planned', { name: `plum ${n}`, plan });
    tell('setup.ready');
    tell('mash.done');
    wait(12 * MIN);
    tell('pot.rollingBoil');
    for (let stirs = STEPS; stirs < perBatch; stirs++) {
      at += 6 * SECOND;
      tell('pot.stirred');
    }
    if (n === batches) break;
    for (const type of ['pot.thick', 'skim.done', 'strain.done', 'blend.done', 'plate.spooned']) tell(type);
    wait(2 * MIN);
    tell('plate.held');
    tell('jars.ready');
    tell('jars.filled', { full: 6, spare: 1 });
    canner('jars.in');
    canner('canner.fullBoil');
    for (let checks = 0; checks < 3; checks++) {
      wait(4 * MIN);
      canner('canner.boilHolds');
    }
    wait(5 * MIN);
    canner('jars.out');
    wait(24 * HOUR);
    tell('seals.allHeld');
    tell('jars.putAway');
    at += WEEK;
  }
  return entries;
}
