// How much sound is passed on at a time: one frame of the noise suppressor, which takes nothing else.

/** Samples in 10 ms at 48 kHz. */
export const SUPPRESSOR_FRAME = 480;
export const CAPTURE_RATE_HZ = 48000;
