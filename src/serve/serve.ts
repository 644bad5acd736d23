// The kitchen's server: the built page on this computer, and over TLS for the tablets of the network.

import { createServer as createHttp } from 'node:http';
import { createServer as createHttps } from 'node:https';
import type { Server } from 'node:net';
import { networkInterfaces } from 'node:os';
import { answerFrom } from './answer.ts';
import { certificateFor, fingerprint } from './certificate.ts';
import { close, listenOnFreePort } from './listen.ts';

export interface ServeOptions {
  /** The folder of the built page. */
  folder: string;
  /** Where the certificate is kept between starts. */
  certificateFile: string;
  port: number;
  tlsPort: number;
  /** IPv4 addresses of this machine on its networks. */
  addresses: readonly string[];
}

export interface Serving {
  port: number;
  tlsPort: number;
  fingerprint: string;
  stop(): Promise<void>;
}

/**
 * Serves plain HTTP to this computer only, where browsers grant the microphone to it ("localhost" is a
 * secure context), and HTTPS to the network, where they would not otherwise.
 */
export async function serve(options: ServeOptions): Promise<Serving> {
  const answer = answerFrom(options.folder);
  const certificate = await certificateFor(options.certificateFile, options.addresses, Date.now());
  const open: (Server & { closeAllConnections(): void })[] = [];
  const keep = <T extends Server & { closeAllConnections(): void }>(server: T): T => {
    open.push(server);
    return server;
  };
  const plain = await listenOnFreePort(() => keep(createHttp(answer)), ['127.0.0.1', '::1'], options.port);
  const tls = await listenOnFreePort(
    () => keep(createHttps(certificate, answer)),
    ['0.0.0.0'],
    options.tlsPort,
  );
  return {
    port: plain.port,
    tlsPort: tls.port,
    fingerprint: fingerprint(certificate),
    async stop() {
      const listening = open.filter((server) => server.listening);
      const closed = listening.map(close);
      for (const server of listening) server.closeAllConnections();
      await Promise.all(closed);
    },
  };
}

/** The IPv4 addresses by which another device may reach this machine. */
export function networkAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(
      (address) => address.family === 'IPv4' && !address.internal && !address.address.startsWith('169.254.'),
    )
    .map((address) => address.address);
}
