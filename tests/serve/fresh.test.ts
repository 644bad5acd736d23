// When does a start install again, and when does it build again?

import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { packagesAreFresh, pageIsFresh, sourcesFingerprint, STAMP } from '../../src/serve/fresh.mjs';

let root: string;
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'stovehand-fresh-'));
  await mkdir(join(root, 'node_modules'));
  await mkdir(join(root, 'dist'));
  await mkdir(join(root, 'src', 'core'), { recursive: true });
});
afterEach(() => rm(root, { recursive: true, force: true }));

const put = (path: string, content: string) => writeFile(join(root, path), content);
const lock = (packages: object) => JSON.stringify({ packages: { '': { version: '0.1.0' }, ...packages } });

describe('the packages', () => {
  const locked = {
    'node_modules/plum': { version: '1.0.0' },
    'node_modules/damson': { version: '2.0.0', optional: true },
  };
  beforeEach(() => put('package-lock.json', lock(locked)));

  test('are fresh when each stands there in its locked version, another system’s optional ones aside', async () => {
    await put('node_modules/.package-lock.json', lock({ 'node_modules/plum': { version: '1.0.0' } }));
    expect(packagesAreFresh(root)).toBe(true);
  });

  test.each([
    ['one is of another version', lock({ 'node_modules/plum': { version: '0.9.0' } })],
    ['one is missing', lock({})],
    ['the list of what was installed is damaged', '{'],
    ['the list is of another kind', '[]'],
  ])('are stale when %s', async (_, installed) => {
    await put('node_modules/.package-lock.json', installed);
    expect(packagesAreFresh(root)).toBe(false);
  });

  test('are stale on a fresh clone', () => {
    expect(packagesAreFresh(root)).toBe(false);
  });
});

describe('the built page', () => {
  beforeEach(async () => {
    await put('src/core/plan.ts', 'export const plums = 1;');
    await put('dist/index.html', '<!doctype html>');
    await put(join('dist', STAMP), sourcesFingerprint(root));
  });

  test('is fresh as long as no source changes', () => {
    expect(pageIsFresh(root)).toBe(true);
  });

  test.each([
    ['a source changes', () => put('src/core/plan.ts', 'export const plums = 2;')],
    ['a source is added', () => put('src/core/jar.ts', '')],
    [
      'a source is renamed',
      () =>
        rm(join(root, 'src/core/plan.ts')).then(() => put('src/core/batch.ts', 'export const plums = 1;')),
    ],
    ['the build configuration changes', () => put('vite.config.ts', '')],
    ['the page is gone', () => rm(join(root, 'dist', 'index.html'))],
    ['nobody knows what it was built from', () => rm(join(root, 'dist', STAMP))],
  ])('is stale when %s', async (_, change) => {
    await change();
    expect(pageIsFresh(root)).toBe(false);
  });

  test('does not depend on the times of files, only on what they hold', async () => {
    await put('src/core/plan.ts', 'export const plums = 1;');
    expect(pageIsFresh(root)).toBe(true);
  });
});
