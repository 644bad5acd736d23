// Published yields written down after the calculator was finished, none of them in the other lists, and committed before
// it was run on them. The quantities are the guides'; what a cup weighs is USDA SR28's, by the rule beside each weight.
// Liquid and powdered pectin are not among the parts: the calculator adds its own dose.

import type { Pectin, Product } from '../../../src/core/types.ts';
import { BERRY_CUP, LEMON_CUP, SUGAR_CUP, TBSP, WATER_CUP } from './recipe.ts';

/** What goes into the pot besides fruit and sugar. */
interface Part {
  kg: number;
  solubleSolidsPct: number;
}

export interface FreshRecipe {
  id: string;
  name: string;
  product: Product;
  pectin: Pectin;
  fruit: string;
  /** Fruit trimmed, as bought, or its juice. */
  put: { preparedKg: number } | { boughtKg: number } | { juiceKg: number };
  /** Where the fruit is not fresh: its own solids. */
  fruitSolidsPct?: number;
  sugarKg: number;
  parts: Part[];
  /** Nuts fill jars, but are no spread: about a millilitre a gram. */
  nutsL?: number;
  /** Jars of one US cup, or what the spread weighs. */
  makes: { halfPints: { low: number; high: number } } | { kg: { low: number; high: number } };
  publisher: string;
  title: string;
  url: string | null;
  /** `read`: on a page of the publisher or an archive of it; `repeated`: on a page that repeats the text and names it. */
  how: 'read' | 'repeated' | 'memory';
}

const NCHFP = 'National Center for Home Food Preservation';
const HG_56 = 'How to Make Jellies, Jams and Preserves at Home (Home and Garden Bulletin 56)';
const SO_EASY = 'So Easy to Preserve (Bulletin 989)';
const UGA = 'University of Georgia Cooperative Extension';
const USDA = 'United States Department of Agriculture';
const NCHFP_PAGES = 'https://nchfp.uga.edu/how/can_07/';

/** Fruit chopped fine or ground and pressed into the cup, between crushed berries (0.232) and plums (0.245). */
const GROUND_CUP = 0.24;
const JUICE_CUP = 0.248; // SR28 apple juice
const GRAPE_JUICE_CUP = 0.253; // SR28
const CHOPPED_ORANGE_CUP = 0.18; // SR28, sections
const PEEL_CUP = 0.096; // SR28, orange peel

const water = (kg: number): Part => ({ kg, solubleSolidsPct: 0 });
const lemon = (cups: number): Part => ({ kg: cups * LEMON_CUP, solubleSolidsPct: 9 });
const orange = (cups: number): Part => ({ kg: cups * CHOPPED_ORANGE_CUP, solubleSolidsPct: 11.5 });
const raisins = (cups: number): Part => ({ kg: cups * 0.145, solubleSolidsPct: 79 }); // SR28: 15 % water, 4 % fibre
const NUTS_CUP_L = 0.117; // SR28: 117 g of chopped walnuts

