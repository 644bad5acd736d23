// Why there is no microphone, by the error that the browser gave.

import type { EarTrouble } from '../kitchen/ports.ts';

const BY_NAME: Record<string, EarTrouble> = {
  NotAllowedError: 'notAllowed',
  NotFoundError: 'notFound',
  NotReadableError: 'inUse',
};

export function whyNoMicrophone(error: unknown): EarTrouble {
  // Without a secure origin browsers hide the microphone altogether.
  if (error instanceof TypeError) return 'insecure';
  const name = error instanceof DOMException ? error.name : '';
  return BY_NAME[name] ?? 'notOpened';
}
