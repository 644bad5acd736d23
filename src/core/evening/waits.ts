// How soon and how late may one step follow another, as the scheduler understands it?

import type { Lag } from '../schedule/types.ts';
import type { Link } from './pieces.ts';
import { statusOf, units, type Situation } from './situation.ts';
import type { EveningRequest } from './types.ts';

/** A re-plan of what is late already must have an answer: a minute late costs as much as this many minutes of evening. */
const LATE_PRICE = 40;
/** Kept hot is as good as not, nearly. */
const KEPT_HOT_PRICE = 0.05;
/** Hot product in hand that waits costs a little more than the evening gains by it, and past half its limit much more. */
const HOT_WAIT_PRICE = 1.05;
const HALF_SPENT_PRICE = 5;

export interface Placed {
  act: number;
  offset: number;
  length: number;
}

/**
 * What hot product may wait at one step cannot be saved for the next, so that a chain which must wait does so early:
 * each later step of it costs so much more.
 */
const LATER_STEP_PRICE = 0.05;
const CHAIN = ['skim', 'strain', 'blend', 'spoon', 'judge', 'fill', 'load'];

const waitPrice = ({ to }: Link): number =>
  HOT_WAIT_PRICE + LATER_STEP_PRICE * CHAIN.indexOf(to.split('/')[1] ?? '');

/** Is it hot product that waits? */
function isHot({ from, to }: Link): boolean {
  const step = to.split('/')[1] ?? '';
  if (!CHAIN.includes(step)) return false;
  return !['warmJars', 'sterilise', 'load'].some((jars) => from.includes(`/${jars}/`));
}

/** A wait of hot product in a chain that has not begun. */
function isHotAhead(link: Link, { progress, work }: Situation): boolean {
  const [batch = ''] = link.to.split('/');
  if (!isHot(link)) return false;
  return !work.pieces.some(
    (piece) =>
      piece.step === 'reduce' &&
      batch.split('+').includes(piece.batches[0] ?? '') &&
      statusOf(progress, piece.id) !== 'planned',
  );
}

/**
 * A pot kept hot holds its ring, which the scheduler's question cannot say; with few rings no pot is planned to wait there.
 * With three or more the hands and the canner are narrower: no drawn evening had a pot too many.
 */
const FEW_RINGS = 2;
const ringsAreScarce = ({ burners, batches }: EveningRequest): boolean =>
  burners.length <= FEW_RINGS && burners.length < batches.length;

/** A plan does not spend all that may be waited before the evening has come to it. */
function shareToSpend(link: Link, situation: Situation): number {
  if (isHotAhead(link, situation)) return situation.caution.wait;
  const isKeptHot = link.from.includes('/simmer/');
  const heat = link.from.replace('/simmer/', '/heat/');
  if (!isKeptHot || statusOf(situation.progress, heat) !== 'planned') return 1;
  return ringsAreScarce(situation.request) ? 0 : situation.caution.kept;
}

/** Lags of one link between two pieces, seen from now. */
export function lagsOf(
  link: Link,
  at: ReadonlyMap<string, Placed>,
  situation: Situation,
): { lags: Lag[]; earliest: [number, number][] } {
  const { progress, now } = situation;
  const to = at.get(link.to);
  if (!to || statusOf(progress, link.to) !== 'planned') return { lags: [], earliest: [] };
  const elastic = Object.keys(progress.tasks).length > 0 ? { pricePerUnit: LATE_PRICE } : {};
  const from = at.get(link.from);
  const ended = progress.tasks[link.from]?.endedAt;
  if (!from) {
    if (ended === undefined) return { lags: [], earliest: [] };
    const due = units(ended - now);
    const tie = { from: to.act, to: 0, distance: to.offset - due };
    const waits: Lag[] =
      link.most === null || !isHot(link)
        ? []
        : [
            { ...tie, pricePerUnit: waitPrice(link) },
            { ...tie, distance: tie.distance - units(link.most / 2), pricePerUnit: HALF_SPENT_PRICE },
          ];
    const most: Lag[] =
      link.most === null
        ? []
        : [{ from: to.act, to: 0, distance: to.offset - due - units(link.most), ...elastic }];
    return { lags: [...most, ...waits], earliest: [[to.act, due + units(link.least) - to.offset]] };
  }
  if (from.act === to.act) return { lags: [], earliest: [] };
  const end = from.offset + from.length;
  const lags: Lag[] = [{ from: from.act, to: to.act, distance: end + units(link.least) - to.offset }];
  const most = link.most === null ? null : link.most * shareToSpend(link, situation);
  if (most !== null && link.most !== null)
    lags.push({
      from: to.act,
      to: from.act,
      distance: to.offset - end - units(most),
      ...(link.most > 0 ? elastic : {}),
    });
  if (link.most !== null && link.most > 0 && isHot(link) && !isHotAhead(link, situation)) {
    const tie = { from: to.act, to: from.act, distance: to.offset - end };
    lags.push({ ...tie, pricePerUnit: waitPrice(link) });
    lags.push({ ...tie, distance: tie.distance - units(link.most / 2), pricePerUnit: HALF_SPENT_PRICE });
  }
  if (link.from.includes('/simmer/'))
    lags.push({ from: to.act, to: from.act, distance: to.offset - end, pricePerUnit: KEPT_HOT_PRICE });
  return { lags, earliest: [] };
}
