// The table of the crawl: what was measured, what it must reach, and whether it does.

export interface TableRow {
  what: string;
  must: string;
  measured: string;
  /** What broke it, worst or first, in plain words. */
  faults: string[];
}

const SHOWN = 8;

export function table(rows: readonly TableRow[]): string {
  const cells = [
    ['what', 'must reach', 'measured', ''],
    ...rows.map(({ what, must, measured, faults }) => [
      what,
      must,
      measured,
      faults.length === 0 ? 'ok' : `${faults.length} FAULTS`,
    ]),
  ];
  const widths = [0, 1, 2, 3].map((i) => Math.max(...cells.map((row) => (row[i] ?? '').length)));
  const line = (row: string[]) =>
    row
      .map((cell, i) => cell.padEnd(widths[i] ?? 0))
      .join('  ')
      .trimEnd();
  return cells.map(line).join('\n');
}

export function faultsOf(rows: readonly TableRow[], shown = SHOWN): string {
  return rows
    .filter(({ faults }) => faults.length > 0)
    .flatMap(({ what, faults }) => [
      `\n${what}:`,
      ...faults.slice(0, shown).map((one) => `  ${one}`),
      ...(faults.length > shown ? [`  and ${faults.length - shown} more`] : []),
    ])
    .join('\n');
}
