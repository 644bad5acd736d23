// The compiled decoder behind the classic recogniser: its memory, its model files, its search.

import createModule, { type SoundSwallowerModule } from 'soundswallower';
import type { WordMachine } from './automaton.ts';

export interface ClassicFiles {
  wasm: ArrayBuffer;
  mdef: ArrayBuffer;
  means: ArrayBuffer;
  variances: ArrayBuffer;
  sendump: ArrayBuffer;
  transitions: ArrayBuffer;
}

/** One word, or one stretch of silence, on the best path. */
export interface Segment {
  word: string;
  /** First and last frame of 10 ms. */
  from: number;
  to: number;
  /** Log likelihood, natural log. */
  score: number;
}

export interface Decoded {
  words: string | null;
  segments: Segment[];
}

export interface Decoder {
  addWord(word: string, phones: string): void;
  knows(word: string): boolean;
  /** `price` is added, in natural log, to every step. */
  setMachine(machine: WordMachine, price: number): void;
  decode(clip: Float32Array): Decoded;
}

/** The functions of the compiled module that its own wrapper does not offer: models from memory, machines, scores. */
interface Inner extends SoundSwallowerModule {
  _s3file_init(data: number, bytes: number): number;
  _s3file_free(file: number): number;
  _decoder_logmath(decoder: number): number;
  _bin_mdef_read_s3file(file: number, contextFreeOnly: number): number;
  _set_mdef(decoder: number, mdef: number): void;
  _tmat_init_s3file(file: number, logmath: number, floor: number): number;
  _set_tmat(decoder: number, tmat: number): void;
  _load_gmm(decoder: number, means: number, variances: number, weights: number, dump: number): number;
  _decoder_config(decoder: number): number;
  _decoder_create(config: number): number;
  _config_parse_json(config: number, json: number): number;
  _decoder_init_cleanup(decoder: number): number;
  _decoder_init_fe(decoder: number): number;
  _decoder_init_feat_s3file(decoder: number, lda: number): number;
  _decoder_init_acmod_pre(decoder: number): number;
  _decoder_init_acmod_post(decoder: number): number;
  _decoder_init_dict_s3file(decoder: number, dict: number, fillers: number): number;
  _decoder_add_word(decoder: number, word: number, phones: number, update: number): number;
  _decoder_lookup_word(decoder: number, word: number): number;
  _decoder_set_fsg(decoder: number, fsg: number): number;
  _decoder_start_utt(decoder: number): number;
  _decoder_end_utt(decoder: number): number;
  _decoder_process_float32(
    decoder: number,
    data: number,
    samples: number,
    noSearch: number,
    whole: number,
  ): number;
  _decoder_hyp(decoder: number, score: number): number;
  _decoder_seg_iter(decoder: number): number;
  _seg_iter_next(segment: number): number;
  _fsg_model_init(name: number, logmath: number, weight: number, states: number): number;
  _fsg_model_word_add(fsg: number, word: number): number;
  _fsg_model_trans_add(fsg: number, from: number, to: number, logProbability: number, word: number): void;
  _fsg_set_states(fsg: number, start: number, end: number): void;
  _logmath_log(logmath: number, probability: number): number;
}

/** The model was trained with these; from its own feature file. */
const FEATURES = {
  lowerf: 130,
  upperf: 3700,
  nfilt: 20,
  transform: 'dct',
  lifter: 22,
  feat: '1s_c_d_dd',
  svspec: '0-12/13-25/26-38',
  cmn: 'batch',
  varnorm: false,
  remove_noise: false,
};

/** Only silence may stand between words: a noise model would swallow other people's talk. */
const FILLERS = '<s> SIL\n</s> SIL\n<sil> SIL\n';

/** Wider than the package's own: a narrow one read a tenth fewer sentences rightly at 10 dB (tests/voice/corpus/MEASURED.md). */
const SEARCH = { beam: 1e-60, pbeam: 1e-60, wbeam: 1e-40 };

/** One unit of a decoder's score in natural log: base 1.0001, shifted by ten bits. */
const NATS_PER_UNIT = 1024 * Math.log(1.0001);
const SAMPLE_RATE_HZ = 16000;

export type DecoderSettings = Record<string, number | boolean | string>;

/** Starts the compiled module once; each call of what it gives makes a decoder with its own copy of the models. */
export async function openDecoders(files: ClassicFiles): Promise<(settings?: DecoderSettings) => Decoder> {
  const module = (await createModule({ wasmBinary: files.wasm } as never)) as Inner;
  return (settings = {}) => new CompiledDecoder(module, files, settings);
}

class CompiledDecoder implements Decoder {
  readonly #module: Inner;
  readonly #decoder: number;
  readonly #known = new Set<string>();

