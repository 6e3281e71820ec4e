/** From the form to the order document, and from the document to a mail and a file. */
import { parseLength } from '#core/units/length.ts';
import type { ShownUnit } from '#core/units/unit.ts';
import { compose } from '#order/compose.ts';
import { EITHER_HAND, type ChosenPart, type OrderDocument } from '#order/document.ts';
import { mailBody, MOST_MAILTO } from '#order/mail.ts';
import { mailtoLink } from '#order/mailtoLink.ts';
import { makeNumber } from '#order/number.ts';
import { formatFor } from '#words/format.ts';
import type { OrderWords } from '#words/words.ts';
import type { OrderFacts } from '#words/orderFacts.ts';
import { deliveryOf } from './delivery.ts';
import { quantityOf, tidyForm, type OrderForm } from './form.ts';
import type { OrderItem } from './item.ts';

/** An order is dated from 2000 on; a device whose clock has stopped says 1970, and its order must go all the same. */
const EARLIEST_MS = Date.UTC(2000);

/** The order of a checked form. `randomByte` gives whole numbers from 0 to 255 that nobody can guess. */
export function writeOrder(
  item: OrderItem,
  form: OrderForm,
  nowMs: number,
  randomByte: () => number,
): OrderDocument {
  return composeItem(item, form, Math.max(nowMs, EARLIEST_MS), makeNumber(randomByte));
}

/** The order as the form stands, without number or time and not yet checked: for its summary. */
export function draftOrder(item: OrderItem, form: OrderForm): OrderFacts {
  return composeItem(item, form, 0, '');
}

function composeItem(item: OrderItem, form: OrderForm, nowMs: number, number: string): OrderDocument {
  const { piece, parts, made, lang, choice, eitherHand, candidate } = item;
  const { name, email, note } = tidyForm(form);
  return compose({
    number,
    placedAtMs: nowMs,
    lang,
    piece: { id: piece.id, revision: piece.revision },
    made,
    instead: { clasp: partOf(piece, parts.clasp), pendant: partOf(piece, parts.pendant) },
    choice: { ...choice, quantity: quantityOf(form) ?? 1 },
    measureText: made === 'ready' ? '' : textWithUnit(item.text, item.unit),
    candidate,
    design: piece.design,
    choices: eitherHand ? EITHER_HAND : {},
    currency: piece.rules.currency,
    buyer: { name, email, note },
    ...deliveryOf(item, form),
  });
}

/** A part chosen instead of the listed one, under the name that she read. */
const partOf = ({ design }: OrderItem['piece'], id: string): ChosenPart => ({
  id,
  name: design.components[id]?.name ?? '',
});

/** "6½" in a field of inches is "6½ in" to anyone who reads it elsewhere. */
export function textWithUnit(text: string, unit: ShownUnit): string {
  const inches = parseLength(text, 'in');
  const centimetres = parseLength(text, 'cm');
  const saysUnit = inches.ok && centimetres.ok && inches.mm === centimetres.mm;
  return saysUnit ? text.trim() : `${text.trim()} ${unit}`;
}

/** Unit that an order's measure was written in; millimetres are shown as centimetres. Nothing written: the language's. */
export function unitOfOrder(order: OrderDocument): ShownUnit {
  if (order.measure.text === '') return order.lang === 'de' ? 'cm' : 'in';
  const read = parseLength(order.measure.text, 'cm');
  return read.ok && read.unit === 'in' ? 'in' : 'cm';
}

export type Mail = {
  readonly subject: string;
  readonly body: string;
  readonly link: string;
  /** The link may be cut off on its way into a mail program, so copying comes first. */
  readonly long: boolean;
};

/** What was ordered, a line each. */
export function orderLines(order: OrderDocument, pieceName: string, words: OrderWords): string[] {
  const format = formatFor(order.lang, unitOfOrder(order), order.shown.currency);
  return words.rows(format, order, pieceName).map(({ label, value }) => `${label}: ${value}`);
}

/** The order as a mail to the shop: readable, with the compact form at its foot. */
export function writeMail(
  order: OrderDocument,
  pieceName: string,
  shop: { readonly name: string; readonly email: string },
  words: OrderWords,
): Mail {
  const subject = words.mailSubject(order.number, pieceName);
  const body = mailBody(
    {
      subject,
      greeting: words.mailGreeting(shop.name),
      lines: orderLines(order, pieceName, words),
      closing: words.mailClosing[order.made],
      foot: words.mailFoot,
    },
    order,
  );
  const link = mailtoLink(shop.email, subject, body);
  return { subject, body, link, long: link.length > MOST_MAILTO };
}
