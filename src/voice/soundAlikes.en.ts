// Words that are one sound away from words of the kitchen, so that a sentence with one of them is not taken for a command.
//
// What is said must sound more like the command than like these: "the bowl dropped" is asked back and does
// not pass for "the boil dropped". Common practice, no source: neighbours in the pronouncing dictionary that people do say.

// Only words that carry the fact: whether "full" or "fall" was heard before "rolling boil" changes nothing.
const alike: Readonly<Record<string, readonly string[]>> = {
  boil: ['ball', 'bowl', 'bull', 'oil', 'boy', 'soil', 'coil', 'foil', 'mill', 'mall'],
  hard: ['card', 'lard', 'yard', 'heart'],
  jars: ['cars', 'cards', 'stars'],
  sealed: ['sold', 'peeled', 'failed', 'filled'],
  passed: ['fast', 'pass it'],
  dropped: ['shopped', 'dried'],
  stopped: ['stepped', 'shopped'],
  holds: ['folds', 'cold'],
  thick: ['quick', 'sick', 'stick'],
  test: ['rest', 'text', 'taste'],
  canner: ['cupboard', 'corner'],
};

/** The sentence with one word put for another that sounds like it. */
export function soundAlikes(sentence: string): string[] {
  const words = sentence.split(' ');
  return words.flatMap((word, at) => (alike[word] ?? []).map((other) => words.with(at, other).join(' ')));
}
