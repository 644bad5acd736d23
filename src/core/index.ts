// The public face of the batch calculator.

export * from './request.ts';
export type * from './types.ts';
