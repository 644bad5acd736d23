// What stands at the top of the house, and what no file of it may say.

import { describe, expect, test } from 'vitest';
import { houseFiles, read } from './houseFiles.ts';

const TOP = new Set([
  ...[
    'README.md',
    'DEVELOPERS.md',
    'LICENSE',
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'vite.config.ts',
  ],
  ...['src', 'machines', 'sounds', 'tests'],
]);
const PICTURES_AND_SOUNDS = /\.(png|wav|webp|ico|woff2|onnx|bin)$/;

/** Put together from pieces, so that this file may be read like any other. */
const word = (...pieces: string[]) => pieces.join('');
const FORBIDDEN: [what: string, pattern: RegExp][] = [
  [
    'a path of the machine it was written on',
    new RegExp(word('(?<![\\w.])/(wo', 'rk|ro', 'ot|ho', 'me/\\w+|Us', 'ers/\\w+)/')),
  ],
  ['a folder beside the house', new RegExp(word('\\.\\./sha', 'red\\b'))],
  ['where packages are fetched from', new RegExp(word('reg', 'istry\\.(npm', 'js|yarn', 'pkg)'), 'i')],
  ['text that was copied from elsewhere', new RegExp(word('tran', 'script\\b|se', 'ed docu', 'ment'), 'i')],
  ['work that is put off', new RegExp(word('\\b(TO', 'DO|FIX', 'ME|XX', 'X)\\b'))],
];

/** What a file says that it may not, as sentences. */
function forbiddenIn(path: string, text: string): string[] {
  return FORBIDDEN.flatMap(([what, pattern]) => {
    const found = pattern.exec(text);
    return found ? [`${path} names ${what}: ${found[0]}`] : [];
  });
}

const files = houseFiles();

test('only the agreed names stand at the top', () => {
  const top = new Set(files.map((path) => path.split('/')[0] ?? ''));
  expect([...top].filter((name) => !name.startsWith('.') && !TOP.has(name))).toEqual([]);
});

test('no file is named for being leftover', () => {
  const leftover =
    /(^|\/)(utils|helpers|misc|common|old|new|tmp|temp)\.\w+$|\.(orig|bak|tmp|swp)$|\.tmp\.|(^|\/)zz|~$/;
  expect(files.filter((path) => leftover.test(path))).toEqual([]);
});

test('no file says what none may say, in its name or inside', () => {
  const readable = files.filter((path) => !PICTURES_AND_SOUNDS.test(path));
  expect(readable.flatMap((path) => [...forbiddenIn(path, path), ...forbiddenIn(path, read(path))])).toEqual(
    [],
  );
});

describe('a forbidden word is seen', () => {
  test.each([
    word('open /ro', 'ot/.config/x'),
    word("read('/ho", "me/cook/plums')"),
    word('see ../sha', 'red/notes'),
    word('https://reg', 'istry.npm', 'js.org/x'),
    word('the tran', 'script says'),
    word('// TO', 'DO later'),
  ])('%s', (text) => {
    expect(forbiddenIn('src/x.ts', text)).toHaveLength(1);
  });

  test('a web address or a folder of the house is none', () => {
    expect(forbiddenIn('src/x.ts', word('https://example.org/wo', 'rk/plums and src/wo', 'rk/')).length).toBe(
      0,
    );
  });
});

test('every source file begins with one comment that says what it is for', () => {
  const sources = files.filter(
    (path) => /^(src|machines|sounds|tests)\/.*\.(ts|tsx|mjs)$/.test(path) && !/\.(d|test)\.ts$/.test(path),
  );
  expect(sources.filter((path) => !/^(#!.*\n)?(\/\/|\/\*)/.test(read(path)))).toEqual([]);
});
