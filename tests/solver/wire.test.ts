// The messages to and from the solver, against the format's own description.

import { expect, test } from 'vitest';
import { fieldsOf, wholesOf, Writer } from '../../src/solver/wire.ts';

test('numbers come back as they went, negative and large ones too', () => {
  const values = [0, 1, -1, 127, 128, -128, 2 ** 40, -(2 ** 40), Number.MAX_SAFE_INTEGER];
  const [packed] = [...fieldsOf(new Writer().wholes(3, values).bytes)];
  if (packed?.kind !== 'bytes') throw new Error('A packed list is bytes.');
  expect(packed.field).toBe(3);
  expect(wholesOf(packed.value)).toEqual(values);
});

test('a message is its bytes as the format defines them', () => {
  // From the format's own description (protobuf.dev, "Encoding"): field 1 holding 150 is 08 96 01.
  expect([...new Writer().whole(1, 150).bytes]).toEqual([0x08, 0x96, 0x01]);
  const outer = new Writer().message(3, new Writer().whole(1, 150)).real(36, 1.5);
  expect([...fieldsOf(outer.bytes)]).toEqual([
    { field: 3, kind: 'bytes', value: Uint8Array.from([0x08, 0x96, 0x01]) },
    { field: 36, kind: 'real', value: 1.5 },
  ]);
});

test('what is cut short is refused, and what is not whole is not sent', () => {
  expect(() => [...fieldsOf(Uint8Array.from([0x08, 0x96]))]).toThrow('ends within');
  expect(() => new Writer().whole(1, 1.5)).toThrow('no whole number');
});
