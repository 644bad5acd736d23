// An evening of four batches for the robot cook, with one canner or two: what is planned, and what really is in the pots.

import type { CannerName } from '../../../machines/dialogue/canners.ts';
import type { BatchPlan } from '../../../src/core/types.ts';
import { englishMessages, type MessageKey } from '../../../src/words/en.ts';
import { planOf } from '../../machines/evening.ts';
import { RobotCook, SHORT_STEPS, type Mischief } from './cook.ts';
import { promptsOf, type Prompts } from './prompts.ts';
import { World } from './world.ts';

export const FRUITS = {
  damson: 'damson plum',
  pear: 'pear',
  crabapple: 'crab apple',
  quince: 'quince',
} as const;

export interface RobotEvening {
  plans: BatchPlan[];
  cook: RobotCook;
  prompts: Prompts;
}

/** The kitchen's own sentences about the work; what it answers to questions is not asked for here. */
const HEARD = /^(batch|canner|dialogue|kitchen|evening|how|bare)\./;
const HEARD_OF_TWO = /^(two\.)?(batch|canner|dialogue|kitchen|evening|how|bare)\./;
/** Sentences made of other sentences: heard as those. */
const MADE_OF_OTHERS =
  /\.why$|whatNext|kitchen\.(named|putRight)|evening\.(words|advice\.(keepHot|shareLoad|crowded|late)|because|work|and|then|away)/;

const SEED = 7;

export function robotEvening(mischief: Mischief, canners: readonly CannerName[] = ['canner']): RobotEvening {
  const names = Object.values(FRUITS);
  const plans = Object.keys(FRUITS).map(planned);
  const world = new World(SEED, canners);
  plans.forEach((plan, i) => {
    const solubleKg = 0.14 * 1.5 + plan.sugarMassKg;
    const insolubleKg = 0.03;
    const waterKg = plan.startMassKg - solubleKg - insolubleKg;
    // Each fruit sets a little earlier or later than the plan thinks.
    const holdsAtPct = (100 * solubleKg) / (plan.targetMassKg * (0.97 + 0.03 * i));
    world.pot(names[i] ?? '', { waterKg, solubleKg, insolubleKg, body: 1 }, holdsAtPct, SEED + i);
  });
  const jars = new Map(plans.map((plan, i) => [names[i] ?? '', Math.max(1, plan.jars.makeReady - 1)]));
  const among = canners.length > 1 ? HEARD_OF_TWO : HEARD;
  const keys = (Object.keys(englishMessages) as MessageKey[]).filter(
    (key) => SHORT_STEPS.includes(key) || (among.test(key) && !MADE_OF_OTHERS.test(key)),
  );
  const cook = new RobotCook(world, jars, canners, mischief);
  // Of two canners each is called by its name, as a batch is.
  const called = canners.length > 1 ? [...names, ...canners] : names;
  return { plans, cook, prompts: promptsOf(keys, called, [...FREE_WORDS, ...called, 'or', 'and']) };
}

/** Words of what the page may say back of the cook's own. */
const FREE_WORDS =
  'yes no that is right wrong the it canner boil dropped rolling full holding jars are in out plate test passed still runny thick enough foam off done stirred'.split(
    ' ',
  );

const planned = (fruit: string): BatchPlan =>
  planOf({ fruit, fruitMassKg: 1.6, elevationM: 100, burner: { powerW: 3500 } });
