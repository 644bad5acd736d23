// The plans that the search cooks: together they take every branch of the charts.

import type { BatchPlan } from '../../src/core/types.ts';
import { planOf } from '../machines/evening.ts';

export const plans: Record<string, BatchPlan> = {
  'pumpkin butter, asked for the shelf and refused': planOf({ fruit: 'pumpkin' }),
  'raspberry jam for the shelf: may be strained': planOf({ fruit: 'raspberry', product: 'jam' }),
  'damson butter for the shelf: must be strained and blended': planOf(),
  'strawberry jam for the shelf, with powdered pectin: neither strained nor blended': planOf({
    fruit: 'strawberry',
    product: 'jam',
    pectin: 'powdered',
  }),
};
