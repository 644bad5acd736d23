// `npm test`: every gate of the house on a fresh machine, ending in one line of counts.
//
//   npm test                    all gates, all tests
//   npm test -- tests/core      only the tests of that room (or file, or vitest option)
//
// Loads nothing that is not part of Node, because nothing else may be there yet.
// @ts-check

import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { packagesAreFresh } from '../src/serve/fresh.mjs';
import { installPackages, runInstalled } from '../src/serve/npm.mjs';
import { ensureBrowser } from './browser/harness/chromium.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const reports = join(root, '.cache', 'reports');
const counts = { passed: 0, failed: 0 };

/** Says what begins, so that a long run can be followed. @param {string} title */
function heading(title) {
  console.log(`\n== ${title}`);
}

/** A check that is one yes or no. @param {string} title @param {() => boolean} holds */
function gate(title, holds) {
  heading(title);
  const ok = holds();
  counts[ok ? 'passed' : 'failed'] += 1;
  if (!ok) console.log(`FAILED: ${title}`);
  return ok;
}

/** Runs one project's tests and adds up what its report counts. @param {string} project @param {string[]} args */
function runTests(project, args) {
  heading(`${project} tests`);
  const report = join(reports, `${project}.json`);
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const status = runInstalled(root, 'vitest/vitest.mjs', [
    'run',
    '--project',
    project,
    ...reporters,
    ...args,
  ]);
  const { numPassedTests: passed = 0, numFailedTests: failed = 0 } = existsSync(report)
    ? JSON.parse(readFileSync(report, 'utf8'))
    : {};
  counts.passed += passed;
  counts.failed += failed;
  // A file that does not load, an error outside any test, or no test at all fails the run without
  // failing a test: it is counted as one.
  if (status !== 0 && failed === 0) counts.failed += 1;
}

/** The built page, which the browser tests open. */
function buildPage() {
  return gate('build', () => runInstalled(root, 'vite/bin/vite.js', ['build', '--logLevel', 'warn']) === 0);
}

function browserTests(/** @type {string[]} */ args) {
  const lacking = ensureBrowser();
  if (lacking) gate(`a browser to test in: ${lacking}`, () => false);
  else if (buildPage()) runTests('browser', args);
}

/** Every gate, cheapest first. */
function runAll() {
  gate('types', () => runInstalled(root, 'typescript/bin/tsc', ['--noEmit']) === 0);
  gate('lint', () => runInstalled(root, 'oxlint/bin/oxlint', ['--type-aware', '--deny-warnings']) === 0);
  gate(
    'format',
    () => runInstalled(root, 'prettier/bin/prettier.cjs', ['--check', '--log-level=warn', '.']) === 0,
  );
  runTests('unit', []);
  browserTests([]);
}

/** Only the tests that the arguments name. @param {string[]} args */
function runSome(args) {
  const paths = args.filter((arg) => !arg.startsWith('-'));
  const options = args.filter((arg) => arg.startsWith('-'));
  const inBrowser = paths.filter((path) => path.includes('tests/browser'));
  const others = paths.filter((path) => !path.includes('tests/browser'));
  if (others.length > 0 || inBrowser.length === 0) runTests('unit', [...others, ...options]);
  if (inBrowser.length > 0) browserTests([...inBrowser, ...options]);
}

if (!packagesAreFresh(root)) {
  heading('installing the packages');
  if (installPackages(root) !== 0) {
    console.log('The packages could not be installed; what npm said stands above.');
    finish(1);
  }
}

mkdirSync(reports, { recursive: true });
const args = process.argv.slice(2);
if (args.length > 0) runSome(args);
else runAll();
finish(0);

/** The last line is what scripts read. @param {number} more failures that no check counted */
function finish(more) {
  counts.failed += more;
  console.log(`\n${counts.passed} passed, ${counts.failed} failed`);
  process.exit(counts.failed === 0 && counts.passed > 0 ? 0 : 1);
}
