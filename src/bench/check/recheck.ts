/** An order computed again from the maker's own copy of the piece, beside what the buyer saw. */
import type { Choice } from '#core/design/choice.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { usual } from '#core/sizing/usual.ts';
import { parseLength } from '#core/units/length.ts';
import type { OrderDocument } from '#order/document.ts';
import type { Counts, Design } from '#core/design/design.ts';
import { INCH_MM, LENGTH_UNITS } from '#core/units/unit.ts';
import { checkDelivery } from './delivery.ts';
import { handDifference } from './hand.ts';
import type { OrderWay } from '#words/benchCodes.ts';
import type { Difference } from '#words/difference.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { asRestrung, isRestring } from './restring.ts';
import { notOffered, orderedCopy } from './ordered.ts';
import { describedOf, sizingOf } from './sizedBefore.ts';
import { reaches, UNCOUNTED, withStock, type There } from './there.ts';

export type Recheck = {
  /** The piece as ordered, with what was chosen instead; as listed where that isn't offered, null where there is none. */
  readonly copy: Snapshot | null;
  /** null where the catalogue has no such piece, and where nothing is sized: it goes as it lies, or a part isn't offered. */
  readonly sizing: Sizing | null;
  /** What would be strung; null where nothing can be. */
  readonly candidate: Candidate | null;
  /** What the buyer was shown, made of this copy of the piece; null where its counts don't fit this design. */
  readonly asShown: Candidate | null;
  /** Of the whole order, by these rules; as shown where they can't say. */
  readonly postageMinor: number;
  readonly differences: readonly Difference[];
};

/** Differences in length below this are rounding, not news. */
const SAME_MM = 0.01;
/** The size as written may be rounded to the eighth of an inch, half of it either way. */
const WRITTEN_MM = INCH_MM / 16;
/** Clocks are set by hand in some places; a day apart is worth saying. */
const CLOCK_MS = 24 * 60 * 60 * 1000;

/**
 * Computes an order again.
 * @param plain the piece and the rules to go by; null where there is none
 * @param receivedAt ISO 8601, by the maker's clock
 * @param way how it came in: what she entered herself may be a piece to restring
 * @param there what this order may take of each component; null: what the copy itself says
 */
export function recheck(
  document: OrderDocument,
  plain: Snapshot | null,
  receivedAt: string,
  way: OrderWay = 'desk',
  there: There | null = null,
): Recheck {
  const aside = [...writtenDifference(document), ...clockDifference(document, receivedAt)];
  if (plain === null) {
    const piece = document.piece.id;
    const differences: Difference[] = [{ code: 'no-such-piece', piece }, ...aside];
    const { postageMinor } = document.shown;
    return { copy: null, sizing: null, candidate: null, asShown: null, postageMinor, differences };
  }
  const ordered = orderedCopy(plain, document);
  const wanted = ordered ?? plain;
  const within = (limits: There | null): Snapshot => {
    const limited = limits === null ? wanted : withStock(wanted, limits);
    return isRestring(document, way) ? asRestrung(limited) : limited;
  };
  const copy = within(there === null ? null : UNCOUNTED);
  const freely = ordered === null ? null : madeOf(copy, document);
  const made = freely === null || there === null ? freely : madeWithin(freely, within(there), document);
  const { sizing, candidate } = made ?? { sizing: null, candidate: null };
  const asShown = fitsDesign(copy.design, document.shown.counts)
    ? describedOf(copy, document.shown.counts)
    : null;
  const delivery = checkDelivery(document, copy.post, candidate);
  const differences = [
    ...revisionDifference(document, copy),
    ...notOffered(plain, document),
    ...(document.made === 'ready' && document.quantity > 1 ? [ONE_READY(document.quantity)] : []),
    ...(sizing === null ? [] : [...sizingDifference(sizing), ...handDifference(document, sizing)]),
    ...(candidate === null ? [] : figureDifferences(document, candidate, copy.rules.currency)),
    ...delivery.differences,
    ...aside,
  ];
  return { copy: wanted, sizing, candidate, asShown, postageMinor: delivery.postageMinor, differences };
}

const ONE_READY = (quantity: number): Difference => ({ code: 'ready-several', quantity });