const read: FreshRecipe[] = [
  {
    id: 'peach-orange-marmalade',
    name: 'peach-orange marmalade, 5 cups peaches, 1 cup oranges, peel of 1, 6 cups sugar',
    product: 'marmalade',
    pectin: 'none',
    fruit: 'peach',
    put: { preparedKg: 5 * GROUND_CUP },
    sugarKg: 6 * SUGAR_CUP,
    parts: [orange(1), { kg: 0.25 * PEEL_CUP, solubleSolidsPct: 12 }, lemon(2 * TBSP)],
    makes: { halfPints: { low: 6, high: 7 } },
    publisher: NCHFP,
    title: `Peach-orange marmalade, after ${HG_56}`,
    url: `${NCHFP_PAGES}peach_orange_marmalade.html`,
    how: 'repeated', // the yield on the page itself
  },
  {
    id: 'apricot-orange-conserve',
    name: 'apricot-orange conserve, 3 1/2 cups canned apricots, 1 1/2 cups orange juice, 3 1/4 cups sugar, nuts',
    product: 'jam',
    pectin: 'none',
    fruit: 'apricot',
    put: { preparedKg: 3.5 * 0.23 },
    fruitSolidsPct: 21, // canned in syrup and drained
    sugarKg: 3.25 * SUGAR_CUP,
    parts: [{ kg: 1.5 * JUICE_CUP, solubleSolidsPct: 11.5 }, lemon(2 * TBSP)],
    nutsL: 0.5 * NUTS_CUP_L,
    makes: { halfPints: { low: 5, high: 5 } },
    publisher: NCHFP,
    title: `Apricot-orange conserve without added pectin, after ${HG_56}`,
    url: `${NCHFP_PAGES}apricot_orange_conserve.html`,
    how: 'read',
  },
  {
    id: 'cranberry-conserve',
    name: 'cranberry conserve, 1 quart cranberries, 1 orange, 1 cup water, 3 cups sugar, raisins, nuts',
    product: 'jam',
    pectin: 'none',
    fruit: 'cranberry',
    put: { preparedKg: 4 * 0.1 }, // SR28, whole
    sugarKg: 3 * SUGAR_CUP,
    parts: [{ kg: 0.159, solubleSolidsPct: 12 }, water(WATER_CUP), raisins(0.5)],
    nutsL: 0.5 * NUTS_CUP_L,
    makes: { halfPints: { low: 4, high: 4 } },
    publisher: NCHFP,
    title: `Cranberry conserve, after ${SO_EASY}`,
    url: 'https://nchfp.uga.edu/blog/cranberry-conserve',
    how: 'read',
  },
  {
    id: 'blackberry-jelly-4-3',
    name: 'blackberry jelly, 4 cups juice, 3 cups sugar (five glasses of 6 oz; the same in another guide: 4 to 5 half-pints)',
    product: 'jelly',
    pectin: 'none',
    fruit: 'blackberry',
    put: { juiceKg: 4 * JUICE_CUP },
    sugarKg: 3 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 3.75, high: 5 } },
    publisher: 'Texas A&M University, Aggie Horticulture; University of Georgia Cooperative Extension',
    title: `Blackberry jelly without added pectin; ${SO_EASY}`,
    url: 'http://plantanswers.com/Recipes/blackberryjelly.html',
    how: 'read',
  },
  {
    id: 'plum-preserves',
    name: 'plum preserves, 5 cups pitted tart plums (2 1/2 lb), 4 cups sugar, 1 cup water',
    product: 'jam',
    pectin: 'none',
    fruit: 'plum',
    put: { preparedKg: 2.5 * 0.4536 * 0.94 },
    sugarKg: 4 * SUGAR_CUP,
    parts: [water(WATER_CUP)],
    makes: { halfPints: { low: 5, high: 5 } },
    publisher: UGA,
    title: `Plum preserves, ${SO_EASY}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'citrus-marmalade',
    name: 'citrus marmalade, pulp of 1 grapefruit and 4 oranges, about 1 3/4 cups peel, 2 cups water, 3 cups sugar',
    product: 'marmalade',
    pectin: 'none',
    fruit: 'orange-with-peel',
    put: { preparedKg: 0.246 + 4 * 0.131 + (0.75 + 0.75 + 1 / 3) * PEEL_CUP },
    sugarKg: 3 * SUGAR_CUP,
    parts: [water(2 * WATER_CUP)],
    makes: { halfPints: { low: 3, high: 4 } },
    publisher: `${NCHFP}; Cornell Cooperative Extension, Monroe County`,
    title: 'Citrus marmalade without added pectin',
    url: 'https://monroe.cce.cornell.edu/nutrition/food-preservation',
    how: 'repeated',
  },
  {
    id: 'pear-preserves',
    name: 'pear preserves, 3 lb pears as bought, 3 cups sugar, 3 cups water, 1 lemon',
    product: 'jam',
    pectin: 'none',
    fruit: 'pear',
    put: { boughtKg: 3 * 0.4536 },
    sugarKg: 3 * SUGAR_CUP,
    parts: [water(3 * WATER_CUP), { kg: 0.1, solubleSolidsPct: 9 }],
    makes: { halfPints: { low: 5, high: 5 } },
    publisher: 'Mississippi State University Extension Service',
    title: 'Pear preserves',
    url: null,
    how: 'repeated',
  },
  {
    id: 'grape-conserve-raisins',
    name: 'grape conserve, 4 lb Concord grapes, 1 orange, 4 cups sugar, 1 cup raisins, 1 cup nuts',
    product: 'jam',
    pectin: 'none',
    fruit: 'grape',
    put: { preparedKg: 4 * 0.4536 * 0.94 }, // stems and seeds off, skins in
    sugarKg: 4 * SUGAR_CUP,
    parts: [{ kg: 0.159, solubleSolidsPct: 12 }, raisins(1)],
    nutsL: NUTS_CUP_L,
    makes: { halfPints: { low: 8, high: 9 } },
    publisher: NCHFP,
    title: `Grape conserve without added pectin, after ${HG_56}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'grape-conserve-walnuts',
    name: 'grape conserve, 2 quarts stemmed grapes (4 lb), 6 cups sugar, 1 cup walnuts',
    product: 'jam',
    pectin: 'none',
    fruit: 'grape',
    put: { preparedKg: 4 * 0.4536 * 0.94 },
    sugarKg: 6 * SUGAR_CUP,
    parts: [water(0.1)],
    nutsL: NUTS_CUP_L,
    makes: { halfPints: { low: 7, high: 7 } },
    publisher: UGA,
    title: `Grape conserve, ${SO_EASY}, 6th edition`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'plum-jelly-4-3',
    name: 'plum jelly, 4 cups juice, 3 cups sugar (five glasses of 6 oz)',
    product: 'jelly',
    pectin: 'none',
    fruit: 'plum',
    put: { juiceKg: 4 * JUICE_CUP },
    sugarKg: 3 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 3.75, high: 3.75 } },
    publisher: USDA,
    title: `${HG_56}, plum jelly without added pectin`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'muscadine-jelly',
    name: 'muscadine jelly, 4 cups juice, 3 cups sugar, boiled to 220 F',
    product: 'jelly',
    pectin: 'none',
    fruit: 'grape',
    put: { juiceKg: 4 * GRAPE_JUICE_CUP },
    sugarKg: 3 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 3, high: 4 } },
    publisher: UGA,
    title: `Muscadine jelly, ${SO_EASY}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'plum-jelly-powdered',
    name: 'plum jelly, 5 cups juice, 7 cups sugar, powdered pectin',
    product: 'jelly',
    pectin: 'powdered',
    fruit: 'plum',
    put: { juiceKg: 5 * JUICE_CUP },
    sugarKg: 7 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 7, high: 8 } },
    publisher: USDA,
    title: `${HG_56}, plum jelly with powdered pectin`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'mixed-fruit-jelly-liquid',
    name: 'mixed fruit jelly, 2 cups cranberry, 2 cups quince and 1 cup apple juice, 7 1/2 cups sugar, liquid pectin',
    product: 'jelly',
    pectin: 'liquid',
    fruit: 'quince',
    put: { juiceKg: 5 * JUICE_CUP },
    sugarKg: 7.5 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 9, high: 10 } },
    publisher: USDA,
    title: `${HG_56}, mixed fruit jelly with liquid pectin`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'cherry-jam-liquid',
    name: 'cherry jam, 4 1/2 cups ground sour cherries, 7 cups sugar, liquid pectin',
    product: 'jam',
    pectin: 'liquid',
    fruit: 'sour-cherry',
    put: { preparedKg: 4.5 * 0.23 },
    sugarKg: 7 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 8, high: 8 } },
    publisher: USDA,
    title: `${HG_56}, cherry jam with liquid pectin`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'blackberry-jam-liquid',
    name: 'blackberry jam, 4 cups crushed, 7 cups sugar, liquid pectin',
    product: 'jam',
    pectin: 'liquid',
    fruit: 'blackberry',
    put: { preparedKg: 4 * BERRY_CUP },
    sugarKg: 7 * SUGAR_CUP,
    parts: [],
    makes: { halfPints: { low: 8, high: 9 } },
    publisher: NCHFP,
    title: `Blackberry jam with liquid pectin, after ${HG_56}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'pineapple-jam-liquid',
    name: 'pineapple jam, a 20-oz can of crushed pineapple, 3 1/4 cups sugar, liquid pectin',
    product: 'jam',
    pectin: 'liquid',
    fruit: 'pineapple',
    put: { preparedKg: 0.567 },
    sugarKg: 3.25 * SUGAR_CUP,
    parts: [lemon(3 * TBSP)],
    makes: { halfPints: { low: 4, high: 5 } },
    publisher: NCHFP,
    title: `Pineapple jam with liquid pectin, after ${HG_56}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'damson-orange-conserve',
    name: 'damson plum-orange conserve, 3 1/2 cups damsons, 1 cup oranges, 2 cups water, 7 cups sugar, raisins, nuts, powdered pectin',
    product: 'jam',
    pectin: 'powdered',
    fruit: 'damson',
    put: { preparedKg: 1.5 * 0.4536 * 0.94 },
    sugarKg: 7 * SUGAR_CUP,
    parts: [orange(1), water(2 * WATER_CUP), raisins(0.5)],
    nutsL: 0.5 * NUTS_CUP_L,
    makes: { halfPints: { low: 8, high: 9 } },
    publisher: NCHFP,
    title: `Damson plum-orange conserve with powdered pectin, after ${HG_56}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'apple-conserve',
    name: 'apple conserve, 4 1/2 cups apples chopped fine, 1/2 cup water, 5 1/2 cups sugar, raisins, nuts, powdered pectin',
    product: 'jam',
    pectin: 'powdered',
    fruit: 'apple',
    put: { preparedKg: 4.5 * 0.125 }, // SR28, chopped with skin
    sugarKg: 5.5 * SUGAR_CUP,
    parts: [water(0.5 * WATER_CUP), lemon(0.25), raisins(0.5)],
    nutsL: 0.5 * NUTS_CUP_L,
    makes: { halfPints: { low: 6, high: 7 } },
    publisher: 'Mississippi State University Extension Service',
    title: 'Apple conserve',
    url: null,
    how: 'repeated',
  },
  {
    id: 'strawberry-kiwi-jam',
    name: 'strawberry-kiwi jam, 3 cups crushed strawberries, 3 kiwi, 5 cups sugar, powdered pectin',
    product: 'jam',
    pectin: 'powdered',
    fruit: 'strawberry',
    put: { preparedKg: 3 * BERRY_CUP },
    sugarKg: 5 * SUGAR_CUP,
    parts: [{ kg: 3 * 0.069, solubleSolidsPct: 13.5 }, lemon(TBSP)],
    makes: { halfPints: { low: 6, high: 6 } },
    publisher: UGA,
    title: `Strawberry-kiwi jam, ${SO_EASY}`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'pear-jam-powdered',
    name: 'pear jam, 3 cups chopped or ground pears (2 lb), 1 orange, 3/4 cup pineapple, cherries, 5 cups sugar, powdered pectin',
    product: 'jam',
    pectin: 'powdered',
    fruit: 'pear',
    put: { preparedKg: 3 * 0.2 }, // between cubes (SR28, 0.161) and ground
    sugarKg: 5 * SUGAR_CUP,
    parts: [
      { kg: 0.18, solubleSolidsPct: 11.5 },
      { kg: 0.75 * 0.181, solubleSolidsPct: 15 },
      { kg: 0.05, solubleSolidsPct: 40 },
      lemon(0.25),
    ],
    makes: { halfPints: { low: 6, high: 7 } },
    publisher: UGA,
    title: `Pear jam with powdered pectin, ${SO_EASY}, 6th edition`,
    url: null,
    how: 'repeated',
  },
  {
    id: 'apple-marmalade',
    name: 'apple marmalade, 8 cups thinly sliced apples, 1 orange, 1 1/2 cups water, 5 cups sugar (written down last)',
    product: 'marmalade',
    pectin: 'none',
    fruit: 'apple',
    put: { preparedKg: 8 * 0.109 }, // SR28, sliced
    sugarKg: 5 * SUGAR_CUP,
    parts: [{ kg: 0.159, solubleSolidsPct: 12 }, water(1.5 * WATER_CUP), lemon(2 * TBSP)],
    makes: { halfPints: { low: 6, high: 7 } },
    publisher: 'Mississippi State University Extension Service',
    title: 'Apple marmalade',
    url: null,
    how: 'repeated',
  },
];

