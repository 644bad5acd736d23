// A whole sound at another sampling rate: a windowed-sinc filter, so that nothing folds over and the telephone's band stays as it is.

/** Zero crossings of the filter on each side. */
const WIDTH = 24;

export function resampled(sound: Float32Array, fromHz: number, toHz: number): Float32Array {
  if (fromHz === toHz) return sound;
  const band = 0.95 * Math.min(1, toHz / fromHz);
  const reach = WIDTH / band;
  return Float32Array.from({ length: Math.floor((sound.length * toHz) / fromHz) }, (_, index) => {
    const at = (index * fromHz) / toHz;
    let sum = 0;
    for (let i = Math.ceil(at - reach); i <= at + reach; i++)
      if (i >= 0 && i < sound.length) sum += sound[i]! * tap(at - i, band, reach);
    return sum;
  });
}

function tap(distance: number, band: number, reach: number): number {
  const x = Math.PI * band * distance;
  const sinc = x === 0 ? 1 : Math.sin(x) / x;
  const hann = 0.5 + 0.5 * Math.cos((Math.PI * distance) / reach);
  return band * sinc * hann;
}
