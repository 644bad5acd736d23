// Is the plan that is spoken the plan that is shown, and can a cook say that they leave and are back?

import { beforeEach, expect, test, vi } from 'vitest';
import { proofWords } from '../../src/kitchen/evening/planWords.ts';
import { timeOfPlan } from '../../src/kitchen/evening/times.ts';
import { usualEvening, type EveningSettings } from '../../src/kitchen/evening/settings.ts';
import type { LiveKitchen } from '../../src/kitchen/live.ts';
import { createCatalogue } from '../../src/words/catalogue.ts';
import * as english from '../../src/words/phrases.en.ts';
import * as spanish from '../../src/words/phrases.es.ts';
import { planOf } from '../machines/evening.ts';
import { kitchenAtWork, settle as settleWords } from './atWork.ts';
import { HandClock, ToldEar, WritingMouth } from './memory.ts';
import { steadyPlanner, type SteadyPlanner } from './steadyPlanner.ts';

vi.setConfig({ testTimeout: 60_000 });

const MINUTE_MS = 60_000;
const START = new Date(2026, 8, 12, 16, 2).getTime();

let settings: EveningSettings;
let clock: HandClock;
let ear: ToldEar;
let mouth: WritingMouth;
let planner: SteadyPlanner;
let live: LiveKitchen;

async function settle(): Promise<void> {
  await settleWords();
  await planner.settled();
}

async function open(language: 'en' | 'es', fruits: readonly string[]): Promise<void> {
  settings = usualEvening;
  clock = new HandClock(START);
  ear = new ToldEar();
  mouth = new WritingMouth();
  planner = steadyPlanner();
  const catalogue = createCatalogue(language, 'us');
  live = await kitchenAtWork({
    clock,
    ear,
    mouth,
    catalogue: () => catalogue,
    phrases: language === 'en' ? english.openPhrases : spanish.openPhrases,
    planner,
    eveningSettings: () => settings,
    setAway: (away) => {
      settings = { ...settings, away };
      live.replan();
    },
  });
  for (const fruit of fruits) await live.plan(planOf({ fruit }));
  await turn(MINUTE_MS);
}

async function turn(ms: number): Promise<void> {
  for (let left = ms; left > 0; left -= 5_000) {
    clock.turn(Math.min(5_000, left));
    await settle();
  }
}

/** What is answered to a sentence. */
async function answered(words: string): Promise<string> {
  const before = mouth.said.length;
  expect(ear.hear(words), `"${words}" can be said now`).toBe(true);
  await settle();
  await turn(20_000);
  return mouth.said.slice(before).join(' ');
}

const shown = () => live.view.evening;

beforeEach(() => open('en', ['plum', 'pear']));

test('what is spoken of the plan is what is shown: the same calls at the same times, in the same order', async () => {
  const answer = await answered('what is the plan');
  const { agenda, plan } = shown() ?? { agenda: [], plan: null };
  if (!plan) throw new Error('No plan is shown.');
  expect(agenda.length).toBeGreaterThan(2);
  let from = 0;
  for (const { at, names } of agenda) {
    const time = timeOfPlan(plan.request, at);
    const place = Math.max(answer.indexOf(time, from), answer.indexOf('Now', from));
    expect(place, `${time} ${names.join(' ')} in "${answer}"`).toBeGreaterThanOrEqual(from);
    for (const name of names) expect(answer.slice(place)).toContain(name);
    from = place + 1;
  }
  expect(answer).toContain(`about ${timeOfPlan(plan.request, plan.finish.likely)}`);
  expect(answer.trimEnd().endsWith(createCatalogue('en', 'us').text(proofWords(plan)))).toBe(true);
});

test.each([
  [{ proven: false, within: null, by: 'own' }, /by our own search/, /búsqueda propia/],
  [{ proven: false, within: null, by: 'solver' }, /by the solver/, /por el optimizador/],
  [
    { proven: true, within: 0, by: 'own' },
    /^Proven:.* no better plan exists/,
    /^Demostrado:.* no hay plan mejor/,
  ],
  [
    { proven: false, within: 4, by: 'own' },
    /^Proven:.*more than four minutes/,
    /^Demostrado:.*más de cuatro minutos/,
  ],
  [{ proven: false, within: 90, by: 'own' }, /by our own search/, /búsqueda propia/],
] as const)(
  'of the plan %o it is told whose it is and how good, in both languages',
  (plan, english, spanish) => {
    expect(createCatalogue('en', 'us').text(proofWords(plan))).toMatch(english);
    expect(createCatalogue('es', 'us').text(proofWords(plan))).toMatch(spanish);
  },
);

test('"I leave at five for half an hour" keeps the hands free then, and "I am here again" takes it back', async () => {
  const answer = await answered('i leave at five for half an hour');
  expect(answer).toMatch(/You are away from 5:00 to 5:30/);
  const absence = { cook: 0, from: expect.closeTo(58, 0) as number, to: expect.closeTo(88, 0) as number };
  expect(shown()?.plan.request.absences).toEqual([absence]);
  const [away] = shown()?.plan.request.absences ?? [];
  for (const { attention, start, end } of shown()?.plan.tasks ?? [])
    if (attention === 'hands')
      expect(end <= (away?.from ?? 0) + 0.6 || start >= (away?.to ?? 0) - 0.6).toBe(true);
  expect(await answered('i am here again')).toMatch(/counts on you/);
  expect(shown()?.plan.request.absences).toEqual([]);
});

test('"I am away for twenty minutes" begins now', async () => {
  await answered('i am away for twenty minutes');
  const [away] = shown()?.plan.request.absences ?? [];
  expect((away?.to ?? 0) - (away?.from ?? 0)).toBeCloseTo(20, 6);
  expect(away?.from).toBeGreaterThan(0);
  expect(away?.from).toBeLessThan(3);
});

test('one batch alone has no plan: who asks after it hears so, and what comes next', async () => {
  await open('en', ['plum']);
  expect(await answered('what is the plan')).toMatch(/no plan needed.* Lay out/i);
  expect(ear.hear('i leave at five for half an hour')).toBe(false);
});

test('Spanish asks for the plan and says to leave in its own words', async () => {
  await open('es', ['plum', 'pear']);
  expect(await answered('cuál es el plan')).toMatch(/A las \d+:\d\d|Ahora/);
  expect(await answered('me ausento media hora')).toMatch(/Usted no está de/);
});
