// Four batches at once, one pair of hands: a cook that knows only what it hears brings every jar to the shelf.

import { expect, test } from 'vitest';
import { NUMBERED } from '../../../machines/dialogue/canners.ts';
import { byWords, eveningAtOneTable, type Turn } from './table.ts';
import { robotEvening } from './evening.ts';

test('four batches by word alone, with a runny plate, a lost boil, an errand and a lid that stays up', async () => {
  const mischief = {
    impatientWith: 'pear',
    flameDropsAfter: 4,
    calledAway: 10,
    unsealed: 'crab apple',
  };
  const { plans, cook, prompts } = robotEvening(mischief);
  const { turns } = await eveningAtOneTable(plans, cook, byWords(prompts));
  expect([...cook.ends.keys()].toSorted()).toEqual(['crab apple', 'damson plum', 'pear', 'quince']);
  for (const end of cook.ends.values()) expect(end).not.toMatch(/spoilt/);
  expect(cook.ends.get('crab apple')).toMatch(/kept cold/);
  const said = turns.map(({ text }) => text).join('\n');
  expect(said).toMatch(/clock is void/);
  expect(said).toMatch(/pear is still runny/);
  expect(overlapping(turns.filter(({ who }) => who === 'kitchen'))).toEqual([]);
  // Who is called to put a pot on is not told just before that its time has come.
  expect(said).not.toMatch(/Put the ([a-z ]+) on now, not at [^\n]*\n\1: Heat on/i);
  // Who asks after a pot whose turn has not come is told to wait, as the screen does, not to go on with it.
  const answers = turns.flatMap(({ who, text }, i) =>
    who === 'cook' && text.startsWith('what is next for') ? [turns[i + 1]?.text] : [],
  );
  expect(answers).toContain('Wait: no heat.');
  expect(said).toMatch(/Lowest heat, lid on, stir often. Canner free in/);
}, 400_000);

test('a cook who did not hear how the canner is set up puts it on when the plan says so, and loses nothing', async () => {
  const { plans, cook, prompts } = robotEvening({});
  const deaf = (heard: string) => prompts.promptsIn(heard).filter(({ key }) => key !== 'canner.fillIt');
  const { turns } = await eveningAtOneTable(plans, cook, byWords({ ...prompts, promptsIn: deaf }));
  expect(turns.map(({ text }) => text).join('\n')).toMatch(/Put the canner on now/);
  expect([...cook.ends.keys()].toSorted()).toEqual(['crab apple', 'damson plum', 'pear', 'quince']);
  for (const end of cook.ends.values()) expect(end).not.toMatch(/spoilt/);
}, 400_000);

test('four batches and two canners, each told apart by word alone, with a lost boil in one of them', async () => {
  const { plans, cook, prompts } = robotEvening({ flameDropsAfter: 4 }, NUMBERED);
  const { turns } = await eveningAtOneTable(plans, cook, byWords(prompts));
  expect([...cook.ends.keys()].toSorted()).toEqual(['crab apple', 'damson plum', 'pear', 'quince']);
  for (const end of cook.ends.values()) expect(end).not.toMatch(/spoilt/);
  const voids = turns.flatMap(({ text }) => /^(.* canner): clock void/i.exec(text)?.[1]?.toLowerCase() ?? []);
  expect(voids).toEqual([cook.flameDroppedUnder]);
  expect(withJarsAtOnce(turns)).toBe(NUMBERED.length);
  expect(overlapping(turns.filter(({ who }) => who === 'kitchen'))).toEqual([]);
}, 400_000);

test('a cook who did not hear a step asks what is next, and is told', async () => {
  const { plans, cook, prompts } = robotEvening({});
  const lost: string[] = [];
  const words = byWords(prompts);
  const { turns } = await eveningAtOneTable(plans, cook, {
    ...words,
    async toCook(text) {
      const heard = await words.toCook(text);
      const isLost = heard.some(({ key }) => key === 'batch.strain') && !lost.includes(text);
      if (isLost) lost.push(text);
      return isLost ? [] : heard;
    },
  });
  expect(lost.length).toBeGreaterThan(0);
  expect([...cook.ends.keys()].toSorted()).toEqual(['crab apple', 'damson plum', 'pear', 'quince']);
  for (const end of cook.ends.values()) expect(end).not.toMatch(/spoilt/);
  expect(
    turns.filter(({ who, text }) => who === 'cook' && text.startsWith('what is next')).length,
  ).toBeGreaterThan(0);
}, 400_000);

/** Sentences that begin before the one before them has ended. */
function overlapping(turns: readonly Turn[]): string[] {
  return turns.flatMap((turn, i) => {
    const before = turns[i - 1];
    return before && turn.from < before.to ? [`${before.text} / ${turn.text}`] : [];
  });
}

/** How many canners had jars in them at the same time, by what the cook told. */
function withJarsAtOnce(turns: readonly Turn[]): number {
  const full = new Set<string>();
  return turns.reduce((most, { who, text }) => {
    const [, way, canner = ''] = /^the jars are (in|out of) the (.*)$/.exec(text) ?? [];
    if (who === 'cook' && way === 'in') full.add(canner);
    if (who === 'cook' && way === 'out of') full.delete(canner);
    return Math.max(most, full.size);
  }, 0);
}
