// What law and guides print about acid, forbidden products and standards of identity.

/** Purees and fruits that must not go to the shelf, whatever is added at home. */
export const neverShelf = [
  {
    fruit: 'pumpkin',
    source: 'National Center for Home Food Preservation: no home canning of mashed or pureed pumpkin (read)',
  },
  {
    fruit: 'white peach',
    source: 'National Center for Home Food Preservation; University of Wisconsin (2020): freeze only (read)',
  },
  {
    fruit: 'elderberry',
    source: 'University of Wisconsin B2909: average pH 4.92 of over 400 samples (read)',
  },
] as const;

/** Fruits at or above pH 4.6 that go to the shelf only with a tested dose of acid. */
export const acidRequired = [
  { fruit: 'fig', source: 'USDA AIB-539 guide 2: lemon juice or citric acid is required (read)' },
  { fruit: 'asian pear', source: 'USDA AIB-539 guide 2: 1 Tbsp bottled lemon juice per pint (read)' },
  { fruit: 'banana', source: 'FDA approximate pH list 4.5 to 5.2; University of California (read)' },
  { fruit: 'mango', source: 'FDA approximate pH list 5.8 to 6.0, ripe (read)' },
  { fruit: 'papaya', source: 'FDA approximate pH list 5.2 to 6.0 (read)' },
  { fruit: 'cantaloupe', source: 'FDA approximate pH list 6.13 to 6.58 (read)' },
  { fruit: 'honeydew', source: 'FDA approximate pH list 6.0 to 6.67 (read)' },
  { fruit: 'watermelon', source: 'FDA approximate pH list 5.18 to 5.6 (read)' },
  { fruit: 'persimmon', source: 'FDA approximate pH list 4.42 to 4.7 (read)' },
  { fruit: 'tomato', source: 'FDA approximate pH list 4.3 to 4.9; USDA AIB-539 guide 3 (read)' },
] as const;

/** Fruits that need no added acid for the shelf. */
export const acidOfItsOwn = [
  { fruit: 'apple', source: 'FDA approximate pH list 3.3 to 4.0 (read)' },
  { fruit: 'crab apple', source: 'general literature, pH 2.9 to 3.3 (from memory)' },
  { fruit: 'damson', source: 'FDA approximate pH list, damson plums 2.9 to 3.1 (from memory)' },
  { fruit: 'raspberry', source: 'FDA approximate pH list 3.22 to 3.95 (read)' },
  { fruit: 'strawberry', source: 'FDA approximate pH list 3.0 to 3.9 (read)' },
  { fruit: 'quince', source: 'FDA approximate pH list 3.12 to 3.4 (read)' },
] as const;

/** Least soluble solids by law, mass per cent. */
export const identity = {
  butterPct: 43,
  butterSource: '21 CFR 150.110(d): not less than 43 % (from memory)',
  jamPct: 65,
  jamSource: '21 CFR 150.160(d)(3): not less than 65 % (from memory)',
  jellyPct: 65,
  jellySource: '21 CFR 150.140(d)(3): not less than 65 % (read)',
} as const;

/**
 * The tested dose for fig: half a cup of bottled lemon juice to 4 cups of crushed figs (3 lb whole).
 * 118 mL to about 0.92 kg crushed.
 */
export const figDose = {
  lemonMl: 118,
  crushedKg: 4 * 0.23,
  source: 'USDA Home and Garden Bulletin 56, fig jam (read in a page repeating the published text)',
} as const;
