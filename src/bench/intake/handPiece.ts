/** The piece of an order by hand: which one, sized by the same core as a buyer's, or as it lies there. */
import type { Catalogue, Piece } from '#catalogue/model/catalogue.ts';
import {
  HANDS,
  MEASURES,
  MEASURES_OF_KIND,
  PICKS,
  SITS,
  type Choice,
  type Measure,
} from '#core/design/choice.ts';
import type { Candidate, Sizing } from '#core/sizing/sizing.ts';
import { usual } from '#core/sizing/usual.ts';
import { parseLength } from '#core/units/length.ts';
import type { Made, OrderDocument } from '#order/document.ts';
import { quantityOf, EMPTY_FORM } from '#sizer/ordering/model/form.ts';
import type { HandProblem } from '#words/handProblem.ts';
import type { Snapshot } from '../book/snapshot.ts';
import { orderedCopy, partsNotOffered } from '../check/ordered.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { withStock, type There } from '../check/there.ts';
import { asRestrung } from '../check/restring.ts';
import { describedOf, sizingOf } from '../check/sizedBefore.ts';
import type { HandField, HandFields } from './handForm.ts';

/** A piece in the size that was asked for, or as it lies. */
export type SizedPiece = {
  readonly piece: Piece;
  readonly copy: Snapshot;
  readonly made: Made;
  readonly choice: Choice;
  /** null where nothing is sized: it goes as it lies. */
  readonly sizing: Sizing | null;
  /** null where nothing can be strung in that size. */
  readonly candidate: Candidate | null;
};

type Problems = Partial<Readonly<Record<HandField, HandProblem>>>;
type SizedOrNot = { readonly sized: SizedPiece | null; readonly problems: Problems };

/**
 * Finds and sizes the piece; what is wrong with it stands by the field's name.
 * @param there what an order that comes in now may take of each component
 */
export function sizedBy(fields: HandFields, catalogue: Catalogue, there: There): SizedOrNot {
  const piece = catalogue.pieces.find(({ id }) => id === fields.piece);
  const plain = piece === undefined ? null : pieceNow(catalogue, piece.id);
  if (piece === undefined || plain === null) {
    const read = parseLength(fields.size, catalogue.shop.unit);
    const size: Problems = read.ok ? {} : { size: { code: 'size', problem: read.problem } };
    return { sized: null, problems: { piece: { code: 'piece-missing' }, ...size } };
  }
  const ready = fields.made === 'ready' && fields.restring === '';
  if (ready) return asItLies(fields, piece, plain);
  return toMeasure(fields, piece, withStock(plain, there), catalogue);
}

const quantityIn = ({ quantity }: HandFields): number | null => quantityOf({ ...EMPTY_FORM, quantity });

/** There is one of it, closed as it is. */
function asItLies(fields: HandFields, piece: Piece, copy: Snapshot): SizedOrNot {
  const problems: Problems = {
    ...(piece.status !== 'available' && { made: { code: 'not-ready' } }),
    ...((quantityIn(fields) ?? 1) > 1 && { quantity: { code: 'one-ready' } }),
    ...(fields.clasp !== '' && { clasp: { code: 'closed-already' } }),
    ...(fields.pendant !== '' && { pendant: { code: 'closed-already' } }),
  };
  const candidate = describedOf(copy, usual(copy.design));
  const measure = { of: 'length', mm: Math.round(candidate.finishedLengthMm * 100) / 100 } as const;
  const choice: Choice = { measure, sit: 'easy', hand: 'right', pick: 'best', quantity: 1 };
  return { sized: { piece, copy, made: 'ready', choice, sizing: null, candidate }, problems };
}

function toMeasure(fields: HandFields, piece: Piece, plain: Snapshot, { shop }: Catalogue): SizedOrNot {
  const read = parseLength(fields.size, shop.unit);
  const of = measureOf(fields, piece);
  const asked = askedIn(fields);
  const ordered = orderedCopy(plain, asked);
  const copy = ordered === null || fields.restring === '' ? ordered : asRestrung(ordered);
  const problems: Problems = {
    ...(!read.ok && { size: { code: 'size', problem: read.problem } }),
    ...(of === null && { of: { code: 'measure-of-kind', kind: piece.design.kind } }),
    ...(copy === null &&
      Object.fromEntries(partsNotOffered(plain, asked).map((part) => [part, PART_NOT_OFFERED]))),
  };
  if (of === null || !read.ok || copy === null) return { sized: null, problems };
  const choice: Choice = {
    measure: { of, mm: read.mm },
    sit: SITS.find((one) => one === fields.sit) ?? 'easy',
    hand: HANDS.find((one) => one === fields.hand) ?? 'right',
    pick: PICKS.find((one) => one === fields.pick) ?? 'best',
    quantity: quantityIn(fields) ?? 1,
  };
  const sizing = sizingOf(copy, choice);
  const candidate = sizing.status === 'refused' || sizing.status === 'outside' ? null : sizing.chosen;
  return { sized: { piece, copy, made: 'to-measure', choice, sizing, candidate }, problems };
}

/** The parts chosen, as an order would say them. */
function askedIn({ clasp, pendant }: HandFields): Pick<OrderDocument, 'instead' | 'made'> {
  const instead = { clasp: { id: clasp, name: '' }, pendant: { id: pendant, name: '' } };
  return { made: 'to-measure', instead };
}

const PART_NOT_OFFERED: HandProblem = { code: 'part-not-offered' };

/** What the size is of; the piece's usual measure where nothing is said, null for one that it isn't sized by. */
function measureOf({ of }: HandFields, { design }: Piece): Measure['of'] | null {
  const known: readonly Measure['of'][] = MEASURES_OF_KIND[design.kind];
  if (of === '') return known[0] ?? null;
  return MEASURES.find((one) => one === of && known.includes(one)) ?? null;
}
