// How one request for a file of the built page is answered.

import { createReadStream } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { pipeline } from 'node:stream/promises';
import { cacheControl, contentType, SECURITY_HEADERS } from './headers.ts';
import { locate, type Located } from './locate.ts';

export type Answer = (request: IncomingMessage, response: ServerResponse) => void;

/** Answers from one folder, and only from it. */
export function answerFrom(folder: string): Answer {
  return (request, response) => {
    answer(folder, request, response).catch((error: unknown) => {
      const code = (error as NodeJS.ErrnoException).code;
      if (code === 'ERR_STREAM_PREMATURE_CLOSE') return; // the browser went away: nobody to tell
      console.error(`Could not serve ${request.url ?? ''}:`, error);
      if (response.headersSent) response.destroy();
      else refuse(response, 500, 'The server could not read this file.');
    });
  };
}

async function answer(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  for (const [name, value] of Object.entries(SECURITY_HEADERS)) response.setHeader(name, value);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    return refuse(response, 405, 'This server only hands out the page.');
  }
  const found = await locate(folder, request.url ?? '/');
  if (!found) return refuse(response, 404, 'There is no such file here.');
  response.setHeader('ETag', found.etag);
  response.setHeader('Cache-Control', cacheControl(found.urlPath));
  if (request.headers['if-none-match'] === found.etag) {
    response.writeHead(304).end();
    return;
  }
  await send(request, response, found);
}

async function send(request: IncomingMessage, response: ServerResponse, found: Located): Promise<void> {
  response.setHeader('Content-Type', contentType(found.file));
  response.setHeader('Accept-Ranges', 'bytes');
  const range = parseRange(request.headers.range, found.bytes);
  if (range === 'unsatisfiable') {
    response.setHeader('Content-Range', `bytes */${found.bytes}`);
    return refuse(response, 416, 'The file is shorter than that.');
  }
  const { start, end } = range ?? { start: 0, end: found.bytes - 1 };
  if (range) response.setHeader('Content-Range', `bytes ${start}-${end}/${found.bytes}`);
  response.setHeader('Content-Length', end - start + 1);
  response.writeHead(range ? 206 : 200);
  if (request.method === 'HEAD' || found.bytes === 0) {
    response.end();
    return;
  }
  await pipeline(createReadStream(found.file, { start, end }), response);
}

/**
 * The one range asked for (RFC 9110, 14.1.2), null when the whole file is to be sent. Some browsers
 * play no sound at all from a server that does not know ranges.
 */
export function parseRange(
  header: string | undefined,
  bytes: number,
): { start: number; end: number } | 'unsatisfiable' | null {
  const match = /^bytes=(\d*)-(\d*)$/.exec(header ?? '');
  if (!match || (match[1] === '' && match[2] === '')) return null;
  const [, from = '', to = ''] = match;
  const start = from === '' ? Math.max(0, bytes - Number(to)) : Number(from);
  const end = from === '' || to === '' ? bytes - 1 : Math.min(Number(to), bytes - 1);
  if (from !== '' && to !== '' && Number(to) < start) return null;
  return start >= bytes || start > end ? 'unsatisfiable' : { start, end };
}

function refuse(response: ServerResponse, status: number, says: string): void {
  response.setHeader('Cache-Control', 'no-store');
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`${says}\n`);
}
