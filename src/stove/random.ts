// Where does chance come from, so that every evening can be cooked again exactly?

/** A value drawn, and the seed to draw the next one from. */
export interface Drawn {
  value: number;
  seed: number;
}

/** Uniform in [0, 1). The 32-bit mixer is mulberry32 (public domain), good enough for kitchens. */
export function drawUniform(seed: number): Drawn {
  const next = (seed + 0x6d2b79f5) | 0;
  let t = Math.imul(next ^ (next >>> 15), 1 | next);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return { value: ((t ^ (t >>> 14)) >>> 0) / 4294967296, seed: next };
}

/** Normal with mean 0 and standard deviation 1 (Box and Muller). */
export function drawNormal(seed: number): Drawn {
  const first = drawUniform(seed);
  const second = drawUniform(first.seed);
  const radius = Math.sqrt(-2 * Math.log(1 - first.value));
  return { value: radius * Math.cos(2 * Math.PI * second.value), seed: second.seed };
}

/** A hat to draw from while a kitchen is being set up; not used while it runs. */
export interface Hat {
  between: (low: number, high: number) => number;
  normal: (mean: number, sd: number) => number;
  oneOf: <T>(things: readonly [T, ...T[]]) => T;
  seed: () => number;
}

export function hat(startSeed: number): Hat {
  let seed = startSeed | 0;
  const take = (drawn: Drawn): number => {
    seed = drawn.seed;
    return drawn.value;
  };
  return {
    between: (low, high) => low + (high - low) * take(drawUniform(seed)),
    normal: (mean, sd) => mean + sd * take(drawNormal(seed)),
    oneOf: (things) => things[Math.floor(take(drawUniform(seed)) * things.length)] ?? things[0],
    seed: () => Math.floor(take(drawUniform(seed)) * 4294967296) | 0,
  };
}
