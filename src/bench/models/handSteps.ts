/** The steps of an order by hand: begin, read an e-mail, size, look, enter. Nothing typed is lost at any of them. */
import type { Inbox } from '../book/inbox.ts';
import { findEntry } from '../book/entry.ts';
import type { Book } from '../book/open.ts';
import { pieceNow } from '../check/pieceNow.ts';
import { handAgain } from '../intake/handAgain.ts';
import { EMPTY_HAND, readHand, SOURCE_CAP, type HandFields } from '../intake/handForm.ts';
import { handOrder, type HandDesk } from '../intake/handOrder.ts';
import { readPlain } from '../intake/plainMail.ts';
import { isSource, messageText } from '../intake/plainText.ts';
import { readableText } from '../intake/readable.ts';
import { handWords } from '#words/words.ts';
import type { Frame } from './frame.ts';
import { handSheet, type HandSheet, type HandStage } from './handSheet.ts';
import { numberOf } from './numberOf.ts';

export type HandPlace = HandDesk & { readonly frame: Frame; readonly book: Book; readonly inbox: Inbox };

/** The form to show, or the number of the order that is in the book now. */
export type HandStep = { readonly sheet: HandSheet } | { readonly entered: string };

/** The form as an address asks for it. Throws BookError. */
export function beginHand(query: URLSearchParams, place: HandPlace): { readonly sheet: HandSheet } {
  return show(fieldsFor(query, place), 'fresh', place);
}

function fieldsFor(query: URLSearchParams, { book, lang }: HandPlace): HandFields {
  for (const work of ['again', 'restring'] as const) {
    const entry = findEntry(book, numberOf(query.get(work) ?? ''));
    if (entry !== null) return handAgain(entry, work, handWords(lang));
  }
  return { ...EMPTY_HAND, piece: (query.get('piece') ?? '').slice(0, 64) };
}

/** What a posted form comes to. Rejects with BookError. */
export async function stepHand(form: URLSearchParams, place: HandPlace): Promise<HandStep> {
  const fields = readHand(form);
  const wanted = form.get('do');
  if (wanted === 'read') return readMail((form.get('mail') ?? '').slice(0, SOURCE_CAP), place);
  if (wanted !== 'enter') return show(fields, 'sized', place);
  const order = handOrder(fields, place);
  const { document, way, showing } = order;
  // A size that can't be made is told where the piece is told.
  if (document === null || way === null) return show(fields, 'wrong', place);
  if (fields.shown !== showing) return show(fields, fields.shown === '' ? 'look' : 'look-again', place);
  const now = pieceNow(place.catalogue, document.piece.id);
  const { outcome, number } = await place.inbox({ document, way, at: place.now, now });
  if (outcome !== 'number-taken') return { entered: number };
  return show({ ...fields, number: place.newNumber() }, 'taken', place, number);
}

async function readMail(pasted: string, place: HandPlace): Promise<HandStep> {
  const written = readableText(pasted);
  const { shop, pieces } = place.catalogue;
  const message = isSource(written) ? await messageText(new TextEncoder().encode(written)) : null;
  const { fields, remarks } = readPlain(message ?? written, {
    pieces,
    ...{ shopEmail: shop.orders.email, unit: shop.unit, lang: place.lang },
  });
  return {
    sheet: handSheet(handOrder(fields, place), 'read', place.catalogue, place.frame, { remarks }),
  };
}

function show(
  fields: HandFields,
  stage: HandStage,
  place: HandPlace,
  takenNumber?: string,
): { readonly sheet: HandSheet } {
  const more = takenNumber === undefined ? {} : { takenNumber };
  return { sheet: handSheet(handOrder(fields, place), stage, place.catalogue, place.frame, more) };
}
