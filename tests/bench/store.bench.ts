// What does it cost to open a year of logs (50 batches, 400 entries each), and to add one entry to it?

import { bench, describe } from 'vitest';
import { decode, encode, encodeAll } from '../../src/store/decode.ts';
import { writeHeader } from '../../src/store/header.ts';
import { DurableLog } from '../../src/store/log.ts';
import { reconcile } from '../../src/store/reconcile.ts';
import { entryOf, evening } from '../store/evening.ts';
import { filePlace, MemoryDisk } from '../store/places.ts';

const YEAR = 50 * 400;
const header = writeHeader({ version: 1, kitchen: 'bench', generation: 0, begunAt: 0 });
const year = encodeAll(header, evening(YEAR));
const copy = { lines: year, ragged: false };
const text = new TextEncoder().encode(year.map((line) => `${line}\n`).join(''));

describe('opening a year of logs', () => {
  bench('two whole copies, compared and checked', () => {
    reconcile([copy, { lines: [...year], ragged: false }]);
  });
  bench('every entry read and validated', () => {
    decode(year);
  });
  bench('all of it, from two files', async () => {
    const disks = [new MemoryDisk(), new MemoryDisk()];
    for (const disk of disks) disk.log = text;
    const log = new DurableLog({ kitchen: 'bench', places: disks.map(filePlace) });
    await log.open();
  });
});

describe('adding one entry (the codec alone)', () => {
  bench('to an empty log', () => {
    encode(header, entryOf(1));
  });
  bench('after a year', () => {
    encode(year.at(-1) ?? '', entryOf(YEAR + 1));
  });
});
