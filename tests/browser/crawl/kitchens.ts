// Which saved kitchens bring the page to every screen it can show? Found by walking the charts, not written down.

import { batchState } from '../../../machines/batch/choices.ts';
import { cannerState } from '../../../machines/canner/choices.ts';
import { emptyKitchen, stepKitchen, type Kitchen } from '../../../machines/kitchen/kitchen.ts';
import type { Effect, Message } from '../../../machines/kitchen/effects.ts';
import type { KitchenEvent } from '../../../machines/kitchen/events.ts';
import { glance, subjectOf, type Subject } from '../../../src/app/stove/glance.ts';
import { yesNo } from '../../../src/app/stove/question.ts';
import { sceneOf } from '../../../src/app/stove/scene.ts';
import { actorsOf, focusOf } from '../../../src/kitchen/kitchenView.ts';
import type { LogEntry } from '../../../src/kitchen/ports.ts';
import type { KitchenView } from '../../../src/kitchen/view.ts';
import { createCatalogue } from '../../../src/words/catalogue.ts';
import { sayIt } from '../../../src/words/sayit.en.ts';
import { planOf } from '../../machines/evening.ts';
import { BATCH, CANNER, passings, sayings } from '../../prove/events.ts';

export interface SavedKitchen {
  /** The state of the batch, of the canner, and what the screen tells to do. */
  name: string;
  /** Of its batch and its canner, as "batch.simmering". */
  states: string[];
  /** What happened, in order, in kitchen milliseconds. */
  events: KitchenEvent[];
  /** The instant at which the page opens it. */
  opensAt: number;
  /** The batch or canner that is to be looked at. */
  looksAt: string;
  /** The question that is put just after it opens, by the key of its sentence. */
  asks: string | null;
  /** Nobody was here since the last thing happened. */
  away: boolean;
}

const START = Date.UTC(2026, 8, 12, 17);
/** What people do takes a moment. */
const HAND_MS = 20_000;

const catalogue = createCatalogue('en', 'us');
const opening: KitchenEvent[] = [
  { type: 'batch.planned', at: START, batch: BATCH, name: 'damson plum', plan: planOf() },
  { type: 'canner.set', at: START, canner: CANNER, jarsPerLoad: 7, preheatMinutes: 25 },
];

interface Moment {
  kitchen: Kitchen;
  events: KitchenEvent[];
  now: number;
}

/** One kitchen for each screen that one batch and its canner can show, shortest road first. */
export function everyKitchen(): SavedKitchen[] {
  const saved = new Map<string, SavedKitchen>();
  const met = new Set<string>();
  const queue: Moment[] = [];
  visit(opening.reduce<Moment>(after, { kitchen: emptyKitchen, events: [], now: START }));
  for (let head = 0; head < queue.length; head++) {
    const here = queue[head];
    if (here) for (const event of movesFrom(here)) follow(here, event);
  }
  return [...saved.values()];

  function follow(here: Moment, event: KitchenEvent): void {
    const { kitchen, effects, changed } = stepKitchen(here.kitchen, event);
    if (!changed) return;
    const asked = event.type === 'tick' || event.type === 'kitchen.returned' ? questionIn(effects) : null;
    const away = event.type === 'kitchen.returned';
    if (asked) {
      const shown = screensOf({ ...here, kitchen, now: event.at })[0]?.looksAt ?? BATCH;
      save(`asked: ${asked.key}`, { ...here, now: event.at }, shown, { asks: asked.key, away });
    }
    if (!away) visit({ kitchen, events: [...here.events, event], now: event.at });
  }

  function visit(moment: Moment): void {
    const road: string[] = [];
    for (const { name, looksAt } of screensOf(moment)) {
      save(name, moment, looksAt);
      road.push(name);
    }
    const key = road.join(' | ');
    if (met.has(key)) return;
    met.add(key);
    queue.push(moment);
  }

  function save(
    name: string,
    { kitchen, events, now }: Moment,
    looksAt: string,
    more: Partial<SavedKitchen> = {},
  ): void {
    if (saved.has(name)) return;
    const states = statesOf(kitchen);
    saved.set(name, { name, states, events, opensAt: now, looksAt, asks: null, away: false, ...more });
  }
}

function after({ kitchen, events }: Moment, event: KitchenEvent): Moment {
  return { kitchen: stepKitchen(kitchen, event).kitchen, events: [...events, event], now: event.at };
}

/** What a cook can say twenty seconds later, the clock's beat at each deadline, and coming back late. */
function movesFrom({ kitchen, now }: Moment): KitchenEvent[] {
  return [...sayings(now + HAND_MS), ...passings(kitchen, now)].map(({ event }) => event);
}

