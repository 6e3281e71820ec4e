/** An order entered by hand: sized by the same core as a buyer's, checked field by field, made into the same document. */
import { componentNameIn, type Catalogue } from '#catalogue/model/catalogue.ts';
import { postage, postageMinor } from '#core/post/postage.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { isInstant } from '#order/fields.ts';
import { checkOrder } from '#order/check.ts';
import { compose } from '#order/compose.ts';
import {
  AS_LISTED,
  DELIVERIES,
  EITHER_HAND,
  type Delivery,
  type Instead,
  type OrderDocument,
} from '#order/document.ts';
import { isNumber } from '#order/number.ts';
import { checkForm, EMPTY_FORM, tidyForm } from '#sizer/ordering/model/form.ts';
import { textWithUnit } from '#sizer/ordering/model/write.ts';
import { HAND_WAYS, RESTRING, type HandWay } from '#words/benchCodes.ts';
import type { HandProblem } from '#words/handProblem.ts';
import { isLang, type Lang } from '#words/lang.ts';
import { handWords } from '#words/words.ts';
import type { HandField, HandFields } from './handForm.ts';
import { needsNoHand } from '../check/hand.ts';
import type { There } from '../check/there.ts';
import { sizedBy, type SizedPiece } from './handPiece.ts';

export type HandProblems = Partial<Readonly<Record<HandField, HandProblem>>>;

export type HandOrder = {
  /** As typed, with the number and the instant it was given. */
  readonly fields: HandFields;
  readonly problems: HandProblems;
  /** null where piece or size is still wrong. */
  readonly sized: SizedPiece | null;
  /** Tells what is shown now from what was shown before; '' where nothing is. */
  readonly showing: string;
  /** null where anything is wrong. */
  readonly document: OrderDocument | null;
  readonly way: HandWay | null;
};

export type HandDesk = {
  readonly catalogue: Catalogue;
  /** What an order that comes in now may take of each component. */
  readonly there: There;
  /** The maker's language. */
  readonly lang: Lang;
  /** By her clock, ISO 8601. */
  readonly now: string;
  /** Gives a number that no order has. */
  readonly newNumber: () => string;
};

/** Reads, sizes and checks what was typed; says everything that is wrong at once. */
export function handOrder(typed: HandFields, desk: HandDesk): HandOrder {
  const fields = {
    ...typed,
    number: isNumber(typed.number) ? typed.number : desk.newNumber(),
    placedAt: isInstant(typed.placedAt) ? typed.placedAt : `${desk.now.slice(0, 19)}Z`,
  };
  const { sized, problems: sizeProblems } = sizedBy(fields, desk.catalogue, desk.there);
  const way = HAND_WAYS.find((one) => one === fields.way) ?? null;
  const problems: HandProblems = {
    ...sizeProblems,
    ...(sized !== null && sized.candidate === null && { size: { code: 'cannot-be-made' } }),
    ...buyerProblems(fields),
    ...addressProblems(fields),
    ...(way === null && { way: { code: 'way-missing' } }),
  };
  const candidate = sized?.candidate ?? null;
  const showing = sized === null || candidate === null ? '' : showingOf(sized, candidate, fields);
  const shared = { fields, sized, showing, way };
  if (sized === null || candidate === null || Object.keys(problems).length > 0) {
    return { ...shared, problems, document: null };
  }
  const document = composed(fields, sized, candidate, desk);
  const wrong = checkOrder(document);
  if (wrong === null) return { ...shared, problems, document };
  return {
    ...shared,
    problems: { [fieldOf(wrong)]: { code: 'not-taken', field: wrong } },
    document: null,
  };
}

const tidyBuyer = ({ name, email, note, quantity }: HandFields) => ({
  ...EMPTY_FORM,
  ...{ name, email, note, quantity },
});

