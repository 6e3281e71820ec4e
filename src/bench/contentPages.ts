/** The road of a page with a form of the content: request in, a form to show or an answer out. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { readShop } from '#catalogue/collections.ts';
import type { Problem } from '#catalogue/read/problem.ts';
import type { FormField } from '#catalogue/schemas/describe.ts';
import { isFields, type PlainMap } from '#catalogue/write/plain.ts';
import { contentFormWords, type ContentFormWords } from '#words/words.ts';
import { troubleResponse } from './access/refusal.ts';
import { content } from './content/content.ts';
import type { EntryKey } from './content/entry.ts';
import { bench } from './context/bench.ts';
import { readForm, seeOther } from './http/readForm.ts';
import { beginEntry, stepEntry, type EntrySheet } from './models/content/editEntry.ts';
import { entryFields } from './models/content/entrySchemas.ts';
import { formFace, type FormFace } from './models/content/formFace.ts';
import { beginNew, stepNew, type NewSheet, type Wanted } from './models/content/newEntry.ts';
import { beginPiece, stepPiece, type NewPiece } from './models/content/newPiece.ts';
import { withPieceAction } from './models/content/pieceAction.ts';
import { frameFor, type Frame } from './models/frame.ts';

/** Everything as it lies in the files now, and the frame of a page that shows it. */
export type ContentPlace = {
  readonly frame: Frame;
  /** Null where there is no shop to speak of: then `problems` say why. */
  readonly catalogue: Catalogue | null;
  readonly problems: readonly Problem[];
};

/** The files of this moment; the shop that is published where hers can't be read. */
export async function contentPlace(request: Request): Promise<ContentPlace> {
  const { catalogue, problems } = content().reading();
  const shop = catalogue?.shop ?? (await readShop());
  return { catalogue, problems, frame: frameFor(request, shop, bench().nowMs()) };
}

export type EntryPage = ContentPlace & {
  readonly sheet: EntrySheet;
  readonly face: FormFace;
  /** What became of the save before; null where the page was just opened. */
  readonly said: string | null;
};

/** What the address says of the save before. */
function saidOf(request: Request, { lang }: Frame): string | null {
  const words = contentFormWords(lang);
  const done = new URL(request.url).searchParams.get('done');
  return done === 'saved' ? words.saved : done === 'unchanged' ? words.unchanged : null;
}

/** @param page address of the page itself; @param fields what its form asks for */
export async function entryPage(
  request: Request,
  key: EntryKey,
  page: `/${string}`,
  fields: readonly FormField[] = entryFields[key.kind],
): Promise<EntryPage | Response> {
  const place = await contentPlace(request);
  const { frame, catalogue } = place;
  const store = content();
  const opened = store.open(key);
  if (opened === null) return troubleResponse({ code: 'no-such-entry' }, 404, request);
  const shown = (sheet: EntrySheet): EntryPage => {
    const face = formFace(sheet, catalogue, frame);
    return { ...place, sheet, face, said: saidOf(request, frame) };
  };
  if (request.method !== 'POST') return shown(beginEntry(opened, fields));
  const form = await readForm(request);
  if (form === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const step = stepEntry(withPieceAction(form), opened, { store, frame, fields });
  return 'done' in step ? seeOther(`${page}?done=${step.done}`) : shown(step.sheet);
}

export type NewPage = ContentPlace & { readonly sheet: NewSheet; readonly face: FormFace };

/** What a new part starts from: another one, or its kind alone. */
function prefillOf(query: URLSearchParams, { kind }: Wanted): PlainMap {
  const copied = content().open({ kind, id: query.get('copy') ?? '' })?.data;
  if (isFields(copied as PlainMap | undefined)) {
    // Its own are its name, its number and its stock.
    const {
      name: _name,
      'name-de': _german,
      'part-number': _number,
      stock: _stock,
      ...rest
    } = copied as PlainMap;
    return rest;
  }
  return kind === 'component' ? { kind: query.get('kind') ?? 'bead' } : {};
}

/** @param pageOf address of an entry's page, by its short name */
export async function newPage(
  request: Request,
  wanted: Wanted,
  pageOf: (id: string) => `/${string}`,
): Promise<NewPage | Response> {
  const place = await contentPlace(request);
  const { frame, catalogue } = place;
  const shown = (sheet: NewSheet): NewPage => {
    return { ...place, sheet, face: formFace(sheet, catalogue, frame) };
  };
  if (request.method !== 'POST') {
    const query = new URL(request.url).searchParams;
    return shown(beginNew(wanted, prefillOf(query, wanted), query.get('id') ?? ''));
  }
  const form = await readForm(request);
  if (form === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const step = stepNew(form, wanted, { store: content(), frame });
  return 'created' in step ? seeOther(`${pageOf(step.created)}?done=saved`) : shown(step.sheet);
}

export type NewPiecePage = NewPiece & { readonly frame: Frame; readonly words: ContentFormWords };

export async function newPiecePage(request: Request): Promise<NewPiecePage | Response> {
  const { frame } = await contentPlace(request);
  const place = { store: content(), frame };
  const shown = (piece: NewPiece): NewPiecePage => ({ ...piece, frame, words: contentFormWords(frame.lang) });
  if (request.method !== 'POST') return shown(beginPiece(new URL(request.url).searchParams, place));
  const form = await readForm(request);
  if (form === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const step = stepPiece(form, place);
  return 'path' in step ? seeOther(step.path) : shown(step.asked);
}
