// The shares of its height at the start by which a cook tells how far a pot has boiled down.

export const SHARES = {
  threeQuarters: 3 / 4,
  twoThirds: 2 / 3,
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
} as const;

export type Share = keyof typeof SHARES;
export const shareNames = Object.keys(SHARES) as Share[];
