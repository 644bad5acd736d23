// May this batch stand on a shelf? Only if acid, solids, product, jar and altitude all say so.

import { never } from '../tables/acid.ts';
import { storage } from '../tables/storage.ts';
import {
  highestRowFt,
  leanButter,
  leastSugarPerKg,
  sterilising,
  type ProcessRow,
} from '../tables/process.ts';
import { butterEnd, gelEnd } from '../tables/recipes.ts';
import { spreadHeadspace } from '../tables/jars.ts';
import { cite } from '../tables/source.ts';
import { acidClass, acidSource, doseReached, estimatePH, shelfLemonMl } from './acidity.ts';
import type { Mix } from './mix.ts';
import { feet, minutesInRow, processRow, steriliseMinutes, thousands } from './process.ts';
import type { BatchRequest } from './request.ts';
import type { BatchPlan } from './types.ts';
import { MM_PER_IN } from './units.ts';

interface Objection {
  reason: string;
  remedy: string | null;
}

export interface Verdict {
  shelf: BatchPlan['shelf'];
  row: ProcessRow | null;
  minutes: number | null;
}

const COLD = 'Keep it in the fridge or the freezer.';

/** pH at which 21 CFR 114 draws the line. */
const LINE = 4.6;

function acidObjection(request: BatchRequest, mix: Mix): Objection | null {
  const { fruit } = mix.pot;
  const name = fruit.name;
  switch (acidClass(fruit)) {
    case 'never':
      return { reason: `${never[fruit.id]?.says ?? name}. ${COLD}`, remedy: null };
    case 'no-tested-dose':
      return {
        reason: `A spread of ${name} is not acid enough (${acidSource(fruit)}), and no tested amount of acid is known here. ${COLD}`,
        remedy: null,
      };
    case 'acid-needed':
      return doseObjection(request, mix) ?? measuredObjection(request, mix);
    case 'sour-enough':
      return measuredObjection(request, mix);
  }
}

function doseObjection(request: BatchRequest, mix: Mix): Objection | null {
  const neededMl = shelfLemonMl(request, mix.pot, mix.finishedL);
  if (doseReached(mix.acid, neededMl)) return null;
  const given = mix.acid ? 'with too little acid' : 'without added acid';
  return {
    reason: `${capital(mix.pot.fruit.name)} can lie above pH ${LINE}: ${given} it is not safe for the shelf. ${COLD}`,
    remedy: `Add ${Math.ceil(neededMl)} mL of bottled lemon juice (${Math.round(neededMl / mix.finishedL)} mL to a litre of finished spread).`,
  };
}

/** What a cook measured can take the shelf away, never give it. */
function measuredObjection(request: BatchRequest, mix: Mix): Objection | null {
  const measured = request.measured?.fruitPH;
  if (measured === undefined || measured < LINE - 0.1) return null;
  if (estimatePH(request, mix.pot, mix.acid).high < LINE - 0.1 && acidClass(mix.pot.fruit) === 'acid-needed')
    return null;
  return {
    reason: `This fruit was measured at pH ${measured.toFixed(1)}, too near or above ${LINE}: it is not safe for the shelf. ${COLD}`,
    remedy: null,
  };
}

function solidsObjection(request: BatchRequest, mix: Mix): Objection | null {
  const { targetSolidsPct, shortBoil, sugarKg, preparedKg } = mix.pot;
  const at = `${Math.round(targetSolidsPct)} %`;
  if (request.product === 'butter') {
    if (targetSolidsPct >= butterEnd.value.thinBelowPct) return null;
    return {
      reason: `At ${at} solids this is a thin puree, not a butter, and the butter rows do not cover it. ${COLD}`,
      remedy: `Boil it down to at least ${butterEnd.value.thinBelowPct} %.`,
    };
  }
  const short = shortBoil || request.pectin !== 'none';
  const least = short ? gelEnd.value.shortBoilLeastPct : gelEnd.value.longBoilLeastPct;
  if (targetSolidsPct < least || sugarKg < leastSugarPerKg.value.gel * preparedKg)
    return {
      reason: `This is a reduced-sugar spread (${at} solids, ${sugarKg.toFixed(2)} kg of sugar): the full-sugar rows do not cover it. ${COLD}`,
      remedy: `Take at least ${(leastSugarPerKg.value.gel * preparedKg).toFixed(2)} kg of sugar and end at ${least} % solids or more.`,
    };
  return null;
}

/** A butter with hardly any sugar does not take the shortest row, even where its fruit has one. */
function rowFor(request: BatchRequest, mix: Mix): ProcessRow | undefined {
  const row = processRow(request);
  const lean = mix.pot.sugarKg < leastSugarPerKg.value.butterOwnRow * mix.pot.preparedKg;
  return row && request.product === 'butter' && lean ? { ...row, ...leanButter } : row;
}

function rowObjection(request: BatchRequest, row: ProcessRow | undefined, mix: Mix): Objection | null {
  const name = mix.pot.fruit.name;
  if (row) {
    if (minutesInRow(row, request.elevationM) !== null) return null;
    return {
      reason: `No published time holds above ${thousands(highestRowFt.value.feet)} ft, and this kitchen is at ${thousands(feet(request.elevationM))} ft. ${COLD}`,
      remedy: null,
    };
  }
  const smaller = (['pint', 'half-pint'] as const).find((jar) => processRow({ ...request, jar }));
  if (smaller)
    return {
      reason: `No published table gives a time for ${name} ${request.product} in ${request.jar} jars. ${COLD}`,
      remedy: `Use ${smaller} jars.`,
    };
  return { reason: `No published table gives a time for ${name} ${request.product}. ${COLD}`, remedy: null };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function verdict(request: BatchRequest, mix: Mix): Verdict {
  const row = rowFor(request, mix);
  const objections = [
    acidObjection(request, mix),
    solidsObjection(request, mix),
    rowObjection(request, row, mix),
  ].filter((objection) => objection !== null);
  const allowed = objections.length === 0 && row !== undefined;
  const remedies = objections.map(({ remedy }) => remedy);
  return {
    shelf: {
      allowed,
      reasons: allowed ? [whyAllowed(mix, row)] : objections.map(({ reason }) => reason),
      // A remedy that mends only one of two objections would mislead.
      remedy: allowed || remedies.includes(null) ? null : remedies.join(' '),
    },
    row: allowed ? row : null,
    minutes: allowed ? minutesInRow(row, request.elevationM) : null,
  };
}

function whyAllowed(mix: Mix, row: ProcessRow): string {
  const acid = mix.acid?.neededForShelf
    ? `with its lemon juice or citric acid ${mix.pot.fruit.name} is acid enough`
    : `${mix.pot.fruit.name} is acid enough of its own`;
  return `${capital(acid)}, and a published time covers it: ${row.says}.`;
}

/** The process of a batch that goes to the shelf; null for one that may not, or is kept cold. */
export function processOf(request: BatchRequest, { row, minutes }: Verdict): BatchPlan['process'] {
  if (row === null || minutes === null || request.keep !== 'shelf') return null;
  return {
    minutes,
    presteriliseJars: minutes < sterilising.value.neededUnderMinutes,
    steriliseMinutes: steriliseMinutes(request.elevationM),
    headspaceMm: headspaceMm(request.keep),
    row: row.says,
    source: cite(row.source),
  };
}

/** A spread swells as it freezes: a jar filled for the shelf would burst. */
export const headspaceMm = (keep: BatchRequest['keep']): number =>
  MM_PER_IN * (keep === 'freezer' ? storage.freezer.value.headspaceInches : spreadHeadspace.value.inches);
