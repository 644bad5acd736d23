// How the page is built and the tests are run.

import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: 'src',
  plugins: [react()],
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022' },
  worker: { format: 'es' },
  test: { root: '.', include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'] },
});
