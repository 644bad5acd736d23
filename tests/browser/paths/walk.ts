// Walks the real page along roads generated from the charts, until every state and every edge was visited, and
// compares the page with the charts after each step.

import { batchState } from '../../../machines/batch/choices.ts';
import { cannerState } from '../../../machines/canner/choices.ts';
import type { BatchId, KitchenEvent } from '../../../machines/kitchen/events.ts';
import {
  emptyKitchen,
  kitchenWith,
  MAIN_CANNER,
  stepKitchen,
  type Kitchen,
} from '../../../machines/kitchen/kitchen.ts';
import { planBatch } from '../../../src/core/index.ts';
import type { BatchRequest } from '../../../src/core/request.ts';
import { batchView } from '../../../src/kitchen/batchView.ts';
import { shownName } from '../../../src/kitchen/kitchenView.ts';
import type { LogEntry } from '../../../src/kitchen/ports.ts';
import { screenWords } from '../../../src/words/en.screens.ts';
import { viewWords } from '../../../src/words/en.views.ts';
import { sayIt } from '../../../src/words/sayit.en.ts';
import { drawings, watchedCharts } from './chartEdges.ts';
import type { OpenedPage } from './openedPage.ts';
import { roadTo, type Goals, type Leg } from './roads.ts';
import type { Heard, Press } from './thumb.ts';

export interface Walked {
  states: { visited: string[]; left: string[] };
  edges: { visited: string[]; left: string[] };
  steps: number;
  batches: number;
  /** Steps after which the page was not where the charts say. Must stay empty. */
  wrong: string[];
}

export interface WalkOptions {
  requests: readonly BatchRequest[];
  /** Only so many edges are wanted: the short walk. */
  goals?: (edge: string) => boolean;
  /** No new road is begun after this, ms. */
  withinMs?: number;
  onStep?: (says: string) => void;
}

/** The page answers at once; more than this is a fault. */
const ANSWERS_WITHIN_MS = 8_000;
/** How many moments are searched for a road; the near ones come first. */
const FAR = 600;
/** From a plan's beginning the way is long but straight. */
const FROM_THE_BEGINNING = 250;

export async function walk(page: OpenedPage, options: WalkOptions): Promise<Walked> {
  const walker = new Walker(page, options);
  await walker.all();
  return walker.walked();
}

class Walker {
  readonly #page: OpenedPage;
  readonly #options: WalkOptions;
  readonly #visited = { states: new Set<string>(), edges: new Set<string>() };
  readonly #wrong: string[] = [];
  readonly #begun = Date.now();
  #kitchen: Kitchen = emptyKitchen;
  #now = 0;
  #batch: BatchId = '';
  #steps = 0;
  #batches = 0;
  /** Edges taken by entries that the page has not yet been compared on. */
  #taken: string[] = [];
  readonly #step = kitchenWith(watchedCharts((chart, edge) => this.#taken.push(`${chart}: ${edge}`)));

  constructor(page: OpenedPage, options: WalkOptions) {
    this.#page = page;
    this.#options = options;
  }

  async all(): Promise<void> {
    const { requests, withinMs = Infinity } = this.#options;
    let fruitless = 0;
    const begun = new Map<BatchRequest, number>();
    while (this.#left().length > 0 && this.#wrong.length === 0 && Date.now() - this.#begun < withinMs) {
      const road = this.#batch === '' ? null : this.#road();
      if (road) {
        fruitless = 0;
        await this.#follow(road);
        continue;
      }
      const request = this.#requestFor(begun);
      if (!request || fruitless++ > requests.length) break;
      begun.set(request, (begun.get(request) ?? 0) + 1);
      await this.#begin(request);
    }
  }

  walked(): Walked {
    const { states, edges } = this.#visited;
    const allStates = everyState();
    return {
      states: { visited: [...states], left: allStates.filter((state) => !states.has(state)) },
      edges: { visited: [...edges], left: this.#left() },
      steps: this.#steps,
      batches: this.#batches,
      wrong: this.#wrong,
    };
  }

  // --- Where to ---

  #left(): string[] {
    const { goals = () => true } = this.#options;
    return everyEdge().filter((edge) => goals(edge) && !this.#visited.edges.has(edge));
  }

  #goals(): Goals {
    const of = (chart: string) =>
      new Set(
        this.#left()
          .filter((edge) => edge.startsWith(`${chart}: `))
          .map((edge) => edge.slice(chart.length + 2)),
      );
    return { batch: of('batch'), canner: of('canner') };
  }

  #road(): Leg[] | null {
    return roadTo(this.#goals(), this.#kitchen, this.#batch, this.#now, FAR);
  }

  /** Of the plans from whose beginning an edge can be reached that is still left, one that was cooked least. */
  #requestFor(begun: Map<BatchRequest, number>): BatchRequest | undefined {
    const inTurn = this.#options.requests.toSorted((a, b) => (begun.get(a) ?? 0) - (begun.get(b) ?? 0));
    return inTurn.find((request) => this.#opensARoad(request));
  }

