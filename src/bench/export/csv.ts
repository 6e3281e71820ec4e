/** Orders as a table. */
import { orderTotalMinor } from '#core/sizing/price/total.ts';
import { ADDRESS_PARTS } from '#order/document.ts';
import { majorAmount } from '#words/format.ts';
import { damageOf, type Entry, type Unreadable } from '../book/entry.ts';
import { ledgerFor, type Payment } from '../book/payments.ts';
import type { AllOrders } from '../book/search.ts';
import { csvTable, type Cell } from './table.ts';

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
  'made',
  'clasp_instead',
  'pendant_instead',
  'quantity',
  'length_mm',
  'inside_girth_mm',
  'price',
  'postage',
  'total',
  'currency',
  'agreed',
  'agreed_currency',
  'paid',
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
  'damage',
] as const;

/**
 * A line an order, the oldest first; those that can't be read come last, with what is certain of them. In `damage`
 * stands `unreadable` for these, `altered` for one that isn't, byte for byte, what came in or was entered.
 * @param paymentsOf an order's payments by its number
 */
export function toCsv(
  { entries, unreadable, altered }: AllOrders,
  paymentsOf: (number: string) => readonly Payment[] = () => [],
): string {
  return csvTable(COLUMNS, [
    ...entries.map((entry) => {
      const { number } = entry.document;
      return row(entry, paymentsOf(number), altered.has(number));
    }),
    ...unreadable.map(remains),
  ]);
}

function remains(one: Unreadable): Cell[] {
  const known: Readonly<Record<string, string>> = {
    number: one.number,
    state: one.state ?? '',
    received: one.receivedAt,
    damage: damageOf(one),
  };
  return COLUMNS.map((column) => known[column] ?? '');
}

function row(entry: Entry, payments: readonly Payment[], altered: boolean): Cell[] {
  const { document, state, receivedAt, dueOn, agreed } = entry;
  const { piece, measure, buyer, delivery, shown } = document;
  const currency = agreed?.currency ?? shown.currency;
  const { paidMinor, refundedMinor } = ledgerFor({ minor: 0, currency }, payments);
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
    document.made,
    document.instead.clasp.id,
    document.instead.pendant.id,
    document.quantity,
    shown.lengthMm,
    shown.insideGirthMm,
    majorAmount(shown.priceMinor * document.quantity, shown.currency),
    majorAmount(shown.postageMinor, shown.currency),
    majorAmount(orderTotalMinor(shown, document.quantity), shown.currency),
    shown.currency,
    agreed === null ? '' : majorAmount(agreed.minor, agreed.currency),
    agreed?.currency ?? '',
    { figure: majorAmount(paidMinor - refundedMinor, currency) },
    delivery.by,
    ...ADDRESS_PARTS.map((part) => (delivery.by === 'post' ? delivery.to[part] : '')),
    buyer.name,
    buyer.email,
    buyer.note,
    damageOf(entry, altered),
  ];
}
