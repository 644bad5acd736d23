// A pot's name where there is little room: whole if it fits, and never without what tells it from another.

import { expect, test } from 'vitest';
import { nameWithin } from '../../src/app/stove/names.ts';
import { widthEm } from '../../src/app/stove/widths.ts';
import { allFruits } from '../../src/tables/fruits/index.ts';

test('a name that fits stays as it is said', () => {
  expect(nameWithin('damson plum', 4.6)).toBe('damson plum');
  expect(nameWithin('second pear', 4.6)).toBe('second pear');
});

test('a second pot of a fruit keeps its number when its name is shortened', () => {
  expect(nameWithin('second damson plum', 4.6)).toBe('damson plum 2');
  expect(nameWithin('second damson plum', 3.4)).toBe('damson 2');
  expect(nameWithin('third white peach or nectarine', 4.6)).toBe('white peach 3');
  expect(nameWithin('second boysenberry', 3.4)).toMatch(/^boys\w*\. 2$/);
});

test('every fruit, a first and a second of it, fits a plate on a phone, and no two of a kind look alike', () => {
  for (const { name } of allFruits) {
    const shown = [name, `second ${name}`].map((one) => nameWithin(one, 3.4));
    for (const one of shown) expect(widthEm(one)).toBeLessThanOrEqual(3.4);
    expect(new Set(shown).size).toBe(2);
  }
});
