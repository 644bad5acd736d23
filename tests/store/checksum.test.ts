// The checksum against its published check value and against zlib.

import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksum } from '../../src/store/checksum.ts';
import { BEGINNING, follows, readLine, writeLine } from '../../src/store/line.ts';

describe('the checksum', () => {
  // Source: check value of CRC-32/ISO-HDLC for the ASCII digits "123456789", as published with the standard.
  test('of "123456789" is the published cbf43926', () => {
    expect(checksum('123456789')).toBe('cbf43926');
  });

  // Reference library: zlib, as built into Node.
  test('agrees with zlib on any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 1, max: 3000 }), (piece, times) => {
        const text = piece.repeat(times);
        expect(checksum(text)).toBe(crc32(text).toString(16).padStart(8, '0'));
      }),
    );
  });
});

describe('a line', () => {
  const first = writeLine(BEGINNING, 0, '{"a":1}');
  const sum = readLine(first)?.sum ?? '';

  test('is read back as it was written', () => {
    fc.assert(
      fc.property(fc.nat(), fc.json(), (seq, json) => {
        const line = readLine(writeLine(sum, seq, json));
        expect(line).toMatchObject({ seq, json });
        expect(line && follows(sum, line)).toBe(true);
      }),
    );
  });

  test('does not follow another line than the one it was written after', () => {
    const third = readLine(writeLine(sum, 2, '{}'));
    expect(third && follows(BEGINNING, third)).toBe(false);
  });

  test.each(['', '7', '07 9ae0daaf {}', '7 9AE0DAAF {}', '-1 9ae0daaf {}', '7 9ae0daa {}', ' 7 9ae0daaf {}'])(
    'is not made by %j',
    (text) => expect(readLine(text)).toBeNull(),
  );
});
