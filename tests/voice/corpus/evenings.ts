// What the page would listen for, moment by moment, in evenings of three batches and a canner that come about by chance.

import { batchCommands, cannerCommands } from '../../../machines/dialogue/commands.ts';
import type { BatchCommand, CannerCommand } from '../../../machines/dialogue/commands.ts';
import type { KitchenEvent } from '../../../machines/kitchen/events.ts';
import { MAIN_CANNER } from '../../../machines/kitchen/kitchen.ts';
import { eventOf } from '../../../src/kitchen/choices.ts';
import { correctable } from '../../../src/kitchen/corrections.ts';
import { Expecting } from '../../../src/kitchen/expecting.ts';
import { foldLog, foldOne, type Folded } from '../../../src/kitchen/fold.ts';
import { actorsOf, isOver, withCorrections, type Actors } from '../../../src/kitchen/kitchenView.ts';
import type { LogEntry, OpenPhrase } from '../../../src/kitchen/ports.ts';
import { momentOf } from '../../../src/kitchen/situation.ts';
import type { Choice } from '../../../src/kitchen/view.ts';
import { openPhrases } from '../../../src/words/phrases.en.ts';
import { sayIt } from '../../../src/words/sayit.en.ts';
import { planOf } from '../../machines/evening.ts';
import { between, chance } from './chance.ts';

export const FRUITS = ['damson', 'pear', 'crab apple'];

/** A kitchen at the moment at which its cook says something next, and all that it listens for then. */
export interface OpenMoment {
  entries: readonly LogEntry[];
  now: number;
  open: readonly OpenPhrase[];
}

type Random = () => number;

const MIN_MS = 60_000;
/** Some time between one and nine. */
const [STARTS, LATER_MIN] = [Date.UTC(2026, 8, 12, 13), 8 * 60];
const BEAT_MS = 0.5 * MIN_MS;
/** Where nobody has anything to do, as in the night, half an hour goes by at a time, for two days at most. */
const [REST_MS, MOST_RESTS] = [30 * MIN_MS, 96];
/** How often a cook does what the work asks for next, and not one of the other things that can be told. */
const NEXT_STEP = 0.75;
const MOST_STEPS = 150;
/** Told so seldom that an evening would be over for good too soon. */
const SELDOM: Partial<Record<Choice['command'], number>> = {
  'batch.stopped': 0.05,
  'jars.emptied': 0.2,
  'jars.toFridge': 0.2,
  'batch.held': 0.3,
};

/** The moments of one evening, from the planning to the shelf, each event as the charts took it. */
export function eveningOf(seed: number): OpenMoment[] {
  const random = chance(seed);
  const moments: OpenMoment[] = [];
  let now = STARTS + Math.floor(between(random, 0, LATER_MIN)) * MIN_MS;
  let log = opened(now, random);
  for (let step = 0; step < MOST_STEPS; step++) {
    [log, now] = passes(log, now, between(random, 0.1, 5) * MIN_MS);
    for (let rest = 0; rest < MOST_RESTS && isAtRest(actorsIn(log, now)); rest++)
      [log, now] = passes(log, now, REST_MS, REST_MS);
    const actors = actorsIn(log, now);
    if (actors.batches.every(isOver)) break;
    // The fold lets one list of entries grow.
    moments.push({ entries: [...log.entries], now, open: heardFor(log, now) });
    const choice = chosen(actors, random);
    const event = choice && eventFor(choice, now, random);
    if (event) log = told(log, event, 'voice');
  }
  return moments;
}

/** The page's own way from its log to what the ear is told. */
function heardFor(log: Folded, now: number): readonly OpenPhrase[] {
  let open: readonly OpenPhrase[] = [];
  const expecting = new Expecting({ ear: { expect: (phrases) => (open = phrases) }, phrases: openPhrases });
  expecting.of(momentOf({ actors: actorsIn(log, now), focus: null }, log.entries, now), 'us', now);
  return open;
}

function actorsIn(log: Folded, now: number): Actors {
  return withCorrections(actorsOf(log.kitchen, now, sayIt), correctable(log, now), sayIt);
}

/** Planned one after the other, each a butter, a jam or, of crab apples, a jelly. */
function opened(at: number, random: Random): Folded {
  const products = { damson: ['butter', 'jam'], pear: ['butter', 'jam'], 'crab apple': ['butter', 'jelly'] };
  const batches = Object.entries(products).map(([name, kinds]): KitchenEvent => {
    const plan = planOf({
      fruit: name.replace(' ', '-'),
      product: oneOf(kinds, random),
      jar: oneOf(['half-pint', 'half-pint', 'quarter-pint'], random),
      fruitMassKg: between(random, 1, 2.8),
    });
    return { type: 'batch.planned', at, batch: name.replace(' ', '-'), name, plan };
  });
  return [
    ...batches,
    { type: 'canner.set', at, canner: MAIN_CANNER, jarsPerLoad: 7, preheatMinutes: 25 } as const,
  ].reduce((log, event) => told(log, event, 'touch'), foldLog([]));
}

function told(log: Folded, event: KitchenEvent, source: 'voice' | 'touch' | 'clock'): Folded {
  const step = foldOne(log, { seq: log.entries.length + 1, event, source });
  return step.changed ? step : log;
}

function passes(log: Folded, now: number, ms: number, beatMs = BEAT_MS): [Folded, number] {
  let [later, at] = [log, now];
  while (at < now + ms) {
    at = Math.min(now + ms, at + beatMs);
    later = told(later, { type: 'tick', at }, 'clock');
  }
  return [later, at];
}

const toDo = ({ batches, canners }: Actors): Choice[] =>
  [...batches.filter((batch) => !isOver(batch)), ...canners].flatMap(({ choices }) =>
    choices.filter(({ command }) => command in batchCommands || command in cannerCommands),
  );

const isAtRest = (actors: Actors): boolean =>
  !actors.batches.every(isOver) && !toDo(actors).some(({ main }) => main);

function chosen(actors: Actors, random: Random): Choice | undefined {
  const all = toDo(actors);
  const next = all.filter(({ main }) => main);
  if (next.length > 0 && random() < NEXT_STEP) return oneOf(next, random);
  const others = all.filter(({ command }) => random() < (SELDOM[command] ?? 1));
  return oneOf(others.length > 0 ? others : all, random);
}

function eventFor({ command, about, slots }: Choice, at: number, random: Random): KitchenEvent | null {
  if (about === null) return null;
  const n = 1 + Math.floor(random() * 6);
  const counted = { n, fractionOfStart: between(random, 0.4, 0.9), ...slots };
  return eventOf(command as BatchCommand | CannerCommand, about, counted, at);
}

function oneOf<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)]!;
}
