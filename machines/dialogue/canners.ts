// What the canners of a kitchen are called: the one is "the canner", of two each has its number.

export type CannerName = 'canner' | 'first canner' | 'second canner';

export const NUMBERED: readonly CannerName[] = ['first canner', 'second canner'];

/** The name of each, in the order in which they were set up. */
export function cannerName(which: number, among: number): CannerName {
  return among < 2 ? 'canner' : (NUMBERED[which] ?? 'second canner');
}

export function isCannerName(name: string | undefined): name is CannerName {
  return name === 'canner' || NUMBERED.some((one) => one === name);
}

/** As the sentences choose by it. */
export function whichCanner(name: CannerName): 'only' | 'first' | 'second' {
  return name === 'canner' ? 'only' : name === 'first canner' ? 'first' : 'second';
}
