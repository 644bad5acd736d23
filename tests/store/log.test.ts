// The durable log of a kitchen: written before it counts, mended from its other copy, honest when it cannot be.

import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { IdbLines } from '../../src/store/idb-lines.ts';
import { DurableLog, type LogOptions } from '../../src/store/log.ts';
import { entryOf, EVENING, evening } from './evening.ts';
import { filePlace, MemoryDisk } from './places.ts';

let disk: MemoryDisk;
let kitchen: string;
let number = 0;

beforeEach(() => {
  disk = new MemoryDisk();
  kitchen = `test-${++number}`;
});

const logWith = (options: Partial<LogOptions> = {}) =>
  new DurableLog({
    kitchen,
    places: [filePlace(disk), new IdbLines(kitchen)],
    now: () => EVENING,
    // A busy machine is slow to write, and no copy is late for that.
    patienceMs: 60_000,
    ...options,
  });

/** Cooks for a while and closes the page. */
async function cooked(length: number): Promise<void> {
  const log = logWith();
  await log.open();
  for (const entry of evening(length))
    expect(await log.append(entry)).toEqual({ trouble: [], durable: true });
  await log.close();
}

const database = () => openDB(`stovehand-${kitchen}`);
async function wipeDatabase(): Promise<void> {
  const db = await database();
  await db.clear('lines');
  db.close();
}
async function linesInDatabase(): Promise<unknown[]> {
  const db = await database();
  const lines = await db.getAll('lines');
  db.close();
  return lines;
}
const linesInFile = () => new TextDecoder().decode(disk.log).split('\n').slice(0, -1);

describe('a kitchen that is opened again', () => {
  test('starts empty and without trouble the first time', async () => {
    expect(await logWith().open()).toEqual({ entries: [], lastSeenAt: null, trouble: [] });
  });

  test('has everything that was acknowledged, in both copies', async () => {
    await cooked(9);
    expect(await logWith().open()).toEqual({
      entries: evening(9),
      lastSeenAt: EVENING + 9 * 61_000,
      trouble: [],
    });
    expect(await linesInDatabase()).toEqual(linesInFile());
    expect(linesInFile()).toHaveLength(10);
  });

  test('goes on where it stopped', async () => {
    await cooked(3);
    const log = logWith();
    await log.open();
    await log.append(entryOf(4));
    await log.close();
    expect((await logWith().open()).entries).toEqual(evening(4));
  });

  test('knows since when nobody was listening', async () => {
    const log = logWith();
    await log.open();
    await log.append(entryOf(1));
    log.seen(EVENING + 999_000);
    await log.close();
    expect((await logWith().open()).lastSeenAt).toBe(EVENING + 999_000);
  });

  test('does not know the evening of another kitchen', async () => {
    await cooked(3);
    const practice = new DurableLog({
      kitchen: `${kitchen}-practice`,
      places: [new IdbLines(`${kitchen}-practice`)],
    });
    expect((await practice.open()).entries).toEqual([]);
  });
});

describe('when one copy is lost or harmed', () => {
  test('a wiped database is made again from the file, and the cook is told', async () => {
    await cooked(5);
    await wipeDatabase();
    const opened = await logWith().open();
    expect(opened.entries).toEqual(evening(5));
    expect(opened.trouble).toMatchObject([
      { kind: 'evicted', says: expect.stringContaining('nothing is lost') },
    ]);
    expect(await linesInDatabase()).toEqual(linesInFile());
  });

  test('a lost file is made again from the database', async () => {
    await cooked(5);
    disk.files.clear();
    expect((await logWith().open()).entries).toEqual(evening(5));
    expect(linesInFile()).toEqual(await linesInDatabase());
  });

  test('a torn last line is dropped without a word: nobody was told that it was safe', async () => {
    await cooked(5);
    disk.log = disk.log.subarray(0, disk.log.length - 7);
    expect(await logWith().open()).toMatchObject({ entries: evening(5), trouble: [] });
    expect(linesInFile()).toEqual(await linesInDatabase());
  });

  test('a damaged file is mended, and what stood there is kept aside untouched', async () => {
    await cooked(5);
    const harmed = disk.log.slice();
    harmed[300] = (harmed[300] ?? 0) ^ 4;
    disk.log = harmed;
    const log = logWith();
    const opened = await log.open();
    expect(opened.entries).toEqual(evening(5));
    expect(opened.trouble).toMatchObject([{ kind: 'corrupt' }]);
    const [kept] = await log.keptAside();
    expect(new Uint8Array((await kept?.content.arrayBuffer()) ?? new ArrayBuffer())).toEqual(harmed);
  });

  test('any harm to either copy costs nothing', async () => {
    const harm = fc.record({ file: fc.boolean(), at: fc.nat(), how: fc.constantFrom('cut', 'flip', 'wipe') });
    await fc.assert(
      fc.asyncProperty(harm, async ({ file, at, how }) => {
        disk = new MemoryDisk();
        kitchen = `test-${++number}`;
        await cooked(4);
        if (file) harmFile(at, how);
        else await harmDatabase(at, how);
        const opened = await logWith().open();
        expect(opened.entries).toEqual(evening(4));
        expect(await linesInDatabase()).toEqual(linesInFile());
      }),
      { numRuns: 60 },
    );
  });

  test('while cooking: a database that is emptied under our hands is filled again with the next entry', async () => {
    const log = logWith();
    await log.open();
    await log.append(entryOf(1));
    await wipeDatabase();
    expect(await log.append(entryOf(2))).toMatchObject({ durable: true, trouble: [{ kind: 'evicted' }] });
    expect(await linesInDatabase()).toEqual(linesInFile());
  });
});

