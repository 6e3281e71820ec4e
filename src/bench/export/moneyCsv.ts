/** What came and went in a month, and what was invoiced, as one table: for her own books, or for who keeps them. */
import { majorAmount } from '#words/format.ts';
import type { Invoice } from '../book/invoices.ts';
import type { Payment } from '../book/payments.ts';
import { csvTable, type Cell, type Figure } from './table.ts';

const COLUMNS = [
  'kind',
  'day',
  'order',
  'invoice',
  'corrects',
  'way',
  'sum',
  'currency',
  'tax_percent',
  'tax',
  'name',
  'entered',
  'struck_out',
] as const;

/** A line a payment, refund, invoice or credit note, by day. Sums that went back are below nothing; lines struck out count for nothing. */
export function toMoneyCsv(payments: readonly Payment[], invoices: readonly Invoice[]): string {
  const lines = [
    ...payments.map((one) => ({ day: one.day, cells: paymentRow(one) })),
    ...invoices.map((one) => ({ day: one.content.issuedOn, cells: invoiceRow(one) })),
  ];
  const byDay = lines.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  return csvTable(
    COLUMNS,
    byDay.map(({ cells }) => cells),
  );
}

function paymentRow({ kind, day, number, way, minor, currency, at, struckAt }: Payment): Cell[] {
  const sum = signed(kind === 'refunded' ? -minor : minor, currency);
  return [kind, day, number, '', '', way, sum, currency, '', '', '', at, struckAt ?? ''];
}

function invoiceRow({ invoice, number, kind, corrects, issuedAt, content }: Invoice): Cell[] {
  const { issuedOn, totalMinor, currency, tax, buyer } = content;
  const sign = kind === 'credit-note' ? -1 : 1;
  return [
    kind,
    issuedOn,
    number,
    invoice,
    corrects ?? '',
    '',
    signed(sign * totalMinor, currency),
    currency,
    tax.hundredths === null ? '' : tax.hundredths / 100,
    tax.minor === null ? '' : signed(sign * tax.minor, currency),
    buyer.name,
    issuedAt,
    '',
  ];
}

const signed = (minor: number, currency: string): Figure => ({ figure: majorAmount(minor, currency) });
