// Which fields may a request have, and in which sentence is each refused?

import { z } from 'zod';

import { allFruits, findFruit } from '../tables/fruits/index.ts';

const amount = (says: string) => z.number({ error: says });

/** Highest and lowest kitchens: Everest 8,849 m; the shore of the Dead Sea, about 430 m below the sea. */
const HIGHEST_M = 8849;
const LOWEST_M = -450;
/** More than this is a factory's day: 100 kg, 220 lb. */
const MOST_FRUIT_KG = 100;

const suggestFruit = (given: unknown): string => {
  const asked = typeof given === 'string' ? given.trim().slice(0, 40) : '';
  const unknown = asked && `I do not know the fruit "${asked}". `;
  return `${unknown}Choose one of: ${allFruits.map((f) => f.name).join(', ')}.`;
};

const fruit = z
  .string({ error: (issue) => suggestFruit(issue.input) })
  .refine((name) => findFruit(name) !== undefined, { error: (issue) => suggestFruit(issue.input) })
  .transform((name) => findFruit(name)?.id ?? name);

const fruitMassKg = amount('Say how much fruit there is, in kilograms.')
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

const juiceMassKg = amount('Say how much juice there is, in kilograms.')
  .positive('The juice must weigh more than nothing: weigh it and enter the weight.')
  .max(MOST_FRUIT_KG, `That is more juice than a home kitchen can cook: enter at most ${MOST_FRUIT_KG} kg.`);

const elevationM = amount('Say how high above the sea your kitchen is, in metres.')
  .max(HIGHEST_M, `That is higher than Everest (8,849 m, 29,032 ft): check the altitude of your kitchen.`)
  .min(LOWEST_M, 'No kitchen is that low: check the altitude of your kitchen.');

const share = (what: string, low: number, high: number) =>
  amount(`${what} must be a number in per cent.`)
    .min(low, `${what} must be at least ${low} %.`)
    .max(high, `${what} must be at most ${high} %.`);

const acidAmount = z.discriminatedUnion(
  'kind',
  [
    z.object({ kind: z.literal('auto') }),
    z.object({ kind: z.literal('none') }),
    z.object({
      kind: z.literal('bottled-lemon-juice'),
      /** Without an amount, the dose that the fruit needs. */
      volumeMl: amount('Say how much lemon juice, in millilitres.')
        .nonnegative('Lemon juice cannot be less than none.')
        .max(5000, 'That is more than five litres of lemon juice: check the amount.')
        .nullish()
        .transform((ml) => ml ?? undefined),
      massKg: amount('Say how much lemon juice, in kilograms.')
        .nonnegative('Lemon juice cannot be less than none.')
        .max(5, 'That is more than five kilograms of lemon juice: check the amount.')
        .optional(),
    }),
    z.object({
      kind: z.literal('citric-acid'),
      massKg: amount('Say how much citric acid, in kilograms.')
        .nonnegative('Citric acid cannot be less than none.')
        .max(0.5, 'That is more than half a kilogram of citric acid: check the amount.')
        .optional(),
    }),
  ],
  { error: 'Choose bottled lemon juice, citric acid, no acid, or leave it to the plan.' },
);

const acid = z.preprocess(
  (given) => (typeof given === 'string' ? { kind: given } : given === null ? { kind: 'none' } : given),
  acidAmount,
);

const pot = z.object({
  diameterM: amount('Say how wide the pot is, in metres.')
    .min(0.08, 'The pot must be at least 8 cm (3 in) wide inside.')
    .max(0.8, 'The pot must be at most 80 cm (31 in) wide inside.'),
  /** Inside height; only for the warning about headroom. */
  heightM: amount('Say how high the pot is, in metres.')
    .min(0.03, 'The pot must be at least 3 cm high.')
    .max(0.8, 'The pot must be at most 80 cm high.')
    .optional(),
  /** Empty weight, so that the target can be read off with the pot on the scale. */
  emptyMassKg: amount('Say how much the empty pot weighs, in kilograms.')
    .min(0, 'The pot cannot weigh less than nothing.')
    .max(30, 'The empty pot weighs at most 30 kg.')
    .optional(),
});

