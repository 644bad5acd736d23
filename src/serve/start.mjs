// `npm start`: from a fresh clone to a served page. Loads nothing that is not part of Node, because
// nothing else may be there yet.
// @ts-check

import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { packagesAreFresh, pageIsFresh } from './fresh.mjs';
import { installPackages, runInstalled } from './npm.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const [major = 0] = process.versions.node.split('.').map(Number);
if (major < 20) stop(`Stovehand needs Node 20 or newer; this is Node ${process.versions.node}.`);

if (!packagesAreFresh(root)) {
  console.log('Installing the packages it is built from (once; this takes a minute) ...');
  if (installPackages(root) !== 0) {
    stop(
      'The packages could not be installed. The first start needs the internet; what npm said stands above.',
    );
  }
}

if (!pageIsFresh(root)) {
  console.log('Building the page ...');
  if (runInstalled(root, 'vite/bin/vite.js', ['build', '--logLevel', 'warn']) !== 0) {
    stop('The page could not be built; what went wrong stands above.');
  }
}

const { tsImport } = await import('tsx/esm/api');
const { main } = await tsImport(pathToFileURL(join(root, 'src', 'serve', 'main.ts')).href, import.meta.url);
try {
  await main(root, process.argv.slice(2));
} catch (error) {
  stop(error instanceof Error ? error.message : String(error));
}

/**
 * @param {string} says
 * @returns {never}
 */
function stop(says) {
  console.error(says);
  process.exit(1);
}
