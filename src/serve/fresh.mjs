// Are the installed packages and the built page still those of the sources on disk?
// @ts-check

import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** The file inside the built page that remembers which sources it was made from. */
export const STAMP = '.built-from';

const BUILT_FROM = ['src', 'machines', 'sounds', 'package-lock.json', 'tsconfig.json', 'vite.config.ts'];

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean, link?: boolean }} LockedPackage
 * @typedef {{ packages?: Record<string, LockedPackage> }} Lock
 */

/**
 * Every package of the lock file stands in node_modules in the locked version. The list that npm
 * leaves behind is read rather than each folder: npm writes it last, so a broken install lacks it.
 * @param {string} root
 */
export function packagesAreFresh(root) {
  const installed = readJson(join(root, 'node_modules', '.package-lock.json'));
  const wanted = readJson(join(root, 'package-lock.json'));
  if (!installed?.packages || !wanted?.packages) return false;
  return Object.entries(wanted.packages).every(([path, locked]) => {
    if (path === '' || locked.optional || locked.devOptional || locked.link) return true;
    return installed.packages?.[path]?.version === locked.version;
  });
}

/**
 * The built page was made from exactly the sources on disk.
 * @param {string} root
 */
export function pageIsFresh(root) {
  const stamp = join(root, 'dist', STAMP);
  if (!existsSync(stamp) || !existsSync(join(root, 'dist', 'index.html'))) return false;
  return readFileSync(stamp, 'utf8') === sourcesFingerprint(root);
}

/**
 * One hash over the names and contents of all that the build reads. Contents rather than times,
 * because a checkout or a copy gives old files new times and new files old ones.
 * @param {string} root
 */
export function sourcesFingerprint(root) {
  const hash = createHash('sha256');
  for (const entry of BUILT_FROM) {
    for (const file of filesUnder(join(root, entry))) {
      hash
        .update(relative(root, file).split(sep).join('/'))
        .update('\0')
        .update(readFileSync(file))
        .update('\0');
    }
  }
  return hash.digest('hex');
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function filesUnder(path) {
  if (!existsSync(path)) return [];
  const entries = readEntries(path);
  if (entries === null) return [path];
  return entries
    .filter((name) => !name.startsWith('.'))
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/**
 * The names in a folder, or null for a plain file.
 * @param {string} path
 */
function readEntries(path) {
  try {
    return readdirSync(path);
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'ENOTDIR') return null;
    throw error;
  }
}

/**
 * @param {string} path
 * @returns {Lock | null}
 */
function readJson(path) {
  if (!existsSync(path)) return null;
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null; // unreadable is as good as missing: the answer is to install again
  }
}
