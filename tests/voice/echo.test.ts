// The page does not hear itself: sentences that are a command, through a simulated room, back into its own ear.
// All of a batch's words, four voices, three levels: `npm run bench:echo`.

import { expect, it } from 'vitest';
import { openPhrases } from '../../src/words/phrases.en.ts';
import { talkCommands, type CommandId } from '../../machines/dialogue/commands.ts';
import { echoes } from './echo/ownVoice.ts';

const commands: CommandId[] = ['plate.held', 'seals.allHeld', 'canner.hot'];
const open = openPhrases(
  [...commands, ...(Object.keys(talkCommands) as CommandId[])].map((command) => ({ command })),
  ['damson'],
);
/** What the page reads back and tells in the very words of a command. */
const said = ['Plate test passed.', 'All jars sealed.', 'The canner is hot. Hold it there.'].map((text) => ({
  text,
  open,
}));

const actedOn = (heard: Awaited<ReturnType<typeof echoes>>) =>
  heard.flatMap(({ hearings }) => hearings.filter(({ kind }) => kind !== 'nothing'));

it('acts on none of its own words, and asks none back, as loud as a cook at arm’s length', async () => {
  expect(actedOn(await echoes(said, { voice: 'rms', levelDb: -24, masked: true }))).toEqual([]);
}, 120_000);

it('would act on them if it were not told what it says', async () => {
  expect(actedOn(await echoes(said, { voice: 'rms', levelDb: -24, masked: false })).length).toBeGreaterThan(
    0,
  );
}, 120_000);
