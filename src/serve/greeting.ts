// What the terminal says once the page is being served.

export interface Served {
  port: number;
  tlsPort: number;
  wishedPort: number;
  wishedTlsPort: number;
  addresses: readonly string[];
  fingerprint: string;
}

export function greeting(served: Served): string {
  return [
    '',
    ...movedPort(served.wishedPort, served.port),
    ...movedPort(served.wishedTlsPort, served.tlsPort),
    'Stovehand is ready.',
    '',
    `  On this computer:  http://localhost:${served.port}`,
    ...onTheNetwork(served),
    '',
    '  Ctrl-C stops it.',
    '',
  ].join('\n');
}

function movedPort(wished: number, got: number): string[] {
  return wished === got ? [] : [`Port ${wished} is busy, so ${got} is used instead.`];
}

function onTheNetwork({ addresses, tlsPort, fingerprint }: Served): string[] {
  if (addresses.length === 0)
    return ['  On a tablet:       this computer is on no network, so a tablet cannot reach it.'];
  const [first, ...others] = addresses.map((address) => `https://${address}:${tlsPort}`);
  return [
    `  On a tablet:       ${first}`,
    ...others.map((url) => `                or   ${url}`),
    '',
    '  The tablet must be on the same network. It will warn once that it does not know this server,',
    '  because the certificate was made by this computer and by nobody else. To accept it:',
    '    Chrome, Edge:  Advanced, then Proceed to the address.',
    '    Safari:        Show Details, then visit this website.',
    '    Firefox:       Advanced, then Accept the Risk and Continue.',
    '  If it shows the certificate, its SHA-256 fingerprint must be',
    ...foldFingerprint(fingerprint),
  ];
}

function foldFingerprint(fingerprint: string): string[] {
  const pairs = fingerprint.split(':');
  return [pairs.slice(0, 16), pairs.slice(16)].map((half) => `    ${half.join(':')}`);
}
