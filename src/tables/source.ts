// Where does a value come from? Every value in the tables carries its source and how it was had.

/** `read`: in the source or a faithful copy. `repeated`: in a page that repeats the published text. */
export type How = 'read' | 'repeated' | 'computed' | 'memory';

export interface Sourced<T> {
  value: T;
  source: string;
  how: How;
}

const mark =
  (how: How) =>
  <T>(value: T, source: string): Sourced<T> => ({ value, source, how });

export const read = mark('read');
export const repeated = mark('repeated');
export const computed = mark('computed');
/** Not checked against a page: shown to the cook as such. */
export const memory = mark('memory');

/** The source as a person reads it, with the mark of what was not checked. */
export function cite(sourced: Sourced<unknown>): string {
  switch (sourced.how) {
    case 'read':
      return sourced.source;
    case 'repeated':
      return `${sourced.source} (read in a page that repeats it)`;
    case 'computed':
      return `computed: ${sourced.source}`;
    case 'memory':
      return `from memory: ${sourced.source}`;
  }
}
