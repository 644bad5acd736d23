// A log of every released version can still be opened. These files are frozen: where one no longer opens,
// the cure is a migration in src/store/migrations.ts, never a new file.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { adopt } from '../../src/store/adopt.ts';
import { splitLines } from '../../src/store/file-lines.ts';
import { VERSION } from '../../src/store/header.ts';

const versions = Array.from({ length: VERSION }, (_, i) => i + 1);

test.each(versions)('a log of version %i opens with all its entries', (version) => {
  const bytes = readFileSync(join(import.meta.dirname, 'fixtures', `version-${version}.txt`));
  const { entries, trouble } = adopt([splitLines(new Uint8Array(bytes))], () => 'unused');
  expect(entries).toHaveLength(19);
  expect(entries.at(-1)?.event).toMatchObject({ type: 'seals.failed', count: 1 });
  expect(trouble).toHaveLength(version === VERSION ? 0 : 1);
});
