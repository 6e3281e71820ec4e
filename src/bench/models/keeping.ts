/** How long buyers' data is kept. */
import type { Shop } from '#catalogue/model/catalogue.ts';

/** ISO 8601 instant `months` before `nowIso`: what was closed before it is past its time. */
export function keptSince(nowIso: string, months: number): string {
  const date = new Date(nowIso);
  const day = date.getUTCDate();
  date.setUTCDate(1);
  date.setUTCMonth(date.getUTCMonth() - months);
  const lastDay = new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + 1, 0)).getUTCDate();
  date.setUTCDate(Math.min(day, lastDay));
  return date.toISOString();
}

/** Invoices issued before this instant lose name and address with their order; null where none has to keep them. */
export function invoicesSince(nowIso: string, { orders }: Pick<Shop, 'orders'>): string | null {
  return orders.keepInvoicesMonths === null ? null : keptSince(nowIso, orders.keepInvoicesMonths);
}
