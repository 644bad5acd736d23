// Which Chromium plays the kitchen in tests, and how does a machine get one?
// @ts-check

import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'chrome',
  'microsoft-edge',
];
const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].map((name) =>
    join(process.env[name] ?? '', 'Google', 'Chrome', 'Application', 'chrome.exe'),
  ),
];
/** The sound server that carries the cook's voice into the browser and the page's voice out of it. */
const SOUND_PROGRAMS = ['pulseaudio', 'pacat', 'parec', 'pactl'];

/** The path of a Chromium or Chrome on this machine; CHROMIUM names one that is not found by itself. */
export function findChromium() {
  const named = process.env['CHROMIUM'];
  if (named) return existsSync(named) ? named : null;
  return (
    NAMES.map(findProgram).find((path) => path !== null) ?? PLACES.find((path) => existsSync(path)) ?? null
  );
}

export function hasSoundServer() {
  return SOUND_PROGRAMS.every((name) => findProgram(name) !== null);
}

/**
 * Makes sure that the browser tests have a browser and a sound server, installing them where that can be
 * done without asking. Returns null, or a sentence that says what to install.
 */
export function ensureBrowser() {
  if (findChromium() && hasSoundServer()) return null;
  if (process.env['CHROMIUM'] && !findChromium())
    return `CHROMIUM names ${process.env['CHROMIUM']}, which is not there.`;
  if (findProgram('apt-get')) installWithApt();
  if (!findChromium()) {
    return 'The browser tests need Chromium or Chrome. Install one, or set CHROMIUM to the path of its program.';
  }
  if (!hasSoundServer()) {
    return `The browser tests need the PulseAudio programs ${SOUND_PROGRAMS.join(', ')} (Debian: pulseaudio and pulseaudio-utils; macOS: brew install pulseaudio).`;
  }
  return null;
}

/** Installs as root, or through sudo where sudo asks for no password. */
function installWithApt() {
  const isRoot = process.getuid?.() === 0;
  const prefix = isRoot ? [] : ['sudo', '-n', '--preserve-env=DEBIAN_FRONTEND'];
  if (!isRoot && !findProgram('sudo')) return;
  const apt = (/** @type {string[]} */ ...args) => {
    const [program = '', ...rest] = [...prefix, 'apt-get', '-qq', '-y', ...args];
    const run = spawnSync(program, rest, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    return run.status === 0;
  };
  console.log('Installing Chromium and PulseAudio for the browser tests ...');
  apt('update');
  apt(
    'install',
    '--no-install-recommends',
    'chromium',
    'pulseaudio',
    'pulseaudio-utils',
    'fonts-dejavu-core',
  );
}

/**
 * @param {string} name
 * @returns {string | null}
 */
function findProgram(name) {
  const suffixes = process.platform === 'win32' ? ['.exe', '.cmd'] : [''];
  for (const folder of (process.env['PATH'] ?? '').split(delimiter)) {
    for (const suffix of suffixes) {
      const path = join(folder, name + suffix);
      if (folder !== '' && isExecutable(path)) return path;
    }
  }
  return null;
}

/** @param {string} path */
function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
