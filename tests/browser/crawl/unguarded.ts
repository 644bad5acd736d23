// The page built without its guard against drips: what is held there acts at a touch. Only to show that the rain can do harm.

import { join } from 'node:path';
import { build } from 'vite';

const UNGUARDED = `
export function useHold(done) {
  return { phase: 'idle', handlers: { onClick: done } };
}
`;

export async function buildUnguarded(outDir: string): Promise<void> {
  const guard = join(import.meta.dirname, '..', '..', '..', 'src', 'app', 'stove', 'useHold.ts');
  await build({
    logLevel: 'error',
    build: { outDir },
    plugins: [{ name: 'no-guard', enforce: 'pre', load: (id) => (id === guard ? UNGUARDED : null) }],
  });
}
