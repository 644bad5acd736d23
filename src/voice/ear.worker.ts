// The worker that listens, off the main thread: models and microphone frames in, hearings out.

import { fetchEarFiles } from './assets.page.ts';
import type { Listener } from './listener.ts';
import type { Frame, FromWorker, Meanwhile, ToWorker } from './messages.ts';
import { openListener } from './openListener.ts';
import { ReadingAloud } from './readingAloud.ts';

const tell = (message: FromWorker) => self.postMessage(message);

/** The meter moves ten times a second; a detector frame comes every 32 ms. */
const LEVEL_EVERY = 3;
/** More than this waiting means the machine cannot keep up: old sound is of no use to a cook. */
const LONGEST_QUEUE = 300;

/** Where sound was left out. */
const GAP = 'gap';
type Queued = Frame | Meanwhile | typeof GAP;

let listener: Listener | null = null;
let reading: ReadingAloud | null = null;
let waiting: ToWorker[] = [];
let queue: Queued[] = [];
let busy = false;
let levels = 0;

self.onmessage = ({ data }: MessageEvent<ToWorker>) => {
  if (data.kind === 'start') void start(data.sound);
  else if (listener) apply(listener, data);
  else waiting.push(data);
};

async function start(sound: MessagePort): Promise<void> {
  try {
    const files = await fetchEarFiles((fraction) => tell({ kind: 'loading', fraction: 0.95 * fraction }));
    let whole = true;
    listener = await openListener(files, {
      now: () => performance.now(),
      withoutNetwork(why) {
        console.error('The network of the ear is missing; the classic recogniser listens alone.', why);
        whole = false;
      },
      heard: (hearing) => tell({ kind: 'hearing', hearing }),
      level,
    });
    reading = listener.reader && new ReadingAloud(listener.reader);
    for (const message of waiting) apply(listener, message);
    waiting = [];
    sound.onmessage = ({ data }: MessageEvent<Frame | Meanwhile>) => void take(data);
    tell({ kind: 'ready', whole });
  } catch (error) {
    tell({ kind: 'broken', says: error instanceof Error ? error.message : String(error) });
  }
}

function apply(ear: Listener, message: ToWorker): void {
  if (message.kind === 'expect') ear.expect(message.phrases);
  else if (message.kind === 'mask') ear.mask(message.speaking, message.words);
  else if (message.kind === 'call') ear.call(message.on);
  else if (message.kind === 'read') read(ear, message.words);
  else if (message.kind === 'learn') tell({ kind: 'learnt', profile: reading?.learn() ?? null });
  else if (message.kind === 'use') tell({ kind: 'used', fits: reading && reading.use(message.profile) });
}

function read(ear: Listener, words: string | null): void {
  if (words === null || reading === null) return ear.readAloud(null);
  const { seconds } = reading;
  ear.readAloud({
    take: (clip) => reading!.take(words, clip),
    over(taken) {
      const now = reading!.seconds;
      tell({
        kind: 'reading',
        reading: taken ? { kind: 'taken', words, seconds: now - seconds } : { kind: 'again', words },
      });
    },
  });
}

function level(now: { levelDb: number; speech: boolean }): void {
  if (levels++ % LEVEL_EVERY === 0) tell({ kind: 'level', ...now });
}

/** Frames, and what happens between them, are taken one after the other, in order, however long one takes. */
async function take(next: Frame | Meanwhile): Promise<void> {
  queue.push(next);
  if (queue.length > LONGEST_QUEUE) leaveOut(queue.length - LONGEST_QUEUE / 2);
  if (busy) return;
  busy = true;
  try {
    for (let next = queue.shift(); next && listener; next = queue.shift())
      if (next === GAP) listener.gap();
      else if (next.kind === 'frame') await listener.push(next.cancelled, next.bare);
      else apply(listener, next);
  } catch (error) {
    tell({ kind: 'broken', says: error instanceof Error ? error.message : String(error) });
  } finally {
    busy = false;
  }
}

/** Old sound is left out; whether the page speaks, and was called, is known all the same. */
function leaveOut(count: number): void {
  const old = queue.slice(0, count).filter((one) => one !== GAP && one.kind !== 'frame');
  queue = [...old, GAP, ...queue.slice(count)];
}