const burner = z.object({
  powerW: amount('Say how strong the burner is, in watts.')
    .min(200, 'The burner must give at least 200 W, or nothing will boil.')
    .max(20000, 'The burner must give at most 20,000 W (68,000 BTU/h).'),
  kind: z
    .enum(['gas', 'electric', 'induction'], { error: 'The burner is gas, electric or induction.' })
    .optional(),
});

/** What the cook measured, in place of the tables' values. */
const measured = z.object({
  /** Refractometer reading of the raw fruit or juice. */
  fruitSolubleSolidsPct: share('The refractometer reading of the fruit', 0.5, 80).optional(),
  /** Weight after trimming, stoning and peeling. */
  preparedMassKg: amount('Say how much the prepared fruit weighs, in kilograms.')
    .positive('The prepared fruit must weigh more than nothing.')
    .max(MOST_FRUIT_KG, `The prepared fruit weighs at most ${MOST_FRUIT_KG} kg.`)
    .optional(),
  /** What this thermometer reads in boiling water today. */
  waterBoilsC: amount('Say at how many degrees Celsius your water boils.')
    .min(68, 'Water boils at 68 C or more, even on Everest: check the thermometer.')
    .max(103, 'Water boils at 103 C at the most: check the thermometer.')
    .optional(),
  /** pH of the raw fruit. Can only make the verdict stricter. */
  fruitPH: amount('The pH of the fruit must be a number.')
    .min(1.5, 'No fruit is below pH 1.5: check the meter.')
    .max(8, 'No fruit is above pH 8: check the meter.')
    .optional(),
});

const liquid = z.object({
  massKg: amount('Say how much liquid goes in, in kilograms.')
    .positive('The added liquid must weigh more than nothing.')
    .max(50, 'At most 50 kg of liquid can be added.'),
  /** 0 for water, about 11.5 for cider. */
  solubleSolidsPct: share('The solids of the added liquid', 0, 80).default(0),
});

const price = (what: string) =>
  amount(`The price of ${what} must be a number.`)
    .nonnegative(`The price of ${what} cannot be less than nothing.`)
    .max(100000, `The price of ${what} is too high to be true.`);

const prices = z.object({
  fruitPerKg: price('the fruit').default(0),
  sugarPerKg: price('the sugar').default(0),
  acidPerKg: price('the acid').default(0),
  lidEach: price('a lid').default(0),
  jarEach: price('a jar').default(0),
  energyPerKWh: price('a kilowatt hour').default(0),
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
    sugarMassKg: amount('Say how much sugar, in kilograms.')
      .nonnegative('The sugar cannot weigh less than nothing.')
      .max(300, 'That is more sugar than a home kitchen can cook: check the weight.')
      .optional(),
    acid: acid.optional(),
    jar: jarSize,
    elevationM,
    keep: z.enum(['shelf', 'fridge', 'freezer'], {
      error: 'Choose where to keep it: shelf, fridge or freezer.',
    }),
    pot: pot.optional(),
    burner: burner.optional(),
    pectin: z
      .enum(['none', 'powdered', 'liquid'], { error: 'Pectin is none, powdered or liquid.' })
      .default('none'),
    juiceMassKg: juiceMassKg.optional(),
    targetSolubleSolidsPct: share('The solids to end at', 5, 80).optional(),
    liquid: liquid.optional(),
    measured: measured.optional(),
    /** Other jars that stand ready besides the chosen size. */
    alsoJars: z.array(jarSize).max(4).optional(),
    /** How many jars of the chosen size the canner's rack holds. */
    jarsPerLoad: z
      .number({ error: 'Say how many jars the canner holds.' })
      .int('The canner holds a whole number of jars.')
      .min(1, 'The canner must hold at least one jar.')
      .max(60, 'The canner holds at most 60 jars.')
      .optional(),
    prices: prices.optional(),
    learned: stoveLearnedSchema.optional(),
  },
  { error: NOT_A_REQUEST },
);
