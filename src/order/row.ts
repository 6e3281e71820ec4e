/** A document's values in a fixed order, without their names: the row that the compact form's version 1 carries. */
import { HANDS, MEASURES, PICKS, SITS } from '#core/design/choice.ts';
import { LANGS } from '#words/lang.ts';
import { FORMAT, VERSION, type OrderDocument } from './document.ts';

/** The document as a row. The order of values is version 1's for ever; another order is another version. */
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
    ...Object.entries(order.choices).flat(),
  ];
}

/** The row as a document, unchecked: what is wrong in the row is wrong in the same place afterwards. */
export function fromRow(row: unknown): unknown {
  if (!Array.isArray(row) || row.length < 20) return null;
  const [number, placed, lang, id, revision, of, text, mm, sit, hand, pick, quantity] = row as unknown[];
  const [lengthMm, insideGirthMm, counts, priceMinor, currency, name, email, note, ...rest] = row.slice(12);
  return {
    format: FORMAT,
    version: VERSION,
    number: String(number).replace(/(?=(...)+$)\B/g, '-'),
    placedAt: instant(placed),
    lang: entry(LANGS, lang),
    piece: { id, revision },
    measure: { of: entry(MEASURES, of), text, mm },
    sit: entry(SITS, sit),
    hand: entry(HANDS, hand),
    pick: entry(PICKS, pick),
    quantity,
    choices: pairs(rest),
    buyer: { name, email, note },
    shown: { lengthMm, insideGirthMm, counts, priceMinor, currency },
  };
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
