// What the page itself is saying, as the sentences that an ear may find of it between two pauses.

/** More words than fit into the longest stretch of speech that is read at all. */
const MOST_WORDS = 26;
const BEGINNINGS = [1, 2, 3];

/**
 * Every run of neighbouring clauses of what is said: a voice breathes at a mark, so a stretch of it begins
 * and ends at one. Read beside the open sentences, they win wherever the page hears itself.
 */
export function ownSentences(said: string): string[] {
  const clauses = said
    .toLowerCase()
    .split(/[.,:;!?]+/)
    .map(plainWords)
    .filter((clause) => clause !== '');
  const runs = new Set<string>();
  clauses.forEach((_, from) => {
    for (let to = from + 1; to <= clauses.length; to++) {
      const run = clauses.slice(from, to).join(' ');
      if (run.split(' ').length > MOST_WORDS) break;
      runs.add(run);
    }
  });
  // Of a clause that is still being said only the beginning is there.
  for (const clause of clauses)
    for (const words of BEGINNINGS) runs.add(clause.split(' ').slice(0, words).join(' '));
  return [...runs];
}

/** Words and their apostrophes; hyphens part words, as in "twenty-one". */
function plainWords(clause: string): string {
  return clause
    .replace(/[^a-z']+/g, ' ')
    .replace(/(^|\s)'+|'+(\s|$)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Whether these words stand, in this order, in what is said. */
export function saysItself(own: readonly string[], words: string): boolean {
  return own.some((run) => ` ${run} `.includes(` ${words} `));
}