const LB = 0.45359; // kg
const PINT = 0.568; // imperial, of water, kg
const MAFF = {
  publisher: 'Ministry of Agriculture, Fisheries and Food (United Kingdom)',
  title: 'Home Preservation of Fruit and Vegetables (Bulletin 21)',
  url: null,
  how: 'memory',
} as const;

/** The bulletin's jams are weighed: so much fruit, water and sugar make so much jam. */
function weighed(
  fruit: string,
  put: FreshRecipe['put'],
  pounds: { pintsWater: number; sugar: number; makes: number; lemonKg?: number },
  product: Product = 'jam',
): FreshRecipe {
  const kg = pounds.makes * LB;
  return {
    id: `${fruit}-${product}-weighed`,
    name: `${fruit} ${product} by weight: ${pounds.sugar} lb sugar, ${pounds.pintsWater} pints water, ${pounds.makes} lb`,
    product,
    pectin: 'none',
    fruit,
    put,
    sugarKg: pounds.sugar * LB,
    parts: [
      ...(pounds.pintsWater > 0 ? [water(pounds.pintsWater * PINT)] : []),
      ...(pounds.lemonKg ? [{ kg: pounds.lemonKg, solubleSolidsPct: 9 }] : []),
    ],
    makes: { kg: { low: kg, high: kg } },
    ...MAFF,
  };
}

