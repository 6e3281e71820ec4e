/** A table in plain text. */

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('  ');
  return all.map(line).join('\n');
}

/** Milliseconds with three digits that count. */
export function ms(value: number): string {
  return value.toPrecision(3);
}
