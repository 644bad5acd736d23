// Of what pieces is one evening's work made, and which must follow which, how soon and how late?

import type { Range } from '../types.ts';
import { exactly, plus, times } from './chance.ts';
import type { Arrangement, Load } from './loads.ts';
import type { Attention, EveningBatch, EveningProgress, EveningRequest, Step } from './types.ts';
import * as work from './work.ts';

export type Tool = 'burner' | 'mill' | 'blender' | 'canner';

export interface Piece {
  id: string;
  batches: readonly string[];
  step: Step;
  round: number;
  attention: Attention;
  minutes: Range;
  glanceEvery: { start: number; end: number } | null;
  pausable: boolean;
  tools: readonly Tool[];
  canner: string | null;
}

/** `to` begins at least `least` minutes after `from` has ended, and at most `most`; null: whenever. */
export interface Link {
  from: string;
  to: string;
  least: number;
  most: number | null;
}

type Part = Pick<Work, 'pieces' | 'links' | 'notBefore'>;

export interface Work {
  pieces: Piece[];
  links: Link[];
  /** The links to a piece. */
  linksTo(id: string): readonly Link[];
  /** Pieces that may not begin before a minute. */
  notBefore: ReadonlyMap<string, number>;
}

export const idOf = (owner: string, step: Step, round: number): string => `${owner}/${step}/${round}`;

const STEPS: Record<Step, { attention: Attention; pausable: boolean; tools: readonly Tool[] }> = {
  preheat: { attention: 'none', pausable: false, tools: ['canner'] },
  prepare: { attention: 'hands', pausable: true, tools: [] },
  heat: { attention: 'glances', pausable: false, tools: ['burner'] },
  simmer: { attention: 'glances', pausable: false, tools: ['burner'] },
  keepHot: { attention: 'glances', pausable: false, tools: ['burner'] },
  reduce: { attention: 'glances', pausable: false, tools: ['burner'] },
  skim: { attention: 'hands', pausable: true, tools: ['burner'] },
  strain: { attention: 'hands', pausable: true, tools: ['burner', 'mill'] },
  blend: { attention: 'hands', pausable: true, tools: ['burner', 'blender'] },
  spoon: { attention: 'hands', pausable: false, tools: ['burner'] },
  cool: { attention: 'none', pausable: false, tools: ['burner'] },
  judge: { attention: 'hands', pausable: false, tools: ['burner'] },
  warmJars: { attention: 'hands', pausable: true, tools: [] },
  jarsIn: { attention: 'hands', pausable: true, tools: ['canner'] },
  sterilise: { attention: 'glances', pausable: false, tools: ['canner'] },
  fill: { attention: 'hands', pausable: true, tools: ['burner'] },
  load: { attention: 'hands', pausable: true, tools: ['canner'] },
  toFullBoil: { attention: 'glances', pausable: false, tools: ['canner'] },
  process: { attention: 'glances', pausable: false, tools: ['canner'] },
  stand: { attention: 'none', pausable: false, tools: ['canner'] },
  unload: { attention: 'hands', pausable: true, tools: ['canner'] },
};

type Of = { owner: string; batches: readonly string[]; canner?: string; glanceEvery?: Piece['glanceEvery'] };

function piece(of: Of, step: Step, round: number, minutes: Range): Piece {
  const { attention, pausable, tools } = STEPS[step];
  return {
    id: idOf(of.owner, step, round),
    batches: of.batches,
    step,
    round,
    attention,
    pausable,
    tools,
    minutes,
    glanceEvery: of.glanceEvery ?? null,
    canner: of.canner ?? null,
  };
}

/** The last stretch of a simmer, and what goes before it. */
function splitSimmer({ plan }: EveningBatch): { simmer: Range; reduce: Range } {
  const whole = plan.simmerMinutes;
  const { share, leastMin, mostMin, low, high } = work.LAST_REDUCTION;
  const last = Math.min(Math.max(share * whole.likely, leastMin), mostMin, 0.8 * whole.likely);
  const simmer = {
    low: Math.max(0.5, whole.low - last),
    likely: Math.max(0.5, whole.likely - last),
    high: Math.max(0.5, whole.high - last),
  };
  return { simmer, reduce: { low: low * last, likely: last, high: high * last } };
}

/** Preparing by the kilogram, cut into pieces short enough to fit between looks at a pot. */
function preparing(batch: EveningBatch): Piece[] {
  const { plan } = batch;
  const kg = plan.request.fruitMassKg ?? plan.startMassKg;
  const whole = plus(times(work.PREPARE.perKgMin, kg), work.PREPARE.atAllMin);
  const count = Math.max(1, Math.ceil(whole.likely / work.LONGEST_PIECE_MIN));
  const of = { owner: batch.id, batches: [batch.id] };
  return Array.from({ length: count }, (_, i) => piece(of, 'prepare', i + 1, times(whole, 1 / count)));
}

