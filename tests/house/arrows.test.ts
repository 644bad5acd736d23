// Every arrow of the house points down, and a wrong one is seen.

import { describe, expect, test } from 'vitest';
import { wrongArrows } from './arrows.ts';
import { houseFiles, read } from './houseFiles.ts';

const modules = houseFiles().filter(
  (path) => /^(src|machines|sounds)\/.*\.(ts|tsx|mjs)$/.test(path) && !path.endsWith('.d.ts'),
);

test('the rooms are there', () => {
  for (const room of [
    'src/tables',
    'src/stove',
    'src/core',
    'machines',
    'src/kitchen',
    'src/voice',
    'src/app',
  ])
    expect(modules.filter((path) => path.startsWith(`${room}/`)).length).toBeGreaterThan(0);
});

test('every arrow points down', () => {
  expect(modules.flatMap((path) => wrongArrows(path, read(path)))).toEqual([]);
});

describe('a wrong arrow is seen', () => {
  test.each([
    ['src/tables/jars.ts', `import { plan } from '../core/plan.ts';`],
    ['src/tables/fruits/stone.ts', `import { z } from 'zod';`],
    ['src/core/plan.ts', `import type { Clock } from '../kitchen/ports.ts';`],
    ['src/core/reduction/simmer.ts', `import { step } from '../../../machines/kitchen/step.ts';`],
    ['src/stove/pot.ts', `import { ratePerMin } from '../core/reduction/simmer.ts';`],
    ['src/stove/pot.ts', `import { potLoss } from '../tables/stove.ts';`],
    ['src/rehearsal/hands.ts', `import { planBatch } from '../core/plan.ts';`],
    ['src/core/boil.ts', `import { readFile } from 'node:fs';`],
    ['machines/batch/rules.ts', `import { jars } from '../../src/tables/jars.ts';`],
    ['machines/batch/chart.ts', `import { Howl } from 'howler';`],
    ['machines/batch/chart.ts', `export { useState } from 'react';`],
    ['machines/canner/chart.ts', `const store = await import('../../src/store/log.ts');`],
    ['machines/canner/chart.ts', `export * from '../../src/kitchen/ports.ts';`],
    ['src/kitchen/live.ts', `import { openMouth } from '../sound/openMouth.ts';`],
    ['src/kitchen/clock.ts', `new Worker(new URL('../voice/ear.worker.ts', import.meta.url));`],
    ['src/kitchen/clock.ts', `import { openDB } from 'idb';`],
    ['src/voice/ear.ts', `import { player } from '../sound/player.ts';`],
    ['src/store/log.ts', `import { useEffect } from 'react';`],
    ['src/sound/mouth.ts', `import { App } from '../app/App.tsx';`],
    ['src/serve/serve.ts', `import { App } from '../app/App.tsx';`],
    ['src/attic/old.ts', `export {};`],
  ])('%s: %s', (path, source) => {
    expect(wrongArrows(path, source)).toHaveLength(1);
  });

  test('an import whose target is made up at run time is refused, for nobody could judge it', () => {
    expect(() => wrongArrows('src/kitchen/live.ts', 'await import(`../${room}/log.ts`);')).toThrow(/hides/);
  });
});

test('an arrow down is let be', () => {
  const source = `import type { BatchPlan } from '../../src/core/types.ts'; import { setup } from 'xstate';
    import { rules } from './rules.ts'; import { graph } from 'xstate/graph';`;
  expect(wrongArrows('machines/batch/chart.ts', source)).toEqual([]);
});
