// Every act has a key, and no key is stolen from where it has its own use.

import { describe, expect, test } from 'vitest';
import { keyAct, type Pressed } from '../../src/app/keys.ts';

const press = (key: string, over: Partial<Pressed> = {}): Pressed => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  inField: false,
  onButton: false,
  ...over,
});

test.each([
  ['Enter', { kind: 'main' }],
  ['1', { kind: 'choice', index: 0 }],
  ['9', { kind: 'choice', index: 8 }],
  ['u', { kind: 'talk', command: 'go.back' }],
  ['U', { kind: 'talk', command: 'go.back' }],
  ['r', { kind: 'talk', command: 'repeat' }],
  ['y', { kind: 'talk', command: 'yes' }],
  ['n', { kind: 'talk', command: 'no' }],
  ['h', { kind: 'help' }],
  ['m', { kind: 'more' }],
  ['ArrowRight', { kind: 'turn', by: 1 }],
])('%s', (key, act) => {
  expect(keyAct(press(key), true)).toEqual(act);
});

describe('no act', () => {
  test.each([['0'], ['x'], ['F5'], ['Tab'], ['Escape']])('for %s', (key) => {
    expect(keyAct(press(key), true)).toBeNull();
  });

  test('with a modifier: that belongs to the browser', () => {
    expect(keyAct(press('r', { ctrlKey: true }), true)).toBeNull();
    expect(keyAct(press('r', { metaKey: true }), true)).toBeNull();
  });

  test('while a field is typed in', () => {
    expect(keyAct(press('1', { inField: true }), true)).toBeNull();
  });

  test('for Enter on a button: the button is pressed', () => {
    expect(keyAct(press('Enter', { onButton: true }), true)).toBeNull();
  });

  test('for letters and digits when single keys are switched off; Enter and arrows stay', () => {
    expect(keyAct(press('u'), false)).toBeNull();
    expect(keyAct(press('1'), false)).toBeNull();
    expect(keyAct(press('Enter'), false)).toEqual({ kind: 'main' });
    expect(keyAct(press('ArrowLeft'), false)).toEqual({ kind: 'turn', by: -1 });
  });
});