  #opensARoad(request: BatchRequest): boolean {
    const at = this.#now || Date.UTC(2026, 8, 12, 17);
    const plan = planBatch(request);
    const planned = { type: 'batch.planned', at, batch: 'next', name: 'next', plan } as const;
    const set = {
      type: 'canner.set',
      at,
      canner: MAIN_CANNER,
      jarsPerLoad: plan.canner?.jarsPerLoad ?? 7,
      preheatMinutes: plan.canner?.preheatMinutes.likely ?? 25,
    } as const;
    const kitchen = [planned, set].reduce((now, event) => stepKitchen(now, event).kitchen, this.#kitchen);
    return roadTo(this.#goals(), kitchen, 'next', at, FROM_THE_BEGINNING) !== null;
  }

  // --- Going ---

  async #follow(road: readonly Leg[]): Promise<void> {
    for (const leg of road) {
      const due = stepKitchen(this.#kitchen, {
        ...leg.event,
        at: Math.max(leg.event.at, this.#now),
      } as KitchenEvent);
      const trouble = await this.#go(leg);
      this.#steps++;
      if (trouble) return this.#isWrong(leg, trouble);
      const expected = statesOf(due.kitchen);
      const actual = statesOf(this.#kitchen);
      this.#options.onStep?.(`${leg.event.type} -> ${actual}`);
      if (expected !== actual && leg.said)
        return this.#isWrong(leg, `expected ${expected}, came to ${actual}`);
      if (expected !== actual) return; // time does more than one thing: on from where it led
    }
  }

  async #go(leg: Leg): Promise<string | null> {
    const { event } = leg;
    if (leg.said) {
      const trouble = await this.#page.press(pressFor(event, this.#nameOf(event), this.#labelOf(event)));
      return trouble ?? this.#compare(event.type);
    }
    const kitchenMs = Math.max(0, event.at - this.#now);
    if (event.type === 'tick') await this.#page.pass(kitchenMs);
    else await this.#page.away(kitchenMs);
    return this.#compare(event.type);
  }

  async #begin(request: BatchRequest): Promise<void> {
    this.#batches++;
    if (this.#batches > 1) await this.#page.pass(1000);
    // The first batch brings its canner with it.
    const last = this.#kitchen.canners[MAIN_CANNER] ? 'batch.planned' : 'canner.set';
    const trouble = (await this.#page.begin(request)) ?? (await this.#compare(last));
    if (trouble) this.#wrong.push(`beginning ${request.fruit}: ${trouble}`);
    this.#batch = Object.keys(this.#kitchen.batches).at(-1) ?? '';
  }

  /** Folds what the page acknowledged, until nothing more is due, and holds the page against it. */
  async #compare(wanted: KitchenEvent['type']): Promise<string | null> {
    let heard: Heard | null = null;
    let came = false;
    const until = Date.now() + ANSWERS_WITHIN_MS;
    while (Date.now() < until) {
      heard = await this.#page.until(came && !this.#moreIsDue() ? 0 : 1, 300);
      for (const entry of heard.entries) {
        this.#take(entry);
        came ||= entry.event.type === wanted;
      }
      this.#now = Math.max(this.#now, heard.now || 0);
      if (came && !this.#moreIsDue() && heard.states === statesOf(this.#kitchen)) {
        for (const edge of this.#taken.splice(0)) this.#visited.edges.add(edge);
        for (const state of chartStates(this.#kitchen)) this.#visited.states.add(state);
        return null;
      }
    }
    if (!came) return `the page did not take ${wanted}; it shows ${heard?.states}`;
    return `the page shows ${heard?.states}, the charts say ${statesOf(this.#kitchen)}`;
  }

  #take({ event }: LogEntry): void {
    this.#kitchen = this.#step(this.#kitchen, event).kitchen;
    this.#now = Math.max(this.#now, event.at);
  }

  #moreIsDue(): boolean {
    return stepKitchen(this.#kitchen, { type: 'tick', at: this.#now }).changed;
  }

  #nameOf(event: KitchenEvent): string {
    if ('canner' in event) return screenWords['screen.which.canner'];
    const names = Object.values(this.#kitchen.batches).map(({ context }) => context.name);
    return shownName(this.#kitchen.batches[this.#batch]?.context.name ?? '', names);
  }

  /** A step goes by other names where it is another: nothing is mashed for a jelly, and a minute ends the boil of pectin. */
  #labelOf(event: KitchenEvent): string {
    const batch = 'batch' in event ? this.#kitchen.batches[this.#batch] : undefined;
    const choices = batch ? batchView(batch, this.#now, sayIt).choices : [];
    const key = choices.find(({ command }) => command === event.type)?.label.key ?? `choice.${event.type}`;
    return viewWords[key as keyof typeof viewWords];
  }

  #isWrong(leg: Leg, says: string): void {
    this.#wrong.push(`${leg.event.type}: ${says}`);
  }
}

function pressFor(event: KitchenEvent, who: string, label: string): Press {
  switch (event.type) {
    case 'jars.filled':
      return { who, label, full: event.full, spare: event.spare };
    case 'seals.failed':
      return { who, label, count: event.count };
    case 'canner.waterAdded':
      return { who, label, keptBoiling: event.keptBoiling };
    case 'reading.taken':
      return { who, label, massKg: 4 };
    default:
      return { who, label };
  }
}

/** As the page shows it on its root element. */
function statesOf({ batches, canners }: Kitchen): string {
  const names = Object.values(batches).map(({ context }) => context.name);
  return [
    ...Object.values(batches).map((batch) => `${shownName(batch.context.name, names)}: ${batchState(batch)}`),
    ...Object.values(canners).map((canner) => `canner: ${cannerState(canner)}`),
  ].join('; ');
}

function chartStates({ batches, canners }: Kitchen): string[] {
  return [
    ...Object.values(batches).map((batch) => `batch: ${batchState(batch)}`),
    ...Object.values(canners).map((canner) => `canner: ${cannerState(canner)}`),
  ];
}

export const everyState = () => [
  ...drawings.batch.states.map((state) => `batch: ${state}`),
  ...drawings.canner.states.map((state) => `canner: ${state}`),
];

export const everyEdge = () => [
  ...drawings.batch.edges.map(({ name }) => `batch: ${name}`),
  ...drawings.canner.edges.map(({ name }) => `canner: ${name}`),
];