/** On the stove: what it takes from the cold pot to the verdict of the plate. */
function cooking(batch: EveningBatch, runny: number): Piece[] {
  const { plan } = batch;
  const { simmer, reduce } = splitSimmer(batch);
  const of = { owner: batch.id, batches: [batch.id] };
  const { start, end } = plan.stirEveryMinutes;
  const late = start + 0.7 * (end - start);
  const hot = [
    piece({ ...of, glanceEvery: { start: 4, end: 2 } }, 'heat', 1, plan.heatMinutes),
    piece({ ...of, glanceEvery: { start, end: late } }, 'simmer', 1, simmer),
    piece({ ...of, glanceEvery: { start: late, end } }, 'reduce', 1, reduce),
    piece(of, 'skim', 1, work.SKIM),
    ...(plan.steps.strain === 'none' ? [] : [piece(of, 'strain', 1, straining(batch))]),
    ...(plan.steps.blend ? [piece(of, 'blend', 1, work.BLEND)] : []),
  ];
  for (let round = 1; round <= runny + 1; round++) {
    if (round > 1)
      hot.push(piece({ ...of, glanceEvery: { start: end, end } }, 'reduce', round, work.AFTER_RUNNY));
    hot.push(piece(of, 'spoon', round, work.SPOON));
    hot.push(piece(of, 'cool', round, exactly(work.PLATE_WAIT_MIN)));
    hot.push(piece(of, 'judge', round, work.JUDGE));
  }
  return hot;
}

const straining = ({ plan }: EveningBatch): Range =>
  plus(times(work.STRAIN.perKgMin, plan.targetMassKg), work.STRAIN.atAllMin);

const filling = (jars: number): Range => plus(times(work.FILL.perJarMin, jars), work.FILL.atAllMin);

/** How long a step may wait for the one after it. */
function mayWait(before: Step, after: Step): number | null {
  if (before === 'prepare') return null;
  if (before === 'heat' || before === 'spoon') return 0;
  if (before === 'simmer') return work.MAY_WAIT.keptHot;
  if (before === 'reduce') return work.MAY_WAIT.reducedToSkim;
  return after === 'fill' ? work.MAY_WAIT.testToFill : work.MAY_WAIT.betweenHotSteps;
}

function chained(pieces: readonly Piece[]): Link[] {
  return pieces.slice(1).map((to, i) => {
    const from = pieces[i] ?? to;
    return { from: from.id, to: to.id, least: 0, most: mayWait(from.step, to.step) };
  });
}

/** Everything one batch needs up to its filled jars. */
function workOfBatch(
  batch: EveningBatch,
  request: EveningRequest,
  arranged: Arrangement,
  runny: number,
): Part {
  const pieces = [...preparing(batch), ...cooking(batch, runny)];
  const links = chained(pieces);
  const of = { owner: batch.id, batches: [batch.id] };
  const portions = arranged.portions.filter((one) => one.batch === batch.id);
  let before = pieces.at(-1);
  for (const portion of portions) {
    const fill = piece(of, 'fill', portion.round, filling(portion.jars));
    pieces.push(fill);
    const most = portion.round === 1 ? work.MAY_WAIT.testToFill : null;
    if (before) links.push({ from: before.id, to: fill.id, least: 0, most });
    before = fill;
    if (!portion.sterile && !request.jarsAreHot) {
      const warm = piece(of, 'warmJars', portion.round, work.WARM_JARS);
      pieces.push(warm);
      const least = work.JARS_WARM_AFTER_MIN;
      links.push({ from: warm.id, to: fill.id, least, most: work.MAY_WAIT.warmToFill });
    }
  }
  const plate = (request.plateInFreezerAt ?? 0) + work.PLATE_COLD_MIN;
  return { pieces, links, notBefore: new Map([[idOf(batch.id, 'spoon', 1), plate]]) };
}

