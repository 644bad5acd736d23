// npm run crash:log -- --kills N [--seed S]: kills the browser N times while it writes, and prints the toll.

import { parseArgs } from 'node:util';
import { crash } from './crash.ts';
import { seededRandom } from './random.ts';

const { values } = parseArgs({
  options: { kills: { type: 'string', default: '20' }, seed: { type: 'string' } },
});
const kills = Number(values.kills);
if (!Number.isInteger(kills) || kills < 1) {
  console.error('Say how often to kill the browser: npm run crash:log -- --kills 20');
  process.exit(2);
}
const seed = Number(values.seed ?? Date.now() % 1_000_000);
console.log(`Killing the browser ${kills} times (--seed ${seed}) ...`);

const toll = await crash(kills, seededRandom(seed), (n, { acknowledged, lost }) => {
  if (n % 10 === 0) console.log(`${n} kills, ${acknowledged} entries acknowledged, ${lost} lost`);
});
console.log(JSON.stringify({ seed, ...toll }, null, 2));
const bad = toll.lost + toll.wrong + toll.notMended > 0 || toll.worstClockErrorMs > 1000;
console.log(
  bad ? 'FAILED: something acknowledged was lost, wrong or not mended.' : 'Nothing acknowledged was lost.',
);
process.exit(bad ? 1 : 0);
