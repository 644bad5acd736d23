// Plays a whole batch's words through simulated rooms back into the ear: `npm run bench:echo -- [--voices rms,slt] [--levels=-18,-24] [--piece 0 --of 16] [--minutes N]`.

import { parseArgs } from 'node:util';
import { fliteVoices, type FliteVoice } from '../../../src/sound/flite.ts';
import { pieceOf } from '../corpus/found.ts';
import { untilItEnds } from '../corpus/ending.ts';
import { wholeBatchAloud } from './aloud.ts';
import { echoes, type Echoed, type Room } from './ownVoice.ts';

/** As loud as the cook, as loud as a tablet's own loudspeaker, and what a canceller may leave of it. */
const LEVELS_DB = [-18, -24, -40];

export async function benchEcho(args: string[]): Promise<void> {
  const { values } = parseArgs({
    args,
    options: {
      voices: { type: 'string' },
      levels: { type: 'string' },
      piece: { type: 'string', default: '0' },
      of: { type: 'string', default: '1' },
      minutes: { type: 'string' },
    },
  });
  const voices = (values.voices?.split(',') ?? [...fliteVoices]) as FliteVoice[];
  const levels = values.levels?.split(',').map(Number) ?? LEVELS_DB;
  const all = await wholeBatchAloud();
  console.log(
    `${all.length} utterances of one batch, ${new Set(all.map(({ text }) => text)).size} of them different`,
  );
  console.log('voice  level   masked | said | acted on  asked back  heard nothing');
  const rooms = voices.flatMap((voice) =>
    levels.flatMap((levelDb) =>
      [true, ...(levelDb === -24 ? [false] : [])].map((masked): Room => ({ voice, levelDb, masked })),
    ),
  );
  const { minutes } = values;
  // By lot where it is broken off: the heap of fruit and the first minutes are no fair part of a batch.
  const said = () => (minutes === undefined ? all : untilItEnds(pieceOf(all, 0, 1), minutes));
  const [piece, of] = [Number(values.piece), Number(values.of)];
  for (const room of rooms.filter((_, index) => index % of === piece)) {
    const heard = await echoes(said(), room);
    if (room.masked) report(heard);
    console.log(row(room, heard));
  }
}

const count = (heard: readonly Echoed[], kind: 'heard' | 'unsure' | 'nothing'): number =>
  heard.flatMap(({ hearings }) => hearings).filter((hearing) => hearing.kind === kind).length;

function row({ voice, levelDb, masked }: Room, heard: readonly Echoed[]): string {
  return [
    voice.padEnd(6),
    `${levelDb} dB`.padEnd(7),
    (masked ? 'yes' : 'no').padEnd(6),
    '|',
    String(heard.length).padStart(4),
    '|',
    String(count(heard, 'heard')).padStart(8),
    String(count(heard, 'unsure')).padStart(11),
    String(count(heard, 'nothing')).padStart(14),
  ].join(' ');
}

function report(heard: readonly Echoed[]): void {
  for (const { said, hearings } of heard)
    for (const hearing of hearings)
      if (hearing.kind !== 'nothing')
        console.error(
          `  ${hearing.kind} "${hearing.words}" ${hearing.confidence.toFixed(2)} in: ${said.text}`,
        );
}

await benchEcho(process.argv.slice(2));
