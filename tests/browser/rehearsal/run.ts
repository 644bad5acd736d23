// A whole practice batch by ear and voice, and which prompts were told late or never: `npm run rehearse -- --pace 60`.

import { parseArgs } from 'node:util';
import { keep } from '../../robot/voice/kept.ts';
import { found, overlapping } from '../../robot/voice/proof.ts';
import { buildPage } from '../harness/builtPage.ts';
import { launchKitchen } from '../harness/kitchen.ts';
import { judged, type Verdict } from './judge.ts';
import { recordRehearsal, type Rehearsed } from './record.ts';
import { rehearse, startRehearsal } from './rehearse.ts';

const { values } = parseArgs({
  options: {
    pace: { type: 'string', default: '60' },
    minutes: { type: 'string', default: '40' },
    until: { type: 'string', default: 'jars.out' },
    example: { type: 'string', default: 'Damson plums' },
    product: { type: 'string', default: 'Butter' },
    /** A folder for the sound of the page and what it said when, to be listened to. */
    keep: { type: 'string' },
    /** `elsewhere`: the clock keeps its pace whoever speaks, to see what that did. */
    stove: { type: 'string', default: 'here' },
  },
});

/** After the last word there is the review to be heard. */
const SILENT_MS = 12_000;

function isOver({ entries, spoken }: Rehearsed): boolean {
  const last = spoken.at(-1);
  return (
    entries.some(({ entry }) => entry.event.type === values.until) &&
    last !== undefined &&
    last.to !== null &&
    Date.now() - last.to > SILENT_MS
  );
}

await buildPage();
const kitchen = await launchKitchen({ viewport: { width: 820, height: 1180 } });
await recordRehearsal(kitchen.context);
await kitchen.page.goto(`${kitchen.url}/?practice=${values.pace}&voice=bundled&stove=${values.stove}`);
await startRehearsal(kitchen, values);
const ended = await rehearse(kitchen, isOver, Number(values.minutes), console.log);
const prompts = judged(ended);
const count = (verdict: Verdict) => prompts.filter((one) => one.verdict === verdict).length;
console.log(
  `\n${ended.wallMinutes.toFixed(1)} wall minutes, ${ended.kitchenMinutes.toFixed(1)} kitchen minutes`,
);
console.log(`${ended.spoken.length} sentences spoken, ${ended.cook.said.length} said by the cook`);
console.log(`never taken up: ${ended.cook.unheard.join('; ') || 'none'}`);
for (const verdict of ['in time', 'late', 'overtaken', 'replaced', 'never'] as const)
  console.log(`${verdict}: ${count(verdict)} of ${prompts.length}`);
for (const { text, verdict, afterS } of prompts)
  console.log(`  ${verdict}${afterS === null ? '' : `, after ${afterS.toFixed(0)} s`}: ${text}`);
// What the page says that it said is one thing; what came out of it is in the recording.
const shown = ended.spoken.map(({ from, words, kitchenFrom }) => ({
  at: from,
  words,
  agenda: '',
  now: kitchenFrom,
}));
const recording = await kitchen.heardFromPage();
await kitchen.close();
if (values.keep) await keep(values.keep, recording, shown);
const heard = await found(recording, shown);
const unheard = heard.filter(({ from }) => from === null);
const pairs = overlapping(heard);
console.log(
  `in the recording: ${heard.length - unheard.length} of ${heard.length}; overlapping: ${pairs.length}`,
);
for (const { words } of unheard) console.log(`  not found: ${words}`);
for (const pair of pairs) console.log(`  overlap: ${pair}`);
