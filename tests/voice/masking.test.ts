import { describe, expect, it } from 'vitest';

import { Masking } from '../../src/voice/masking.ts';
import { FRAME_MS } from '../../src/voice/segmenter.ts';

const TAIL = Math.ceil(250 / FRAME_MS);

describe('while the page speaks', () => {
  it('what was said before it began is believed, what ends while it speaks is not', () => {
    const masking = new Masking();
    masking.set(true, 100);
    expect(masking.covers(100)).toBe(false);
    expect(masking.covers(101)).toBe(true);
    expect(masking.covers(5000)).toBe(true);
  });

  it('trust comes back a quarter of a second after it stops, and not before', () => {
    const masking = new Masking();
    masking.set(true, 100);
    masking.set(false, 200);
    expect(masking.covers(200 + TAIL)).toBe(true);
    expect(masking.covers(201 + TAIL)).toBe(false);
    expect(masking.endsAt(200 + TAIL)).toBe(true);
    expect(masking.endsAt(199 + TAIL)).toBe(false);
  });

  it('a breath between two utterances does not open the ear to the end of the first', () => {
    const masking = new Masking();
    masking.set(true, 100);
    masking.set(false, 200);
    masking.set(true, 202);
    expect(masking.covers(150)).toBe(true);
    expect(masking.endsAt(200 + TAIL)).toBe(false);
    masking.set(false, 300);
    expect(masking.covers(300 + TAIL)).toBe(true);
    expect(masking.covers(301 + TAIL)).toBe(false);
  });

  it('being told twice that it speaks changes nothing', () => {
    const masking = new Masking();
    masking.set(true, 100);
    masking.set(true, 150);
    expect(masking.covers(120)).toBe(true);
  });

  it('a page that never spoke masks nothing', () => {
    expect(new Masking().covers(1)).toBe(false);
  });
});
