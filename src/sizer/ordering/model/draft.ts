/**
 * A form half filled in, kept on this device until it is ordered or cleared.
 * Who orders and where to is the same for any piece; how many and the note
 * belong to the piece that they were written for.
 */
import { ADDRESS_CAPS, ADDRESS_PARTS, CAPS, type Address } from '#order/document.ts';
import type { Store } from '../../model/ports.ts';
import { DRAFT_KEY, draftEntry, type Ordered } from './draftText.ts';
import { EMPTY_FORM, type OrderForm } from './form.ts';

/** Room for what is over a cap: the form says so, and nothing that was typed is lost. Characters. */
const SPARE = 1000;

/** The kept form as it goes for a piece; empty where nothing sound is kept. */
export function readDraft(store: Store, pieceId: string): OrderForm {
  const entry = draftEntry(store);
  const form = recordOf(entry['form']);
  const address = recordOf(form['address']);
  const own = entry['piece'] === pieceId;
  return {
    ...EMPTY_FORM,
    name: textOf(form['name'], CAPS.name),
    email: textOf(form['email'], CAPS.email),
    ...(form['way'] === 'collection' && { way: 'collection' }),
    ...(own && { note: textOf(form['note'], CAPS.note) }),
    ...(own && typeof form['quantity'] === 'string' && { quantity: textOf(form['quantity'], 0) }),
    address: Object.fromEntries(
      ADDRESS_PARTS.map((part) => [part, textOf(address[part], ADDRESS_CAPS[part])]),
    ) as Record<keyof Address, string>,
  };
}

/** Keeps a form as it stands; the field for robots isn't hers. */
export function keepDraft(store: Store, pieceId: string, ordered: Ordered, form: OrderForm): void {
  const { trap: _, ...written } = form;
  store.write(DRAFT_KEY, JSON.stringify({ piece: pieceId, ordered, form: written }));
}

/** Nothing of it stays. */
export const dropDraft = (store: Store): void => store.erase(DRAFT_KEY);

/** True where nothing was written into it. */
export const isUntouched = (form: OrderForm): boolean => JSON.stringify(form) === JSON.stringify(EMPTY_FORM);

const recordOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

const textOf = (value: unknown, most: number): string =>
  typeof value === 'string' && value.length <= most + SPARE ? value : '';