  constructor(module: Inner, files: ClassicFiles, settings: DecoderSettings) {
    this.#module = module;
    const config = this.#withText(
      JSON.stringify({ ...FEATURES, ...SEARCH, samprate: SAMPLE_RATE_HZ, loglevel: 'FATAL', ...settings }),
      (json) => module._config_parse_json(0, json),
    );
    this.#decoder = must(module._decoder_create(config), 'create the decoder');
    this.#loadModels(files);
  }

  #loadModels(files: ClassicFiles): void {
    const { _decoder_logmath, ...m } = this.#module;
    const decoder = this.#decoder;
    m._decoder_init_cleanup(decoder);
    must(m._decoder_init_fe(decoder), 'start its front end');
    must(m._decoder_init_feat_s3file(decoder, 0), 'start its features');
    must(m._decoder_init_acmod_pre(decoder), 'start its acoustic model');
    m._set_mdef(
      decoder,
      must(m._bin_mdef_read_s3file(this.#file(files.mdef), 0), 'read the model definition'),
    );
    const floor = 0.0001;
    m._set_tmat(
      decoder,
      must(
        m._tmat_init_s3file(this.#file(files.transitions), _decoder_logmath(decoder), floor),
        'read the transitions',
      ),
    );
    const [means, variances, dump] = [files.means, files.variances, files.sendump].map((file) =>
      this.#file(file),
    );
    if (m._load_gmm(decoder, means!, variances!, 0, dump!) < 0)
      throw new Error('The recogniser could not read its acoustic model.');
    m._decoder_init_acmod_post(decoder);
    must(
      m._decoder_init_dict_s3file(decoder, 0, this.#file(new TextEncoder().encode(FILLERS))),
      'start its dictionary',
    );
  }

  knows(word: string): boolean {
    return this.#known.has(word);
  }

  addWord(word: string, phones: string): void {
    const id = this.#withText(word, (w) =>
      this.#withText(phones, (p) => this.#module._decoder_add_word(this.#decoder, w, p, 0)),
    );
    if (id < 0) throw new Error(`The recogniser cannot take the word "${word}" as ${phones}.`);
    this.#known.add(word);
  }

  setMachine({ states, arcs }: WordMachine, price: number): void {
    const m = this.#module;
    const logmath = m._decoder_logmath(this.#decoder);
    const fsg = this.#withText('open', (name) => m._fsg_model_init(name, logmath, 1, states));
    const cost = m._logmath_log(logmath, Math.exp(price));
    const ids = new Map<string, number>();
    for (const { from, to, word } of arcs) {
      const id = ids.get(word) ?? this.#withText(word, (text) => m._fsg_model_word_add(fsg, text));
      ids.set(word, id);
      m._fsg_model_trans_add(fsg, from, to, cost, id);
    }
    m._fsg_set_states(fsg, 0, 1);
    if (m._decoder_set_fsg(this.#decoder, fsg) < 0)
      throw new Error('The recogniser refused the sentences that are open now.');
  }

  decode(clip: Float32Array): Decoded {
    const m = this.#module;
    const at = m._malloc(clip.byteLength + 4);
    m.HEAPF32.set(clip, at >> 2);
    m._decoder_start_utt(this.#decoder);
    m._decoder_process_float32(this.#decoder, at, clip.length, 0, 1);
    m._decoder_end_utt(this.#decoder);
    const text = m._decoder_hyp(this.#decoder, at);
    const total = m.HEAP32[at >> 2]!;
    m._free(at);
    const words = text === 0 ? '' : readText(m.HEAPU8, text);
    return words === '' ? { words: null, segments: [] } : { words, segments: this.#segments(total) };
  }

  /** The compiled module hands out its segments only as records in its memory. */
  #segments(total: number): Segment[] {
    const m = this.#module;
    const segments: Segment[] = [];
    let sum = 0;
    for (let at = m._decoder_seg_iter(this.#decoder); at !== 0; at = m._seg_iter_next(at)) {
      const [word, from, to, , , score] = m.HEAP32.subarray(
        (at >> 2) + 2,
        (at >> 2) + 8,
      ) as unknown as number[];
      sum += score!;
      segments.push({ word: readText(m.HEAPU8, word!), from: from!, to: to!, score: score! * NATS_PER_UNIT });
    }
    if (sum !== total) throw new Error('The recogniser keeps its segments otherwise than this page knows.');
    return segments;
  }

  #file(bytes: ArrayBuffer | Uint8Array): number {
    const data = new Uint8Array(bytes);
    const at = this.#module._malloc(data.length + 1);
    this.#module.HEAPU8.set(data, at);
    this.#module.HEAPU8[at + data.length] = 0;
    return must(this.#module._s3file_init(at, data.length), 'take in a file');
  }

  #withText<T>(text: string, use: (pointer: number) => T): T {
    const bytes = new TextEncoder().encode(text);
    const at = this.#module._malloc(bytes.length + 1);
    this.#module.HEAPU8.set(bytes, at);
    this.#module.HEAPU8[at + bytes.length] = 0;
    const result = use(at);
    this.#module._free(at);
    return result;
  }
}

function readText(heap: Uint8Array, at: number): string {
  return new TextDecoder().decode(heap.slice(at, heap.indexOf(0, at)));
}

function must(pointer: number, what: string): number {
  if (pointer === 0) throw new Error(`The recogniser could not ${what}.`);
  return pointer;
}
