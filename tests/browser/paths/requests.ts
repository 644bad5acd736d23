// The batches of a walk: together their plans take every branch of the charts.

import { batchRequestSchema } from '../../../src/core/index.ts';
import type { BatchRequest } from '../../../src/core/request.ts';
import { damsons } from '../../machines/evening.ts';

const request = (
  fruit: string,
  product: 'butter' | 'jam',
  pectin: 'none' | 'liquid' = 'none',
): BatchRequest => batchRequestSchema.parse({ ...damsons, fruit, product, pectin });

export const requests: BatchRequest[] = [
  request('damson', 'butter'), // must be strained, and blended
  request('raspberry', 'jam'), // may be strained
  request('peach', 'butter'), // may be strained, and blended
  request('strawberry', 'butter'), // blended only
  request('blueberry', 'jam', 'liquid'), // neither, and pectin goes in at the boil
  request('pear', 'butter'),
  request('quince', 'butter'),
  request('apricot', 'butter'),
  request('blackberry', 'butter'),
];
