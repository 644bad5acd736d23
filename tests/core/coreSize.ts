// How many bytes is the calculator, minified and gzipped, without its tables and without Zod?

import { gzipSync } from 'node:zlib';
import { build } from 'vite';

export async function coreGzipBytes(): Promise<number> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: true,
      target: 'es2022',
      // As CommonJS, because Vite leaves the spaces in a library of ES modules.
      lib: { entry: 'src/core/index.ts', formats: ['cjs'] },
      rolldownOptions: { external: [/\/tables\//, 'zod'] },
    },
  });
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((one) =>
    'output' in one ? one.output : [],
  );
  const code = outputs.map((chunk) => (chunk.type === 'chunk' ? chunk.code : '')).join('\n');
  if (code.length === 0) throw new Error('The build gave no code to weigh.');
  return gzipSync(code).length;
}
