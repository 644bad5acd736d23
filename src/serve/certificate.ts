// Which certificate does the kitchen's own network get, and when is a new one made?

import { X509Certificate } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { generate } from 'selfsigned';
import { z } from 'zod';

const DAY_MS = 86_400_000;
/** Tablets refuse a server certificate that is valid for more than 825 days (Apple support article 103769). */
const VALID_DAYS = 397;
const RENEW_BEFORE_DAYS = 30;

const savedCertificate = z.object({ cert: z.string(), key: z.string() });
export type Certificate = z.infer<typeof savedCertificate>;

/**
 * The certificate kept in `file` as long as it names every address the machine now has and is good
 * for another month; otherwise a new one, kept there for the next start so that a tablet is asked once.
 */
export async function certificateFor(
  file: string,
  addresses: readonly string[],
  now: number,
): Promise<Certificate> {
  const kept = await readKept(file);
  if (kept && isGood(kept, addresses, now)) return kept;
  const made = await make(addresses, now);
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, JSON.stringify(made), { mode: 0o600 });
  return made;
}

/** The SHA-256 fingerprint that a browser shows for this certificate. */
export function fingerprint(certificate: Certificate): string {
  return new X509Certificate(certificate.cert).fingerprint256;
}

function isGood(kept: Certificate, addresses: readonly string[], now: number): boolean {
  try {
    const x509 = new X509Certificate(kept.cert);
    const named = addresses.every((address) => x509.checkIP(address) !== undefined);
    return named && Date.parse(x509.validTo) > now + RENEW_BEFORE_DAYS * DAY_MS;
  } catch {
    return false; // not a certificate any more: a new one is made over it
  }
}

async function readKept(file: string): Promise<Certificate | null> {
  try {
    return savedCertificate.parse(JSON.parse(await readFile(file, 'utf8')));
  } catch {
    return null; // none yet, or damaged: a new one is made over it
  }
}

async function make(addresses: readonly string[], now: number): Promise<Certificate> {
  const altNames = ['127.0.0.1', ...addresses].map((ip) => ({ type: 7 as const, ip }));
  const made = await generate([{ name: 'commonName', value: 'Stovehand in this kitchen' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    notBeforeDate: new Date(now - DAY_MS), // a tablet's clock may be behind
    notAfterDate: new Date(now + VALID_DAYS * DAY_MS),
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      { name: 'subjectAltName', altNames: [{ type: 2, value: 'localhost' }, ...altNames] },
    ],
  });
  return { cert: made.cert, key: made.private };
}
