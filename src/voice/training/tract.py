"""Sentences spoken by a model of the vocal tract, each by a tract of its own.

The package is the unpacked @echogarden/gnuspeech-wasm 0.3.0 (GPL-3: it makes training sound and is not shipped);
the script runs inside it.
"""
import subprocess
from pathlib import Path

SCRIPT = r"""
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import open from './wasm/gnuspeech.js';
import { defaultTrmControlModelFileContent as settings } from './dist/utilities/DefaultTrmControlModel.js';

const [list, folder] = process.argv.slice(2);
const module = await open();
const VOICES = ['male', 'female', 'large_child', 'small_child'];
const texts = Object.fromEntries(
  VOICES.map((voice) => [voice, readFileSync(new URL(`data/en/voice_${voice}.txt`, import.meta.url), 'utf8')]),
);

let state = 1;
function chance() {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 2 ** 32;
}
const between = (low, high) => low + (high - low) * chance();

/** The number behind a name, changed. */
const changed = (text, name, change) =>
  text.replace(
    new RegExp(`(^${name} = )([-\\d.]+)`, 'm'),
    (_, head, value) => head + change(Number(value)).toFixed(3),
  );

function anotherTract(text) {
  let out = changed(text, 'vocal_tract_length', (cm) => cm * between(0.92, 1.1));
  out = changed(out, 'breathiness', () => between(0.5, 6));
  out = changed(out, 'aperture_radius', (cm) => cm * between(0.9, 1.1));
  for (let i = 1; i <= 8; i++) out = changed(out, `radius_${i}_coef`, () => between(0.93, 1.07));
  return changed(out, 'reference_glottal_pitch', (semitones) => semitones + between(-4, 4));
}

function text(value) {
  const bytes = new TextEncoder().encode(`${value}\0`);
  const at = module._malloc(bytes.length);
  module.HEAPU8.set(bytes, at);
  return at;
}

const { seed, sentences } = JSON.parse(readFileSync(list, 'utf8'));
state = seed >>> 0;
const fixed = ['./out.wav', '/data/en', './parameters.txt'].map(text);
sentences.forEach((sentence, index) => {
  const voice = VOICES[Math.floor(chance() * VOICES.length)];
  const tempo = between(0.8, 1.45);
  module.FS.writeFile(`/data/en/voice_${voice}.txt`, anotherTract(texts[voice]));
  module.FS.writeFile(
    '/data/en/trm_control_model.txt',
    changed(settings.replace('voice_name = male', `voice_name = ${voice}`), 'tempo', () => tempo),
  );
  const words = text(sentence);
  module._GnuSpeech_synthesizeToFile(words, ...fixed, 0);
  module._free(words);
  writeFileSync(join(folder, `${index}.wav`), module.FS.readFile('./out.wav'));
});
"""


def say(package, listed, folder):
    script = Path(package) / 'another-tract.mjs'
    if not script.exists():
        script.write_text(SCRIPT)
    subprocess.run(['node', script, listed, folder], check=True, timeout=40)
