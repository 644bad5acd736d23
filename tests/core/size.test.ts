// Does the calculator stay light?

import { expect, it } from 'vitest';
import { coreGzipBytes } from './coreSize.ts';

it('the calculator weighs under 15,000 bytes gzipped, without its tables and Zod', async () => {
  const bytes = await coreGzipBytes();
  expect(bytes).toBeGreaterThan(5_000); // less, and the wrong thing was weighed
  expect(bytes).toBeLessThan(15_000);
}, 60_000);
