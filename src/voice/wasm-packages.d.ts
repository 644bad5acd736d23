// The shapes of the two compiled packages that ship none, or too little, of their own.

declare module '@jitsi/rnnoise-wasm/dist/rnnoise-sync.js' {
  export interface SuppressorModule {
    ready: Promise<unknown>;
    HEAPF32: Float32Array;
    _malloc(bytes: number): number;
    _rnnoise_create(model: number): number;
    _rnnoise_process_frame(state: number, output: number, input: number): number;
  }
  export default function createSuppressor(): SuppressorModule;
}
