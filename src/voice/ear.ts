// The ear as the kitchen knows it: asks for the microphone, starts the worker, passes on what it hears.

import type { Ear, EarState, EarTrouble, Hearing, OpenPhrase } from '../kitchen/ports.ts';
import { openBare } from './bareMicrophone.ts';
import captureUrl from './capture.worklet.ts?worker&url';
import { CAPTURE_RATE_HZ } from './frames.ts';
import type { LearningEar, Reading, VoiceKnown, VoiceProfile } from './learning.ts';
import type { FromWorker, Meanwhile, ToWorker } from './messages.ts';
import { whyNoMicrophone } from './microphone.ts';

/** The browser's own noise suppression is off: ours, before the recogniser and not before the detector, measured better. */
const MICROPHONE: MediaTrackConstraints = {
  echoCancellation: true,
  noiseSuppression: false,
  autoGainControl: true,
  channelCount: 1,
};

export function createEar(): Ear & LearningEar {
  return new PageEar();
}

/** Who waits for the worker's word on a reading and on learning. */
interface Awaited {
  reading?: (reading: Reading | null) => void;
  learnt?: (profile: VoiceProfile | null) => void;
}

class PageEar implements Ear, LearningEar {
  readonly #hearings = new Set<(hearing: Hearing) => void>();
  readonly #states = new Set<(state: EarState) => void>();
  #state: EarState = { kind: 'off' };
  #worker: Worker | null = null;
  #stream: MediaStream | null = null;
  #bare: MediaStream | null = null;
  #context: AudioContext | null = null;
  #capture: AudioWorkletNode | null = null;
  #phrases: readonly OpenPhrase[] = [];
  #speaking = { speaking: false, words: '' };
  #called = false;
  #whole = true;
  #profile: VoiceProfile | null = null;
  /** Whether the network of this visit is the one it was learnt on; null until the worker has said. */
  #fits: boolean | null = null;
  #awaited: Awaited = {};

  get canLearn(): boolean {
    return this.#state.kind === 'listening' && this.#whole;
  }

