// Which words of a sentence carry what it says happened, where a jar's safety hangs on that: with another in their
// place it says something else. Words that are seldom heard clearly are not among them, however much they say: where
// "all" or "throw" was rightly heard on the tuning side, "or" or "fro" fits better more than one time in ten.

/**
 * Natural log by which each must be ahead of any common word that sounds like it. On the tuning side of the corpus few
 * of the right ones are not, and many of the others; a word of which that is not so need only not be behind.
 */
const AHEAD: Readonly<Record<string, number>> = { full: 4, plate: 3, sealed: 6, thick: 5 };

const FACTS = new Set(
  (
    'abandon batch boil boiling canner down dropped enough hard held holding holds in jar jars lid line open out passed ' +
    'ready rolling shape stays sterile stopped test took towel wrinkles'
  )
    .split(' ')
    .concat(Object.keys(AHEAD)),
);

export function carriesFact(word: string): boolean {
  return FACTS.has(word);
}

export function aheadOf(word: string): number {
  return AHEAD[word] ?? 0;
}
