// The sheets that ask one word more: did it keep boiling, and whose jar was it? And how More opens.

import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { BoilSheet } from '../../src/app/sheets/BoilSheet.tsx';
import { CountSheet } from '../../src/app/sheets/CountSheet.tsx';
import { MoreSheet } from '../../src/app/sheets/MoreSheet.tsx';
import { ReadingSheet } from '../../src/app/sheets/ReadingSheet.tsx';
import { WhoseSheet } from '../../src/app/sheets/WhoseSheet.tsx';
import { subjectOf } from '../../src/app/stove/glance.ts';
import { choiceOf } from '../../src/kitchen/choices.ts';
import { sayIt } from '../../src/words/sayit.en.ts';
import { actions, catalogue, settings, states } from './fixtures.ts';

const nothing = () => undefined;
const sheet = { catalogue, onAnswer: nothing, onClose: nothing };

describe('water was added', () => {
  test('a yes vouches for the clock and is held; a no is a tap, and the first thing at hand', () => {
    const html = renderToStaticMarkup(<BoilSheet {...sheet} />);
    expect(html).toContain('Did it keep boiling hard all the while?');
    expect(html).toMatch(/class="choice guarded[^"]*"[^]*It boiled hard all along/);
    expect(html).toMatch(/class="choice main"><span class="choice-label">No, or not sure/);
  });
});

describe('a jar broke', () => {
  test('each batch in the load is a button', () => {
    const whose = ['plum', 'pear'].map((name) => ({ about: name, name }));
    const choice = { ...choiceOf('jar.broke', 'canner-1', false, sayIt), asks: 'whose' as const, whose };
    const html = renderToStaticMarkup(<WhoseSheet {...sheet} choice={choice} />);
    expect(html).toContain('Whose jar broke?');
    expect(html).toContain('The plum');
    expect(html).toContain('The pear');
  });
});

describe('the boil dropped earlier', () => {
  test('how many minutes ago is counted', () => {
    const choice = choiceOf('boil.droppedEarlier', 'canner-1', false, sayIt);
    const html = renderToStaticMarkup(<CountSheet {...sheet} choice={choice} expected={1} />);
    expect(html).toContain('Minutes ago');
  });
});

describe('a reading', () => {
  test('each says what it would tell before it is taken, and where it tells nothing nothing is said', () => {
    const foretold = {
      leftMinutes: { low: 8.2, likely: 19, high: 31.6 },
      by: {
        massKg: { spanMinutes: 5.6 },
        depthM: 'little' as const,
        tempC: null,
        fractionOfStart: 'little' as const,
      },
    };
    const html = renderToStaticMarkup(
      <ReadingSheet {...sheet} title="A reading" settings={settings} foretold={foretold} />,
    );
    expect(html).toContain('8–32 min left, by what I know now.');
    expect(html).toMatch(/Weight in the pot[^<]*<span[^>]*>Narrows that to a span of about 6 min\./);
    expect(html).toMatch(
      /Depth on the spoon handle<span[^>]*>Tells little now: weigh the pot, or dip later\./,
    );
    expect(html).toMatch(/Temperature<\/span>/);
    expect(html).toMatch(/By eye: of its height at the start, there is left<span[^>]*>Tells little now\./);
    for (const share of ['Three quarters', 'Two thirds', 'Half', 'A third', 'A quarter'])
      expect(html).toContain(`<span>${share}</span>`);
  });
});

describe('More', () => {
  afterEach(() => vi.unstubAllGlobals());
  const html = (open = true) => {
    const view = states['simmering'];
    const subject = view && subjectOf(view);
    if (!subject) throw new Error('Nothing simmers.');
    return renderToStaticMarkup(
      <MoreSheet
        open={open}
        {...sheet}
        view={view}
        actions={actions}
        settings={settings}
        subject={subject}
        onChoose={nothing}
        onGo={nothing}
      />,
    );
  };

  test('what answers the press is its head and one sentence; the pot, the choices and the rest come once that is painted', () => {
    const whole = html();
    expect(whole).toMatch(
      /class="lead">Let it simmer<[^]*The pot: a simmer[^]*It stands at[^]*You can do or say/,
    );
    vi.stubGlobal('window', {});
    const first = html();
    expect(first.match(/<p\b/g)).toHaveLength(1);
    expect(first.match(/<button\b/g)).toHaveLength(1);
    expect(first.length).toBeLessThan(whole.length / 10);
  });

  test('until it is asked for its head waits, in the same words, out of reach, as a dialog that is not open', () => {
    vi.stubGlobal('window', {});
    expect(html(true)).toMatch(/^<dialog open=""/);
    expect(html(false)).toMatch(/^<dialog [^>]*aria-hidden="true"><div class="sheet-body" inert="">/);
    expect(html(false).replace(' aria-hidden="true"', '').replace(' inert=""', '')).toBe(
      html(true).replace(' open=""', ''),
    );
  });
});