/** What lies finished lies at its usual counts, and nothing is sized. */
function madeOf(copy: Snapshot, document: OrderDocument): Pick<Recheck, 'sizing' | 'candidate'> {
  if (document.made === 'ready') return { sizing: null, candidate: describedOf(copy, usual(copy.design)) };
  const sizing = sizingOf(copy, choiceOf(document));
  return { sizing, candidate: candidateOf(sizing) };
}

/**
 * What is strung of what there is: what would be strung if there were enough,
 * where there is; else the nearest that there is enough for, as the shop itself
 * sizes. Where nothing fits, it is what is wanted, with what stands in the way.
 */
function madeWithin(
  freely: Pick<Recheck, 'sizing' | 'candidate'>,
  limited: Snapshot,
  document: OrderDocument,
): Pick<Recheck, 'sizing' | 'candidate'> {
  const { candidate } = freely;
  if (candidate === null || document.made === 'ready') return freely;
  if (reaches(limited.design, candidate, document.quantity)) return freely;
  const made = madeOf(limited, document);
  const fits = made.sizing?.status === 'fits' || made.sizing?.status === 'near';
  return fits ? made : { sizing: made.sizing, candidate };
}

/** The choice in the core's own words. */
export function choiceOf(document: OrderDocument): Choice {
  const { measure, sit, hand, pick, quantity } = document;
  return { measure: { of: measure.of, mm: measure.mm }, sit, hand, pick, quantity };
}

function candidateOf(sizing: Sizing): Candidate | null {
  if (sizing.status === 'refused') return null;
  return sizing.status === 'outside' ? sizing.nearest : sizing.chosen;
}

/** Counts come from outside: only those that this design allows are laid out. */
export function fitsDesign(design: Design, counts: Counts): boolean {
  return (
    counts.length === design.strands.length &&
    design.strands.every(({ sections }, strand) => {
      const chosen = counts[strand] ?? [];
      return (
        chosen.length === sections.length &&
        sections.every(({ fewest, most }, at) => {
          const count = chosen[at] ?? -1;
          return count >= fewest && count <= most;
        })
      );
    })
  );
}

function revisionDifference({ piece }: OrderDocument, copy: Snapshot): Difference[] {
  if (piece.revision === copy.revision) return [];
  return [{ code: 'revision', shown: piece.revision, now: copy.revision }];
}

function sizingDifference(sizing: Sizing): Difference[] {
  if (sizing.status === 'refused') return [{ code: 'refused', problem: sizing.problem }];
  if (sizing.status !== 'outside') return [];
  const { leastAskedMm, mostAskedMm } = sizing.limits;
  return [{ code: 'outside', side: sizing.side, leastMm: leastAskedMm, mostMm: mostAskedMm }];
}

function figureDifferences({ shown }: OrderDocument, now: Candidate, currency: string): Difference[] {
  const found: Difference[] = [];
  if (shown.currency !== currency) found.push({ code: 'currency', shown: shown.currency, now: currency });
  if (shown.priceMinor !== now.priceMinor) {
    found.push({
      code: 'price',
      shownMinor: shown.priceMinor,
      nowMinor: now.priceMinor,
      shownIn: shown.currency,
    });
  }
  if (Math.abs(shown.lengthMm - now.finishedLengthMm) > SAME_MM) {
    found.push({ code: 'length', shownMm: shown.lengthMm, nowMm: now.finishedLengthMm });
  }
  if (Math.abs(shown.insideGirthMm - now.insideGirthMm) > SAME_MM) {
    found.push({ code: 'girth', shownMm: shown.insideGirthMm, nowMm: now.insideGirthMm });
  }
  if (JSON.stringify(shown.counts) !== JSON.stringify(now.counts)) {
    found.push({ code: 'counts' });
  }
  return found;
}

/** The size in words and the size in millimetres must be one size; the words lack a unit where a switch gave it. */
function writtenDifference({ measure }: OrderDocument): Difference[] {
  if (measure.text.trim() === '') return [];
  const read = LENGTH_UNITS.map((unit) => parseLength(measure.text, unit))
    .filter((one) => one.ok)
    .map((one) => one.mm);
  if (read.some((mm) => Math.abs(mm - measure.mm) <= WRITTEN_MM)) return [];
  return [{ code: 'written', text: measure.text, mm: measure.mm }];
}

function clockDifference({ placedAt }: OrderDocument, receivedAt: string): Difference[] {
  const aheadMs = Date.parse(placedAt) - Date.parse(receivedAt);
  return aheadMs > CLOCK_MS ? [{ code: 'clock', placedAt, receivedAt }] : [];
}
