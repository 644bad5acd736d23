// The sound of a page and what it said when, left in a folder to be listened to.

import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { encodeWav } from '../../../src/sound/wav.ts';
import type { Heard } from '../../browser/harness/recorder.ts';
import type { Shown } from './shown.ts';

export async function keep(
  folder: string,
  { samples, rateHz, startedAt }: Heard,
  shown: readonly Shown[],
): Promise<void> {
  await mkdir(folder, { recursive: true });
  const wav = encodeWav({ samples, sampleRateHz: rateHz });
  await writeFile(join(folder, 'page.wav'), Buffer.from(wav));
  await writeFile(join(folder, 'shown.json'), JSON.stringify({ startedAt, shown }));
}
