/** What is being strung, as an address and the order book name it. */
import { readNumber } from '#order/number.ts';
import { isId } from '#catalogue/fields/field.ts';
import { BASES, type Basis } from '../benchCard.ts';

export type Subject =
  /** `by`: null for the way that the card takes of itself. */
  | { readonly kind: 'order'; readonly number: string; readonly by: Basis | null }
  | { readonly kind: 'batch'; readonly numbers: readonly string[] }
  /** `query`: how the piece was asked for, as its card's address has it. */
  | { readonly kind: 'piece'; readonly id: string; readonly query: string };

/** Orders of a batch at most: more wires than that lie in each other's way. */
export const MOST_PIECES = 12;
const MOST_QUERY = 200;

/** Fields of a piece's card that say which version of it, and in which size. */
const ASKED = ['version', 'of', 'size', 'sit', 'hand'] as const;

/** The same question always in the same words. */
export function queryOf(query: URLSearchParams): string {
  const asked = ASKED.flatMap((name) => {
    const value = query.get(name) ?? '';
    return value === '' ? [] : [[name, value]];
  });
  return new URLSearchParams(asked).toString();
}

/** A batch in one order of its numbers, each once; of a single one, that order. null for none, or too many. */
export function batchSubject(texts: readonly string[]): Subject | null {
  const numbers = texts.map((text) => readNumber(text)).map((read) => ('number' in read ? read.number : ''));
  if (numbers.includes('')) return null;
  const all = [...new Set(numbers)].toSorted();
  const [first] = all;
  if (first === undefined || all.length > MOST_PIECES) return null;
  return all.length === 1 ? { kind: 'order', number: first, by: null } : { kind: 'batch', numbers: all };
}

/** How the order book names it. */
export function subjectText(subject: Subject): string {
  switch (subject.kind) {
    case 'order':
      return subject.by === null ? subject.number : `${subject.number}?by=${subject.by}`;
    case 'batch':
      return subject.numbers.join('+');
    case 'piece':
      return `piece:${subject.id}?${subject.query}`;
  }
}

/** Reads what `subjectText` wrote; null for anything else. */
export function readSubject(text: string): Subject | null {
  const piece = /^piece:([^?]*)\?(.*)$/.exec(text);
  if (piece !== null) {
    const [, id = '', query = ''] = piece;
    const known = queryOf(new URLSearchParams(query)) === query && query.length <= MOST_QUERY;
    return isId(id) && known ? { kind: 'piece', id, query } : null;
  }
  const [, numbers = '', by] = /^([^?]*)(?:\?by=(\w+))?$/.exec(text) ?? [];
  const subject = batchSubject(numbers.split('+'));
  if (subject === null || by === undefined) return subject;
  const basis = BASES.find((one) => one === by);
  return subject.kind === 'order' && basis !== undefined ? { ...subject, by: basis } : null;
}

/** Where its steps are walked through, and at which stop. */
export function stepsAddress(subject: Subject, stop?: number): `/${string}` {
  const query = new URLSearchParams(subject.kind === 'piece' ? subject.query : '');
  if (subject.kind === 'order' && subject.by !== null) query.set('by', subject.by);
  if (subject.kind === 'batch') for (const number of subject.numbers) query.append('order', number);
  if (stop !== undefined) query.set('step', String(stop + 1));
  const asked = query.size === 0 ? '' : `?${query.toString()}`;
  switch (subject.kind) {
    case 'order':
      return `/bench/orders/${subject.number}/steps/${asked}`;
    case 'batch':
      return `/bench/steps/batch/${asked}`;
    case 'piece':
      return `/bench/pieces/${subject.id}/steps/${asked}`;
  }
}
