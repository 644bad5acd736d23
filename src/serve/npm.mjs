// How to run npm, and a program of an installed package, from here on any system.
// @ts-check

import { spawnSync } from 'node:child_process';

/**
 * Installs exactly what the lock file names. Returns the exit status.
 * @param {string} root
 */
export function installPackages(root) {
  const npm = process.env['npm_execpath'];
  const args = ['ci', '--no-audit', '--no-fund', '--include=dev'];
  const asked = npm?.endsWith('js')
    ? spawnSync(process.execPath, [npm, ...args], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] })
    : spawnSync('npm', args, {
        cwd: root,
        stdio: ['ignore', 'inherit', 'inherit'],
        shell: process.platform === 'win32',
      });
  return asked.status ?? 1;
}

/**
 * Runs the JavaScript entry of an installed package with this very Node.
 * @param {string} root
 * @param {string} entry path below node_modules
 * @param {string[]} args
 */
export function runInstalled(root, entry, args) {
  const run = spawnSync(process.execPath, [`${root}/node_modules/${entry}`, ...args], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  return run.status ?? 1;
}
