// Is one sound inside another, and where?

/**
 * The best normalised cross-correlation of `wanted` with any stretch of `heard` (1: the same but for loudness;
 * 0: nothing in common) and the sample at which that stretch begins. Looks coarsely first, then near the best.
 */
export function correlation(wanted: Float32Array, heard: Float32Array): { peak: number; at: number } {
  let best = { peak: 0, at: 0 };
  const last = heard.length - wanted.length;
  const every = 8;
  const look = (from: number, to: number, step: number, stride: number) => {
    for (let at = Math.max(0, from); at <= Math.min(last, to); at += step) {
      const peak = similarity(wanted, heard, at, stride);
      if (peak > best.peak) best = { peak, at };
    }
  };
  look(0, last, 1, every);
  const around = best.at;
  best = { peak: 0, at: around };
  look(around - every, around + every, 1, 1);
  return best;
}

/**
 * How much of a sound arrived: the share of its quarter seconds that are found in `heard` one to one (0.9 or
 * better) and in order. On a busy machine a sound card leaves gaps, which move what follows but lose little.
 */
export function shareArrived(wanted: Float32Array, heard: Float32Array, rateHz: number): number {
  const piece = rateHz / 4;
  let arrived = 0;
  let from = 0;
  for (let i = 0; i + piece <= wanted.length; i += piece) {
    const found = correlation(wanted.subarray(i, i + piece), heard.subarray(from));
    if (found.peak < 0.9) continue;
    arrived += 1;
    from += found.at;
  }
  return arrived / Math.floor(wanted.length / piece);
}

function similarity(wanted: Float32Array, heard: Float32Array, at: number, stride: number): number {
  let product = 0;
  let wantedPower = 0;
  let heardPower = 0;
  for (let i = 0; i < wanted.length; i += stride) {
    const a = wanted[i] ?? 0;
    const b = heard[at + i] ?? 0;
    product += a * b;
    wantedPower += a * a;
    heardPower += b * b;
  }
  return wantedPower === 0 || heardPower === 0 ? 0 : product / Math.sqrt(wantedPower * heardPower);
}
