// How the page is built, made to work offline, and tested.

import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { sourcesFingerprint, STAMP } from './src/serve/fresh.mjs';

const root = import.meta.dirname;
const MIB = 2 ** 20;
const SOLVER = 'assets/cp_sat_runtime-*.wasm';

/** Leaves in the built page what it was built from, so that `npm start` knows when to build again. */
function rememberSources(): Plugin {
  let source = '';
  return {
    name: 'remember-sources',
    apply: 'build',
    // The page too must know which build it is: what another build kept of the kitchen's state is not believed.
    config: () => ({ define: { 'import.meta.env.VITE_MADE_BY': JSON.stringify(sourcesFingerprint(root)) } }),
    buildStart() {
      source = sourcesFingerprint(root); // before anything is read: a source saved meanwhile counts as newer
    },
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: STAMP, source });
    },
  };
}

/**
 * Takes from the solver's runtime what this page cannot or need not have: the pool of threads, which needs an isolated
 * page and outlives the worker that made it (one thread is all that is asked for), and code written at run time, which
 * the page's policy forbids and only calls that are not used here would need.
 */
function solverAlone(): Plugin {
  const taken: [from: RegExp, to: string][] = [
    [/var pthreadPoolSize=4;/, 'var pthreadPoolSize=0;'],
    [/allocateUnusedWorker\(\)\{.*?\},getNewWorker\(\)/s, 'allocateUnusedWorker(){},getNewWorker()'],
    [
      /return new Function\(args1,invokerFnBody\)/,
      'return()=>()=>{throw new Error("This call was left out.")}',
    ],
  ];
  return {
    name: 'solver-alone',
    enforce: 'pre',
    transform(code, id) {
      if (!/or-tools-wasm.*cp_sat_runtime\.js$/.test(id)) return null;
      return taken.reduce((rest, [from, to]) => {
        if (!from.test(rest)) throw new Error(`The solver's runtime has no ${from.source} any more.`);
        return rest.replace(from, to);
      }, code);
    },
  };
}

const offline = VitePWA({
  registerType: 'prompt', // a new version never takes over a kitchen in the middle of a batch
  injectRegister: 'script-defer',
  manifest: {
    name: 'Stovehand',
    short_name: 'Stovehand',
    description: 'Hands-free help with putting up fruit: it says what to do, listens, and keeps the clocks.',
    display: 'standalone',
    start_url: '/',
    background_color: '#0b111d',
    theme_color: '#0b111d',
    icons: [
      { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/icon-512-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    // Everything: the ear, the mouth and every sound must be there when the network is not.
    globPatterns: ['**/*'],
    // All but the solver, which most cooks never need: it is kept once it has been fetched.
    globIgnores: ['sw.js', 'workbox-*.js', '**/*.map', SOLVER],
    runtimeCaching: [
      {
        urlPattern: /\/assets\/cp_sat_runtime-.*\.wasm$/,
        handler: 'CacheFirst',
        options: { cacheName: 'solver', expiration: { maxEntries: 1 } },
      },
    ],
    maximumFileSizeToCacheInBytes: 64 * MIB,
    navigateFallback: '/index.html',
    cleanupOutdatedCaches: true,
    clientsClaim: true,
  },
});

export default defineConfig({
  root: 'src',
  plugins: [react(), solverAlone(), offline, rememberSources()],
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022' },
  // The recogniser's package pulls this polyfill into its worker, where it breaks; every browser we serve has the real one.
  resolve: { alias: { 'blob-polyfill': `${root}/src/voice/nativeBlob.ts` } },
  worker: { format: 'es', plugins: () => [solverAlone()] },
  test: {
    root,
    maxWorkers: '100%', // left alone, two cores would be used as one
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/browser/**'],
          benchmark: { include: ['tests/bench/**/*.bench.ts'] },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          benchmark: { include: [] },
          fileParallelism: false, // one kitchen at a time: real time, real sound
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
