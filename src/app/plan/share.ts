// A plan that travels: as the tail of a link, or as a small file. Whatever comes in is checked first.

import { z } from 'zod';
import { batchRequestSchema, type BatchRequest } from '../../core/index.ts';
import type { Arrival } from '../actions.ts';

const HASH_NAME = 'plan';

/** The file says what it is, so that a stray file is told apart from a spoilt one. */
const planFile = z.object({ kind: z.literal('stovehand-plan'), version: z.literal(1), request: z.unknown() });

/** What a pot taught stays at home; the rest of the request travels. */
function travelling(request: BatchRequest): Omit<BatchRequest, 'learned'> {
  const { learned: _, ...rest } = request;
  return rest;
}

export function planLink(request: BatchRequest, page: string): string {
  const url = new URL(page);
  url.hash = `${HASH_NAME}=${encodeURIComponent(JSON.stringify(travelling(request)))}`;
  return url.href;
}

export function planFileText(request: BatchRequest): string {
  return JSON.stringify({ kind: 'stovehand-plan', version: 1, request: travelling(request) }, null, 2);
}

/** Undefined where the link carries no plan at all. */
export function arrivalFromHash(hash: string): Arrival | undefined {
  const match = /^#?plan=(.*)$/s.exec(hash);
  if (!match) return undefined;
  const json = readJson(() => decodeURIComponent(match[1] ?? ''));
  if (json === undefined) {
    return {
      kind: 'refused',
      says: 'The plan in this link is cut short or damaged. Ask for the whole link again, or fill in the page.',
    };
  }
  return checked(json, 'link');
}

export function arrivalFromFile(text: string): Arrival {
  const json = readJson(() => text);
  if (json === undefined) {
    return {
      kind: 'refused',
      says: 'This file cannot be read. Open a plan file that was saved from this page.',
    };
  }
  const file = planFile.safeParse(json);
  if (!file.success) {
    return {
      kind: 'refused',
      says: 'This file holds no plan. Open a plan file that was saved from this page.',
    };
  }
  return checked(file.data.request, 'file');
}

/** A plan that is being cooked is in the log; a reload must come back to the stove, not to the link. */
export function forgetLink(): void {
  if (arrivalFromHash(window.location.hash)) {
    window.history.replaceState(null, '', window.location.pathname + window.location.search);
  }
}

function checked(json: unknown, from: 'link' | 'file'): Arrival {
  const parsed = batchRequestSchema.safeParse(json);
  if (parsed.success) return { kind: 'request', request: parsed.data };
  const first = parsed.error.issues[0];
  return { kind: 'refused', says: `The plan in this ${from} cannot be used. ${first?.message ?? ''}`.trim() };
}

function readJson(text: () => string): unknown {
  try {
    return JSON.parse(text());
  } catch {
    return undefined;
  }
}
