// What the phoneme network is given: forty bands of sound each 10 ms, freed of loudness and channel; the twin of training/features.py.

export const BANDS = 40;
const RATE_HZ = 16000;
/** 25 ms of sound every 10 ms. */
const WINDOW = 400;
const HOP = 160;
const FFT = 512;
const [LOW_HZ, HIGH_HZ] = [80, 7600];
/** Even noise as if 40 dB under the clip: a synthesiser's silence must not look special. */
const FLOOR = 1e-4;
const SCALE = 3;

export interface Features {
  frames: number;
  /** Band after band, each with all its frames. */
  values: Float32Array;
}

/** `clip` is 16 kHz; one shorter than 25 ms gives no frame. */
export function features(clip: Float32Array): Features {
  const frames = Math.max(0, Math.floor((clip.length - WINDOW) / HOP) + 1);
  const powers = Array.from({ length: frames }, (_, frame) => bandPowers(clip, frame * HOP));
  const totals = powers.map((bands) => bands.reduce((sum, power) => sum + power, 0));
  const mean = totals.reduce((sum, total) => sum + total, 0) / Math.max(1, frames);
  const values = new Float32Array(BANDS * frames);
  for (let band = 0; band < BANDS; band++) {
    const floor = FLOOR * mean * WIDTHS[band]! + 1e-20;
    const logs = powers.map((bands) => Math.log(bands[band]! + floor));
    const centre = loudMean(logs, totals, mean);
    logs.forEach((log, frame) => (values[band * frames + frame] = (log - centre) / SCALE));
  }
  return { frames, values };
}

/** The mean over what is loud, so that the length of the pauses does not matter. */
function loudMean(logs: readonly number[], totals: readonly number[], mean: number): number {
  let [sum, weights] = [0, 0];
  logs.forEach((log, frame) => {
    const weight = totals[frame]! / (totals[frame]! + mean + 1e-20);
    sum += weight * log;
    weights += weight;
  });
  return sum / Math.max(1e-6, weights);
}

const HANN = Float64Array.from(
  { length: WINDOW },
  (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / WINDOW),
);

/** Triangles on the mel scale of O'Shaughnessy, 2595 log10(1 + f / 700), as [first bin, weights]. */
const FILTERS: readonly (readonly [number, Float64Array])[] = melFilters();
const WIDTHS = shares(FILTERS.map(([, weights]) => weights.reduce((sum, weight) => sum + weight, 0)));

function melFilters(): [number, Float64Array][] {
  const mel = (hz: number) => 2595 * Math.log10(1 + hz / 700);
  const step = (mel(HIGH_HZ) - mel(LOW_HZ)) / (BANDS + 1);
  const edge = (i: number) => 700 * (10 ** ((mel(LOW_HZ) + i * step) / 2595) - 1);
  return Array.from({ length: BANDS }, (_, band) => {
    const [left, middle, right] = [edge(band), edge(band + 1), edge(band + 2)];
    const first = Math.ceil((left * FFT) / RATE_HZ);
    const last = Math.floor((right * FFT) / RATE_HZ);
    const weights = Float64Array.from({ length: last - first + 1 }, (_, i) => {
      const hz = ((first + i) * RATE_HZ) / FFT;
      return Math.max(0, Math.min((hz - left) / (middle - left), (right - hz) / (right - middle)));
    });
    return [first, weights];
  });
}

function shares(widths: readonly number[]): number[] {
  const sum = widths.reduce((total, width) => total + width, 0);
  return widths.map((width) => width / sum);
}

function bandPowers(clip: Float32Array, at: number): number[] {
  const real = new Float64Array(FFT);
  const imaginary = new Float64Array(FFT);
  for (let i = 0; i < WINDOW; i++) real[i] = clip[at + i]! * HANN[i]!;
  transform(real, imaginary);
  const power = (bin: number) => real[bin]! ** 2 + imaginary[bin]! ** 2;
  return FILTERS.map(([first, weights]) =>
    weights.reduce((sum, weight, i) => sum + weight * power(first + i), 0),
  );
}

const COS = Float64Array.from({ length: FFT / 2 }, (_, i) => Math.cos((2 * Math.PI * i) / FFT));
const SIN = Float64Array.from({ length: FFT / 2 }, (_, i) => -Math.sin((2 * Math.PI * i) / FFT));

/** The fast Fourier transform of Cooley and Tukey (1965), radix 2, in place. */
function transform(real: Float64Array, imaginary: Float64Array): void {
  for (let i = 1, j = 0; i < FFT; i++) {
    let bit = FFT >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) [real[i], real[j]] = [real[j]!, real[i]!]; // the imaginary part is all zeros
  }
  for (let half = 1; half < FFT; half *= 2)
    for (let start = 0; start < FFT; start += 2 * half)
      for (let k = 0; k < half; k++) {
        const turn = (k * FFT) / (2 * half);
        const [a, b] = [start + k, start + k + half];
        const re = real[b]! * COS[turn]! - imaginary[b]! * SIN[turn]!;
        const im = real[b]! * SIN[turn]! + imaginary[b]! * COS[turn]!;
        real[b] = real[a]! - re;
        imaginary[b] = imaginary[a]! - im;
        real[a]! += re;
        imaginary[a]! += im;
      }
}
