/** A document's values in a fixed order, without their names: the row that the compact form carries. */
import { HANDS, INSTEAD_PARTS, MEASURES, PICKS, SITS } from '#core/design/choice.ts';
import { LANGS } from '#words/lang.ts';
import {
  ADDRESS_PARTS,
  DELIVERIES,
  FORMAT,
  MADE,
  type Delivery,
  type Instead,
  type OrderDocument,
} from './document.ts';

/** How many values come before what differs between the versions. */
const COMMON = 20;

/** The document as a row. The order of values is version 4's for ever; another order is another version. */
export function toRow(order: OrderDocument): unknown[] {
  const { piece, measure, buyer, shown } = order;
  return [
    order.number.replaceAll('-', ''),
    Date.parse(order.placedAt) / 1000,
    LANGS.indexOf(order.lang),
    piece.id,
    piece.revision,
    MEASURES.indexOf(measure.of),
    measure.text,
    measure.mm,
    SITS.indexOf(order.sit),
    HANDS.indexOf(order.hand),
    PICKS.indexOf(order.pick),
    order.quantity,
    shown.lengthMm,
    shown.insideGirthMm,
    shown.counts,
    shown.priceMinor,
    shown.currency,
    buyer.name,
    buyer.email,
    buyer.note,
    shown.postageMinor,
    deliveryValue(order.delivery),
    MADE.indexOf(order.made),
    insteadValue(order.instead),
    shown.strandsMm,
    ...Object.entries(order.choices).flat(),
  ];
}

/**
 * A row of a version as that version's document, unchecked: what is wrong in
 * the row is wrong in the same place afterwards.
 */
export function fromRow(version: number, row: unknown): unknown {
  if (!Array.isArray(row) || row.length < COMMON) return null;
  const [number, placed, lang, id, revision, of, text, mm, sit, hand, pick, quantity] = row as unknown[];
  const [lengthMm, insideGirthMm, counts, priceMinor, currency, name, email, note] = row.slice(
    12,
  ) as unknown[];
  const later = row.slice(COMMON) as unknown[];
  const [postageMinor, delivery] = version === 1 ? [] : later.splice(0, 2);
  const [made, instead] = version < 3 ? [] : later.splice(0, 2);
  const [strandsMm] = version < 4 ? [] : later.splice(0, 1);
  const strands = version < 4 ? {} : { strandsMm };
  const shown = { lengthMm, ...strands, insideGirthMm, counts, priceMinor };
  return {
    format: FORMAT,
    version,
    number: String(number).replace(/(?=(...)+$)\B/g, '-'),
    placedAt: instant(placed),
    lang: entry(LANGS, lang),
    piece: { id, revision },
    ...(version < 3 ? {} : { made: entry(MADE, made), instead: insteadOf(instead) }),
    measure: { of: entry(MEASURES, of), text, mm },
    sit: entry(SITS, sit),
    hand: entry(HANDS, hand),
    pick: entry(PICKS, pick),
    quantity,
    choices: pairs(later),
    buyer: { name, email, note },
    ...(version === 1
      ? { shown: { ...shown, currency } }
      : { delivery: deliveryOf(delivery), shown: { ...shown, postageMinor, currency } }),
  };
}

/** An address as the list of its parts; any other way as its place in the list of ways. */
function deliveryValue(delivery: Delivery): unknown {
  return delivery.by === 'post'
    ? ADDRESS_PARTS.map((part) => delivery.to[part])
    : DELIVERIES.indexOf(delivery.by);
}

function deliveryOf(value: unknown): unknown {
  if (!Array.isArray(value)) return { by: entry(DELIVERIES, value) };
  if (value.length !== ADDRESS_PARTS.length) return null;
  return {
    by: 'post',
    to: Object.fromEntries(ADDRESS_PARTS.map((part, at) => [part, value[at] as unknown])),
  };
}

/** Ids and names one after the other; 0 for the parts that the piece is listed with. */
function insteadValue(instead: Instead): unknown {
  const values = INSTEAD_PARTS.flatMap((part) => [instead[part].id, instead[part].name]);
  return values.every((value) => value === '') ? 0 : values;
}

function insteadOf(value: unknown): unknown {
  const values: readonly unknown[] =
    value === 0 ? INSTEAD_PARTS.flatMap(() => ['', '']) : Array.isArray(value) ? value : [];
  if (values.length !== 2 * INSTEAD_PARTS.length) return null;
  return Object.fromEntries(
    INSTEAD_PARTS.map((part, at) => [part, { id: values[2 * at], name: values[2 * at + 1] }]),
  );
}

function entry<T>(values: readonly T[], index: unknown): T | null {
  return (typeof index === 'number' ? values[index] : undefined) ?? null;
}

function instant(seconds: unknown): string | null {
  if (!Number.isInteger(seconds) || Math.abs(seconds as number) > 1e11) return null;
  return new Date((seconds as number) * 1000).toISOString().slice(0, 19) + 'Z';
}

function pairs(flat: readonly unknown[]): unknown {
  if (flat.length % 2 !== 0) return null;
  const entries: [string, unknown][] = [];
  for (let at = 0; at < flat.length; at += 2) entries.push([String(flat[at]), flat[at + 1]]);
  return Object.fromEntries(entries);
}
