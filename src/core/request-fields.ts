// Which fields may a request have, and in which sentence is each refused?

import { z } from 'zod';

import { allFruits, findFruit } from '../tables/fruits/index.ts';
import { limits, MOST_FRUIT_KG, type Limit } from '../tables/limits.ts';

const within = ({ ask, least, open, tooLittle, most, tooMuch }: Limit) => {
  const number = z.number({ error: ask });
  return (open ? number.gt(least, tooLittle) : number.min(least, tooLittle)).max(most, tooMuch);
};

const suggestFruit = (given: unknown): string => {
  const asked = typeof given === 'string' ? given.trim().slice(0, 40) : '';
  const unknown = asked && `I do not know the fruit "${asked}". `;
  return `${unknown}Choose one of: ${allFruits.map((f) => f.name).join(', ')}.`;
};

const fruit = z
  .string({ error: (issue) => suggestFruit(issue.input) })
  .refine((name) => findFruit(name) !== undefined, { error: (issue) => suggestFruit(issue.input) })
  .transform((name) => findFruit(name)?.id ?? name);

/** Said of a request without fruit, and of fruit that is no number. */
export const SAY_FRUIT = 'Say how much fruit there is, in kilograms.';

const fruitMassKg = z
  .number({ error: SAY_FRUIT })
  .min(0.02, {
    error: (issue) =>
      Number(issue.input) > 0
        ? 'That is less than a handful of fruit: enter at least 20 g (about 1 oz).'
        : 'The fruit must weigh more than nothing: weigh it and enter the weight.',
  })
  .max(MOST_FRUIT_KG, {
    error: (issue) =>
      `${Math.round(Number(issue.input))} kg (${Math.round(Number(issue.input) * 2.20462)} lb) is more fruit than a home kitchen can cook: enter at most ${MOST_FRUIT_KG} kg (220 lb).`,
  });

const acidAmount = z.discriminatedUnion(
  'kind',
  [
    z.object({ kind: z.literal('auto') }),
    z.object({ kind: z.literal('none') }),
    z.object({
      kind: z.literal('bottled-lemon-juice'),
      /** Without an amount, the dose that the fruit needs. */
      volumeMl: within(limits.lemonMl)
        .nullish()
        .transform((ml) => ml ?? undefined),
      massKg: within(limits.lemonKg).optional(),
    }),
    z.object({
      kind: z.literal('citric-acid'),
      massKg: within(limits.citricKg).optional(),
    }),
  ],
  { error: 'Choose bottled lemon juice, citric acid, no acid, or leave it to the plan.' },
);

const acid = z.preprocess(
  (given) => (typeof given === 'string' ? { kind: given } : given === null ? { kind: 'none' } : given),
  acidAmount,
);

const pot = z.object({
  diameterM: within(limits.potDiameterM),
  /** Inside height; only for the warning about headroom. */
  heightM: within(limits.potHeightM).optional(),
  /** Empty weight, so that the target can be read off with the pot on the scale. */
  emptyMassKg: within(limits.potMassKg).optional(),
});

const burner = z.object({
  powerW: within(limits.burnerW),
  kind: z
    .enum(['gas', 'electric', 'induction'], { error: 'The burner is gas, electric or induction.' })
    .optional(),
});

/** What the cook measured, in place of the tables' values. */
const measured = z.object({
  /** Refractometer reading of the raw fruit or juice. */
  fruitSolubleSolidsPct: within(limits.fruitSolidsPct).optional(),
  /** Weight after trimming, stoning and peeling. */
  preparedMassKg: within(limits.preparedKg).optional(),
  /** What this thermometer reads in boiling water today. */
  waterBoilsC: within(limits.waterBoilsC).optional(),
  /** pH of the raw fruit. Can only make the verdict stricter. */
  fruitPH: within(limits.fruitPH).optional(),
});

const liquid = z.object({
  massKg: within(limits.liquidKg),
  /** 0 for water, about 11.5 for cider. */
  solubleSolidsPct: within(limits.liquidSolidsPct).default(0),
});

const prices = z.object({
  fruitPerKg: within(limits.fruitPrice).default(0),
  sugarPerKg: within(limits.sugarPrice).default(0),
  acidPerKg: within(limits.acidPrice).default(0),
  lidEach: within(limits.lidPrice).default(0),
  jarEach: within(limits.jarPrice).default(0),
  energyPerKWh: within(limits.energyPrice).default(0),
});

const jarSize = z.enum(['quarter-pint', 'half-pint', 'pint', 'quart'], {
  error: 'Choose a jar size: quarter-pint, half-pint, pint or quart.',
});

const logFactor = z.object({ mean: z.number().min(-4).max(4), sd: z.number().positive().max(3) });

/** What earlier batches taught about this pot on this burner, and the cook who minds it. */
export const stoveLearnedSchema = z.object({
  /** Natural logarithm of real over predicted heat into the pot. */
  logHeat: logFactor,
  /** The same of the spitting that the cook bears before turning the heat down. */
  logSpit: logFactor,
  correlation: z.number().min(-1).max(1),
  batches: z.number().int().nonnegative().max(1e6),
});

const NOT_A_REQUEST =
  'A request is one object: fruit, product, fruitMassKg, jar, elevationM, keep, and what else you know.';

export const requestFields = z.object(
  {
    fruit,
    product: z.enum(['butter', 'jam', 'jelly', 'marmalade'], {
      error: 'Choose what to make: butter, jam, jelly or marmalade.',
    }),
    /** As bought, before trimming. May be left out where the juice of a jelly was weighed. */
    fruitMassKg: fruitMassKg.optional(),
    sugarMassKg: within(limits.sugarKg).optional(),
    acid: acid.optional(),
    jar: jarSize,
    elevationM: within(limits.elevationM),
    keep: z.enum(['shelf', 'fridge', 'freezer'], {
      error: 'Choose where to keep it: shelf, fridge or freezer.',
    }),
    pot: pot.optional(),
    burner: burner.optional(),
    pectin: z
      .enum(['none', 'powdered', 'liquid'], { error: 'Pectin is none, powdered or liquid.' })
      .default('none'),
    juiceMassKg: within(limits.juiceMassKg).optional(),
    targetSolubleSolidsPct: within(limits.endPct).optional(),
    liquid: liquid.optional(),
    measured: measured.optional(),
    /** Other jars that stand ready besides the chosen size. */
    alsoJars: z.array(jarSize).max(4).optional(),
    /** How many jars of the chosen size the canner's rack holds. */
    jarsPerLoad: within(limits.jarsPerLoad).int('The canner holds a whole number of jars.').optional(),
    prices: prices.optional(),
    learned: stoveLearnedSchema.optional(),
  },
  { error: NOT_A_REQUEST },
);