function harmFile(at: number, how: string): void {
  const bytes = disk.log.slice();
  if (how === 'wipe') disk.files.clear();
  else if (how === 'cut') disk.log = bytes.subarray(0, at % bytes.length);
  else {
    bytes[at % bytes.length] = (bytes[at % bytes.length] ?? 0) ^ (1 << (at % 8));
    disk.log = bytes;
  }
}

async function harmDatabase(at: number, how: string): Promise<void> {
  const db = await database();
  const key = at % 5;
  if (how === 'wipe') await db.clear('lines');
  else if (how === 'cut') await db.delete('lines', key);
  else await db.put('lines', `${await db.get('lines', key)}x`, key);
  db.close();
}

describe('when both copies are harmed', () => {
  test('what can be read is kept, the rest stays aside, and the cook is told to look for herself', async () => {
    await cooked(5);
    await wipeDatabase();
    const lines = linesInFile();
    disk.log = new TextEncoder().encode(
      lines.map((line, i) => (i === 3 ? 'ruined\n' : `${line}\n`)).join(''),
    );
    const log = logWith();
    const opened = await log.open();
    expect(opened.entries).toEqual(evening(2));
    expect(opened.trouble).toMatchObject([
      { kind: 'corrupt', says: expect.stringContaining('after the first 2 entries') },
    ]);
    expect(await log.keptAside()).toHaveLength(1);
    await log.append(entryOf(3, 1));
    await log.close();
    expect((await logWith().open()).entries).toEqual([...evening(2), entryOf(3, 1)]);
  });

  const inFile = (change: (line: string, n: number) => string) => {
    disk.log = new TextEncoder().encode(linesInFile().map(change).join(''));
  };

  test('in different places: nothing is missing, and nobody is alarmed', async () => {
    await cooked(5);
    const whole = linesInFile();
    inFile((line, n) => (n === 2 ? 'ruined\n' : `${line}\n`));
    await harmDatabase(4, 'flip');
    const opened = await logWith().open();
    expect(opened.entries).toEqual(evening(5));
    expect(opened.trouble).toHaveLength(2);
    for (const { says } of opened.trouble) expect(says).toContain('was mended from the other');
    expect([await linesInDatabase(), linesInFile()]).toEqual([whole, whole]);
  });

  test('a stray line in one copy, while the other is whole, is no loss', async () => {
    await cooked(5);
    inFile((line, n) => (n === 3 ? `${line}\nstray\n` : `${line}\n`));
    const { trouble } = await logWith().open();
    expect(trouble).toMatchObject([{ says: expect.stringContaining('was mended from the other') }]);
  });

  test('an entry that only the file had, and that is ruined there, is missed', async () => {
    await cooked(5);
    const db = await database();
    await db.delete('lines', 5);
    db.close();
    inFile((line, n) => (n === 5 ? `${line}x\n` : `${line}\n`));
    const { entries, trouble } = await logWith().open();
    expect(entries).toEqual(evening(4));
    expect(trouble).toMatchObject([{ says: expect.stringContaining('damaged after the first 4 entries') }]);
  });

  test('both wiped: a witness in a third place tells that there was more', async () => {
    let known = 0;
    const witness = { read: () => known, write: (entries: number) => void (known = entries) };
    const log = logWith({ witness });
    await log.open();
    await log.append(entryOf(1));
    await log.append(entryOf(2));
    await log.close();
    await wipeDatabase();
    disk.files.clear();
    expect(await logWith({ witness }).open()).toMatchObject({
      entries: [],
      trouble: [{ kind: 'evicted', says: expect.stringContaining('2 entries were saved, 0 are left') }],
    });
  });
});