function buyerProblems(fields: HandFields): HandProblems {
  const found = Object.entries(checkForm(tidyBuyer(fields))).map(
    ([field, problem]) => [field, { code: 'buyer', problem }] as const,
  );
  const problems: HandProblems = Object.fromEntries(found);
  if (fields.email.trim() !== '') return problems;
  // At a fair there may be a telephone number and nothing else.
  const { email: _missing, ...rest } = problems;
  return fields.phone.trim() === '' ? { ...rest, email: { code: 'no-way-back' } } : rest;
}

function addressProblems(fields: HandFields): HandProblems {
  if (fields.delivery !== 'post') return {};
  const missing = (name: HandField): boolean => fields[name].trim() === '';
  return {
    ...(missing('line1') && { line1: { code: 'line-missing' } }),
    ...(missing('town') && { town: { code: 'town-missing' } }),
    ...(missing('country') && { country: { code: 'country-missing' } }),
  };
}

function composed(
  fields: HandFields,
  { piece, copy, choice, made, sizing }: SizedPiece,
  candidate: Candidate,
  { catalogue, lang }: HandDesk,
): OrderDocument {
  const { name, email, note } = tidyForm(tidyBuyer(fields));
  const phone = fields.phone.trim();
  const written = isLang(fields.lang) ? fields.lang : lang;
  return compose({
    number: fields.number,
    placedAtMs: Date.parse(fields.placedAt),
    lang: written,
    made,
    instead: made === 'ready' ? AS_LISTED : insteadOf(fields, catalogue, written),
    piece: { id: piece.id, revision: copy.revision },
    choice,
    measureText: made === 'ready' ? '' : textWithUnit(fields.size, catalogue.shop.unit),
    candidate,
    design: copy.design,
    currency: copy.rules.currency,
    choices: {
      ...(fields.restring !== '' && RESTRING),
      // As on the buyer's page: what she said of the hand counts only where it matters.
      ...(sizing !== null && needsNoHand(sizing) && EITHER_HAND),
    },
    buyer: {
      name,
      email,
      note: [
        ...(phone === '' ? [] : [handWords(lang).phoneLine(phone)]),
        ...(note === '' ? [] : [note]),
      ].join('\n'),
    },
    delivery: deliveryOf(fields),
    postageMinor: postageOf(fields, choice.quantity, candidate, catalogue),
  });
}

/** By the shop's rules; 0 where nothing is posted, or they can't say, which the order's page then tells. */
function postageOf(
  { delivery, country }: HandFields,
  quantity: number,
  { massG, priceMinor }: Candidate,
  { shop }: Catalogue,
): number {
  if (delivery !== 'post' || shop.post === null) return 0;
  return postageMinor(postage(shop.post.rules, { country, massG, priceMinor, quantity })) ?? 0;
}

function deliveryOf(fields: HandFields): Delivery {
  const by = DELIVERIES.find((one) => one === fields.delivery) ?? 'unsaid';
  if (by !== 'post') return { by };
  const { to, name, line1, line2, town, region, postcode, country } = fields;
  const addressee = to.trim() === '' ? name : to;
  return { by, to: { name: addressee, line1, line2, town, region, postcode, country } };
}

/** Parts chosen instead, by the names that the buyer is written to with. */
function insteadOf({ clasp, pendant }: HandFields, catalogue: Catalogue, lang: Lang): Instead {
  const named = (id: string) => ({ id, name: id === '' ? '' : componentNameIn(catalogue, id, lang) });
  return { clasp: named(clasp), pendant: named(pendant) };
}

/** Short, and another for another piece: it is carried by the form only. */
function showingOf(
  { copy: { revision }, made }: SizedPiece,
  { counts, priceMinor }: Candidate,
  { clasp, pendant }: HandFields,
): string {
  const other = made === 'ready' ? [made] : [clasp, pendant].filter((id) => id !== '');
  return [revision, counts.map((strand) => strand.join('.')).join('/'), priceMinor, ...other].join(' ');
}

/** The form's field for one of the document's. */
function fieldOf(path: string): HandField {
  const last = path.split('.').at(-1) ?? '';
  if (path.startsWith('delivery.to.')) return last === 'name' ? 'to' : (last as HandField);
  return path.startsWith('buyer.') ? (last as HandField) : 'note';
}