const ten = { sugar: 6, makes: 10 };

const fromMemory: FreshRecipe[] = [
  {
    id: 'orange-marmalade',
    name: 'orange marmalade, 4 cups peel, 4 cups pulp, 1 cup lemon, 6 cups water, 6 cups sugar (the yield from memory)',
    product: 'marmalade',
    pectin: 'none',
    fruit: 'orange-with-peel',
    put: { preparedKg: 4 * PEEL_CUP + 4 * CHOPPED_ORANGE_CUP + 0.212 },
    sugarKg: 6 * SUGAR_CUP,
    parts: [water(6 * WATER_CUP)],
    makes: { halfPints: { low: 7, high: 7 } },
    publisher: `${NCHFP}; University of Wisconsin Extension, Winnebago County`,
    title: 'Orange marmalade',
    url: 'https://winnebago.extension.wisc.edu/2019/04/05/try-orange-marmalade-by-barb-ingham',
    how: 'memory',
  },
  weighed('raspberry', { preparedKg: 6 * LB }, { ...ten, pintsWater: 0 }),
  weighed('loganberry', { preparedKg: 6 * LB }, { ...ten, pintsWater: 0 }),
  weighed('black-currant', { preparedKg: 4 * LB }, { ...ten, pintsWater: 3 }),
  weighed('gooseberry', { preparedKg: 4.5 * LB }, { ...ten, pintsWater: 1.5 }),
  weighed('plum', { boughtKg: 6 * LB }, { ...ten, pintsWater: 1 }),
  weighed('damson', { boughtKg: 5 * LB }, { ...ten, pintsWater: 1.5 }),
  weighed('greengage', { boughtKg: 6 * LB }, { ...ten, pintsWater: 1 }),
  weighed('apricot', { boughtKg: 6 * LB }, { ...ten, pintsWater: 1 }),
  weighed('strawberry', { preparedKg: 3.5 * LB }, { pintsWater: 0, sugar: 3, makes: 5, lemonKg: 0.045 }),
  weighed(
    'orange-with-peel',
    { preparedKg: 3 * LB },
    { ...ten, pintsWater: 5.5, lemonKg: 0.09 },
    'marmalade',
  ),
];

export const freshRecipes: FreshRecipe[] = [...read, ...fromMemory];
