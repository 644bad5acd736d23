// Which words of a sentence carry what it says happened, where a jar's safety hangs on that: with another in their
// place it says something else. Whether "full" or "fall" was heard before "rolling boil" changes nothing.

const FACTS = new Set(
  (
    'abandon batch boil boiling down dropped hard held holding holds jar jars lid open out passed ready sealed shape ' +
    'sterile stopped test thick towel wrinkles'
  ).split(' '),
);

export function carriesFact(word: string): boolean {
  return FACTS.has(word);
}
