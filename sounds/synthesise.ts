// Writes every sound of the kitchen to a WAVE file beside this script: npm run sounds.

import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { encodeWav } from '../src/sound/wav.ts';
import { soundNames } from './meanings.ts';
import { render } from './render.ts';
import { scores } from './scores.ts';

for (const name of soundNames) {
  const bytes = encodeWav(render(scores[name]));
  writeFileSync(fileURLToPath(new URL(`${name}.wav`, import.meta.url)), bytes);
  console.log(`${name}.wav  ${bytes.length} bytes`);
}