describe('when a place cannot be written', () => {
  test('a full disk: the other copy goes on, and it is said once', async () => {
    const log = logWith();
    await log.open();
    disk.room = 0;
    expect(await log.append(entryOf(1))).toMatchObject({ durable: true, trouble: [{ kind: 'full' }] });
    expect(await log.append(entryOf(2))).toEqual({ durable: true, trouble: [] });
    disk.room = Infinity;
    await log.append(entryOf(3));
    await log.close();
    expect(linesInFile()).toEqual(await linesInDatabase());
    expect(linesInFile()).toHaveLength(4);
  });

  test('nothing can be saved: said with every entry, kept in memory, offered as a file, written once there is room', async () => {
    const log = logWith({ places: [filePlace(disk)] });
    await log.open();
    disk.room = 0;
    for (const entry of evening(3)) {
      const { durable, trouble } = await log.append(entry);
      expect(durable).toBe(false);
      expect(trouble.at(-1)).toMatchObject({
        kind: 'full',
        says: expect.stringContaining('save the kitchen’s log as a file'),
      });
    }
    expect((await (await log.exportFile()).text()).split('\n')).toHaveLength(5);
    disk.room = Infinity;
    expect(await log.append(entryOf(4))).toMatchObject({ durable: true });
    expect((await logWith({ places: [filePlace(disk)] }).open()).entries).toEqual(evening(4));
  });

  test('storage refused from the start: the kitchen opens all the same', async () => {
    disk.refuses = 'SecurityError';
    const log = logWith({ places: [filePlace(disk)] });
    expect(await log.open()).toMatchObject({
      entries: [],
      trouble: [{ kind: 'refused' }, { kind: 'refused' }],
    });
    expect(await log.append(entryOf(1))).toMatchObject({ durable: false });
  });

  test('a place that hangs is not waited for beyond the patience, as long as the other has it', async () => {
    const log = logWith({ patienceMs: 20 });
    await log.open();
    let letGo = () => {};
    disk.gate = new Promise((resolve) => (letGo = resolve));
    expect(await log.append(entryOf(1))).toEqual({ durable: true, trouble: [] });
    letGo();
    await log.close();
    expect(linesInFile()).toHaveLength(2);
  });

  test('an entry that only one copy has is not acknowledged while the other may still take it', async () => {
    const log = logWith();
    await log.open();
    let letGo = () => {};
    disk.gate = new Promise((resolve) => (letGo = resolve));
    let acknowledged = false;
    const appended = log.append(entryOf(1)).then(() => (acknowledged = true));
    await expect.poll(linesInDatabase).toHaveLength(2);
    expect(acknowledged).toBe(false);
    letGo();
    await appended;
    expect(linesInFile()).toHaveLength(2);
  });

  test('entries that come while a write is under way share the next one', async () => {
    const log = logWith();
    await log.open();
    const before = disk.writes;
    await Promise.all(evening(50).map((entry) => log.append(entry)));
    expect(disk.writes - before).toBeLessThanOrEqual(3);
    expect(linesInFile()).toHaveLength(51);
  });
});

describe('what may be appended', () => {
  test('nothing before the log was opened', async () => {
    await expect(logWith().append(entryOf(1))).rejects.toThrow('opened');
  });

  test('only the entry that follows', async () => {
    const log = logWith();
    await log.open();
    await expect(log.append(entryOf(2))).rejects.toThrow('Entry 2 cannot follow entry 0.');
  });

  test('only what could be read back', async () => {
    const log = logWith();
    await log.open();
    const broken = { ...entryOf(1), event: { type: 'tick' as const, at: Number.NaN } };
    await expect(log.append(broken)).rejects.toThrow('could not be read back');
    expect(await log.append(entryOf(1))).toMatchObject({ durable: true });
  });

  test('nothing by a tab that only looks on; it repairs nothing either', async () => {
    await cooked(2);
    await wipeDatabase();
    const log = logWith({ mode: 'look' });
    expect((await log.open()).entries).toEqual(evening(2));
    expect(await linesInDatabase()).toEqual([]);
    expect(await log.append(entryOf(3))).toMatchObject({ durable: false, trouble: [{ kind: 'readonly' }] });
  });
});

