/** Tables as CSV (RFC 4180), safe to open in a spreadsheet. */

/** A figure that is computed here, and may have a sign; texts come from people. */
export type Figure = { readonly figure: string };
export type Cell = string | number | Figure;

/** A cell that starts so is run as a formula by spreadsheets (OWASP, CSV Injection). */
const FORMULA = /^[=+\-@\t\r\n|%＝＋－＠]/u;

/** One table: a heading, then its rows, lines ended by CRLF. */
export function csvTable(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [columns, ...rows].map((cells) => cells.map(cell).join(',') + '\r\n').join('');
}

/** Every cell in quotes; a text that could be a formula gets an apostrophe, which spreadsheets show as text. */
function cell(value: Cell): string {
  const text = String(typeof value === 'object' ? value.figure : value);
  const safe =
    typeof value === 'string' && FORMULA.test(text.trimStart() === '' ? text : text.replace(/^ +/, ''))
      ? `'${text}`
      : text;
  return `"${safe.replaceAll('"', '""')}"`;
}
