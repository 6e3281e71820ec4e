/** A new piece: on to the board with its name and kind, or a copy of another under a name of its own. */
import { explain } from '#catalogue/read/problem.ts';
import { isFields, type Plain, type PlainMap } from '#catalogue/write/plain.ts';
import { PIECE_KINDS, type PieceKind } from '#core/design/design.ts';
import type { CatalogueSentence } from '#words/catalogueCodes.ts';
import { catalogueWords, contentFormWords } from '#words/words.ts';
import type { EntryPlace } from './editEntry.ts';
import { freeName, shortNameOf } from './newEntry.ts';

export type NewPiece = {
  /** What it is a copy of; null where it begins from nothing. */
  readonly copied: { readonly id: string; readonly name: string } | null;
  readonly name: string;
  readonly kind: PieceKind;
  readonly problems: readonly CatalogueSentence[];
};

export type NewPieceStep = { readonly asked: NewPiece } | { readonly path: `/${string}` };

// As the schema has it.
const LONGEST_NAME = 60;

const kindOf = (asked: string | null): PieceKind => PIECE_KINDS.find((one) => one === asked) ?? 'bracelet';

type Copied = { readonly id: string; readonly data: PlainMap };

function copiedFrom(id: string, { store }: EntryPlace): Copied | null {
  const data = store.open({ kind: 'piece', id })?.data as Plain | undefined;
  return isFields(data) ? { id, data } : null;
}

const nameIn = ({ data }: Copied): string => String(data.name ?? '');

/** What an address or a form asks for. */
function asked(
  fields: URLSearchParams,
  copied: Copied | null,
  problems: readonly CatalogueSentence[],
): NewPiece {
  return {
    copied: copied === null ? null : { id: copied.id, name: nameIn(copied) },
    name: (fields.get('name') ?? '').trim(),
    kind: kindOf(fields.get('kind')),
    problems,
  };
}

export function beginPiece(query: URLSearchParams, place: EntryPlace): NewPiece {
  const copied = copiedFrom(query.get('copy') ?? '', place);
  const begun = asked(query, copied, []);
  const { copyName } = contentFormWords(place.frame.lang).pieces;
  return copied === null || begun.name !== '' ? begun : { ...begun, name: copyName(nameIn(copied)) };
}

/** The copy is made now, to order, and has photographs of its own once she takes some. */
function copyOf({ data }: Copied, name: string, now: string): PlainMap {
  const { 'lies-since': _lies, pictures: _pictures, de, ...rest } = data;
  const words = isFields(de)
    ? { de: Object.fromEntries(Object.entries(de).filter(([field]) => field !== 'name')) }
    : {};
  return { ...rest, ...words, name, status: 'to-order', made: now.slice(0, 'yyyy-mm'.length) };
}

/** What her form comes to. */
export function stepPiece(form: URLSearchParams, place: EntryPlace): NewPieceStep {
  const { store, frame } = place;
  const said = catalogueWords(frame.lang);
  const copied = copiedFrom(form.get('copy') ?? '', place);
  const again = (problems: readonly CatalogueSentence[]): NewPieceStep => ({
    asked: asked(form, copied, problems),
  });
  const { name, kind } = asked(form, copied, []);
  const field = contentFormWords(frame.lang).labels.name ?? 'name';
  if (name === '') return again([said['empty-field']({ code: 'empty-field', field })]);
  if (name.length > LONGEST_NAME) {
    return again([said['text-too-long']({ code: 'text-too-long', length: name.length, most: LONGEST_NAME })]);
  }
  const isTaken = (id: string): boolean => id === 'new' || store.open({ kind: 'piece', id }) !== null;
  const id = freeName(shortNameOf(name) || 'piece', isTaken);
  if (copied === null) {
    return { path: `/bench/pieces/${id}/board/?${new URLSearchParams({ name, kind }).toString()}` };
  }
  const saved = store.create({ kind: 'piece', id }, copyOf(copied, name, frame.now));
  if (saved.ok) return { path: `/bench/pieces/${id}/words/?done=saved` };
  if (saved.code === 'problems') return again(saved.problems.map((one) => explain(one, frame.lang)));
  const why = saved.code === 'not-writable' ? saved.why : saved.code;
  return again([{ what: contentFormWords(frame.lang).notWritable(why), fix: '' }]);
}
