/** What an invoice and a credit note say to the buyer. */
import type { InvoiceKind, PaymentKind, PaymentWay } from '../benchCodes.ts';

const BY: Readonly<Record<PaymentWay, string>> = {
  transfer: 'by bank transfer',
  card: 'by card',
  cash: 'in cash',
  other: 'in another way',
};
const MOVED: Readonly<Record<PaymentKind, string>> = { paid: 'Paid', refunded: 'Paid back' };

export const invoice = {
  /** `paid`: nothing was open when it was issued, so that it serves as a receipt too. */
  title: (kind: InvoiceKind, number: string, paid: boolean): string =>
    kind === 'credit-note'
      ? `Credit note ${number}`
      : paid
        ? `Invoice and receipt ${number}`
        : `Invoice ${number}`,
  facts: {
    number: 'Number',
    issued: 'Issued on',
    order: 'Order',
    ordered: 'Ordered on',
    taxNumber: 'Tax number',
  },
  seller: 'From',
  buyer: 'For',
  erased: 'Name and address have been erased.',
  takesBack: (number: string): string => `This takes back invoice ${number}, all of it.`,
  takenBack: (number: string): string => `Taken back by credit note ${number}.`,
  columns: { what: 'What', quantity: 'How many', each: 'Each', sum: 'Sum' },
  item: (piece: string, size: string): string => `${piece}, for ${size}`,
  postage: 'Postage',
  total: 'Together',
  included: (rate: string): string => `Tax within it, ${rate} %`,
  net: 'Without tax',
  notRegistered: 'The seller isn’t registered for sales tax; none is charged.',
  moved: (kind: PaymentKind, way: PaymentWay, day: string): string => `${MOVED[kind]} ${BY[way]} on ${day}`,
  open: 'Still to pay',
  toPayBack: 'To be paid back to you',
};
