/** The order form: what the buyer fills in, and what is wrong with it. */
import { EMAIL } from '#order/check.ts';
import { CAPS } from '#order/document.ts';
import type { FormProblem } from '#words/orderFacts.ts';

export type OrderForm = {
  readonly name: string;
  readonly email: string;
  readonly note: string;
  /** As typed. */
  readonly quantity: string;
  /** A field that people don't see. Robots fill it in. */
  readonly trap: string;
};

export const EMPTY_FORM: OrderForm = { name: '', email: '', note: '', quantity: '1', trap: '' };

export type FormProblems = Partial<Readonly<Record<'name' | 'email' | 'note' | 'quantity', FormProblem>>>;

/** Everything that is wrong, by field; empty where the form can go. */
export function checkForm(form: OrderForm): FormProblems {
  const problems = {
    name: nameProblem(form.name.trim()),
    email: emailProblem(form.email.trim()),
    note: form.note.trim().length > CAPS.note ? ({ code: 'note-long', most: CAPS.note } as const) : null,
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
  if (name === '') return { code: 'name-missing' };
  return name.length > CAPS.name ? { code: 'name-long', most: CAPS.name } : null;
}

function emailProblem(email: string): FormProblem | null {
  if (email === '') return { code: 'email-missing' };
  return email.length <= CAPS.email && EMAIL.test(email) ? null : { code: 'email-wrong' };
}
