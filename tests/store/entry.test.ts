// What may stand in the log, and what is refused.

import { describe, expect, test } from 'vitest';
import { batchRequestSchema, planBatch } from '../../src/core/index.ts';
import { logEntrySchema, readLogEntry } from '../../src/kitchen/entry.ts';
import { evening, EVENING } from './evening.ts';

const entry = (event: object, rest: object = {}) => ({ seq: 1, source: 'voice', event, ...rest });
const stirred = { type: 'pot.stirred', at: EVENING, batch: 'damson' };
const accepts = (value: unknown) => logEntrySchema.safeParse(value).success;

describe('an entry', () => {
  test('of an evening is read back unchanged', () => {
    for (const one of evening(40)) expect(logEntrySchema.parse(JSON.parse(JSON.stringify(one)))).toEqual(one);
  });

  test.each(['shelf', 'fridge', 'freezer'] as const)(
    'carries a whole plan for the %s through the log',
    (keep) => {
      const request = {
        fruit: 'plum',
        product: 'jam',
        fruitMassKg: 3,
        jar: 'half-pint',
        elevationM: 300,
        keep,
      };
      const plan = planBatch(batchRequestSchema.parse(request));
      const planned = entry({ type: 'batch.planned', at: EVENING, batch: 'damson', name: 'damson', plan });
      const written: unknown = JSON.parse(JSON.stringify(planned));
      expect(logEntrySchema.parse(written)).toEqual(written);
      expect(written).toEqual(planned);
    },
  );

  test.each([
    ['a canner at a full boil', { type: 'canner.fullBoil', at: EVENING, canner: 'canner-1' }],
    [
      'water that was added without losing the boil',
      { type: 'canner.waterAdded', at: EVENING, canner: 'c', keptBoiling: true },
    ],
    ['a jar that broke', { type: 'jar.broke', at: EVENING, canner: 'c' }],
    ['a jar that broke, and whose', { type: 'jar.broke', at: EVENING, canner: 'c', batch: 'pear' }],
    ['that there is more in the pot', { type: 'pot.more', at: EVENING, batch: 'pear' }],
    ['a reading of the depth alone', { type: 'reading.taken', at: EVENING, batch: 'pear', depthM: 0.04 }],
    ['a return after an absence', { type: 'kitchen.returned', at: EVENING, awaySince: EVENING - 1000 }],
    [
      'a correction of when',
      { type: 'log.corrected', at: EVENING, seq: 3, how: { kind: 'when', at: EVENING - 1 } },
    ],
    [
      'a correction of which batch',
      { type: 'log.corrected', at: EVENING, seq: 3, how: { kind: 'batch', batch: 'pear' } },
    ],
    ['a correction of whether', { type: 'log.corrected', at: EVENING, seq: 3, how: { kind: 'never' } }],
  ])('may say: %s', (_, event) => expect(accepts(entry(event))).toBe(true));

  test.each([
    ['an unknown event', entry({ type: 'pot.exploded', at: EVENING, batch: 'damson' })],
    ['an event about no batch', entry({ type: 'pot.stirred', at: EVENING })],
    ['an event at no time', entry({ ...stirred, at: null })],
    ['an event before the epoch', entry({ ...stirred, at: -1 })],
    ['a stray field', entry({ ...stirred, colour: 'purple' })],
    ['half a jar', entry({ type: 'jars.filled', at: EVENING, batch: 'damson', full: 6.5, spare: 0 })],
    ['an unknown source', entry(stirred, { source: 'rumour' })],
    ['entry number nought', entry(stirred, { seq: 0 })],
    [
      'a correction of nothing in particular',
      entry({ type: 'log.corrected', at: EVENING, seq: 3, how: { kind: 'somehow' } }),
    ],
    [
      'a plan that is none',
      entry({ type: 'batch.planned', at: EVENING, batch: 'b', name: 'damson', plan: {} }),
    ],
  ])('may not say: %s', (_, value) => expect(accepts(value)).toBe(false));
});

describe('an entry read quickly', () => {
  const words = ['pot.stirred', 'jars.in', 'tick', 'jars.eaten', 'no.such', 7, null, undefined];
  const instants = [0, 12, -1, NaN, Infinity, '12', undefined];
  const names = ['plum', '', 3, undefined];
  const extras: object[] = [{}, { count: 1 }, { more: true }, { canner: 'canner-1' }];

  test('is what the schema says of it, whatever it is', () => {
    for (const type of words)
      for (const at of instants)
        for (const id of names)
          for (const about of ['batch', 'canner'])
            for (const more of extras)
              for (const [seq, source] of [
                [1, 'voice'],
                [0, 'voice'],
                [1.5, 'touch'],
                [1, 'nobody'],
              ] as const)
                for (const event of [{ type, at, [about]: id, ...more }, null, 'x']) {
                  const value = { seq, event, source };
                  const parsed = logEntrySchema.safeParse(value);
                  expect(readLogEntry(value)).toEqual(parsed.success ? parsed.data : null);
                }
    expect(readLogEntry({ seq: 1, event: { type: 'pot.stirred', at: 1, batch: 'plum' } })).toBeNull();
  });
});
