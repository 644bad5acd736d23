// A page with a year of logs: what does it cost to open it, and to add one entry?

import { kitchenLog } from '../../../src/store/open-log.ts';
import { entryOf } from '../evening.ts';

export interface YearCost {
  openMs: number;
  firstAppendsMs: number[];
  lastAppendsMs: number[];
}

declare global {
  var year: (entries: number) => Promise<YearCost>;
}

const SAMPLES = 50;

globalThis.year = async (entries) => {
  const log = kitchenLog('year');
  await log.open();
  let seq = 0;
  const appendOneByOne = async () => {
    const took: number[] = [];
    for (let n = 0; n < SAMPLES; n++) {
      const began = performance.now();
      await log.append(entryOf(++seq));
      took.push(performance.now() - began);
    }
    return took;
  };
  const firstAppendsMs = await appendOneByOne();
  const bulk: Promise<unknown>[] = [];
  while (seq < entries - SAMPLES) bulk.push(log.append(entryOf(++seq)));
  await Promise.all(bulk);
  const lastAppendsMs = await appendOneByOne();
  await log.close();
  const began = performance.now();
  const opened = await kitchenLog('year').open();
  const openMs = performance.now() - began;
  if (opened.entries.length !== entries)
    throw new Error(`${opened.entries.length} of ${entries} entries came back`);
  return { openMs, firstAppendsMs, lastAppendsMs };
};
