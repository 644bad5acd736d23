// The drawings beside the charts are the charts: a changed chart whose drawing was not renewed fails here.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { createMachine } from 'xstate';
import { diagramPage } from '../../src/serve/diagram.ts';
import { diagrams } from '../../src/serve/diagrams.ts';

const ROOT = join(import.meta.dirname, '..', '..');

test.each(diagrams())(
  '$path is drawn from the chart as it is now (else: npm run diagrams)',
  ({ path, page }) => {
    expect(readFileSync(join(ROOT, path), 'utf8')).toBe(page);
  },
);

test('the developers’ page leads to every drawing', () => {
  const developers = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
  for (const { path } of diagrams()) expect(developers).toContain(`](${path})`);
});

describe('a drawing', () => {
  const kettle = (whistle: string) =>
    diagramPage(
      createMachine({
        id: 'kettle',
        initial: 'cold',
        on: { broke: '.gone' },
        states: {
          cold: { on: { lit: [{ guard: 'hasWater', target: 'hot' }, { actions: 'warn' }] } },
          hot: {
            description: 'Steam: keep your hands away.',
            initial: 'quiet',
            on: { off: 'cold' },
            states: { quiet: { on: { boils: whistle } }, whistling: {}, was: { type: 'history' } },
          },
          gone: { type: 'final' },
        },
      }),
      'A kettle',
    );

  test('has every move on a line of its own, with its event and its guard', () => {
    const lines = kettle('whistling')
      .split('\n')
      .map((line) => line.trim());
    expect(lines.filter((line) => line.includes(' --> ') && !line.startsWith('<'))).toEqual([
      '[*] --> cold',
      '[*] --> quiet',
      'gone --> [*]',
      'cold --> hot: lit [hasWater]',
      'hot --> cold: off',
      'quiet --> whistling: boils',
      'inAnyState --> gone: broke',
    ]);
  });

  test('tells the reason of a state and what happens without leaving it', () => {
    expect(kettle('whistling')).toContain('- **hot**: Steam: keep your hands away.');
    expect(kettle('whistling')).toContain('  - `lit [else]` → `warn`');
  });

  test('changes with the chart', () => {
    expect(kettle('#kettle.gone')).not.toBe(kettle('whistling'));
  });
});
