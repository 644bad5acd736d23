// A server over a small built page in a folder of its own, for the tests of the server.

import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { request as httpsRequest } from 'node:https';
import { request as httpRequest, type IncomingHttpHeaders } from 'node:http';
import { serve, type Serving } from '../../src/serve/serve.ts';

export interface Reply {
  status: number;
  headers: IncomingHttpHeaders;
  body: string;
}

export interface TestServer extends Serving {
  base: string;
  /** Sends the path as it stands, which `fetch` would tidy up first. */
  get(path: string, headers?: Record<string, string>, method?: string): Promise<Reply>;
  getOverTls(path: string, certificateAuthority: string): Promise<Reply>;
}

/** A folder with a page: index.html, a hashed script, wasm, a model, a sound; and a secret beside it. */
export async function makePage(): Promise<{ base: string; remove(): Promise<void> }> {
  const base = await mkdtemp(join(tmpdir(), 'stovehand-serve-'));
  await mkdir(join(base, 'dist', 'assets'), { recursive: true });
  await writeFile(join(base, 'dist', 'index.html'), '<!doctype html><title>Kitchen</title>');
  await writeFile(join(base, 'dist', 'assets', 'app-1a2b3c.js'), 'export {};');
  await writeFile(join(base, 'dist', 'ear.wasm'), '\0asm');
  await writeFile(join(base, 'dist', 'ear.onnx'), '0123456789');
  await writeFile(join(base, 'dist', 'bell.wav'), 'RIFF');
  await writeFile(join(base, 'dist', '.hidden'), 'hidden');
  await writeFile(join(base, 'secret.txt'), 'secret');
  await mkdir(join(base, 'dist-secret'));
  await writeFile(join(base, 'dist-secret', 'key.txt'), 'secret');
  return { base, remove: () => rm(base, { recursive: true, force: true }) };
}

export async function servePage(base: string, port: number, addresses: string[] = []): Promise<TestServer> {
  const serving = await serve({
    folder: join(base, 'dist'),
    certificateFile: join(base, '.cache', 'certificate.json'),
    port,
    tlsPort: port + 100,
    addresses,
  });
  const at = { host: '127.0.0.1', agent: false };
  return {
    ...serving,
    base,
    get: (path, headers = {}, method = 'GET') =>
      reply(httpRequest({ ...at, port: serving.port, path, headers, method })),
    getOverTls: (path, ca) => reply(httpsRequest({ ...at, port: serving.tlsPort, path, ca })),
  };
}

function reply(asked: ReturnType<typeof httpRequest>): Promise<Reply> {
  return new Promise((resolve, reject) => {
    asked.on('error', reject);
    asked.on('response', (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('error', reject);
      response.on('end', () => {
        const body = Buffer.concat(parts).toString('utf8');
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body });
      });
    });
    asked.end();
  });
}
