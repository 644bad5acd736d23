// At the end of a rehearsal: what was late, what was missed, and what it would have meant.

import type { Message } from '../../machines/kitchen/effects.ts';
import type { Scene, Told, Truth } from './scene.ts';

export interface Finding {
  message: Message;
  /** Somebody could have been made ill. */
  grave: boolean;
}

const MINUTE_MS = 60_000;
/** A cook who is at the other end of the kitchen is not late. */
const LATE_MS = 2 * MINUTE_MS;
/** A lost boil must be told at once, or within the time that a look round takes. */
const BOIL_LOST_MS = 1.5 * MINUTE_MS;
/** A thickening pot left alone for longer than this is luck. */
const UNSTIRRED_S = 8 * 60;
/** Less than this share boiled off too much is a matter of taste. */
const TOO_DRY = 0.04;
const RAN_OVER_KG = 0.02;

export function review(scene: Scene): Finding[] {
  const found = [...ofThePot(scene), ...ofThePlate(scene), ...ofTheCanner(scene), ...ofTheJars(scene)];
  if (found.length > 0) return found;
  if (!scene.told.some(({ event }) => COOKING.has(event.type))) return [plain('notYet')];
  return [plain(isOver(scene) ? 'clean' : 'cleanSoFar')];
}

/** Before the first of these there was nothing that could have been late or missed. */
const COOKING: ReadonlySet<Type> = new Set<Type>([
  'pot.rollingBoil',
  'pot.thick',
  'canner.fullBoil',
  'jars.filled',
]);

/** The last that can be missed is a lid that did not hold; a batch not for the shelf ends with its jars. */
const isOver = (scene: Scene): boolean =>
  when(scene, 'seals.allHeld').length + when(scene, 'seals.failed').length > 0 ||
  (scene.batch.processMinutes === null && when(scene, 'jars.filled').length > 0);

const plain = (key: string, params?: Record<string, number>): Finding => finding(key, params, false);
const grave = (key: string, params?: Record<string, number>): Finding => finding(key, params, true);

function finding(key: string, params: Record<string, number> | undefined, isGrave: boolean): Finding {
  return { message: { key: `review.${key}`, ...(params ? { params } : {}) }, grave: isGrave };
}

type Type = Told['event']['type'];
const when = ({ told }: Scene, type: Type): Told[] => told.filter(({ event }) => event.type === type);
const minutesSince = (since: number | null, at: number): number =>
  since === null ? 0 : Math.round((at - since) / MINUTE_MS);

function ofThePot(scene: Scene): Finding[] {
  const { marks, stove } = scene;
  const [boil] = when(scene, 'pot.rollingBoil');
  const thick = when(scene, 'pot.thick').at(-1);
  const tooDry = marks.setKg && thick ? 1 - thick.truth.massKg / marks.setKg : 0;
  return [
    ...(boil && boil.truth.pot !== 'rolling' ? [plain('boilTooEarly')] : []),
    ...(boil ? late('boilLate', boil.truth.rollingSince, boil.event.at) : []),
    ...(marks.longestUnstirredS > UNSTIRRED_S
      ? [plain('unstirred', { minutes: Math.round(marks.longestUnstirredS / 60) })]
      : []),
    ...(marks.burntAt !== null ? [plain('burnt')] : marks.caughtAt !== null ? [plain('caught')] : []),
    ...(marks.ranOverKg > RAN_OVER_KG ? [plain('ranOver', { massKg: marks.ranOverKg })] : []),
    ...(tooDry > TOO_DRY ? [plain('tooDry', { percent: Math.round(100 * tooDry) })] : []),
    ...(stove.pot.tempC > 60 && scene.hands.potDial > 0 && when(scene, 'jars.filled').length > 0
      ? [plain('heatLeftOn')]
      : []),
  ];
}

const late = (key: string, since: number | null, at: number): Finding[] =>
  since !== null && at - since > LATE_MS ? [plain(key, { minutes: minutesSince(since, at) })] : [];

function ofThePlate(scene: Scene): Finding[] {
  const [held] = when(scene, 'plate.held').slice(-1);
  const warm = when(scene, 'plate.spooned').length > 0 && held?.truth.plate === 'plate too warm';
  const wrong: Partial<Record<NonNullable<Truth['plate']>, string>> = {
    runny: 'heldRunny',
    'too thick': 'heldThick',
  };
  const key = held?.truth.plate ? wrong[held.truth.plate] : undefined;
  return [...(warm ? [plain('plateWarm')] : []), ...(key ? [plain(key)] : [])];
}

function ofTheCanner(scene: Scene): Finding[] {
  const { batch, marks } = scene;
  const minutes = batch.processMinutes;
  if (minutes === null || when(scene, 'jars.in').length === 0) return [];
  const boils = when(scene, 'canner.fullBoil');
  const drops = when(scene, 'canner.boilDropped').map(({ event }) => event.at);
  const missed = marks.boilsLostAt.filter(
    (lost) => !drops.some((at) => at >= lost - LATE_MS && at - lost <= BOIL_LOST_MS),
  );
  const out = when(scene, 'jars.out').length > 0;
  const served = Math.min(
    ...marks.servedS.filter(
      (_, i) => (scene.stove.jars[i]?.filledL ?? 0) > 0 && scene.stove.jars[i]?.place === 'out',
    ),
  );
  const short = out && Number.isFinite(served) && served < minutes * 60 - 15;
  return [
    ...boils
      .filter(({ truth }) => truth.canner !== 'rolling')
      .slice(0, 1)
      .map(() => grave('clockTooEarly')),
    ...boils.slice(-1).flatMap(({ truth, event }) => late('clockLate', truth.cannerFullSince, event.at)),
    ...missed.slice(0, 1).map(() => grave('boilLostUnsaid')),
    ...(short ? [grave('unserved', { minutes: Math.floor(served / 60), wanted: minutes })] : []),
  ];
}

function ofTheJars(scene: Scene): Finding[] {
  const broken = scene.stove.jars.filter(({ state }) => state === 'broken').length;
  const [sealed] = when(scene, 'seals.allHeld');
  const up = sealed?.truth.lidsUp ?? 0;
  return [
    ...(broken > 0 ? [plain('broken', { jars: broken })] : []),
    ...(up > 0 ? [grave('lidsUpUnsaid', { jars: up })] : []),
  ];
}
