// How the sentences open now become one small machine over words: shared beginnings and shared endings, nothing else.

/** A step from one state to another by one word. State 0 is the start, state 1 the end. */
export interface Arc {
  from: number;
  to: number;
  word: string;
}

export interface WordMachine {
  states: number;
  arcs: Arc[];
}

interface Node {
  next: Map<string, Node>;
  ends: boolean;
}

const START = 0;
const END = 1;

function tree(sentences: readonly string[]): Node {
  const root: Node = { next: new Map(), ends: false };
  for (const sentence of sentences) {
    let node = root;
    for (const word of sentence.split(' ').filter(Boolean)) {
      const child = node.next.get(word) ?? { next: new Map<string, Node>(), ends: false };
      node.next.set(word, child);
      node = child;
    }
    if (node !== root) node.ends = true;
  }
  return root;
}

/**
 * Folds equal endings together, so that "add one minutes" to "add thirty minutes" costs one "minutes".
 * A word that may end a sentence gets a second arc straight into the end state, so there are no empty steps.
 */
export function wordMachine(sentences: readonly string[]): WordMachine {
  const numbers = new Map<string, number>();
  const arcs: Arc[] = [];
  let states = 2;

  const fold = (node: Node, given?: number): number => {
    const steps = [...node.next].flatMap(([word, child]) => [
      ...(child.ends ? [{ word, to: END }] : []),
      ...(child.next.size > 0 ? [{ word, to: fold(child) }] : []),
    ]);
    steps.sort((a, b) => (a.word < b.word ? -1 : a.word > b.word ? 1 : a.to - b.to));
    const signature = steps.map((step) => `${step.word}>${step.to}`).join(' ');
    const known = numbers.get(signature);
    if (known !== undefined && given === undefined) return known;
    const number = given ?? states++;
    if (given === undefined) numbers.set(signature, number);
    for (const step of steps) arcs.push({ from: number, ...step });
    return number;
  };

  fold(tree(sentences), START);
  return { states, arcs };
}
