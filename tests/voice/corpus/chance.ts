// Chance with a seed, so that the corpus is the same on every machine.

/** Mulberry32: small, fast, and even enough for noise. Gives 0 up to, not including, 1. */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** FNV-1a, to make a seed of a name. */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const char of text) hash = Math.imul(hash ^ char.charCodeAt(0), 0x01000193);
  return hash >>> 0;
}

export function between(random: () => number, low: number, high: number): number {
  return low + (high - low) * random();
}
