// `npm start` itself, as a cook runs it: it says where the page is, and Ctrl-C ends it cleanly.

import { spawn, type ChildProcess } from 'node:child_process';
import { cp, mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { sourcesFingerprint, STAMP } from '../../src/serve/fresh.mjs';

const project = join(import.meta.dirname, '..', '..');
let root: string;
let child: ChildProcess | undefined;

/** A small project of the same shape: the real server and packages, a page that is already built. */
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'stovehand-start-'));
  await mkdir(join(root, 'src'));
  await mkdir(join(root, 'dist'));
  await cp(join(project, 'src', 'serve'), join(root, 'src', 'serve'), { recursive: true });
  for (const file of ['package.json', 'tsconfig.json']) await cp(join(project, file), join(root, file));
  // What is installed is by definition fresh, so that a test never installs anything.
  await cp(join(project, 'node_modules', '.package-lock.json'), join(root, 'package-lock.json'));
  await symlink(join(project, 'node_modules'), join(root, 'node_modules'), 'dir');
  await writeFile(join(root, 'dist', 'index.html'), '<!doctype html><title>Kitchen</title>');
  await writeFile(join(root, 'dist', STAMP), sourcesFingerprint(root));
});
afterEach(async () => {
  child?.kill('SIGKILL');
  await rm(root, { recursive: true, force: true });
});

/** Starts it and follows what it says until `until` is said or it ends. */
function start(args: string[], until: RegExp) {
  const started = spawn(process.execPath, ['src/serve/start.mjs', ...args], { cwd: root });
  child = started;
  let said = '';
  const ended = new Promise<{ code: number | null; said: string }>((resolve) =>
    started.on('close', (code) => resolve({ code, said })),
  );
  const ready = new Promise<string>((resolve) => {
    const hear = (part: Buffer) => {
      said += part.toString('utf8');
      if (until.test(said)) resolve(said);
    };
    started.stdout.on('data', hear);
    started.stderr.on('data', hear);
    void ended.then(() => resolve(said));
  });
  return { started, ready, ended };
}

test.each(['SIGINT', 'SIGTERM'] as const)(
  'serves the page until %s, then ends with 0',
  async (signal) => {
    const { started, ready, ended } = start(['--port', '38840'], /Ctrl-C stops it/);
    const said = await ready;
    const url = /http:\/\/localhost:\d+/.exec(said)?.[0] ?? said;
    expect(await (await fetch(url)).text()).toContain('<title>Kitchen</title>'); // and leaves a connection open
    started.kill(signal);
    started.kill(signal); // as npm does, passing on what the terminal has sent already
    expect(await ended).toMatchObject({ code: 0, said: expect.stringContaining('Stopped.') as string });
    await expect(fetch(url)).rejects.toThrow();
  },
  60_000,
);

test.each(['plum', '0', '70000', '80.5'])(
  'a port that is none (%s) is refused with what to do',
  async (port) => {
    const { ended } = start(['--port', port], /never/);
    const { code, said } = await ended;
    expect(code).toBe(1);
    expect(said).toContain('A port is a whole number from 1 to 65535');
  },
  60_000,
);
