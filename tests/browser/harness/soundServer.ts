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
import { Readable } from 'node:stream';
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
  /** From now on the microphone also picks up the loudspeaker, at this share of its loudness, as in a room. */
  echo(share: number): Promise<void>;
  /** From now on the microphone also picks up a room's hiss, so loud, dB below full scale: digital silence is a muted microphone. */
  room(db: number): void;
  /** Everything the page has sounded so far. */
  heard: Recorder;
  /** All that comes to the microphone from now on, by the same clock. */
  listenIn(): Promise<Recorder>;
  close(): Promise<void>;
}

export async function openSoundServer(): Promise<SoundServer> {
  const folder = await mkdtemp(join(tmpdir(), 'stovehand-sound-'));
  const socket = join(folder, 'native');
  const env = { PULSE_SERVER: `unix:${socket}`, PULSE_RUNTIME_PATH: folder, PULSE_STATE_PATH: folder };
  await writeFile(join(folder, 'card.pa'), configuration(socket));
  const server = start('pulseaudio', ['-n', '-F', join(folder, 'card.pa'), ...SERVER_OPTIONS], env);
  await untilAnswers(env, server);
  const others: Started[] = [];
  const record = async (device: string) => {
    const parec = start('parec', [`--device=${device}`, ...FORMAT, '--latency-msec=20', '--raw'], env);
    others.push(parec);
    const recorder = new Recorder(parec.process.stdout!, RATE_HZ);
    await recorder.started;
    return recorder;
  };
  return {
    env,
    heard: await record('loudspeaker.monitor'),
    listenIn: () => record('cook.monitor'),
    say: (samples) => play(samples, env),
    echo: (share) => echo(share, env),
    room: (db) => void others.push(hiss(db, env)),
    async close() {
      for (const { process } of [...others, server]) await end(process);
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

/** Goes on until its process is ended: as much is made as is played. */
function hiss(db: number, env: Record<string, string>): Started {
  const pacat = start(
    'pacat',
    ['--playback', '--device=cook', '--latency-msec=200', ...FORMAT, '--raw'],
    env,
  );
  const amplitude = 10 ** (db / 20) * Math.sqrt(3); // of even chance, for this root mean square
  let state = 1;
  const second = () => {
    const samples = Float32Array.from({ length: RATE_HZ }, () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return amplitude * (state / 2 ** 31 - 1);
    });
    return Buffer.from(samples.buffer);
  };
  const source = new Readable({ highWaterMark: 1, read() { this.push(second()); } }); // prettier-ignore
  pacat.process.stdin!.on('error', () => source.destroy());
  source.pipe(pacat.process.stdin!);
  return pacat;
}

/** What the air between loudspeaker and microphone takes, ms. */
const ECHO_MS = 40;

async function echo(share: number, env: Record<string, string>): Promise<void> {
  const cable = 'source=loudspeaker.monitor sink=cook sink_input_properties=media.name=echo';
  await pactl(['load-module', 'module-loopback', ...cable.split(' '), `latency_msec=${ECHO_MS}`], env);
  const inputs = JSON.parse(await pactl(['--format=json', 'list', 'sink-inputs'], env)) as {
    index: number;
    properties: Record<string, string>;
  }[];
  const cables = inputs.filter(({ properties }) => properties['media.name'] === 'echo');
  if (cables.length !== 1) throw new Error(`There are ${cables.length} echoes in the room, not one.`);
  await pactl(
    ['set-sink-input-volume', String(cables[0]!.index), `${(20 * Math.log10(share)).toFixed(1)}dB`],
    env,
  );
}

async function pactl(args: string[], env: Record<string, string>): Promise<string> {
  const { process, printed } = start('pactl', args, env);
  let out = '';
  process.stdout!.on('data', (part: Buffer) => (out += part.toString('utf8')));
  const [code] = (await once(process, 'close')) as [number | null];
  if (code !== 0) throw new Error(`pactl ${args[0]} ended with ${code}: ${printed()}`);
  return out;
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
