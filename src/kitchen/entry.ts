// What may stand in the log, and be believed when it is read back?

import { z } from 'zod';
import type { KitchenEvent } from '../../machines/kitchen/events.ts';
import { planSchema } from './plan-schema.ts';
import type { EntrySource, LogEntry } from './ports.ts';

const at = z.number().nonnegative();
const id = z.string().min(1);
const count = z.number().int().nonnegative();
const seq = z.number().int().positive();

const batchPlanned = z.strictObject({
  type: z.literal('batch.planned'),
  at,
  batch: id,
  name: z.string(),
  plan: planSchema,
});
const cannerSet = z.strictObject({
  type: z.literal('canner.set'),
  at,
  canner: id,
  jarsPerLoad: z.number().positive(),
  preheatMinutes: z.number().nonnegative(),
});

const batchWord = <T extends string>(type: T) => z.strictObject({ type: z.literal(type), at, batch: id });
const batchWords = [
  batchWord('setup.ready'),
  batchWord('mash.done'),
  batchWord('heat.on'),
  batchWord('heat.off'),
  batchWord('heat.called'),
  batchWord('pot.rollingBoil'),
  batchWord('pot.stirred'),
  batchWord('pot.thick'),
  batchWord('pot.tooThick'),
  batchWord('pot.caught'),
  batchWord('pot.changed'),
  batchWord('skim.done'),
  batchWord('strain.done'),
  batchWord('strain.skipped'),
  batchWord('blend.done'),
  batchWord('blend.skipped'),
  batchWord('plate.cold'),
  batchWord('plate.spooned'),
  batchWord('plate.held'),
  batchWord('plate.runny'),
  batchWord('plate.tooThick'),
  batchWord('pot.loosened'),
  batchWord('jars.ready'),
  batchWord('jars.emptied'),
  batchWord('jars.toFridge'),
  batchWord('pot.more'),
  batchWord('ping.heard'),
  batchWord('rest.over'),
  batchWord('seals.allHeld'),
  batchWord('jars.putAway'),
  batchWord('batch.held'),
  batchWord('batch.resumed'),
  batchWord('batch.stopped'),
] as const;
const heatPutOff = z.strictObject({ type: z.literal('heat.putOff'), at, batch: id, until: at });
const boilDoubted = z.strictObject({ type: z.literal('boil.doubted'), at, canners: z.array(id) });
const readingTaken = z.strictObject({
  type: z.literal('reading.taken'),
  at,
  batch: id,
  massKg: z.number().exactOptional(),
  depthM: z.number().exactOptional(),
  tempC: z.number().exactOptional(),
  fractionOfStart: z.number().exactOptional(),
});
const minutesAdded = z.strictObject({ type: z.literal('minutes.added'), at, batch: id, minutes: z.number() });
const jarsFilled = z.strictObject({
  type: z.literal('jars.filled'),
  at,
  batch: id,
  full: count,
  spare: count,
  into: id.exactOptional(),
});
const jarWord = <T extends string>(type: T) =>
  z.strictObject({ type: z.literal(type), at, batch: id, count: seq, jar: id.exactOptional() });
const jarWords = [
  jarWord('jars.eaten'),
  jarWord('jars.givenAway'),
  jarWord('jars.discarded'),
  jarWord('jars.intoFridge'),
  jarWord('jars.intoFreezer'),
] as const;
const sealsFailed = z.strictObject({ type: z.literal('seals.failed'), at, batch: id, count });

const cannerWord = <T extends string>(type: T) => z.strictObject({ type: z.literal(type), at, canner: id });
const cannerWords = [
  cannerWord('canner.filled'),
  cannerWord('canner.heatOn'),
  cannerWord('canner.hot'),
  cannerWord('canner.fullBoil'),
  cannerWord('canner.boilDropped'),
  cannerWord('canner.boilHolds'),
  cannerWord('canner.waterLow'),
  cannerWord('jars.out'),
  cannerWord('canner.off'),
] as const;
const waterAdded = z.strictObject({
  type: z.literal('canner.waterAdded'),
  at,
  canner: id,
  keptBoiling: z.boolean(),
});
const whoseWord = <T extends string>(type: T) =>
  z.strictObject({ type: z.literal(type), at, canner: id, batch: id.exactOptional() });
const whoseWords = [whoseWord('jars.in'), whoseWord('jar.broke')] as const;

const tick = z.strictObject({ type: z.literal('tick'), at });
const returned = z.strictObject({ type: z.literal('kitchen.returned'), at, awaySince: at });
const corrected = z.strictObject({
  type: z.literal('log.corrected'),
  at,
  seq,
  how: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('never') }),
    z.strictObject({ kind: z.literal('when'), at }),
    z.strictObject({ kind: z.literal('batch'), batch: id }),
  ]),
});

/** Every event the kitchen knows, and nothing else: an unknown word or a stray field is refused. */
export const kitchenEventSchema = z.discriminatedUnion('type', [
  batchPlanned,
  cannerSet,
  ...batchWords,
  heatPutOff,
  boilDoubted,
  readingTaken,
  minutesAdded,
  jarsFilled,
  sealsFailed,
  ...jarWords,
  ...cannerWords,
  waterAdded,
  ...whoseWords,
  tick,
  returned,
  corrected,
]) satisfies z.ZodType<KitchenEvent>;

export const entrySourceSchema = z.enum([
  'voice',
  'touch',
  'keyboard',
  'clock',
  'link',
  'file',
]) satisfies z.ZodType<EntrySource>;

export const logEntrySchema = z.strictObject({
  seq,
  event: kitchenEventSchema,
  source: entrySourceSchema,
}) satisfies z.ZodType<LogEntry>;

const plainToBatch = new Set<unknown>(batchWords.map(({ shape }) => shape.type.value));
const plainToCanner = new Set<unknown>([...cannerWords, ...whoseWords].map(({ shape }) => shape.type.value));
const sources = new Set<unknown>(entrySourceSchema.options);

/**
 * The entry that a line of the log says, or null. Nearly all are plain words, and those are told by hand: a year of
 * them opens three times as fast. Whatever is not plainly one is left to the schema, which never contradicts it.
 */
export function readLogEntry(value: { seq: number; event?: unknown; source?: unknown }): LogEntry | null {
  if (isPlain(value)) return value;
  const parsed = logEntrySchema.safeParse(value);
  return parsed.success ? parsed.data : null;
}

function isPlain(value: { seq: number; event?: unknown; source?: unknown }): value is LogEntry {
  const { seq: number, event, source } = value;
  if (Object.keys(value).length !== 3 || !Number.isSafeInteger(number) || number < 1) return false;
  if (!sources.has(source) || typeof event !== 'object' || event === null) return false;
  const { type, at: when, batch, canner } = event as Record<string, unknown>;
  if (typeof when !== 'number' || !Number.isFinite(when) || when < 0) return false;
  if (Object.keys(event).length !== 3) return false;
  if (plainToBatch.has(type)) return typeof batch === 'string' && batch !== '';
  return plainToCanner.has(type) && typeof canner === 'string' && canner !== '';
}

/** `satisfies` proves that what is read is an event; this proves that every event can be read. */
type Covers<Whole, Part extends Whole> = Part;
export type EveryEventHasASchema = Covers<z.output<typeof kitchenEventSchema>['type'], KitchenEvent['type']>;
