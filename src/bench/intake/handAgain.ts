/** An order of before as the beginning of a new one by hand: to make the piece again, or to restring it. */
import type { Entry } from '../book/entry.ts';
import type { HandWords } from '#words/words.ts';
import { EMPTY_HAND, type HandFields } from './handForm.ts';

/** The form filled in from an order; how it came is for her to say anew. */
export function handAgain({ document }: Entry, work: 'again' | 'restring', words: HandWords): HandFields {
  const { piece, instead, measure, sit, hand, pick, buyer, delivery, lang, number, quantity } = document;
  const restring = work === 'restring';
  return {
    ...EMPTY_HAND,
    ...(delivery.by === 'post' && { ...delivery.to, name: '', to: delivery.to.name }),
    piece: piece.id,
    clasp: instead.clasp.id,
    pendant: instead.pendant.id,
    of: measure.of,
    size: measure.text === '' ? `${measure.mm} mm` : measure.text,
    sit,
    hand,
    pick,
    quantity: restring ? '1' : String(quantity),
    name: buyer.name,
    email: buyer.email,
    note: restring ? words.restringNote(number) : '',
    lang,
    delivery: delivery.by,
    restring: restring ? number : '',
  };
}
