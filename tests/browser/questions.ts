// `npm run questions [-- --folder dist --way 1]`: a cook asks the real page each question that it has an answer to, by
// voice, through the sound card; prints which was answered, which was answered after asking again, and which by another.
// `--way 1` asks each in the second of its ways.

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { answerWords } from '../../src/words/en.answers.ts';
import { expand } from '../../src/words/pattern.ts';
import { englishQuestions } from '../../src/words/questions.en.ts';
import type { QuestionId } from '../../src/core/guidance.ts';
import { VoiceCook } from './byVoice.ts';
import { launchKitchen } from './harness/kitchen.ts';

const WITHIN_MS = 6_000;
const MOST_TRIES = 2;
const ROOM_DB = -62;

const { values } = parseArgs({
  options: { folder: { type: 'string' }, way: { type: 'string', default: '0' } },
});
const place = await mkdtemp(join(tmpdir(), 'stovehand-questions-'));
const folder = values.folder ?? join(place, 'page');
if (!values.folder) await build({ logLevel: 'warn', build: { outDir: folder } });

const kitchen = await launchKitchen({ folder, open: '/?practice=1&voice=bundled' });
const { page } = kitchen;
const tally = { first: 0, again: 0, otherwise: 0, unanswered: 0 };
try {
  await page.getByRole('button', { name: 'Damson plums' }).click();
  await page.getByRole('radio', { name: 'Butter', exact: true }).check();
  await page.getByRole('button', { name: 'Start cooking' }).click();
  await page.waitForSelector('.ear.listening', { timeout: 90_000 });
  kitchen.room(ROOM_DB);
  const cook = new VoiceCook(kitchen);
  for (const [id, ways] of Object.entries(englishQuestions) as [QuestionId, readonly string[]][]) {
    const says = expand(ways[Number(values.way) % ways.length]!, () => [])[0]!.words;
    const outcome = await ask(cook, id, says);
    tally[outcome.kind] += 1;
    if (outcome.kind !== 'first') console.log(`${id}, "${says}": ${outcome.kind}; ${outcome.seen}`);
  }
} finally {
  await kitchen.close();
  await rm(place, { recursive: true });
}
const all = Object.keys(englishQuestions).length;
console.log(
  `${all} questions: ${tally.first} answered at once, ${tally.again} when asked again, ${tally.otherwise} answered by another answer, ${tally.unanswered} not at all`,
);
process.exitCode = tally.otherwise + tally.unanswered === 0 ? 0 : 1;

interface Outcome {
  kind: keyof typeof tally;
  seen: string;
}

async function ask(cook: VoiceCook, id: QuestionId, says: string): Promise<Outcome> {
  let seen = '';
  for (let tries = 1; tries <= MOST_TRIES; tries++) {
    await page.keyboard.press('q');
    await cook.letItFinish();
    const before = await page.locator('.caption').textContent();
    await kitchen.say(says);
    const deadline = Date.now() + WITHIN_MS;
    while (Date.now() < deadline) {
      const caption = (await page.locator('.caption').textContent()) ?? '';
      if (isAnswer(id, caption)) return { kind: tries === 1 ? 'first' : 'again', seen };
      const another = (Object.keys(englishQuestions) as QuestionId[]).find((one) => isAnswer(one, caption));
      if (another && caption !== before) return { kind: 'otherwise', seen: caption };
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    seen = `heard: ${await page.locator('.ear-words').textContent()}; said: ${await page.locator('.caption').textContent()}`;
  }
  return { kind: 'unanswered', seen };
}

/** The figures in an answer are the plan's. */
function isAnswer(id: QuestionId, caption: string): boolean {
  const parts = answerWords[`ask.${id}`].split(/\{[^}]*\}/).map((part) => part.trim());
  let at = 0;
  for (const part of parts) {
    const found = caption.indexOf(part, at);
    if (found < 0) return false;
    at = found + part.length;
  }
  return true;
}
