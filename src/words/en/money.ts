/** Money and states of an order, as the maker reads them at her bench. */
import type {
  ChangeProblem,
  Letter,
  MoneyStanding,
  OrderState,
  PaymentKind,
  PaymentWay,
} from '../benchCodes.ts';
import { formatDate, formatMoney, type Format } from '../format.ts';
import { sentenceOf, type Sentences } from '../sentence.ts';

const WAY: Readonly<Record<PaymentWay, string>> = {
  transfer: 'bank transfer',
  card: 'card',
  cash: 'cash',
  other: 'another way',
};
const BY: Readonly<Record<PaymentWay, string>> = {
  transfer: 'by bank transfer',
  card: 'by card',
  cash: 'in cash',
  other: 'in another way',
};
const KIND: Readonly<Record<PaymentKind, string>> = { paid: 'Paid', refunded: 'Paid back' };
const STANDING: Readonly<Record<MoneyStanding, string>> = {
  unpaid: 'Nothing paid yet',
  'part-paid': 'Part paid',
  settled: 'Nothing open',
  'to-pay-back': 'To pay back',
};

const problems: Sentences<ChangeProblem> = {
  'sum-missing': () => 'Write the sum.',
  'sum-nothing': () => 'That comes to nothing. Write the sum that went.',
  'sum-too-large': () => 'That is more than the book can hold for one order. Check the sum.',
  'sum-unreadable': ({ text }) => `“${text}” can’t be read as a sum. Write it like 64.50.`,
  'sum-ambiguous': ({ text }) =>
    `“${text}” can be read in two ways. Write ${text.replace(/\D/g, '')} for the thousands, or two figures after the point.`,
  'sum-too-fine': ({ text, digits }) =>
    digits === 0
      ? `“${text}” has figures after the point, and this currency has none.`
      : `“${text}” has more than ${digits} figures after the point.`,
  'sum-other-currency': ({ text, currency }) =>
    `“${text}” is in another currency. This order is reckoned in ${currency}.`,
  'day-unreadable': ({ text }) => `“${text}” is no day of the calendar. Write it like 2026-12-20.`,
  'day-ahead': ({ text }, f) => `${formatDate(text, f.lang)} is still to come. Write the day the money went.`,
  'more-than-open': ({ openMinor, currency }, f) =>
    openMinor === 0
      ? 'Nothing is open on this order. If this came in all the same, say so below.'
      : `Only ${formatMoney(openMinor, currency, f.lang)} is open on this order. If more came in all the same, say so below.`,
  'more-than-paid': ({ hereMinor, currency }, f) =>
    hereMinor === 0
      ? 'Nothing was paid that could be paid back.'
      : `No more than ${formatMoney(hereMinor, currency, f.lang)} can be paid back: that is what came in and is still here.`,
  'refund-rests-on-it': () =>
    'Money was paid back out of this payment. Strike out what was paid back first, if that was a mistake too.',
  'reason-missing': () => 'Write why. It stands in the history, where you will look for it one day.',
  'address-incomplete': () =>
    'Write for whom, the street or house, and the country; the rest as far as the place has it.',
  'parcel-empty': () => 'Write who carries it, or the tracking number.',
  'invoice-stands': ({ invoice }) =>
    `Invoice ${invoice} stands for this order. Take it back first, then issue another.`,
  'not-agreed': () => 'Agree to the order first: until then its sum can still change.',
  'no-seller': () => 'Your shop doesn’t say yet who issues invoices. Add it under Shop and rules, Invoices.',
  'buyer-erased': () => 'The buyer’s data was erased, so there is nobody to make an invoice out to.',
  'changed-meanwhile': () =>
    'This order was changed in another window or at another bench. Nothing was overwritten, and what you typed is still here: look at the order as it is now, then do it again.',
};

const NEXT: Readonly<Record<OrderState, string>> = {
  new: 'Take it as new',
  asked: 'Ask the buyer',
  agreed: 'Agree to it',
  strung: 'It is strung',
  sent: 'It is sent',
  cancelled: 'Cancel it',
};
const LETTER: Readonly<Record<Letter, string>> = {
  question: 'with a question',
  address: 'that asks where it shall go',
  agreed: 'that it is agreed',
  ready: 'that it is ready',
  sent: 'that it is on its way',
};

