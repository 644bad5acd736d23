// A search that has just been loaded is several times slower than one that has run for a while: the browser compiles
// what runs often. So a planner that nobody has asked yet plans an evening that nobody cooks, a short stretch at a time.

import { planBatch } from '../../core/index.ts';
import { planEvening, questionOf, replanEvening, type EveningRequest } from '../../core/evening/index.ts';

/** A question that comes meanwhile waits no longer than about this. */
const STRETCH_MS = 40;
/** After these the search is about as quick as it gets; measured in Node, see tests/evening/MEASURED.md. */
const STRETCHES = 20;
/** For the ranges and the chances, which are worked out by other code than the search. */
const EVENINGS = 4;

const POTS = [
  ['damson', 'jam', 1.4],
  ['pear', 'butter', 2],
  ['plum', 'butter', 2.4],
  ['apricot', 'jam', 1.2],
  ['apple', 'butter', 1.8],
] as const;

function madeUp(): EveningRequest {
  return {
    beganAt: 0,
    batches: POTS.map(([fruit, product, fruitMassKg]) => ({
      id: fruit,
      name: fruit,
      plan: planBatch({ fruit, product, fruitMassKg, jar: 'half-pint', elevationM: 100, keep: 'shelf' }),
    })),
    cooks: 1,
    absences: [],
    burners: ['one', 'two', 'three', 'four'].map((id) => ({ id, size: 'large' })),
    canners: [{ id: 'first' }, { id: 'second' }],
    latestFinish: null,
  };
}

/** Run on from stretch to stretch until it is done or a real question comes. */
export function* warmUp(now: () => number): Generator<void> {
  const request = madeUp();
  yield;
  const effort = { budgetMs: STRETCH_MS, now, evenings: EVENINGS };
  const plan = planEvening(request, { ...effort, seed: 0, ordersOnly: true });
  yield;
  const begun = plan.tasks.find(({ start }) => start === 0);
  const progress = { tasks: begun ? { [begun.id]: { startedAt: 0 } } : {} };
  replanEvening(plan, progress, 1, { ...effort, seed: 0, budgetMs: 0, firstOrdersMs: STRETCH_MS });
  yield;
  const { own } = questionOf(plan);
  for (let seed = 1; seed <= STRETCHES; seed++) {
    own({ ...effort, seed });
    yield;
  }
}