function statesOf({ batches, canners }: Kitchen): string[] {
  return [
    ...Object.values(batches).map((batch) => `batch.${batchState(batch)}`),
    ...Object.values(canners).map((canner) => `canner.${cannerState(canner)}`),
  ];
}

function questionIn(effects: readonly Effect[]): Message | null {
  const put = effects.flatMap((effect) =>
    effect.type === 'say' && effect.untilAnswered && yesNo({ message: effect.message, urgency: 'step' })
      ? [effect.message]
      : [],
  );
  return put.at(-1) ?? null;
}

/** What the page shows at a moment: by itself, and when the cook looks at the others. */
function screensOf({ kitchen, now }: Moment): { name: string; looksAt: string }[] {
  const actors = actorsOf(kitchen, now, sayIt);
  const own = focusOf(actors, null, now);
  const others = [...actors.batches, ...actors.canners].map(({ id }) => id).filter((id) => id !== own);
  return [own, ...others].map((focus) => {
    const view = { ...actors, now, focus, question: null } as unknown as KitchenView;
    const subject = subjectOf(view);
    if (!subject) throw new Error('A kitchen with a batch has something to show.');
    const looksAt = subject.kind === 'batch' ? subject.batch.id : subject.canner.id;
    return { name: screenName(view, subject), looksAt };
  });
}

function screenName(view: KitchenView, subject: Subject): string {
  const { which, state, face, act, tone } = glance(view, subject, catalogue);
  const clock = face ? `${catalogue.text(face.label)} ${face.unit}` : 'no clock';
  const voids = Math.min(2, subject.canner?.voids.length ?? 0);
  const told = [which, state, act, clock, sceneOf(subject, view.batches).kind];
  return [...told, ...(voids > 0 ? [`void ${voids}`] : []), ...(tone === 'warn' ? ['warned'] : [])].join(
    ' · ',
  );
}

const MIN = 60_000;
const SECOND = 'canner-2';

/** What else is on the stove on a full evening: told so many minutes before the page opens. */
const others: { fruit: string; told: [KitchenEvent['type'], number][] }[] = [
  {
    fruit: 'pear',
    told: [
      ['setup.ready', 8],
      ['mash.done', 6],
    ],
  },
  { fruit: 'crab-apple', told: [['setup.ready', 7]] },
  { fruit: 'apricot', told: [] },
  {
    fruit: 'fig',
    told: [
      ['setup.ready', 9],
      ['mash.done', 5],
      ['batch.held', 4],
    ],
  },
  {
    fruit: 'quince',
    told: [
      ['setup.ready', 9],
      ['mash.done', 7],
      ['pot.rollingBoil', 1],
    ],
  },
];

/** The same kitchen with so many batches in all, and a second canner that came to heat beside the first. */
export function among(kitchen: SavedKitchen, batches: number, canners: 1 | 2 = 1): SavedKitchen {
  const at = (minutes: number, i: number) => kitchen.opensAt - minutes * MIN + i;
  const more = others.slice(0, batches - 1).flatMap(({ fruit, told }, i): KitchenEvent[] => [
    {
      type: 'batch.planned',
      at: at(10, i),
      batch: fruit,
      name: fruit.replace('-', ' '),
      plan: planOf({ fruit }),
    },
    ...told.map(([type, minutes]) => ({ type, at: at(minutes, i), batch: fruit }) as KitchenEvent),
  ]);
  const second: KitchenEvent[] = [
    { type: 'canner.set', at: at(35, 5), canner: SECOND, jarsPerLoad: 7, preheatMinutes: 25 },
    { type: 'canner.heatOn', at: at(30, 5), canner: SECOND },
    { type: 'canner.hot', at: at(4, 5), canner: SECOND },
  ];
  const events = [...kitchen.events, ...more, ...(canners === 2 ? second : [])].toSorted(
    (a, b) => a.at - b.at,
  );
  const called = [...(batches > 1 ? [`${batches} batches`] : []), ...(canners === 2 ? ['two canners'] : [])];
  return { ...kitchen, name: [...called, kitchen.name].join(', '), events };
}

/** The log of a kitchen, moved so that it is opened at `at`. */
export function logAt({ events, opensAt }: SavedKitchen, at: number): LogEntry[] {
  const by = at - opensAt;
  return events.map((event, i) => ({ seq: i + 1, event: moved(event, by), source: 'touch' }));
}

function moved(event: KitchenEvent, by: number): KitchenEvent {
  return { ...event, at: event.at + by };
}