  read(words: string): Promise<Reading | null> {
    this.stopReading();
    if (this.#worker === null) return Promise.resolve(null);
    this.#tell({ kind: 'read', words });
    return new Promise((resolve) => (this.#awaited.reading = resolve));
  }

  stopReading(): void {
    if (this.#awaited.reading) this.#tell({ kind: 'read', words: null });
    this.#waitingFor('reading')?.(null);
  }

  learn(): Promise<VoiceProfile | null> {
    if (this.#worker === null) return Promise.resolve(null);
    this.#waitingFor('learnt')?.(null); // who asked before is not left waiting
    this.#tell({ kind: 'learn' });
    return new Promise((resolve) => (this.#awaited.learnt = resolve));
  }

  useProfile(profile: VoiceProfile | null): void {
    [this.#profile, this.#fits] = [profile, null];
    this.#tell({ kind: 'use', profile }); // where it is not open yet: as soon as it is
  }

  get voice(): VoiceKnown {
    if (this.#profile === null) return 'none';
    if (this.#fits === null) return 'waiting';
    return this.#fits ? 'known' : 'other network';
  }

  async start(): Promise<void> {
    if (this.#worker) return;
    this.#become({ kind: 'loading', fraction: 0 });
    const sound = new MessageChannel();
    this.#worker = this.#openWorker();
    try {
      this.#stream = await navigator.mediaDevices.getUserMedia({ audio: MICROPHONE });
      await this.#captureFrom(this.#stream, sound.port1);
      this.#tell({ kind: 'start', sound: sound.port2 }, [sound.port2]);
      await this.#captureBareToo(this.#stream);
    } catch (error) {
      this.#end({ kind: 'refused', why: whyNoMicrophone(error) });
    }
  }

  stop(): void {
    this.#end({ kind: 'off' });
  }

  expect(phrases: readonly OpenPhrase[]): void {
    this.#phrases = phrases;
    this.#tell({ kind: 'expect', phrases });
  }

  mask(speaking: boolean, words = ''): void {
    this.#speaking = { speaking, words };
    this.#tellInPlace({ kind: 'mask', speaking, words });
  }

  call(on: boolean): void {
    this.#called = on;
    this.#tellInPlace({ kind: 'call', on });
    if (this.#state.kind === 'listening') this.#become({ ...this.#state, called: on });
  }

  onHearing(listener: (hearing: Hearing) => void): () => void {
    this.#hearings.add(listener);
    return () => this.#hearings.delete(listener);
  }

  onState(listener: (state: EarState) => void): () => void {
    this.#states.add(listener);
    listener(this.#state);
    return () => this.#states.delete(listener);
  }

  #openWorker(): Worker {
    const worker = new Worker(new URL('./ear.worker.ts', import.meta.url), { type: 'module', name: 'ear' });
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => this.#take(data);
    worker.onerror = ({ message }) => this.#fail('stopped', message);
    return worker;
  }

  async #captureFrom(stream: MediaStream, sound: MessagePort): Promise<void> {
    const context = new AudioContext({ sampleRate: CAPTURE_RATE_HZ });
    this.#context = context;
    await context.audioWorklet.addModule(captureUrl);
    const capture = new AudioWorkletNode(context, 'capture', { numberOfInputs: 2, numberOfOutputs: 0 });
    capture.port.postMessage(sound, [sound]);
    this.#capture = capture;
    context.createMediaStreamSource(stream).connect(capture);
    await context.resume();
    stream
      .getAudioTracks()[0]
      ?.addEventListener('ended', () => this.#end({ kind: 'refused', why: 'wentAway' }));
  }

  async #captureBareToo(stream: MediaStream): Promise<void> {
    const track = stream.getAudioTracks()[0];
    const bare = track ? await openBare(track, MICROPHONE) : null;
    if (bare === null) return;
    if (this.#stream !== stream || !this.#context || !this.#capture) return stop(bare); // the microphone was given back meanwhile
    this.#bare = bare;
    this.#context.createMediaStreamSource(bare).connect(this.#capture, 0, 1);
  }

  #take(message: FromWorker): void {
    switch (message.kind) {
      case 'hearing':
        for (const listener of this.#hearings) listener(message.hearing);
        return;
      case 'level':
        return this.#become({
          kind: 'listening',
          levelDb: message.levelDb,
          speech: message.speech,
          called: this.#called,
          whole: this.#whole,
        });
      case 'loading':
        return this.#become({ kind: 'loading', fraction: message.fraction });
      case 'ready':
        this.#whole = message.whole;
        this.#tell({ kind: 'expect', phrases: this.#phrases });
        this.#tellInPlace({ kind: 'mask', ...this.#speaking });
        // A call before there was a microphone went nowhere.
        this.#tellInPlace({ kind: 'call', on: this.#called });
        if (this.#profile) this.#tell({ kind: 'use', profile: this.#profile });
        return this.#become({ kind: 'listening', levelDb: -90, speech: false, whole: message.whole });
      case 'reading':
        return this.#waitingFor('reading')?.(message.reading);
      case 'learnt':
        if (message.profile) [this.#profile, this.#fits] = [message.profile, true];
        return this.#waitingFor('learnt')?.(message.profile);
      case 'used':
        this.#fits = message.fits;
        return;
      case 'broken':
        return this.#fail('broken', message.says);
    }
  }

  /** Who waits for the worker's word on this is told once. */
  #waitingFor<K extends keyof Awaited>(kind: K): Awaited[K] {
    const waiting = this.#awaited[kind];
    delete this.#awaited[kind];
    return waiting;
  }

  #tell(message: ToWorker, transfer: Transferable[] = []): void {
    this.#worker?.postMessage(message, transfer);
  }

  /** By way of the audio thread, among the frames of sound. */
  #tellInPlace(message: Meanwhile): void {
    this.#capture?.port.postMessage(message);
  }

  #become(state: EarState): void {
    this.#state = state;
    for (const listener of this.#states) listener(state);
  }

  /** The cook is told what to do; what went wrong is for whoever opens the browser's console. */
  #fail(why: EarTrouble, error: string): void {
    console.error(`The ear failed (${why}): ${error}`);
    this.#end({ kind: 'refused', why });
  }

  #end(state: EarState): void {
    this.#worker?.terminate();
    for (const stream of [this.#stream, this.#bare]) if (stream) stop(stream);
    void this.#context?.close();
    this.#worker = this.#stream = this.#bare = this.#context = this.#capture = null;
    this.#waitingFor('reading')?.(null);
    this.#waitingFor('learnt')?.(null);
    this.#fits = null;
    this.#become(state);
  }
}

function stop(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
