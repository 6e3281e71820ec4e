/** Stock as tables: what there is of each thing, to count in and bring back; and all that came and went. */
import { majorAmount } from '#words/format.ts';
import type { Movement } from '../book/movements.ts';
import type { StockNow } from '../stock/stockNow.ts';
import type { Thing } from '../stock/things.ts';
import { csvTable, type Cell } from './table.ts';

/** The first five are read again when the table is brought in; `amount` is left empty to be filled in. */
const COLUMNS = [
  'thing',
  'kind',
  'amount',
  'unit',
  'note',
  'name',
  'number',
  'tray',
  'there',
  'promised',
  'free',
  'counted_in',
  'buy_below',
  'sold_by',
  'holds',
  'price',
  'currency',
  'supplier',
  'supplier_number',
] as const;

/** A line a thing; amounts in pieces or millimetres. */
export function toStockCsv(things: readonly Thing[], stock: StockNow, currency: string): string {
  return csvTable(
    COLUMNS,
    things.map((thing): Cell[] => {
      const { key, name, number, tray, wire, keep, sold } = thing;
      const there = stock.onHand(key);
      return [
        ...[key, 'counted', '', '', '', name, number ?? '', tray ?? ''],
        there === null ? '' : { figure: String(there) },
        stock.reserved(key),
        there === null ? '' : { figure: String(stock.free(key)) },
        wire ? 'mm' : 'pieces',
        keep ?? '',
        sold?.by ?? '',
        sold?.holds ?? '',
        sold === null ? '' : majorAmount(sold.priceMinor, currency),
        sold === null ? '' : currency,
        sold?.supplier ?? '',
        sold?.number ?? '',
      ];
    }),
  );
}

const LINE_COLUMNS = [
  ...['line', 'thing', 'kind', 'amount', 'offcut_mm', 'counted', 'entered', 'order', 'takes_back'],
  ...['taken_back_by', 'at', 'who', 'note'],
];

/** A line each, in the order in which they were entered. What went out is below nothing. */
export function toLinesCsv(lines: readonly Movement[]): string {
  return csvTable(
    LINE_COLUMNS,
    lines.map((one): Cell[] => [
      ...[one.id, one.thing, one.kind, { figure: String(one.amount) }],
      ...[one.offcut ?? '', one.counted ?? '', one.entered, one.number ?? '', one.strikes ?? ''],
      ...[one.struckBy ?? '', one.at, one.who, one.note],
    ]),
  );
}