describe('another version', () => {
  const two = {
    version: 2,
    migrations: [
      {
        to: 2,
        says: 'the voice was called ear',
        up: (body: unknown) => ({ ...(body as object), source: 'voice' }),
      },
    ],
  };

  test('an older log is brought up to date, and the old one kept aside in both places', async () => {
    await cooked(3);
    const log = logWith({ format: two });
    const opened = await log.open();
    expect(opened.entries.map(({ source }) => source)).toEqual(['voice', 'voice', 'voice']);
    expect(opened.trouble).toMatchObject([
      { kind: 'older-version', says: expect.stringContaining('kept aside') },
    ]);
    expect(await log.keptAside()).toHaveLength(2);
    await log.close();
    expect(await logWith({ format: two }).open()).toMatchObject({ entries: opened.entries, trouble: [] });
  });

  test('a newer log is kept aside untouched, and the kitchen starts empty', async () => {
    const newer = logWith({ format: two });
    await newer.open();
    await newer.append(entryOf(1));
    await newer.close();
    const log = logWith();
    expect(await log.open()).toMatchObject({ entries: [], trouble: [{ kind: 'older-version' }] });
    const kept = await log.keptAside();
    expect(kept).toHaveLength(2);
    for (const { content } of kept) expect(await content.text()).toContain('"version":2');
    await log.append(entryOf(1, 1));
    await log.close();
    expect(await logWith().open()).toMatchObject({ entries: [entryOf(1, 1)], trouble: [] });
  });
});

describe('the log as a file', () => {
  async function exported(length: number): Promise<Blob> {
    await cooked(length);
    const log = logWith();
    await log.open();
    return log.exportFile();
  }

  test('comes back whole in a fresh browser', async () => {
    const file = await exported(6);
    disk = new MemoryDisk();
    await wipeDatabase();
    const log = logWith();
    await log.open();
    expect(await log.importFile(file)).toEqual({ taken: true, entries: evening(6), trouble: [] });
    await log.append(entryOf(7));
    await log.close();
    expect((await logWith().open()).entries).toEqual(evening(7));
  });

  test('takes the place of a longer log, which is kept aside', async () => {
    const file = await exported(2);
    const log = logWith();
    await log.open();
    await log.append(entryOf(3));
    await log.importFile(file);
    expect(await log.keptAside()).toHaveLength(2);
    await log.close();
    expect(await logWith().open()).toMatchObject({ entries: evening(2), trouble: [] });
  });

  test('is read up to where it is damaged, and the cook is told', async () => {
    const text = (await (await exported(5)).text()).split('\n');
    text[4] = text[4]?.replace('at', 'et') ?? '';
    const log = logWith();
    await log.open();
    expect(await log.importFile(new Blob([text.join('\n')]))).toMatchObject({
      taken: true,
      entries: evening(3),
      trouble: [{ kind: 'corrupt', says: expect.stringContaining('first 3 entries') }],
    });
  });

  test.each(['', 'a shopping list', '{"format":"stovehand-log"}'])(
    'is refused where it is no log: %j',
    async (text) => {
      const log = logWith();
      await log.open();
      await log.append(entryOf(1));
      expect(await log.importFile(new Blob([text]))).toMatchObject({
        taken: false,
        trouble: [{ kind: 'corrupt' }],
      });
      await log.close();
      expect((await logWith().open()).entries).toEqual(evening(1));
    },
  );

  test('of the practice kitchen is refused in the real one', async () => {
    const practice = new DurableLog({ kitchen: 'practice', places: [filePlace(new MemoryDisk())] });
    await practice.open();
    const log = logWith();
    await log.open();
    expect(await log.importFile(await practice.exportFile())).toMatchObject({
      taken: false,
      trouble: [{ kind: 'refused' }],
    });
  });
});

describe('a snapshot', () => {
  test('is found again with the entry it was taken after', async () => {
    await cooked(5);
    const log = logWith();
    await log.open();
    await log.writeSnapshot(4, { pots: 2 });
    await log.close();
    const again = logWith();
    await again.open();
    expect(await again.readSnapshot()).toEqual({ seq: 4, data: { pots: 2 } });
  });

  test('of another log is none', async () => {
    await cooked(5);
    const log = logWith();
    await log.open();
    await log.writeSnapshot(4, {});
    await log.importFile(await log.exportFile());
    await log.append(entryOf(6, 1));
    disk.files.delete('kitchen.log');
    await wipeDatabase();
    const again = logWith();
    await again.open();
    expect(await again.readSnapshot()).toBeNull();
  });

  test('that was damaged is none', async () => {
    await cooked(2);
    const log = logWith();
    await log.open();
    await log.writeSnapshot(2, { pots: 2 });
    const note = disk.files.get('snapshot.note') ?? new Uint8Array();
    disk.files.set(
      'snapshot.note',
      note.map((byte, i) => (i === 20 ? byte ^ 1 : byte)),
    );
    expect(await log.readSnapshot()).toBeNull();
  });
});
