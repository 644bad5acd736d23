// Whose voice it was: the times at which the page may hear itself, and what is believed then.

import { describe, expect, it } from 'vitest';

import type { CommandId } from '../../machines/dialogue/commands.ts';
import type { Hearing } from '../../src/kitchen/ports.ts';
import { Masking, overOwnVoice } from '../../src/voice/masking.ts';
import { ownSentences, saysItself } from '../../src/voice/ownWords.ts';
import { FRAME_MS } from '../../src/voice/segmenter.ts';

const TAIL = Math.ceil(250 / FRAME_MS);

describe('while the page speaks', () => {
  it('what was said before it began is the cook’s, what ends while it speaks may be its own', () => {
    const masking = new Masking();
    masking.set(true, 100);
    expect(masking.covers(60, 100)).toBe(false);
    expect(masking.covers(60, 101)).toBe(true);
    expect(masking.covers(4990, 5000)).toBe(true);
  });

  it('trust comes back a quarter of a second after it stops, and not before', () => {
    const masking = new Masking();
    masking.set(true, 100);
    expect(masking.freeFrom).toBe(Infinity);
    masking.set(false, 200);
    expect(masking.freeFrom).toBe(200 + TAIL);
    expect(masking.covers(199 + TAIL, 260)).toBe(true);
    expect(masking.covers(200 + TAIL, 260)).toBe(false);
  });

  it('a breath between two utterances does not open the ear to the end of the first', () => {
    const masking = new Masking();
    masking.set(true, 100);
    masking.set(false, 200);
    masking.set(true, 202);
    expect(masking.covers(110, 150)).toBe(true);
    expect(masking.freeFrom).toBe(Infinity);
    masking.set(false, 300);
    expect(masking.freeFrom).toBe(300 + TAIL);
  });

  it('a cook who calls is believed at once, for the page has stopped', () => {
    const masking = new Masking();
    masking.set(true, 100);
    masking.endsNow(150);
    expect(masking.covers(150, 200)).toBe(false);
  });

  it('being told twice that it speaks changes nothing', () => {
    const masking = new Masking();
    masking.set(true, 100);
    masking.set(true, 150);
    expect(masking.covers(101, 120)).toBe(true);
  });

  it('a page that never spoke masks nothing', () => {
    expect(new Masking().covers(0, 1)).toBe(false);
  });
});

describe('what is believed over its own voice', () => {
  const heard = (command: CommandId, confidence: number, kind: 'heard' | 'unsure' = 'heard'): Hearing => ({
    kind,
    words: 'any',
    understood: { command, slots: {} },
    confidence,
    ms: 1,
  });

  it('a plea for silence, however unsure of it', () => {
    expect(overOwnVoice(heard('hush', 0.5)).kind).toBe('heard');
  });

  it('a plain step, and not one that is only likely', () => {
    expect(overOwnVoice(heard('skim.done', 0.9)).kind).toBe('heard');
    expect(overOwnVoice(heard('skim.done', 0.84)).kind).toBe('nothing');
    expect(overOwnVoice(heard('skim.done', 0.9, 'unsure')).kind).toBe('nothing');
  });

  it.each(['canner.fullBoil', 'canner.boilDropped', 'plate.held', 'seals.allHeld'] as const)(
    '%s is asked back, never done',
    (command) => expect(overOwnVoice(heard(command, 0.99)).kind).toBe('unsure'),
  );
});

describe('the page’s own words', () => {
  it('are every run of neighbouring clauses, in plain words', () => {
    expect(ownSentences('Skim it. Say: the foam is off.')).toEqual([
      'skim it',
      'skim it say',
      'skim it say the foam is off',
      'say',
      'say the foam is off',
      'the foam is off',
      // Of a clause that is still being said.
      'skim',
      'the',
      'the foam',
      'the foam is',
    ]);
    expect(ownSentences('Twenty-one jars: don’t tilt.'.replace('’', "'"))).toContain('twenty one jars');
  });

  it('hold a command that stands in them, and none that does not', () => {
    const own = ownSentences('Say: the foam is off. About twenty minutes more.');
    expect(saysItself(own, 'the foam is off')).toBe(true);
    expect(saysItself(own, 'foam is off')).toBe(true);
    expect(saysItself(own, 'twenty more minutes')).toBe(false);
    expect(saysItself(own, 'hush')).toBe(false);
    expect(saysItself(own, 'foam')).toBe(true);
    expect(saysItself(own, 'oam is off')).toBe(false);
  });

  it('are none where nothing is said', () => {
    expect(ownSentences(' … ')).toEqual([]);
  });
});
