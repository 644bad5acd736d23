// Starts the server for a cook: reads the options, says where the page is, stops on Ctrl-C.

import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { greeting } from './greeting.ts';
import { networkAddresses, serve } from './serve.ts';

const PORT = 8640;

/** Serves the built page of the project at `root` until it is told to stop. */
export async function main(root: string, args: readonly string[]): Promise<void> {
  const wishedPort = readPort(args);
  const wishedTlsPort = wishedPort + 3 > 65535 ? wishedPort - 3 : wishedPort + 3;
  const addresses = networkAddresses();
  const serving = await serve({
    folder: join(root, 'dist'),
    certificateFile: join(root, '.cache', 'serve', 'certificate.json'),
    port: wishedPort,
    tlsPort: wishedTlsPort,
    addresses,
  });
  console.log(greeting({ ...serving, wishedPort, wishedTlsPort, addresses }));
  stopOnSignal(serving.stop);
}

/** Ends with 0, once: from a terminal the signal comes twice, npm passes on what the terminal sent already. */
function stopOnSignal(stop: () => Promise<void>): void {
  let stopping = false;
  const onSignal = () => {
    if (stopping) return;
    stopping = true;
    void stop().then(() => {
      console.log('Stopped.');
      process.exit(0);
    });
  };
  process.on('SIGINT', onSignal).on('SIGTERM', onSignal);
}

function readPort(args: readonly string[]): number {
  const { values } = parseArgs({ args: [...args], options: { port: { type: 'string' } }, strict: true });
  const asked = values.port ?? process.env['PORT'] ?? String(PORT);
  const port = Number(asked);
  if (Number.isInteger(port) && port >= 1 && port <= 65535) return port;
  throw new Error(
    `"${asked}" is no port. A port is a whole number from 1 to 65535: npm start -- --port ${PORT}`,
  );
}
