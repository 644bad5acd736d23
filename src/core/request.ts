// What may a cook ask for, and in which sentence is a request refused?

import { z } from 'zod';

import { juiceYield } from '../tables/recipes.ts';
import { refuseSugar } from './ingredients.ts';
import { refuseTarget } from './mix.ts';
import { requestFields, SAY_FRUIT, stoveLearnedSchema } from './request-fields.ts';

export { stoveLearnedSchema };

type Fields = z.output<typeof requestFields>;
/** A request as a cook, a link or a script may write it. */
export type BatchRequestInput = z.input<typeof requestFields>;
/** A request as parsed. */
export type BatchRequest = Omit<Fields, 'fruitMassKg'> & { fruitMassKg: number };
export type StoveLearned = z.output<typeof stoveLearnedSchema>;

/** Fruit that gave the juice, where only the juice was weighed. */
const fruitOf = ({ product, fruitMassKg, juiceMassKg }: Fields): number | undefined =>
  fruitMassKg ??
  (product === 'jelly' && juiceMassKg !== undefined ? juiceMassKg / juiceYield.soft.value.perKg : undefined);

const refusePectin = ({ product, pectin }: BatchRequest): string | null =>
  product === 'butter' && pectin !== 'none'
    ? 'A butter thickens by boiling down and takes no pectin: choose no pectin, or make jam.'
    : null;

/** What no field can tell alone, asked only once every field is sound. */
const refusals = [
  ['sugarMassKg', refuseSugar],
  ['targetSolubleSolidsPct', refuseTarget],
  ['pectin', refusePectin],
] as const;

/** A request as plain JSON, checked, with its fruit named by id and its defaults filled in. */
export const batchRequestSchema = requestFields.transform((fields, context): BatchRequest => {
  const refuse = (path: string, message: string): void =>
    void context.issues.push({ code: 'custom', path: [path], message, input: fields });
  const fruitMassKg = fruitOf(fields);
  if (fruitMassKg === undefined) {
    refuse('fruitMassKg', SAY_FRUIT);
    return z.NEVER;
  }
  const request = { ...fields, fruitMassKg };
  for (const [path, refusalOf] of refusals) {
    const says = refusalOf(request);
    if (says !== null) refuse(path, says);
  }
  return request;
});
