// For the commands that open the page from `dist`: it is built anew where it is not of the sources as they stand.

import { join } from 'node:path';
import { build } from 'vite';
import { pageIsFresh } from '../../../src/serve/fresh.mjs';

const ROOT = join(import.meta.dirname, '..', '..', '..');

export async function buildPage(): Promise<void> {
  if (!pageIsFresh(ROOT)) await build({ logLevel: 'error' });
}