export const money = {
  problem: (one: ChangeProblem, f: Format): string => sentenceOf(problems, one, f),

  next: {
    title: 'What comes next',
    step: (state: OrderState): string => NEXT[state],
    letter: (letter: Letter): string => `Then the message ${LETTER[letter]} lies ready.`,
    doubts: {
      differs: 'The order differs from what the buyer saw, so a question comes first.',
      'no-address': 'The order doesn’t say where it shall go, so that is asked first.',
    },
    back: (state: string): string => `Back to “${state}”`,
    parcel: 'How it goes',
    carrier: 'Carrier',
    tracking: 'Tracking number',
    sentOn: 'Sent on',
    parcelHint: 'Both can be left out. With them, the message says where the parcel is to be followed.',
    parcelLater: 'Write down a parcel',
    parcelButton: 'Write it down',
    parcels: 'Parcels',
    parcelLine: (day: string, carrier: string, tracking: string): string =>
      [day, carrier, tracking].filter((part) => part !== '').join(', '),
    follow: 'Follow it',
    finished: 'Nothing more to do.',
    stillToPay: (sum: string): string => `It is sent; ${sum} is still to be paid.`,
    stillToPayBack: (sum: string): string => `${sum} is still to be paid back.`,
    cancelled: 'This order is cancelled.',
    else: 'Something else',
    reason: 'Why',
    reasonHint: 'Asked for where the order goes back a step. It stands in the history.',
    reasonGiven: (text: string): string => (text === '' ? 'The reason, erased' : `Because: ${text}`),
    written: (letter: string): string => `The message is ready: ${letter}`,
  },

  title: 'Money',
  ways: WAY,
  standing: STANDING,
  total: 'Comes to',
  totalBasis: {
    agreed: 'as agreed',
    now: 'by today’s figures, until you agree to it',
    then: 'by the piece as it stood then',
    shown: 'by what the buyer saw, since it can’t be reckoned now',
  },
  paid: 'Paid',
  refunded: 'Paid back',
  open: 'Still to pay',
  toPayBack: 'To pay back',
  nothingDue: 'nothing, since it is cancelled',
  notKept: 'When this order was sent, the book didn’t keep money yet.',
  list: 'What came in and went back',
  line: (kind: PaymentKind, way: PaymentWay): string => `${KIND[kind]} ${BY[way]}`,
  otherCurrency: 'in another currency, so not counted',
  struck: 'struck out',
  strike: 'Entered by mistake',
  strikeButton: 'Strike it out',
  record: 'Write down a payment',
  recordMore: 'Write down another payment',
  recordRefund: 'Write down money paid back',
  sum: 'Sum',
  day: 'Day',
  way: 'By',
  recordButton: 'Write down as paid',
  refundButton: 'Write down as paid back',
  really: 'It really was more',

  months: {
    month: 'Money of',
    download: 'Download as CSV',
    none: 'Payments and invoices by month appear here once there are some.',
  },

  book: {
    owing: 'Money open',
    open: 'To pay',
    nothing: 'nothing',
    back: (sum: string): string => `${sum} to pay back`,
    card: 'To string',
  },

  invoices: {
    title: 'Invoice or receipt',
    names: { invoice: 'Invoice', 'credit-note': 'Credit note' },
    line: (name: string, number: string, day: string): string => `${name} ${number}, ${day}`,
    takesBack: (number: string): string => `takes back ${number}`,
    issue: 'Issue the invoice',
    hint: 'Once issued it stays as it is, with a number of its own; what has come in by then stands on it. Paid in full, it is a receipt too.',
    rules:
      'What has to stand on one, and how long it is kept, the tax rules where you live decide; your details come from Shop and rules, Invoices.',
    differs: (was: string, now: string): string =>
      `The invoice says ${was}, the order comes to ${now} by now. Take it back and issue another.`,
    takeBack: 'Take it back',
    takeBackHint: 'A credit note with its own number takes all of it back; then another can be issued.',
    takeBackButton: 'Issue the credit note',
    missing: (numbers: string): string =>
      `Invoices that were issued and aren’t in this book: ${numbers}. They were issued after the backup that was put back; their numbers won’t be given out again.`,
    eraseHint: 'Its invoices lose name and address with it.',
    eraseKept: (months: number): string =>
      `Its invoices keep name and address until they are ${months % 12 === 0 ? `${months / 12} years` : `${months} months`} old, as your shop’s “keep-invoices” says; then Safe-keeping lists them.`,
  },

  events: {
    invoice: (number: string): string => `Issued ${number}`,
    payment: (kind: PaymentKind, sum: string, way: PaymentWay, day: string): string =>
      `${KIND[kind]}: ${sum} ${BY[way]} on ${day}`,
    address: 'Wrote down where it goes',
    parcel: (day: string, carrier: string): string =>
      carrier === '' ? `Parcel sent on ${day}` : `Parcel sent on ${day} with ${carrier}`,
    struck: (sum: string): string => `Struck out, entered by mistake: ${sum}`,
  },
};
