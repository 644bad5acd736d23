// Our own scheduler against published instances with proven optima. Sources: job shops of Fisher & Thompson 1963 (ft06),
// Lawrence 1984 (la01); j30 of PSPLIB (Kolisch & Sprecher 1997); j10, j20 of Kolisch, Schwindt & Sprecher 1999; ubo20 of
// Franck, Neumann & Schwindt 2001.

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

import { schedule } from '../../src/core/schedule/index.ts';
import { readInstance } from '../../src/serve/instances/read.ts';
import { faultsIn, priceOf } from './checker.ts';
import { patience } from './patience.ts';

const instance = (name: string) =>
  readInstance(readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8'));

test.each([
  ['ft06', 55],
  ['la01', 666],
  ['j305_1.sm', 53],
  ['j3021_7.sm', 65],
  ['j10_PSP3.sch', 36],
  ['j10_PSP33.sch', 70],
  ['j20_PSP182.sch', 97],
  ['ubo20_psp54.sch', 57],
])('%s ends at %i, and that it cannot end sooner is proven', (name, optimum) => {
  const project = instance(name);
  const plan = schedule(project, patience(20_000));
  if (plan.kind === 'none') throw new Error('There is a plan, and none was found.');
  expect(faultsIn(project, plan.starts)).toEqual([]);
  expect(plan).toMatchObject({
    makespan: optimum,
    cost: optimum,
    lowerBound: optimum,
    proven: true,
    by: 'own',
  });
  expect(priceOf(project, plan.starts)).toBe(optimum);
});

test.each(['j10_PSP159.sch', 'j20_PSP31.sch', 'ubo20_psp43.sch'])('%s is proven to have no plan', (name) => {
  expect(schedule(instance(name), patience(20_000))).toEqual({ kind: 'none', proven: true, by: 'own' });
});
