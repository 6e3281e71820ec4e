/** From what the buyer chose and saw to the order document. */
import type { Choice } from '#core/design/choice.ts';
import type { Design } from '#core/design/design.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { strandLengthsMm } from '#core/sizing/strandLengths.ts';
import {
  ADDRESS_PARTS,
  AS_LISTED,
  FORMAT,
  VERSION,
  type Address,
  type Delivery,
  type Instead,
  type OrderDocument,
} from './document.ts';

export type OrderParts = {
  readonly number: string;
  /** The buyer's clock, milliseconds since 1970. */
  readonly placedAtMs: number;
  readonly lang: OrderDocument['lang'];
  readonly piece: OrderDocument['piece'];
  /** `to-measure` where nothing is said. */
  readonly made?: OrderDocument['made'];
  /** As listed where nothing is said. */
  readonly instead?: Instead;
  readonly choice: Choice;
  /** The size as it was written. */
  readonly measureText: string;
  /** The piece that was shown, of the design with the parts chosen. */
  readonly candidate: Candidate;
  readonly design: Design;
  readonly currency: string;
  readonly choices?: OrderDocument['choices'];
  readonly buyer: OrderDocument['buyer'];
  readonly delivery: Delivery;
  /** Of the whole order, as shown; 0 for none. */
  readonly postageMinor: number;
};

/** Makes the document. Texts are trimmed and brought to Unicode's NFC, so that the same order is the same bytes. */
export function compose(parts: OrderParts): OrderDocument {
  const { choice, candidate, design, buyer } = parts;
  const strandsMm = strandLengthsMm(design, candidate);
  return {
    format: FORMAT,
    version: VERSION,
    number: parts.number,
    placedAt: instant(parts.placedAtMs),
    lang: parts.lang,
    piece: { id: parts.piece.id, revision: parts.piece.revision },
    made: parts.made ?? 'to-measure',
    instead: tidyInstead(parts.instead ?? AS_LISTED),
    measure: { of: choice.measure.of, text: tidy(parts.measureText), mm: choice.measure.mm },
    sit: choice.sit,
    hand: choice.hand,
    pick: choice.pick,
    quantity: choice.quantity,
    choices: parts.choices ?? {},
    buyer: { name: tidy(buyer.name), email: buyer.email.trim(), note: tidy(buyer.note) },
    delivery: tidyDelivery(parts.delivery),
    shown: {
      lengthMm: hundredths(candidate.finishedLengthMm),
      strandsMm: strandsMm.length > 1 ? strandsMm.map(hundredths) : [],
      insideGirthMm: hundredths(candidate.insideGirthMm),
      counts: candidate.counts,
      priceMinor: candidate.priceMinor,
      postageMinor: parts.postageMinor,
      currency: parts.currency,
    },
  };
}

function tidyDelivery(delivery: Delivery): Delivery {
  if (delivery.by !== 'post') return { by: delivery.by };
  const to = Object.fromEntries(ADDRESS_PARTS.map((part) => [part, tidy(delivery.to[part])]));
  return { by: 'post', to: to as Record<keyof Address, string> };
}

function tidyInstead({ clasp, pendant }: Instead): Instead {
  return {
    clasp: { id: clasp.id, name: tidy(clasp.name) },
    pendant: { id: pendant.id, name: tidy(pendant.name) },
  };
}

/** ISO 8601 in UTC, whole seconds. */
function instant(ms: number): string {
  return new Date(ms).toISOString().slice(0, 19) + 'Z';
}

/** As fine as sizes are compared. */
function hundredths(mm: number): number {
  return Math.round(mm * 100) / 100;
}

function tidy(text: string): string {
  return text.trim().replace(/\r\n?/g, '\n').normalize('NFC');
}
