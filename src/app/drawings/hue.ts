// The colour of what is in the pot, as an OKLCH hue; its lightness is fixed by the theme so that words stay readable on it.

const HUES: [RegExp, number][] = [
  [/crab|strawberr|raspberr|cherr|cranberr|rhubarb|currant/, 15],
  [/damson|plum|blackberr|grape|elderberr|mulberr|blueberr/, 330],
  [/apricot|peach|nectarine|mango|papaya|pumpkin|squash|persimmon|orange|marmalade|tangerine/, 60],
  [/pear|apple|quince|gooseberr|lime|kiwi|melon|lemon/, 105],
  [/fig|prune|date/, 355],
  [/tomato|guava/, 30],
];

const OTHER_HUE = 340;

/** The canner's. */
export const WATER_HUE = 225;

export function fruitHue(fruit: string): number {
  const id = fruit.toLowerCase();
  return HUES.find(([pattern]) => pattern.test(id))?.[1] ?? OTHER_HUE;
}
