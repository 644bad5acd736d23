// On which port does the server listen when the wished one may be taken?

import type { Server } from 'node:net';

const TRIES = 50;

/**
 * Opens servers made by `make`, one for each host, all on the first port at or above `wished` that is
 * free on every host. A host the machine does not have (no IPv6) is left out, but not the first one.
 */
export async function listenOnFreePort(
  make: () => Server,
  hosts: readonly [string, ...string[]],
  wished: number,
): Promise<{ servers: Server[]; port: number }> {
  for (let port = wished; port < wished + TRIES && port <= 65535; port++) {
    const servers = await listenAll(make, hosts, port);
    if (servers) return { servers, port };
  }
  throw new Error(
    `No free port from ${wished} on. Stop a program that serves there, or name another: npm start -- --port 9000`,
  );
}

async function listenAll(
  make: () => Server,
  hosts: readonly string[],
  port: number,
): Promise<Server[] | null> {
  const opened: Server[] = [];
  for (const [index, host] of hosts.entries()) {
    const server = make();
    const outcome = await listen(server, host, port);
    if (outcome === 'open') opened.push(server);
    else if (outcome === 'busy' || index === 0) {
      await Promise.all(opened.map(close));
      return null;
    }
  }
  return opened;
}

function listen(server: Server, host: string, port: number): Promise<'open' | 'busy' | 'no such host'> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException) => {
      // A port below 1024 that only an administrator may open is as good as taken.
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve('busy');
      else if (error.code === 'EADDRNOTAVAIL' || error.code === 'EAFNOSUPPORT') resolve('no such host');
      else reject(error);
    };
    server.once('error', failed);
    server.listen({ host, port, exclusive: true }, () => {
      server.off('error', failed);
      resolve('open');
    });
  });
}

export function close(server: Server): Promise<void> {
  return new Promise((resolve) => server.close(() => resolve()));
}
