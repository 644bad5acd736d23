// Every state draws: rendered to HTML without a browser, with the words that a cook must find in it.

import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { App } from '../../src/app/App.tsx';
import type { AppProps } from '../../src/app/actions.ts';
import { PlanSheet } from '../../src/app/plan/PlanSheet.tsx';
import { examples, toRequest } from '../../src/app/plan/draft.ts';
import { batchRequestSchema } from '../../src/core/index.ts';
import * as fixtures from './fixtures.ts';
import { plan, pumpkinPlan } from './plans.ts';

function render(view: AppProps['view'], over: Partial<AppProps> = {}): string {
  return renderToStaticMarkup(
    <App
      view={view}
      actions={fixtures.actions}
      settings={fixtures.settings}
      catalogue={fixtures.catalogue}
      ear={fixtures.listening}
      started
      {...over}
    />,
  );
}

/** The text a cook would read or hear read, tags taken away. */
const text = (html: string) =>
  html
    .replaceAll(/<[^>]*aria-label="([^"]*)"[^>]*>/g, ' $1 ')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ');

const view = (name: string) => {
  const found = fixtures.states[name];
  if (!found) throw new Error(`No state ${name}`);
  return found;
};

/** State, clock, action and the step that carries the work on. */
const mustShow: Record<string, string[]> = {
  settingUp: ['Damson plum', 'Lay out tools', 'All is ready'],
  mashing: ['Mash fruit', 'It is mashed'],
  comingToBoil: ['6–14', 'To full boil', 'Rolling boil', 'high heat'],
  askedRollingBoil: ['Full boil?', 'Is it at a rolling boil', 'Yes', 'No'],
  simmering: ['27–42', 'Let it simmer', 'Thick enough', 'low heat', 'stop at 1¾ in'],
  stirDue: ['6:24', 'Stir now', 'I stirred'],
  skimming: ['Skim foam', 'Foam is off'],
  straining: ['Strain it', 'Strained', 'Skip straining'],
  blending: ['Blend smooth', 'It is smooth'],
  plateSpooning: ['Test on plate', 'On the plate'],
  plateCooling: ['0:44', 'Let it cool'],
  plateJudging: ['Does it hold?', 'It holds', 'Still runny', 'Press and hold'],
  held: ['11:24', 'On hold', 'Carry on'],
  caught: ['Don’t scrape', 'In a clean pot'],
  readyingJars: ['Get jars hot'],
  filling: ['Fill jars', 'Jars filled', '¼ in empty'],
  waitingForCanner: ['9:06', 'Load canner'],
  cannerLoaded: ['5:30', 'To full boil', 'Full rolling boil', 'Press and hold'],
  processing: ['6:18', 'Keep it boiling', 'The boil dropped'],
  boilLost: ['Boil it again', 'The clock is void', 'One earlier run is void', 'Full rolling boil'],
  processingAgain: ['8:48', '2 earlier runs are void', 'Void'],
  askedStillBoiling: ['4:00', 'Still full boil?', 'Yes', 'No', 'Press and hold'],
  standing: ['3:00', 'Lid off, wait', 'Jars are out'],
  resting: ['10:40', 'Leave alone', 'A ping'],
  checkingSeals: ['Press lids', 'All sealed', 'Some did not seal'],
  puttingAway: ['Label, store', 'All put away'],
  putAway: ['Done'],
  unprocessed: ['Fridge or redo', 'not safe'],
};