/** Everything one load of a canner needs, from empty jars to the towel. */
function workOfLoad(load: Load): Part {
  const of = { owner: load.owner, batches: load.portions.map(({ batch }) => batch), canner: load.canner };
  const at = (step: Step, minutes: Range, glance?: Piece['glanceEvery']): Piece =>
    piece({ ...of, glanceEvery: glance ?? null }, step, load.round, minutes);
  const chain = [
    at('load', work.LOAD),
    at('toFullBoil', load.toFullBoil, { start: 4, end: 4 }),
    at('process', exactly(load.minutes), { start: 5, end: 5 }),
    at('stand', exactly(work.STAND_MIN)),
    at('unload', work.UNLOAD),
  ];
  const [first] = chain;
  const fills = load.portions.map(({ batch, round }) => idOf(batch, 'fill', round));
  const links = chain.slice(1).map((to, i): Link => {
    const most = to.step === 'unload' ? work.MAY_WAIT.standToUnload : 0;
    return { from: (chain[i] ?? to).id, to: to.id, least: 0, most };
  });
  if (first)
    for (const from of fills) links.push({ from, to: first.id, least: 0, most: work.MAY_WAIT.fillToLoad });
  if (load.steriliseMinutes === null) return { pieces: chain, links, notBefore: new Map() };
  const jarsIn = at('jarsIn', work.JARS_IN);
  const boiling = at('sterilise', plus(load.toFullBoil, load.steriliseMinutes), { start: 5, end: 5 });
  links.push({ from: jarsIn.id, to: boiling.id, least: 0, most: 0 });
  for (const to of fills) links.push({ from: boiling.id, to, least: 0, most: work.MAY_WAIT.sterileToFill });
  return { pieces: [jarsIn, boiling, ...chain], links, notBefore: new Map() };
}

/** A pot too big for one load: the rest is kept hot until the load before it is out. */
function betweenLoads(arranged: Arrangement): Link[] {
  const loadOf = (batch: string, round: number): Load | undefined =>
    arranged.loads.find(({ portions }) => portions.some((p) => p.batch === batch && p.round === round));
  return arranged.portions.flatMap(({ batch, round }) => {
    const earlier = loadOf(batch, round - 1);
    if (round === 1 || !earlier) return [];
    const most = work.MAY_WAIT.potForNextLoad;
    const later = loadOf(batch, round);
    const out = idOf(earlier.owner, 'unload', earlier.round);
    return [
      { from: idOf(earlier.owner, 'load', earlier.round), to: idOf(batch, 'fill', round), least: 0, most },
      ...(later ? [{ from: out, to: idOf(later.owner, 'load', later.round), least: 0, most: null }] : []),
      ...(later && later.steriliseMinutes !== null
        ? [{ from: out, to: idOf(later.owner, 'jarsIn', later.round), least: 0, most: null }]
        : []),
    ];
  });
}

/** The same evening is asked after many times: its work changes only with a runny plate or a batch given up. */
const known = new WeakMap<EveningRequest, Map<string, Work>>();

/** All pieces of the evening, in the order of the work of each batch. */
export function workOf(request: EveningRequest, arranged: Arrangement, progress: EveningProgress): Work {
  const loads = arranged.loads.map(({ owner, round, canner }) => [owner, round, canner]);
  const key = JSON.stringify([loads, progress.runnyPlates ?? {}, progress.stopped ?? []]);
  const before = known.get(request)?.get(key);
  if (before) return before;
  const work = workOfAll(request, arranged, progress);
  known.set(request, (known.get(request) ?? new Map<string, Work>()).set(key, work));
  return work;
}

function workOfAll(request: EveningRequest, arranged: Arrangement, progress: EveningProgress): Work {
  const stopped = new Set(progress.stopped);
  const works = [
    ...request.batches.map((batch) =>
      workOfBatch(batch, request, arranged, progress.runnyPlates?.[batch.id] ?? 0),
    ),
    ...arranged.loads.map(workOfLoad),
  ];
  const preheats = arranged.canners.map(({ id, preheat }) =>
    piece({ owner: id, batches: [], canner: id }, 'preheat', 1, preheat),
  );
  const hot = arranged.loads.flatMap((load): Link[] => {
    const preheat = idOf(load.canner, 'preheat', 1);
    return (load.steriliseMinutes === null ? (['load'] as const) : (['jarsIn', 'load'] as const)).map(
      (step) => ({
        from: preheat,
        to: idOf(load.owner, step, load.round),
        least: 0,
        most: null,
      }),
    );
  });
  const pieces = [...works.flatMap((one) => one.pieces), ...preheats].filter(
    ({ batches }) => batches.length === 0 || batches.some((batch) => !stopped.has(batch)),
  );
  const ids = new Set(pieces.map(({ id }) => id));
  const links = [...works.flatMap((one) => one.links), ...hot, ...betweenLoads(arranged)].filter(
    ({ from, to }) => ids.has(from) && ids.has(to),
  );
  const to = new Map<string, Link[]>();
  for (const link of links) to.set(link.to, [...(to.get(link.to) ?? []), link]);
  return {
    pieces,
    links,
    linksTo: (id) => to.get(id) ?? [],
    notBefore: new Map(works.flatMap((one) => [...one.notBefore])),
  };
}
