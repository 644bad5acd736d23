// The tests' own ears and mouth are honest: what the cook says reaches the page's microphone, what the page
// sounds reaches the recorder, and a second listener understands it.

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { encodeWav } from '../../src/sound/wav.ts';
import { cookSays } from './harness/cookVoice.ts';
import { launchKitchen, type Kitchen } from './harness/kitchen.ts';
import { openSecondListener, rms, utterances } from './harness/reRecognise.ts';
import { shareArrived } from './harness/correlation.ts';

/** A page that keeps what its microphone hears, and plays a file at a touch. Plain browser, nothing of ours. */
const PAGE = `<!doctype html><title>Cable test</title><button>listen</button><script src="cable.js"></script>`;
const SCRIPT = `
  new Audio('voice.wav').play().then(() => (window.untouched = 'played'), (error) => (window.untouched = error.name));
  window.kept = [];
  document.querySelector('button').onclick = async () => {
    const stream = await navigator.mediaDevices.getUserMedia({
      audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false } });
    const context = new AudioContext({ sampleRate: 16000 });
    await context.audioWorklet.addModule('keep.js');
    const node = new AudioWorkletNode(context, 'keep');
    node.port.onmessage = ({ data }) => window.kept.push(...data);
    context.createMediaStreamSource(stream).connect(node).connect(context.destination);
    document.title = 'listening';
  };
  window.playFile = (url) => new Promise((resolve, reject) => {
    const audio = new Audio(url);
    audio.onended = resolve;
    audio.onerror = () => reject(audio.error);
    audio.play().catch(reject);
  });`;
const WORKLET = `
  registerProcessor('keep', class extends AudioWorkletProcessor {
    process([[channel]]) { if (channel) this.port.postMessage(channel.slice()); return true; }
  });`;

type CableWindow = Window & { kept: number[]; untouched?: string; playFile(url: string): Promise<void> };
declare const window: CableWindow;

const RATE_HZ = 16_000;
const PAGE_SAYS = 'stir the damsons now';
const SENTENCE = 'the canner is at a full rolling boil';
let folder: string;
let kitchen: Kitchen;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'stovehand-cable-'));
  await writeFile(join(folder, 'index.html'), PAGE);
  await writeFile(join(folder, 'cable.js'), SCRIPT);
  await writeFile(join(folder, 'keep.js'), WORKLET);
  const pageVoice = await cookSays(PAGE_SAYS, 'rms');
  await writeFile(join(folder, 'voice.wav'), encodeWav({ samples: pageVoice, sampleRateHz: RATE_HZ }));
  kitchen = await launchKitchen({ folder });
  await kitchen.page.getByRole('button').click();
  await kitchen.page.waitForFunction(() => document.title === 'listening');
});
afterAll(async () => {
  await kitchen.close();
  await rm(folder, { recursive: true, force: true });
});

/** What the microphone heard since the last time, once `seconds` of it and half a second more are in. */
async function kept(seconds: number): Promise<Float32Array> {
  const wanted = Math.ceil((seconds + 0.5) * RATE_HZ);
  await kitchen.page.waitForFunction((count) => window.kept.length >= count, wanted);
  return Float32Array.from(await kitchen.page.evaluate(() => window.kept.splice(0)));
}

describe('the cook’s cable', () => {
  test('a sentence played to the microphone is what the page hears, as loud as it was', async () => {
    const sentence = await cookSays(SENTENCE);
    await kept(0);
    await kitchen.say(sentence);
    const heard = await kept(sentence.length / RATE_HZ);
    expect(shareArrived(sentence, heard, RATE_HZ)).toBeGreaterThan(0.7);
    const energy = (samples: Float32Array) => rms(samples) ** 2 * samples.length;
    expect(energy(heard) / energy(sentence)).toBeGreaterThan(0.8);
    expect(energy(heard) / energy(sentence)).toBeLessThan(1.2);
  });

  test('silence is silence, and another sentence is not mistaken for this one', async () => {
    await kept(0);
    await kitchen.say(new Float32Array(RATE_HZ));
    expect(rms(await kept(1))).toBeLessThan(1e-4);
    const other = await cookSays('seven and a half pints of crab apple');
    await kitchen.say(other);
    const heard = await kept(other.length / RATE_HZ);
    expect(shareArrived(await cookSays(SENTENCE), heard, RATE_HZ)).toBeLessThan(0.3);
  });

  test('nothing of what the page sounds comes back into the microphone', async () => {
    await kept(0);
    await kitchen.page.evaluate(() => window.playFile('voice.wav'));
    expect(rms(await kept(0))).toBeLessThan(1e-4);
  });
});

describe('the page’s cable', () => {
  test('what the page plays is recorded, when it played it, and understood by a second listener', async () => {
    const before = Date.now();
    await kitchen.page.evaluate(() => window.playFile('voice.wav'));
    const after = Date.now();
    const heard = await kitchen.heardFromPage(before);
    const voice = await cookSays(PAGE_SAYS, 'rms');
    expect(shareArrived(voice, heard.samples, RATE_HZ)).toBeGreaterThan(0.7);

    const [spoken] = utterances(heard.samples);
    const startedAt = heard.startedAt + ((spoken?.from ?? 0) / RATE_HZ) * 1000;
    expect(startedAt).toBeGreaterThan(before - 300);
    expect(startedAt + voice.length / 16).toBeLessThan(after + 500);

    const listener = await openSecondListener(
      'stir mash fill strain the a damsons pears jars now later'.split(' '),
    );
    expect(listener.recognise(heard.samples)).toBe(PAGE_SAYS);
    listener.close();
  });

  test('while the page is silent nothing is recorded, not even what the cook says', async () => {
    const before = Date.now() + 500; // what was on its way from the test before is let through
    await kitchen.say(SENTENCE);
    const heard = await kitchen.heardFromPage(before);
    expect(heard.samples.length).toBeGreaterThan(RATE_HZ);
    expect(rms(heard.samples)).toBeLessThan(1e-4);
    expect(utterances(heard.samples)).toEqual([]);
  });
});

describe('a killed browser', () => {
  test('comes back to the same storage', async () => {
    await kitchen.page.evaluate(() => localStorage.setItem('batch', 'damson'));
    // A browser writes such storage when it closes; what a kill leaves of later words is the store's matter.
    await kitchen.context.close();
    await kitchen.reopen();
    await kitchen.sigkill();
    const page = await kitchen.reopen();
    expect(await page.evaluate(() => localStorage.getItem('batch'))).toBe('damson');
  });

  test('may make no sound before it is touched, as on a tablet', async () => {
    await kitchen.context.close();
    const page = await kitchen.reopen();
    await page.waitForFunction(() => window.untouched !== undefined);
    expect(await page.evaluate(() => window.untouched)).toBe('NotAllowedError');
  });
});
