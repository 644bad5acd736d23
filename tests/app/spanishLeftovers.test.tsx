// What once stayed English on a Spanish screen: lists, "no source", the microphone's troubles, the caption after a switch.

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { wanting } from '../../src/app/plan/noPlan.ts';
import { MicrophoneSheet } from '../../src/app/sheets/MicrophoneSheet.tsx';
import { SeeIt } from '../../src/app/sheets/SeeIt.tsx';
import { sourceWords } from '../../src/app/sourceWords.ts';
import type { EarTrouble } from '../../src/kitchen/ports.ts';
import { whyNoMicrophone } from '../../src/voice/microphone.ts';
import { createCatalogue, type Locale } from '../../src/words/catalogue.ts';
import { kitchenAtWork, settle } from '../kitchen/atWork.ts';
import { HandClock, ToldEar, WritingMouth } from '../kitchen/memory.ts';
import { planOf } from '../machines/evening.ts';
import * as fixtures from './fixtures.ts';

const spanish = createCatalogue('es', 'metric');
const english = createCatalogue('en', 'metric');
/** Words that no Spanish sentence holds. */
const ENGLISH = /\b(the|and|is|are|not|with|of|for|your|you|it|this|source|practice|microphone)\b/i;

const troubles: EarTrouble[] = [
  'notAllowed',
  'notFound',
  'inUse',
  'insecure',
  'notOpened',
  'wentAway',
  'stopped',
  'broken',
];

describe('on a Spanish screen', () => {
  test('what is still to be filled in is listed with a Spanish "and"', () => {
    const waiting: Parameters<typeof wanting>[0] = { kind: 'waiting', missing: ['fruit', 'fruitMassKg'] };
    expect(wanting(waiting, english)).toMatch(/ and /);
    expect(wanting(waiting, spanish)).toMatch(/ y /);
    expect(wanting(waiting, spanish)).not.toMatch(ENGLISH);
  });

  test('a step that is common practice says so in Spanish', () => {
    const batch = Object.values(fixtures.states)
      .flatMap(({ batches }) => batches)
      .find(({ state }) => state === 'mashing');
    const html = (catalogue: typeof spanish) =>
      renderToStaticMarkup(
        <SeeIt
          subject={{ kind: 'batch', batch: batch!, canner: null, loads: [] }}
          first={null}
          catalogue={catalogue}
        />,
      );
    expect(html(english)).toContain('common practice, no source');
    expect(html(spanish)).toContain('práctica común, sin fuente');
    expect(html(spanish)).not.toContain('common practice');
    const word = (key: string) => spanish.text({ key });
    expect(sourceWords('from memory: AIB-539 guide 1', word)).toBe('de memoria: AIB-539 guide 1');
  });

  test.each(troubles)('a microphone that is %s is told in each language', (why) => {
    const told = (locale: Locale) => {
      const catalogue = createCatalogue(locale, 'metric');
      return renderToStaticMarkup(
        <MicrophoneSheet
          actions={fixtures.actions}
          catalogue={catalogue}
          ear={fixtures.ear({ kind: 'refused', why })}
          started
          onClose={() => undefined}
        />,
      ).replaceAll(/<[^>]+>/g, ' ');
    };
    expect(told('en')).toMatch(ENGLISH);
    expect(told('es')).not.toMatch(ENGLISH);
    expect(told('es')).toContain(spanish.text({ key: `screen.says.ear.${why}` }));
  });

  test('every error of the browser has a trouble that is told', () => {
    const errors = ['NotAllowedError', 'NotFoundError', 'NotReadableError', 'SomethingElse'];
    const found = [
      ...errors.map((name) => whyNoMicrophone(new DOMException('', name))),
      whyNoMicrophone(new TypeError()),
    ];
    expect(found).toEqual(['notAllowed', 'notFound', 'inUse', 'notOpened', 'insecure']);
    for (const why of found) expect(spanish.text({ key: `screen.says.ear.${why}` })).not.toBe('');
  });
});

describe('when the language is changed over a pot', () => {
  test('caption and notices follow it, there and back, also while a sentence is being said', async () => {
    let catalogue = english;
    const mouth = new WritingMouth();
    const live = await kitchenAtWork({
      clock: new HandClock(Date.UTC(2026, 8, 12, 17)),
      ear: new ToldEar(),
      mouth,
      catalogue: () => catalogue,
    });
    live.trouble('ear', () => catalogue.text({ key: 'screen.says.ear.notFound' }), false);
    await live.plan(planOf());
    await settle();
    const shown = () =>
      [live.view.caption?.text ?? '', ...live.view.notices.map(({ text }) => text)].join(' ');
    expect(shown()).toMatch(ENGLISH);

    catalogue = spanish;
    live.reworded();
    expect(shown()).not.toMatch(ENGLISH);
    expect(live.view.caption?.text).not.toBe('');
    await settle();
    expect(shown()).not.toMatch(ENGLISH);

    catalogue = english;
    live.reworded();
    expect(shown()).toMatch(ENGLISH);
  });
});
