// Runs the page's own ear over WAV files: `npm run hear -- FILE.wav... [--state NAME | --all | --words a,b] [--fruits a,b]`.

import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';

import type { Hearing, OpenPhrase } from '../kitchen/ports.ts';
import { openListener } from '../voice/openListener.ts';
import { allPhrases, openPhrases } from '../words/phrases.en.ts';
import { readEarFiles } from './earFiles.ts';
import { listenTo } from './listenTo.ts';
import { readWave } from './wave.ts';

interface Heard {
  file: string;
  heard: string | null;
  command: string | null;
  slots: OpenPhrase['slots'];
  /** 0 to 1. */
  confidence: number;
  /** True if the page would ask back rather than act. */
  unsure: boolean;
  /** From the end of the words to the answer, the waiting for silence included. */
  ms: number | null;
}

/** The one hearing of a file that the page would act on first: a command heard, else one in doubt, else nothing. */
function summary(file: string, hearings: readonly Hearing[]): Heard {
  const order = ['heard', 'unsure', 'nothing'] as const;
  const best = order.map((kind) => hearings.find((hearing) => hearing.kind === kind)).find(Boolean);
  if (!best || best.kind === 'nothing')
    return {
      file,
      heard: null,
      command: null,
      slots: {},
      confidence: 0,
      unsure: false,
      ms: best?.ms ?? null,
    };
  const { words, understood, confidence, ms, kind } = best;
  return {
    file,
    heard: words,
    command: understood.command,
    slots: understood.slots,
    confidence: Math.round(confidence * 1000) / 1000,
    unsure: kind === 'unsure',
    ms,
  };
}

async function phrasesFor(options: {
  state?: string | undefined;
  words?: string | undefined;
  fruits: string[];
}): Promise<OpenPhrase[]> {
  if (options.words !== undefined) return listed(options.words);
  if (options.state === undefined) return allPhrases(options.fruits);
  const { openCommandsIn, stateNames } = await import('./openCommands.ts');
  const open = openCommandsIn(options.state);
  if (open === null)
    throw new Error(`There is no state "${options.state}". There are: ${stateNames().join(', ')}.`);
  return openPhrases(
    open.map((command) => ({ command })),
    options.fruits,
  );
}

/** A list of words has no commands: each stands for itself, and is acted on as easily as a question. */
function listed(list: string): OpenPhrase[] {
  const words = list.split(',').map((word) => word.trim().toLowerCase());
  return words.map((word) => ({ command: 'what.is', slots: { term: word }, words: word }));
}

const FRUITS =
  'apple apricot blackberry cherry fig grape peach pear plum pumpkin raspberry strawberry damson quince'.split(
    ' ',
  );

async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      state: { type: 'string' },
      words: { type: 'string' },
      all: { type: 'boolean' },
      fruits: { type: 'string' },
    },
  });
  if (positionals.length === 0)
    throw new Error(
      'Name one or more WAV files: npm run hear -- FILE.wav... [--state NAME | --all | --words one,two] [--fruits plum,pear]',
    );
  const phrases = await phrasesFor({
    state: values.state,
    words: values.words,
    fruits: values.fruits?.split(',').map((fruit) => fruit.trim()) ?? FRUITS,
  });
  let hearings: Hearing[] = [];
  const listener = await openListener(await readEarFiles(), {
    now: () => performance.now(),
    heard: (hearing) => hearings.push(hearing),
    level: () => undefined,
  });
  listener.expect(phrases);
  for (const file of positionals) {
    hearings = [];
    await listenTo(listener, readWave(await readFile(file), file));
    console.log(JSON.stringify(summary(file, hearings)));
  }
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 2;
});
