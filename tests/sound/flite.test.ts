// The bundled voice is understood: what it says is recognised by a recogniser trained on real people.
// Reference: the SoundSwallower recogniser with its US English model, all words of the prompts open in any order.

import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import createRecogniser from 'soundswallower';
import { beforeAll, describe, expect, it } from 'vitest';
import { synthesise, type FliteVoice } from '../../src/sound/flite.ts';
import { levelSpeech, SPEECH_LEVEL_DB } from '../../src/sound/levelSpeech.ts';
import { sayable } from '../../src/sound/sayable.ts';
import { lastsMs, type Recording } from '../../src/sound/wav.ts';
import { changesBetween } from '../voice/corpus/changes.ts';
import { flite } from './speech.ts';

const prompts = [
  'Skim off the foam.',
  'The boil dropped. The clock is void.',
  'Turn the heat down and stir every 5 min.',
  'Put a spoonful on the cold plate.',
  'Nineteen minutes left on the clock.',
  'Cover the jars with 2 in of water.',
  'Bring it to 219 °F.',
  'Add 2 lb 3 oz of sugar.',
  'Put the jar that did not seal in the fridge.',
];

const wordsOf = (text: string) =>
  sayable(text)
    .toLowerCase()
    .match(/[a-z']+/g) ?? [];
const vocabulary = [...new Set(prompts.flatMap(wordsOf))];

let module: WebAssembly.Module;
let recognise: (recording: Recording) => string[];

beforeAll(async () => {
  module = await flite();
  const entry = createRequire(import.meta.url).resolve('soundswallower');
  const inner = await createRecogniser({ modelBase: `${dirname(entry)}/model/` } as never);
  const decoder = new inner.Decoder({ loglevel: 'FATAL', samprate: 16_000 });
  await decoder.initialize();
  decoder.set_grammar(`#JSGF V1.0; grammar any; public <any> = ( ${vocabulary.join(' | ')} )+;`);
  recognise = ({ samples }) => {
    decoder.start();
    decoder.process_audio(samples, false, true);
    decoder.stop();
    return (decoder.get_text() ?? '').split(' ').filter(Boolean);
  };
}, 30_000);

const say = async (text: string, voice: FliteVoice = 'rms', rate = 1) =>
  levelSpeech(await synthesise(module, { text: sayable(text), voice, rate }));

async function errorShare(
  hear: (recording: Recording) => Recording,
  of: readonly string[] = prompts,
): Promise<number> {
  let [errors, words] = [0, 0];
  for (const prompt of of) {
    const wanted = wordsOf(prompt);
    errors += changesBetween(wanted, recognise(hear(await say(prompt))));
    words += wanted.length;
  }
  return errors / words;
}

describe('the bundled voice', () => {
  it('is understood: at most a fifth of the words are misheard with any word open at any place', async () => {
    expect(await errorShare((recording) => recording)).toBeLessThan(0.2);
  }, 60_000);

  it('played backwards it is not: the measure can fail', async () => {
    const backwards = (recording: Recording) => ({ ...recording, samples: recording.samples.toReversed() });
    expect(await errorShare(backwards, prompts.slice(0, 3))).toBeGreaterThan(0.6);
  }, 60_000);

  it('speaks faster when asked to', async () => {
    const [slow, own, fast] = await Promise.all([0.8, 1, 1.25].map((rate) => say(prompts[1]!, 'rms', rate)));
    expect(lastsMs(slow!) / lastsMs(own!)).toBeCloseTo(1.25, 1);
    expect(lastsMs(own!) / lastsMs(fast!)).toBeCloseTo(1.25, 1);
  });

  it('throws when the module is not a synthesiser', async () => {
    const empty = new WebAssembly.Module(Uint8Array.of(0, 0x61, 0x73, 0x6d, 1, 0, 0, 0));
    await expect(synthesise(empty, { text: 'Hello.', voice: 'rms', rate: 1 })).rejects.toThrow();
  });

  it('says nothing when there is nothing to say, and does not break on strange signs', async () => {
    const strange = await say('-o \u0000 <speak> 🙂 “x” 漢字');
    expect(lastsMs(strange)).toBeGreaterThan(100);
    const nothing = await synthesise(module, { text: ' ', voice: 'rms', rate: 1 }).catch(
      (error: unknown) => error,
    );
    expect(nothing).toBeDefined();
  });
});

describe('a sentence made ready to play', () => {
  const soundingDb = ({ samples }: Recording) => {
    const frames = Array.from({ length: Math.floor(samples.length / 160) }, (_, i) => {
      const part = samples.subarray(i * 160, i * 160 + 160);
      return part.reduce((sum, sample) => sum + sample * sample, 0) / 160;
    }).filter((power) => power > 10 ** -4);
    return 10 * Math.log10(frames.reduce((sum, power) => sum + power, 0) / frames.length);
  };

  it.each(['rms', 'slt', 'awb', 'kal16'] as const)(
    'is as loud in the voice %s as in any other',
    async (voice) => {
      expect(Math.abs(soundingDb(await say(prompts[1]!, voice)) - SPEECH_LEVEL_DB)).toBeLessThan(1.5);
    },
  );

  it('begins within 40 ms and ends with a short breath', async () => {
    const { samples } = await say(prompts[0]!);
    const loud = (sample: number) => Math.abs(sample) > 0.02;
    expect(samples.findIndex(loud) / 16).toBeLessThan(40);
    const breathMs = (samples.length - samples.findLastIndex(loud)) / 16;
    expect(breathMs).toBeGreaterThan(100);
    expect(breathMs).toBeLessThan(250);
  });

  it('neither clicks at its edges nor reaches full scale', async () => {
    const { samples } = await say(prompts[2]!);
    expect(Math.abs(samples[0]!)).toBeLessThan(0.001);
    expect(Math.abs(samples.at(-1)!)).toBeLessThan(0.001);
    expect(Math.max(...samples.map(Math.abs))).toBeLessThan(0.98);
  });

  it('silence stays silence', () => {
    const silent = { samples: new Float32Array(1600), sampleRateHz: 16_000 };
    expect(levelSpeech(silent).samples.every((sample) => sample === 0)).toBe(true);
    expect(levelSpeech({ samples: new Float32Array(0), sampleRateHz: 16_000 }).samples).toHaveLength(0);
  });
});
