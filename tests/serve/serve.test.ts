// Where the server can be reached: a free port, this computer alone without TLS, the network with it.

import { X509Certificate } from 'node:crypto';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { certificateFor, fingerprint } from '../../src/serve/certificate.ts';
import { greeting } from '../../src/serve/greeting.ts';
import { close, listenOnFreePort } from '../../src/serve/listen.ts';
import { makePage, servePage } from './kitchenServer.ts';

const DAY_MS = 86_400_000;
const SEPTEMBER_EVENING = Date.UTC(2026, 8, 19, 18);
let page: Awaited<ReturnType<typeof makePage>>;
let certificateFile: string;

beforeEach(async () => {
  page = await makePage();
  certificateFile = join(page.base, '.cache', 'certificate.json');
});
afterEach(() => page.remove());

function occupy(port: number, host: string): Promise<Server> {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(port, host, () => resolve(server));
  });
}

describe('a busy port', () => {
  test('gives the next free one, for the plain and for the TLS address', async () => {
    const busy = await Promise.all([
      occupy(38_700, '127.0.0.1'),
      occupy(38_701, '127.0.0.1'),
      occupy(38_800, '0.0.0.0'),
    ]);
    const server = await servePage(page.base, 38_700);
    expect(server).toMatchObject({ port: 38_702, tlsPort: 38_801 });
    expect((await server.get('/')).status).toBe(200);
    await server.stop();
    await Promise.all(busy.map(close));
  });

  test('counts as busy when it is taken on any of the hosts, and is left as it was', async () => {
    const busy = await occupy(38_720, '127.0.0.2');
    const { servers, port } = await listenOnFreePort(createServer, ['127.0.0.1', '127.0.0.2'], 38_720);
    expect(port).toBe(38_721);
    await close(await occupy(38_720, '127.0.0.1'));
    await Promise.all([busy, ...servers].map(close));
  });

  test('when none is free, says how to name another', async () => {
    const busy = await occupy(65_535, '127.0.0.1');
    await expect(listenOnFreePort(createServer, ['127.0.0.1'], 65_535)).rejects.toThrow(
      /npm start -- --port/,
    );
    await close(busy);
  });
});

describe('TLS', () => {
  test('a device that trusts the certificate gets the page over the network address', async () => {
    const server = await servePage(page.base, 38_740, ['192.0.2.7']);
    const { cert } = JSON.parse(await readFile(certificateFile, 'utf8')) as { cert: string };
    expect((await server.getOverTls('/', cert)).body).toContain('<title>Kitchen</title>');
    expect(server.fingerprint).toBe(new X509Certificate(cert).fingerprint256);
    await server.stop();
  });

  test('a device that does not trust it is not fooled', async () => {
    const server = await servePage(page.base, 38_760);
    const other = await certificateFor(join(page.base, 'other.json'), [], SEPTEMBER_EVENING);
    await expect(server.getOverTls('/', other.cert)).rejects.toThrow(/certificate/);
    await server.stop();
  });

  test('the certificate names this computer and its addresses, serves TLS only, and lasts 397 days', async () => {
    const made = await certificateFor(certificateFile, ['192.0.2.7', '198.51.100.9'], SEPTEMBER_EVENING);
    const x509 = new X509Certificate(made.cert);
    for (const address of ['127.0.0.1', '192.0.2.7', '198.51.100.9'])
      expect(x509.checkIP(address)).toBe(address);
    expect(x509.checkHost('localhost')).toBe('localhost');
    expect(x509.checkIP('192.0.2.8')).toBeUndefined();
    expect(x509.ca).toBe(false);
    expect(x509.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']); // serverAuth, RFC 5280 section 4.2.1.12
    // Apple support article 103769: at most 825 days, or the tablet refuses it.
    expect((Date.parse(x509.validTo) - Date.parse(x509.validFrom)) / DAY_MS).toBeLessThan(825);
  });

  test('the key is readable by its owner alone', async () => {
    await certificateFor(certificateFile, [], SEPTEMBER_EVENING);
    expect((await stat(certificateFile)).mode & 0o077).toBe(0);
  });

  test.each([
    ['the same addresses', ['192.0.2.7', '192.0.2.8'], 0, true],
    ['fewer addresses', ['192.0.2.8'], 0, true],
    ['a new address', ['192.0.2.7', '192.0.2.9'], 0, false],
    ['366 days later', ['192.0.2.7'], 366, true],
    ['368 days later, with less than a month to go', ['192.0.2.7'], 368, false],
  ])('it is kept or made anew: %s', async (_, addresses, daysLater, kept) => {
    const first = await certificateFor(certificateFile, ['192.0.2.7', '192.0.2.8'], SEPTEMBER_EVENING);
    const second = await certificateFor(certificateFile, addresses, SEPTEMBER_EVENING + daysLater * DAY_MS);
    expect(fingerprint(second) === fingerprint(first)).toBe(kept);
    expect(await certificateFor(certificateFile, addresses, SEPTEMBER_EVENING + daysLater * DAY_MS)).toEqual(
      second,
    );
  });

  test.each(['', 'not JSON', '{"cert":"x"}', '{"cert":"x","key":"y"}'])(
    'a damaged one (%j) is made anew',
    async (damage) => {
      await certificateFor(certificateFile, [], SEPTEMBER_EVENING);
      await writeFile(certificateFile, damage);
      const made = await certificateFor(certificateFile, [], SEPTEMBER_EVENING);
      expect(new X509Certificate(made.cert).checkHost('localhost')).toBe('localhost');
    },
  );
});

describe('what the terminal says', () => {
  const served = {
    ...{ port: 8640, wishedPort: 8640, tlsPort: 8643, wishedTlsPort: 8643 },
    addresses: ['192.0.2.7', '198.51.100.9'],
    fingerprint: Array(32).fill('AB').join(':'),
  };

  test('names the address on this computer and each one for a tablet, and how to accept the certificate', () => {
    const says = greeting(served);
    for (const part of [
      'http://localhost:8640',
      'https://192.0.2.7:8643',
      'https://198.51.100.9:8643',
      'To accept it',
    ])
      expect(says).toContain(part);
    expect(says).not.toContain('busy');
  });

  test('says so when a port was busy', () => {
    expect(greeting({ ...served, port: 8641 })).toContain('Port 8640 is busy, so 8641 is used instead.');
  });

  test('says so when there is no network', () => {
    const says = greeting({ ...served, addresses: [] });
    expect(says).toContain('a tablet cannot reach it');
    expect(says).not.toContain('https://');
  });
});