describe('the cooking screen', () => {
  test('has an expectation for every state', () => {
    expect(Object.keys(mustShow).toSorted()).toEqual(Object.keys(fixtures.states).toSorted());
  });

  test.each(Object.entries(mustShow))('%s shows its words', (name, words) => {
    const page = text(render(view(name)));
    for (const word of words) expect(page.toLowerCase()).toContain(word.toLowerCase());
  });

  test('never offers to give up a batch within reach of the thumb', () => {
    for (const state of Object.values(fixtures.states))
      expect(text(render(state))).not.toContain('Give up this batch');
  });

  test('answers to the boil are held, not tapped, and so is taking back', () => {
    const page = render(view('askedStillBoiling'));
    const held = [...page.matchAll(/choice guarded[^]*?choice-label">([^<]*)/g)].map(([, label]) => label);
    expect(held).toEqual(['Yes', 'No', 'Undo']);
  });

  test('several pots stand side by side, each with its clock', () => {
    const page = text(render(fixtures.several));
    for (const word of ['Damson plum', 'Pear', '4–9 min', 'Crab apple', 'Canner', '12–21 min'])
      expect(page).toContain(word);
  });

  test('says so where there is no microphone', () => {
    expect(text(render(view('simmering'), { ear: fixtures.noMicrophone }))).toContain('No microphone');
  });

  test('tells how far the ear is loaded', () => {
    expect(text(render(view('simmering'), { ear: fixtures.loading }))).toContain('62 %');
  });

  test('shows what was heard, and whether it was believed', () => {
    expect(text(render(view('askedRollingBoil')))).toContain('“it boils” – is that right?');
  });

  test('puts grave trouble on the screen and leaves the rest behind More', () => {
    const page = text(render(fixtures.troubled));
    expect(page).toContain('The disk of this device is full');
    expect(page).not.toContain('no voice of its own');
  });

  test('offers to take over where another tab cooks', () => {
    const looking = {
      ...view('simmering'),
      notices: [{ id: 'readonly-mirroring', text: 'Another tab is cooking here.', grave: true }],
    };
    expect(text(render(looking))).toContain('Take over on this screen');
  });

  test('marks practice as practice', () => {
    expect(text(render(fixtures.practising))).toContain('Practice 10×');
  });

  test('reads in metric where the cook does', () => {
    expect(
      text(render(view('simmering'), { settings: { ...fixtures.settings, units: 'metric' } })),
    ).toContain('stop at 4.3 cm');
  });
});

describe('the planning page', () => {
  test('of an empty kitchen tells what to fill in', () => {
    const page = text(render(fixtures.empty));
    for (const word of [
      'From a heap of fruit',
      'Fill in the fruit, its weight, and your altitude',
      'damson plums',
      'Practise on a pretend stove',
    ])
      expect(page.toLowerCase()).toContain(word.toLowerCase());
    expect(render(fixtures.empty)).not.toContain('start-bar');
  });

  test('of the example has a plan, its reasons, and the start', () => {
    const asked = toRequest(examples[0]!.draft);
    const page = text(
      render(fixtures.empty, { arrival: { kind: 'request', request: batchRequestSchema.parse(asked) } }),
    );
    for (const word of [
      'Damson plum',
      'Safe for the shelf if you process it',
      'Start cooking',
      'Then boil hard',
      'Make ready',
      'Source',
      'Copy a link',
    ])
      expect(page).toContain(word);
  });

  test('tells in a sentence what is wrong with a link', () => {
    const page = render(fixtures.empty, {
      arrival: { kind: 'refused', says: 'The plan in this link cannot be used.' },
    });
    expect(page).toMatch(/role="alert"[^>]*>\s*The plan in this link cannot be used\./);
  });

  test('lists what is on the stove while another batch is planned', () => {
    const asked = toRequest(examples[1]!.draft);
    const page = text(
      render(fixtures.several, { arrival: { kind: 'request', request: batchRequestSchema.parse(asked) } }),
    );
    for (const word of ['On the stove now', 'Crab apple', 'Add to the stove']) expect(page).toContain(word);
  });

  test('refuses the shelf loud and plain, with reasons and remedy', () => {
    const page = text(
      renderToStaticMarkup(<PlanSheet plan={pumpkinPlan} units="us" catalogue={fixtures.catalogue} />),
    );
    for (const word of ['Not safe for the shelf: refrigerate', 'low-acid', 'Freeze it in small jars'])
      expect(page).toContain(word);
    expect(page).not.toContain('Safe for the shelf if');
  });

  test('promises no shelf for the fridge', () => {
    const page = text(
      renderToStaticMarkup(
        <PlanSheet plan={plan({}, { keep: 'fridge' })} units="us" catalogue={fixtures.catalogue} />,
      ),
    );
    expect(page).toContain('For the fridge');
    expect(page).not.toContain('Safe for the shelf');
  });
});
