// npm run diagrams: draws every chart anew, each beside the machine it was drawn from.

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AnyStateMachine } from 'xstate';
import { batchMachine } from '../../machines/batch/chart.ts';
import { cannerMachine } from '../../machines/canner/chart.ts';
import { dialogueMachine } from '../../machines/dialogue/chart.ts';
import { jarMachine } from '../../machines/jar/chart.ts';
import { diagramPage } from './diagram.ts';

const charts: [name: string, title: string, machine: AnyStateMachine][] = [
  ['batch', 'A batch, from the fruit to the labelled jar', batchMachine],
  ['canner', 'The canner', cannerMachine],
  ['jar', 'One jar', jarMachine],
  ['dialogue', 'The talk between cook and kitchen', dialogueMachine],
];

/** Every diagram by its path from the top of the house. */
export const diagrams = (): { path: string; page: string }[] =>
  charts.map(([name, title, machine]) => ({
    path: `machines/${name}/diagram.md`,
    page: diagramPage(machine, title),
  }));

if (import.meta.main ?? process.argv[1] === import.meta.filename)
  for (const { path, page } of diagrams()) {
    writeFileSync(join(import.meta.dirname, '..', '..', path), page);
    console.log(`Drew ${path}`);
  }
