// A sound card of the test's own: one cable from the cook to the browser's microphone, one from the page to a recorder.
//
//   say() -> [sink "cook"] -> source "microphone" -> getUserMedia
//   the page's sound -> [sink "loudspeaker"] -> its monitor -> heard()
//
// Both run through PulseAudio and the browser's own audio stack, in real time; nothing in the page is replaced.

import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Recorder } from './recorder.ts';

/** Rate of everything said and heard, Hz. */
export const RATE_HZ = 16_000;

const START_TIMEOUT_MS = 10_000;

/** Chromium does not offer a sink's monitor as a microphone, so the cook's is given out as a source of its own. */
const configuration = (socket: string) => `
load-module module-null-sink sink_name=cook rate=48000 channels=1
load-module module-null-sink sink_name=loudspeaker rate=48000 channels=2
load-module module-remap-source master=cook.monitor source_name=microphone channels=1 source_properties=device.description=Microphone
load-module module-native-protocol-unix socket=${socket} auth-anonymous=1
set-default-sink loudspeaker
set-default-source microphone
`;

export interface SoundServer {
  /** What a program needs in its environment to use this sound card. */
  env: Record<string, string>;
  /** Plays to the microphone; resolves when the last sample has been played. */
  say(samples: Float32Array): Promise<void>;
  /** Everything the page has sounded so far. */
  heard: Recorder;
  close(): Promise<void>;
}

export async function openSoundServer(): Promise<SoundServer> {
  const folder = await mkdtemp(join(tmpdir(), 'stovehand-sound-'));
  const socket = join(folder, 'native');
  const env = { PULSE_SERVER: `unix:${socket}`, PULSE_RUNTIME_PATH: folder, PULSE_STATE_PATH: folder };
  await writeFile(join(folder, 'card.pa'), configuration(socket));
  const server = start('pulseaudio', ['-n', '-F', join(folder, 'card.pa'), ...SERVER_OPTIONS], env);
  await untilAnswers(env, server);
  const parec = start(
    'parec',
    ['--device=loudspeaker.monitor', ...FORMAT, '--latency-msec=20', '--raw'],
    env,
  );
  const heard = new Recorder(parec.process.stdout!, RATE_HZ);
  await heard.started;
  return {
    env,
    heard,
    say: (samples) => play(samples, env),
    async close() {
      for (const { process } of [parec, server]) await end(process);
      await rm(folder, { recursive: true, force: true });
    },
  };
}

const SERVER_OPTIONS = [
  '--daemonize=no',
  '--exit-idle-time=-1',
  '--use-pid-file=no',
  '--log-target=stderr',
  '--high-priority=yes',
];
const FORMAT = ['--format=float32le', `--rate=${RATE_HZ}`, '--channels=1'];

async function play(samples: Float32Array, env: Record<string, string>): Promise<void> {
  const { process: pacat, printed } = start(
    'pacat',
    ['--playback', '--device=cook', ...FORMAT, '--raw'],
    env,
  );
  pacat.stdin!.end(Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength));
  const [code] = (await once(pacat, 'close')) as [number | null];
  if (code !== 0) throw new Error(`The cook could not speak (pacat ended with ${code}): ${printed()}`);
}

/** The server is up when it answers a question. */
async function untilAnswers(env: Record<string, string>, server: Started): Promise<void> {
  const deadline = Date.now() + START_TIMEOUT_MS;
  while (Date.now() < deadline && server.process.exitCode === null) {
    const [code] = (await once(start('pactl', ['get-default-source'], env).process, 'close')) as [
      number | null,
    ];
    if (code === 0) return;
  }
  throw new Error(`PulseAudio did not start: ${server.printed()}`);
}

interface Started {
  process: ChildProcess;
  printed(): string;
}

function start(program: string, args: string[], env: Record<string, string>): Started {
  const child = spawn(program, args, { env: { ...process.env, ...env } });
  let said = '';
  child.stderr.on('data', (part: Buffer) => (said += part.toString('utf8')));
  child.on('error', (error) => (said += error.message));
  return { process: child, printed: () => said };
}

async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const closed = once(child, 'close');
  child.kill('SIGTERM');
  await closed;
}
