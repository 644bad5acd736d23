// What the cook has told within the last minute: said once more, it is a repetition, and no mishearing.

import { batchCommands, cannerCommands, type CommandId } from '../../machines/dialogue/commands.ts';
import type { Told } from '../../machines/dialogue/events.ts';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import type { LogEntry } from './ports.ts';

/** Who was not heard says it again within a minute: common practice, no source. */
const AGAIN_MS = 60_000;
/** So soon the same words are likelier a repetition than news of another pot: common practice, no source. */
const JUST_NOW_MS = 12_000;
/** More sentences in the grammar would be more to mistake each other for. */
const MOST = 3;

export function toldAlready(entries: readonly LogEntry[], now: number): Told[] {
  const told: Told[] = [];
  for (let i = entries.length - 1; i >= 0 && told.length < MOST; i--) {
    const entry = entries[i];
    if (!entry || entry.event.at < now - AGAIN_MS) break;
    const one = entry.source === 'clock' ? null : toldIn(entry.event);
    if (one) told.push({ ...one, justNow: entry.event.at >= now - JUST_NOW_MS });
  }
  return told;
}

function toldIn(event: KitchenEvent): Pick<Told, 'command' | 'about'> | null {
  const { type } = event;
  if (type in batchCommands && 'batch' in event)
    return { command: type as CommandId, about: event.batch ?? null };
  if (type in cannerCommands && 'canner' in event) return { command: type as CommandId, about: event.canner };
  return null;
}
