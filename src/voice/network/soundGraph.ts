// How the open sentences become one graph of sounds: shared beginnings once, every way to say a word side by side.

/** The sounds in the network's order; its output 0 is the blank, output 1 the first of these. */
export const SOUNDS =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  );

/** A node before which nothing was said. */
export const START = -1;

export interface SoundGraph {
  /** Of each node, the network's output for its sound. Nodes come after those they follow. */
  sounds: number[];
  /** Of each node, the nodes it may follow. */
  after: number[][];
  /** Of each node, whether a sentence goes on after it. */
  goesOn: boolean[];
  /** Of each sentence, the nodes it may end on, and the sounds of its shortest way. */
  sentences: { words: string; ends: number[]; shortest: number }[];
}

interface Place {
  ends: number[];
  shortest: number;
  next: Map<string, Place | null>;
}

/** `waysOf` gives the ways to say a word as "W AH N"; a sentence with a word that has none is left out. */
export function soundGraph(
  sentences: readonly string[],
  waysOf: (word: string) => readonly string[],
): SoundGraph {
  const graph: SoundGraph = { sounds: [], after: [], goesOn: [], sentences: [] };
  const start: Place = { ends: [START], shortest: 0, next: new Map() };
  for (const words of new Set(sentences)) {
    let place: Place | null = start;
    for (const word of words.split(' ')) {
      if (place === null) break;
      if (!place.next.has(word)) place.next.set(word, grow(graph, place, waysOf(word)));
      place = place.next.get(word) ?? null;
    }
    if (place !== null && place !== start)
      graph.sentences.push({ words, ends: place.ends, shortest: place.shortest });
  }
  return graph;
}

function grow(graph: SoundGraph, from: Place, ways: readonly string[]): Place | null {
  if (ways.length === 0) return null;
  const lengths: number[] = [];
  const ends = ways.map((way) => {
    const sounds = way.split(' ').map(outputOf);
    lengths.push(sounds.length);
    let before = from.ends;
    for (const sound of sounds) {
      graph.after.push(before);
      graph.goesOn.push(false);
      for (const node of before) if (node !== START) graph.goesOn[node] = true;
      before = [graph.sounds.push(sound) - 1];
    }
    return before[0]!;
  });
  return { ends, shortest: from.shortest + Math.min(...lengths), next: new Map() };
}

function outputOf(sound: string): number {
  const index = SOUNDS.indexOf(sound);
  if (index < 0) throw new Error(`The network knows no sound "${sound}".`);
  return index + 1;
}
