// npm run crash -- --kills N [--seed S] [--folder dist]: kills the real page N times over whole batches, and prints the toll.

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { serve } from '../../../src/serve/serve.ts';
import { seededRandom } from '../../store/crash/random.ts';
import { crashBatches } from './batches.ts';

const { values } = parseArgs({
  options: { kills: { type: 'string', default: '20' }, seed: { type: 'string' }, folder: { type: 'string' } },
});
const kills = Number(values.kills);
if (!Number.isInteger(kills) || kills < 1) {
  console.error('Say how often to kill the browser: npm run crash -- --kills 20');
  process.exit(2);
}
const seed = Number(values.seed ?? Date.now() % 1_000_000);
const place = await mkdtemp(join(tmpdir(), 'stove-crash-'));
const folder = values.folder ?? join(place, 'page');
if (!values.folder) await build({ logLevel: 'warn', build: { outDir: folder } });
const server = await serve({
  folder,
  certificateFile: join(place, 'certificate.json'),
  port: 39_300,
  tlsPort: 39_400,
  addresses: [],
});
console.log(`Killing the page ${kills} times over whole batches (--seed ${seed}) ...`);
const profile = join(place, 'profile');
const toll = await crashBatches(
  { url: `http://localhost:${server.port}`, profile },
  kills,
  seededRandom(seed),
  (n, { entries, lost, wrong, putAway }) => {
    if (n % 10 === 0)
      console.log(
        `${n} kills, ${entries} entries, ${putAway} batches put away, ${lost} lost, ${wrong} wrong`,
      );
  },
);
await server.stop();
await rm(place, { recursive: true, force: true, maxRetries: 20, retryDelay: 100 });
console.log(JSON.stringify({ seed, ...toll }, null, 2));
const bad = toll.lost + toll.wrong > 0 || toll.worstTimeLeftErrorMs > 1000 || toll.checked === 0;
console.log(
  bad
    ? 'FAILED: something was lost, wrong, or late.'
    : 'Nothing acknowledged was lost; every state was right.',
);
process.exit(bad ? 1 : 0);
