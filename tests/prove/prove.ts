// `npm run prove`: the exhaustive search over every plan, then the mutants, and what was visited.

import { kitchenWith, type Kitchen } from '../../machines/kitchen/kitchen.ts';
import { firstViolation, mutants, ourCharts } from './mutants.ts';
import { heardBeside, others } from './otherCanner.ts';
import { plans } from './plans.ts';
import { search, START } from './search.ts';

let failures = 0;

console.log(
  'Every reachable moment of one batch and its canner, with everything that can be said in each:\n',
);
const step = kitchenWith(ourCharts);
const beside = others(step, START);
for (const [name, plan] of Object.entries(plans)) {
  const begun = Date.now();
  let words = 0;
  const crossed: string[] = [];
  const onNewStates = (kitchen: Kitchen, now: number): void => {
    const heard = heardBeside(kitchen, now, beside, step);
    words += heard.words;
    crossed.push(...heard.crossed);
  };
  const found = search({ plan, charts: ourCharts, onNewStates });
  console.log(`${name}: ${found.states} moments, ${found.edges} steps, ${secondsSince(begun)} s`);
  console.log(`  batch: ${[...found.batchStates].toSorted().join(', ')}`);
  console.log(`  canner: ${[...found.cannerStates].toSorted().join(', ')}`);
  for (const { property, road } of found.violations)
    console.log(`  BROKEN: ${property}\n    ${road.join(' > ')}`);
  for (const road of found.stuck.slice(0, 3)) console.log(`  STUCK: ${road.join(' > ')}`);
  console.log(`  beside a second canner in each of ${beside.length} states: ${words} words`);
  for (const one of crossed.slice(0, 3)) console.log(`  CROSSED: ${one}`);
  failures += crossed.length;
  failures += found.violations.length + found.stuck.length;
}

console.log('\nEach guard taken out in turn:\n');
for (const { name, charts } of mutants()) {
  const begun = Date.now();
  const caught = firstViolation(charts, [5_000, Infinity]);
  console.log(
    `${caught ? 'caught' : 'MISSED'}  ${name}${caught ? `: ${caught.property}` : ''} (${secondsSince(begun)} s)`,
  );
  if (!caught) failures += 1;
}

console.log(
  failures === 0
    ? '\nNothing unsafe is reachable, and every guard is missed when it is gone.'
    : `\n${failures} faults.`,
);
process.exitCode = failures === 0 ? 0 : 1;

function secondsSince(begun: number): string {
  return ((Date.now() - begun) / 1000).toFixed(0);
}
