/** The order form: what the buyer fills in, and what is wrong with it. */
import { EMAIL, NAME } from '#order/fields.ts';
import { ADDRESS_PARTS, CAPS, type Address } from '#order/document.ts';
import type { FormProblem } from '#words/orderFacts.ts';

export type OrderForm = {
  readonly name: string;
  readonly email: string;
  readonly note: string;
  /** As typed. */
  readonly quantity: string;
  /** How it is to reach her, where the shop offers both. */
  readonly way: 'post' | 'collection';
  /** Where it goes. A name only where it isn't the buyer's own; the country '' until she chooses another than the shop's. */
  readonly address: Address;
  /** A field that people don't see. Robots fill it in. */
  readonly trap: string;
};

export const EMPTY_FORM: OrderForm = {
  ...{ name: '', email: '', note: '', quantity: '1', trap: '', way: 'post' },
  address: { name: '', line1: '', line2: '', town: '', region: '', postcode: '', country: '' },
};

/** Fields by the names they have in the form. */
export type FormField = 'name' | 'email' | 'quantity' | `to-${keyof Address}` | 'note';

export type FormProblems = Partial<Readonly<Record<FormField, FormProblem>>>;

/**
 * The form as it goes into an order: trimmed, composed (Unicode NFC), without
 * the control characters that come along with text pasted from elsewhere.
 */
export function tidyForm(form: OrderForm): OrderForm {
  return {
    ...form,
    name: tidyLine(form.name),
    email: form.email.trim(),
    note: tidy(form.note.replace(/\r\n?|[\v\f\u0085\u2028\u2029]/g, '\n')),
    address: Object.fromEntries(ADDRESS_PARTS.map((part) => [part, tidyLine(form.address[part])])) as Record<
      keyof Address,
      string
    >,
  };
}

const tidyLine = (text: string): string => tidy(text.replace(/\s/g, ' '));

function tidy(text: string): string {
  return text
    .replace(/(?![\n\t])[\p{Cc}\p{Cs}]/gu, '')
    .normalize('NFC')
    .trim();
}

/** Everything that is wrong, by field; empty where the form can go. */
export function checkForm(form: OrderForm): FormProblems {
  const { name, email, note } = tidyForm(form);
  const problems = {
    name: nameProblem(name),
    email: emailProblem(email),
    note: note.length > CAPS.note ? ({ code: 'note-long', most: CAPS.note } as const) : null,
    quantity: quantityOf(form) === null ? ({ code: 'quantity', most: CAPS.quantity } as const) : null,
  };
  return Object.fromEntries(Object.entries(problems).filter(([, problem]) => problem !== null));
}

/** The quantity, null where it is none. */
export function quantityOf(form: OrderForm): number | null {
  if (!/^\d{1,3}$/.test(form.quantity.trim())) return null;
  const quantity = Number(form.quantity);
  return quantity >= 1 && quantity <= CAPS.quantity ? quantity : null;
}

function nameProblem(name: string): FormProblem | null {
  if (name.length > CAPS.name) return { code: 'name-long', most: CAPS.name };
  return NAME.test(name) ? null : { code: 'name-missing' };
}

function emailProblem(email: string): FormProblem | null {
  if (email === '') return { code: 'email-missing' };
  return email.length <= CAPS.email && EMAIL.test(email) ? null : { code: 'email-wrong' };
}
