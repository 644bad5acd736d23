// How a compact pattern of a phrase book becomes the sentences it stands for.
//
//   [x]        x may be left out
//   (a|b)      a or b
//   {name}     a gap, filled by the language: a fruit, a number, a reading
//   {n:jar}    a number with its noun, in the right form: "one jar", "two jars"

import type { Slots } from '../../machines/dialogue/commands.ts';

/** One way to fill a gap. */
export interface Filling {
  words: string;
  slots: Slots;
}

export type Pattern = string | readonly [pattern: string, slots: Slots];
export type Gaps = (name: string, noun: string | undefined) => readonly Filling[];

export function expand(pattern: Pattern, gaps: Gaps): Filling[] {
  const [text, slots] = typeof pattern === 'string' ? [pattern, {}] : pattern;
  return alternatives(text)
    .flatMap((plain) => fillGaps(plain, gaps))
    .map((filling) => ({ words: tidy(filling.words), slots: { ...slots, ...filling.slots } }));
}

export function hasGap(pattern: Pattern, name: string): boolean {
  const text = typeof pattern === 'string' ? pattern : pattern[0];
  return text.includes(`{${name}}`);
}

/** Every reading of the brackets, the innermost opened first. */
function alternatives(text: string): string[] {
  const inner = /\[([^[\]()]*)\]|\(([^[\]()]*)\)/.exec(text);
  if (inner === null) {
    if (/[[\]()|]/.test(text)) throw new Error(`The pattern "${text}" has a bracket without its partner.`);
    return [text];
  }
  const before = text.slice(0, inner.index);
  const after = text.slice(inner.index + inner[0].length);
  const choices = inner[1] === undefined ? (inner[2] ?? '').split('|') : ['', ...inner[1].split('|')];
  return choices.flatMap((choice) => alternatives(`${before}${choice}${after}`));
}

function fillGaps(text: string, gaps: Gaps): Filling[] {
  const gap = /\{(\w+)(?::([^}]*))?\}/.exec(text);
  if (gap === null) return [{ words: text, slots: {} }];
  const before = text.slice(0, gap.index);
  const rest = fillGaps(text.slice(gap.index + gap[0].length), gaps);
  return gaps(gap[1] ?? '', gap[2]).flatMap((filling) =>
    rest.map((tail) => ({
      words: `${before}${filling.words}${tail.words}`,
      slots: { ...filling.slots, ...tail.slots },
    })),
  );
}

function tidy(words: string): string {
  return words.replace(/\s+/g, ' ').trim();
}
