// Reads single digits of real people, ten open, before and after learning their voice: `npm run bench:digits -- FOLDER`.
//
// FOLDER holds digit_speaker_take.wav. The first half of each speaker's takes is the reading, the other half the test.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { readEarFiles } from '../../../src/serve/earFiles.ts';
import { readWave } from '../../../src/serve/wave.ts';
import { fused } from '../../../src/voice/fused.ts';
import { learnt, type Lesson } from '../../../src/voice/network/bend.ts';
import { soundGraph } from '../../../src/voice/network/soundGraph.ts';
import { openClassic, openReader } from '../../../src/voice/openListener.ts';
import { lessonsBeside } from '../../../src/voice/readingAloud.ts';
import { dictionaryFrom } from '../../../src/voice/pronunciations.ts';

const WORDS = 'zero one two three four five six seven eight nine'.split(' ');
/** As the segmenter leaves around a word. */
const PAD = 3200;

interface Take {
  word: string;
  speaker: string;
  take: number;
  clip: Float32Array;
}

const folder = process.argv[2];
if (!folder)
  throw new Error('Name the folder of digit_speaker_take.wav files: npm run bench:digits -- FOLDER');
const takes = readdirSync(folder)
  .filter((name) => name.endsWith('.wav'))
  .map((name) => take(name));
const files = await readEarFiles();
const [reader, classic] = [await openReader(files), await openClassic(files)];
const dictionary = dictionaryFrom(new TextDecoder().decode(files.pronunciations));
reader.expect(WORDS);
classic.expect(WORDS);

function take(name: string): Take {
  const [digit, speaker, number] = name.replace('.wav', '').split('_') as [string, string, string];
  const sound = readWave(readFileSync(join(folder!, name)), name);
  const clip = new Float32Array(sound.length + 2 * PAD);
  clip.set(sound, PAD);
  return { word: WORDS[Number(digit)]!, speaker, take: Number(number), clip };
}

/** How many of the takes are read rightly: by the network alone, and with the votes of the classic recogniser. */
async function score(of: readonly Take[]): Promise<string> {
  const right = { network: 0, fused: 0, classic: 0 };
  for (const { word, clip } of of) {
    const sounds = await reader.read(clip);
    if (sounds === null) continue;
    const vote = classic.read(clip);
    const both = fused({ sounds, votes: { raw: vote, clean: vote } }, (words) => words);
    right.network += Number(sounds.ranked[0]?.words === word);
    right.classic += Number(vote.words === word);
    right.fused += Number(both?.words === word);
  }
  const share = (count: number) => `${((100 * count) / of.length).toFixed(1)} %`;
  return `network ${share(right.network)}, classic ${share(right.classic)}, both ${share(right.fused)}`;
}

async function lessons(of: readonly Take[]): Promise<Lesson[]> {
  const out: Lesson[] = [];
  for (const { word, clip } of of) {
    const listened = await reader.network.listen(clip);
    const graph = soundGraph([word], (part) => dictionary.of(part));
    if (listened) out.push({ listened, graph }, ...(await lessonsBeside(reader.network, graph, clip)));
  }
  return out;
}

for (const speaker of new Set(takes.map((each) => each.speaker))) {
  const mine = takes.filter((each) => each.speaker === speaker);
  const middle = [...mine].sort((a, b) => a.take - b.take)[mine.length >> 1]!.take;
  const [read, test] = [
    mine.filter((each) => each.take < middle),
    mine.filter((each) => each.take >= middle),
  ];
  reader.network.bend = null;
  console.log(`${speaker}, all ${mine.length} takes: ${await score(mine)}`);
  console.log(`${speaker}, ${test.length} takes, as trained: ${await score(test)}`);
  reader.network.bend = learnt(await lessons(read));
  const seconds = read.reduce((sum, { clip }) => sum + (clip.length - 2 * PAD) / 16000, 0);
  console.log(`${speaker}, the same, ${seconds.toFixed(0)} s read: ${await score(test)}`);
}
