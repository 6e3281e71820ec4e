/** Orders as CSV (RFC 4180), safe to open in a spreadsheet. */
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { ADDRESS_PARTS } from '#order/document.ts';
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
  'postage',
  'total',
  'currency',
  'delivery',
  'to_name',
  'to_line1',
  'to_line2',
  'to_town',
  'to_region',
  'to_postcode',
  'to_country',
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
  const { piece, measure, buyer, delivery, shown } = document;
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
    majorAmount(shown.priceMinor * document.quantity, shown.currency),
    majorAmount(shown.postageMinor, shown.currency),
    majorAmount(orderTotalMinor(shown, document.quantity), shown.currency),
    shown.currency,
    delivery.by,
    ...ADDRESS_PARTS.map((part) => (delivery.by === 'post' ? delivery.to[part] : '')),
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
