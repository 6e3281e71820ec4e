import { expect } from 'vitest';

/** A reader by the grammar of RFC 4180, section 2, written for these tests alone. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    expect(text.charAt(at)).toBe('"');
    let cell = '';
    for (at += 1; ; at += 1) {
      if (text.charAt(at) !== '"') cell += text.charAt(at);
      else if (text.charAt(at + 1) === '"') {
        cell += '"';
        at += 1;
      } else break;
    }
    row.push(cell);
    at += 1;
    if (text.charAt(at) === ',') at += 1;
    else {
      expect(text.slice(at, at + 2)).toBe('\r\n');
      at += 2;
      rows.push(row);
      row = [];
    }
  }
  return rows;
}
