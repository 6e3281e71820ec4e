/** A change's form, read. */
import { ADDRESS_PARTS, type Address, type Delivery } from '#order/document.ts';
import {
  LETTERS,
  ORDER_STATES,
  PAYMENT_KINDS,
  PAYMENT_WAYS,
  type ChangeProblem,
  type InvoiceKind,
  type Letter,
  type PaymentKind,
} from '#words/benchCodes.ts';
import { NOTE_CAP, type Change } from '../book/change.ts';
import { isDay } from '#words/day.ts';
import type { InvoiceContent } from '../book/invoiceContent.ts';
import { PARCEL_CAPS, type EnteredParcel } from '../book/parcels.ts';
import { readSum } from './readSum.ts';

/** What a form is read by. */
export type FormFacts = {
  /** The order's, ISO 4217. */
  readonly currency: string;
  /** By the maker's clock, ISO 8601. */
  readonly now: string;
  /** The invoice as it would be issued now, and the prefix of its number; null where the shop names no seller. */
  readonly invoice: () => { readonly prefix: string; readonly content: InvoiceContent } | null;
};

/** A form filled in as it should be; or by hand in a way that has to be named. `version`: the order's that she saw. */
export type ChangeForm =
  | {
      readonly version: number;
      readonly change: Change;
      /** The message to have ready after it; null for none. */
      readonly write: Letter | null;
    }
  | { readonly version: number; readonly problem: ChangeProblem };

type Read = Change | { readonly problem: ChangeProblem } | null;

/** Reads a form of the order's page; null for one that it doesn't send. */
export function readChange(form: URLSearchParams, facts: FormFacts): ChangeForm | null {
  const version = Number(form.get('version') ?? '');
  const read = changeOf(form, facts);
  if (read === null || !Number.isInteger(version) || version < 1) return null;
  if ('problem' in read) return { version, problem: read.problem };
  const write = LETTERS.find((one) => one === form.get('write')) ?? null;
  return { version, change: read, write };
}

function changeOf(form: URLSearchParams, facts: FormFacts): Read {
  const kind = form.get('kind');
  const paymentKind = PAYMENT_KINDS.find((one) => one === kind);
  if (paymentKind !== undefined) return paymentOf(paymentKind, form, facts);
  // `step`: the one button for what usually comes next.
  if (kind === 'state' || kind === 'step') return stateOf(form, facts);
  if (kind === 'invoice' || kind === 'credit-note') return invoiceOf(kind, form, facts);
  if (kind === 'looked-over') return { kind };
  if (kind === 'address') {
    const delivery = deliveryIn(form);
    return delivery === null ? null : { kind, delivery };
  }
  if (kind === 'parcel') {
    const parcel = parcelOf(form, facts);
    return parcel === null || 'problem' in parcel ? parcel : { kind, parcel };
  }
  if (kind === 'strike') {
    const id = Number(form.get('id') ?? '');
    const reason = noteIn(form, 'reason');
    return !Number.isInteger(id) || id < 1 || reason === null ? null : { kind, id, reason };
  }
  if (kind === 'due') {
    const on = form.get('on') ?? '';
    if (on !== '' && !isDay(on)) return null;
    return { kind, on: on === '' ? null : on };
  }
  if (kind === 'note') {
    const text = noteIn(form, 'text');
    return text === null || text === '' ? null : { kind, text };
  }
  const message = LETTERS.find((one) => one === form.get('message'));
  return kind === 'message' && message !== undefined ? { kind, message } : null;
}

function stateOf(form: URLSearchParams, facts: FormFacts): Read {
  const state = ORDER_STATES.find((one) => one === form.get('state'));
  const reason = noteIn(form, 'reason');
  if (state === undefined || reason === null) return null;
  const change = { kind: 'state' as const, state, ...(reason !== '' && { reason }) };
  // She need not say how it went.
  const told = ['carrier', 'tracking'].some((name) => lineIn(form, name) !== '');
  if (state !== 'sent' || !told) return change;
  const parcel = parcelOf(form, facts);
  return parcel === null || 'problem' in parcel ? parcel : { ...change, parcel };
}

function parcelOf(
  form: URLSearchParams,
  facts: FormFacts,
): EnteredParcel | { problem: ChangeProblem } | null {
  const [carrier, tracking] = [lineIn(form, 'carrier'), lineIn(form, 'tracking')];
  if (carrier.length > PARCEL_CAPS.carrier || tracking.length > PARCEL_CAPS.tracking) return null;
  if (carrier === '' && tracking === '') return { problem: { code: 'parcel-empty' } };
  const day = dayIn(form, 'sent-on', facts);
  return typeof day === 'string' ? { carrier, tracking, sentOn: day } : day;
}

function paymentOf(kind: PaymentKind, form: URLSearchParams, facts: FormFacts): Read {
  const { currency } = facts;
  const way = PAYMENT_WAYS.find((one) => one === form.get('way'));
  if (way === undefined) return null;
  const sum = readSum(form.get('sum') ?? '', currency);
  if (!sum.ok) return sum;
  const day = dayIn(form, 'day', facts);
  if (typeof day !== 'string') return day;
  const entered = { kind, minor: sum.minor, currency, day, way };
  return { kind: 'payment', entered, really: form.get('really') === 'yes' };
}

/** Her own words, '' for none; null for more than a note holds. */
function noteIn(form: URLSearchParams, name: string): string | null {
  const text = (form.get(name) ?? '').trim().replace(/\r\n?/g, '\n');
  return text.length > NOTE_CAP ? null : text;
}

/** Where it goes, not yet checked; null where the form doesn't say by which way. */
function deliveryIn(form: URLSearchParams): Delivery | null {
  const by = form.get('by');
  if (by === 'collection') return { by };
  if (by !== 'post') return null;
  const parts = ADDRESS_PARTS.map((part) => [part, lineIn(form, `to-${part}`).normalize('NFC')] as const);
  return { by, to: Object.fromEntries(parts) as Record<keyof Address, string> };
}

/** What an invoice says comes from order and shop, never from a form. */
function invoiceOf(kind: InvoiceKind, form: URLSearchParams, facts: FormFacts): Read {
  const made = facts.invoice();
  if (made === null) return { problem: { code: 'no-seller' } };
  if (kind === 'invoice') return { kind, ...made };
  const reason = noteIn(form, 'reason');
  return reason === null ? null : { kind, prefix: made.prefix, corrects: lineIn(form, 'corrects'), reason };
}

/** A day may be one ahead of the bench's clock: her tablet may be in another zone than the machine that it runs on. */
const DAY_MS = 24 * 60 * 60 * 1000;

/** A day on which something has happened. */
function dayIn(form: URLSearchParams, name: string, { now }: FormFacts): string | { problem: ChangeProblem } {
  const day = lineIn(form, name);
  if (!isDay(day)) return { problem: { code: 'day-unreadable', text: day } };
  return Date.parse(day) > Date.parse(now) + DAY_MS ? { problem: { code: 'day-ahead', text: day } } : day;
}

/** One line of text, without what can't be seen. */
function lineIn(form: URLSearchParams, name: string): string {
  return (form.get(name) ?? '').replace(/[\p{Cc}\p{Cs}\s]+/gu, ' ').trim();
}
