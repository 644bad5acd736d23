// What the server answers: the page, with the headers that keep it offline and safe, and nothing else.

import { symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parseRange } from '../../src/serve/answer.ts';
import { makePage, servePage, type TestServer } from './kitchenServer.ts';

let page: Awaited<ReturnType<typeof makePage>>;
let server: TestServer;

beforeAll(async () => {
  page = await makePage();
  await symlink(join(page.base, 'secret.txt'), join(page.base, 'dist', 'leak.txt'));
  server = await servePage(page.base, 38_640);
});
afterAll(async () => {
  await server.stop();
  await page.remove();
});

describe('the files of the page', () => {
  test.each([
    ['/', 'text/html; charset=utf-8'],
    ['/assets/app-1a2b3c.js', 'text/javascript; charset=utf-8'],
    ['/ear.wasm', 'application/wasm'],
    ['/ear.onnx', 'application/octet-stream'],
    ['/bell.wav', 'audio/wav'],
  ])('%s is sent as %s', async (path, type) => {
    const reply = await server.get(path);
    expect(reply.status).toBe(200);
    expect(reply.headers['content-type']).toBe(type);
    expect(Number(reply.headers['content-length'])).toBe(reply.body.length);
  });

  test('an address of the page’s own opens the page, with or without a query', async () => {
    for (const path of ['/plan', '/?practice=60', '/batch/plum?at=2']) {
      expect((await server.get(path)).body).toContain('<title>Kitchen</title>');
    }
  });

  test('a missing file is told, not covered up by the page', async () => {
    const reply = await server.get('/assets/gone-000000.js');
    expect(reply.status).toBe(404);
    expect(reply.headers['cache-control']).toBe('no-store');
    expect(reply.body).toBe('There is no such file here.\n');
  });

  test('HEAD gives the headers alone', async () => {
    const reply = await server.get('/ear.onnx', {}, 'HEAD');
    expect(reply).toMatchObject({ status: 200, body: '', headers: { 'content-length': '10' } });
  });

  test.each(['POST', 'PUT', 'DELETE'])('%s is refused', async (method) => {
    const reply = await server.get('/', {}, method);
    expect(reply).toMatchObject({ status: 405, headers: { allow: 'GET, HEAD' } });
  });
});

describe('keeping files', () => {
  test('a file with a hash in its name is kept for good, any other is asked about again', async () => {
    const hashed = await server.get('/assets/app-1a2b3c.js');
    expect(hashed.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    for (const path of ['/', '/ear.wasm', '/plan']) {
      expect((await server.get(path)).headers['cache-control']).toBe('no-cache');
    }
  });

  test('a file that the browser still has is not sent again', async () => {
    const { etag } = (await server.get('/ear.onnx')).headers;
    const again = await server.get('/ear.onnx', { 'if-none-match': etag ?? '' });
    expect(again).toMatchObject({ status: 304, body: '' });
    expect((await server.get('/ear.onnx', { 'if-none-match': '"other"' })).status).toBe(200);
  });
});

describe('part of a file (RFC 9110, section 14)', () => {
  test('a range is sent with its place in the whole', async () => {
    const reply = await server.get('/ear.onnx', { range: 'bytes=2-4' });
    expect(reply).toMatchObject({ status: 206, body: '234' });
    expect(reply.headers['content-range']).toBe('bytes 2-4/10');
  });

  test('a range past the end is refused with the length', async () => {
    const reply = await server.get('/ear.onnx', { range: 'bytes=10-' });
    expect(reply.status).toBe(416);
    expect(reply.headers['content-range']).toBe('bytes */10');
  });

  test.each([
    ['bytes=0-0', { start: 0, end: 0 }],
    ['bytes=9-', { start: 9, end: 9 }],
    ['bytes=-3', { start: 7, end: 9 }],
    ['bytes=-99', { start: 0, end: 9 }],
    ['bytes=5-99', { start: 5, end: 9 }],
    ['bytes=10-12', 'unsatisfiable'],
    ['bytes=-0', 'unsatisfiable'],
    ['bytes=4-2', null],
    ['bytes=-', null],
    ['bytes=0-1,3-4', null],
    ['lines=0-1', null],
    [undefined, null],
  ])('of ten bytes, %s means %o', (header, range) => {
    expect(parseRange(header, 10)).toEqual(range);
  });
});

describe('what the page may do', () => {
  test('every answer, good or bad, carries the policy that keeps the page to itself', async () => {
    for (const path of ['/', '/ear.wasm', '/gone.js', '/../secret.txt']) {
      const { headers } = await server.get(path);
      const policy = String(headers['content-security-policy']).split('; ');
      expect(policy).toContain("default-src 'self'");
      expect(policy).toContain("connect-src 'self' blob:");
      expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
      expect(policy).toContain("worker-src 'self' blob:");
      expect(policy).toContain("frame-ancestors 'none'");
      expect(headers['permissions-policy']).toContain('microphone=(self)');
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
    }
  });
});

describe('nothing outside the page is handed out', () => {
  test.each([
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/..%5csecret.txt',
    '/../dist-secret/key.txt',
    '//../secret.txt',
    '/assets/%00/../../secret.txt',
    '/%E0%A4%A',
    '/.hidden',
    '/leak.txt',
    '/assets',
  ])('%s', async (path) => {
    const reply = await server.get(path);
    expect(reply.body).not.toContain('secret');
    expect(reply.body).not.toContain('hidden');
    expect(reply.status === 404 || reply.body.includes('<title>Kitchen</title>')).toBe(true);
  });
});
