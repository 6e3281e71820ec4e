/** Orders as CSV (RFC 4180), safe to open in a spreadsheet. */
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { majorAmount } from '#words/format.ts';
import type { Entry } from '../book/entry.ts';

const COLUMNS = [
  'number',
  'state',
  'received',
  'due',
  'piece',
  'revision',
  'measure',
  'size',
  'size_mm',
  'sit',
  'hand',
  'quantity',
  'length_mm',
  'inside_girth_mm',
  'price',
  'currency',
  'name',
  'email',
  'note',
] as const;

/** A cell that starts so is run as a formula by spreadsheets (OWASP, CSV Injection). */
const FORMULA = /^[=+\-@\t\r\n|%＝＋－＠]/u;

/** One table, a line an order, lines ended by CRLF. */
export function toCsv(entries: readonly Entry[]): string {
  const lines = [COLUMNS as readonly (string | number)[], ...entries.map(row)];
  return lines.map((cells) => cells.map(cell).join(',') + '\r\n').join('');
}

function row({ document, state, receivedAt, dueOn }: Entry): (string | number)[] {
  const { piece, measure, buyer, shown } = document;
  return [
    document.number,
    state,
    receivedAt,
    dueOn ?? '',
    piece.id,
    piece.revision,
    measure.of,
    measure.text,
    measure.mm,
    document.sit,
    document.hand,
    document.quantity,
    shown.lengthMm,
    shown.insideGirthMm,
    majorAmount(orderTotalMinor(shown, document.quantity), shown.currency),
    shown.currency,
    buyer.name,
    buyer.email,
    buyer.note,
  ];
}

/** Every cell in quotes; a text that could be a formula gets an apostrophe, which spreadsheets show as text. */
function cell(value: string | number): string {
  const text = String(value);
  const safe =
    typeof value === 'string' && FORMULA.test(text.trimStart() === '' ? text : text.replace(/^ +/, ''))
      ? `'${text}`
      : text;
  return `"${safe.replaceAll('"', '""')}"`;
}
