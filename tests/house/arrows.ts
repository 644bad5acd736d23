// Which room may import which: every arrow points down.

import { importsOf } from './houseFiles.ts';

/** A room, what it may import of the house besides itself, and which packages; '*' is any. */
const ROOMS: { room: string; rooms: string[]; packages: string[] }[] = [
  { room: 'src/tables', rooms: [], packages: [] },
  // What really happens in a pot: it must not know what the planner believes of it.
  { room: 'src/stove', rooms: [], packages: [] },
  { room: 'src/core', rooms: ['src/tables'], packages: ['zod'] },
  { room: 'machines', rooms: ['src/core'], packages: ['xstate'] },
  // The table says what each sound means; the script beside it writes files with the mouth's own WAVE writer.
  { room: 'sounds', rooms: ['machines', 'src/sound'], packages: ['node:*'] },
  {
    room: 'src/words',
    rooms: ['machines', 'src/core', 'src/kitchen', 'src/rehearsal', 'sounds'],
    packages: ['intl-messageformat', 'zod'],
  },
  // A kitchen without fruit: what is told to the kitchen, done at the simulated stove.
  { room: 'src/rehearsal', rooms: ['src/stove', 'machines'], packages: [] },
  { room: 'src/kitchen', rooms: ['machines', 'src/core', 'sounds'], packages: ['xstate', 'zod'] },
  ...['voice', 'sound', 'store', 'notify', 'solver'].map((edge) => ({
    room: `src/${edge}`,
    rooms: ['src/kitchen', 'machines', 'src/core', 'src/words', 'sounds', 'node_modules'],
    packages: ['*'],
  })),
  { room: 'src/app', rooms: ['*'], packages: ['*'] },
  // Commands and the server run in Node beside the page, and may use any room but the screens.
  {
    room: 'src/serve',
    rooms: ['src/core', 'machines', 'src/kitchen', 'src/words', 'src/voice', 'src/tables', 'src/solver'],
    packages: ['*'],
  },
];

const DRAWS = /^(react|react-dom|@xstate\/react)(\/|$)/;

/** The arrows of one file that point the wrong way, as sentences. */
export function wrongArrows(path: string, source: string): string[] {
  const home = ROOMS.find(({ room }) => isIn(path, room));
  if (!home) return [`${path} stands in no room of the house.`];
  return importsOf(path, source).flatMap((target) => {
    if (mayImport(home, target)) return [];
    return [`${path} imports ${target}, which ${home.room} does not know.`];
  });
}

function mayImport(home: (typeof ROOMS)[number], target: string): boolean {
  const isPackage =
    !target.startsWith('src/') &&
    !ROOMS.some(({ room }) => isIn(target, room)) &&
    !target.startsWith('node_modules/');
  if (isPackage) {
    if (DRAWS.test(target) && home.room !== 'src/app') return false;
    return home.packages.some((name) => covers(name, target));
  }
  return isIn(target, home.room) || home.rooms.some((room) => room === '*' || isIn(target, room));
}

function covers(name: string, target: string): boolean {
  if (name === '*' || name === target) return true;
  return name.endsWith(':*') ? target.startsWith(name.slice(0, -1)) : target.startsWith(`${name}/`);
}

function isIn(path: string, room: string): boolean {
  return path.startsWith(`${room}/`);
}
