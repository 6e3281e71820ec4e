/** Saves what lies on the bead board into its piece's file: a new file where there is none yet. */
import { dayOf } from '#words/day.ts';
import type { SaveAnswer, SavedProblem } from '#board/model/saving.ts';
import type { Design } from '#core/design/design.ts';
import { designIn } from '#catalogue/build/designIn.ts';
import type { Reading } from '#catalogue/load/readCatalogue.ts';
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { explain, type Problem } from '#catalogue/read/problem.ts';
import { authoredDesign, namedDesign } from '#catalogue/write/authoredDesign.ts';
import { pieceChanges } from '#catalogue/write/pieceChanges.ts';
import type { FieldChange, PlainMap } from '#catalogue/write/plain.ts';
import type { Lang } from '#words/lang.ts';
import { notSavedWords } from '#words/words.ts';
import type { Opened, Saved } from './content/entry.ts';
import type { ContentStore } from './content/store.ts';
import type { BoardRequest } from './intake/boardRequest.ts';

/** Where a problem's field is on the board: "sections 2, beads 1", "strands 1, sections 2". */
function placeOf(field: string): SavedProblem['at'] {
  const at = (name: string): number | null => {
    const [, place] = new RegExp(`(?:^|, )${name} (\\d+)`).exec(field) ?? [];
    return place === undefined ? null : Number(place) - 1;
  };
  const section = at('sections');
  return section === null ? null : { strand: at('strands') ?? 0, section, part: at('beads') ?? -1 };
}

const problemOf = (problem: Problem, lang: Lang): SavedProblem => ({
  ...explain(problem, lang),
  at: placeOf(problem.field),
});

function answerOf(saved: Saved, content: ContentStore, id: string, lang: Lang): SaveAnswer {
  if (saved.ok) return { ok: true, digest: saved.digest };
  const words = notSavedWords(lang);
  switch (saved.code) {
    case 'changed-meanwhile': {
      const digest = content.open({ kind: 'piece', id })?.digest ?? null;
      return {
        ok: false,
        code: saved.code,
        yours: saved.yours ?? '',
        now: saved.now,
        digest,
      };
    }
    case 'problems':
      return {
        ok: false,
        code: 'problems',
        problems: saved.problems.map((one) => problemOf(one, lang)),
      };
    case 'not-writable':
      return { ok: false, code: 'not-writable', why: words[saved.why] };
    case 'name-taken':
    case 'gone':
      return { ok: false, code: 'not-writable', why: words[saved.code] };
  }
}

/** The month in which it is made: the usual day of a piece that was laid out just now. */
const monthOf = (nowMs: number): string => dayOf(nowMs).slice(0, 7);

/** A bare figure is meant in the shop's own money. */
const priceOf = (text: string, currency: string): string =>
  /^\d+(?:[.,]\d{1,2})?$/.test(text) ? `${text.replace(',', '.')} ${currency}` : text;

function newPiece({ design, about }: BoardRequest, nowMs: number, currency: string): PlainMap {
  const { name = '', price = '', summary = '', story = '' } = about ?? {};
  return {
    name: name.trim(),
    status: 'to-order',
    made: monthOf(nowMs),
    price: priceOf(price.trim(), currency),
    summary: summary.trim(),
    story: story.trim() === '' ? summary.trim() : story.trim(),
    ...authoredDesign(namedDesign(design), []),
  };
}

/** @param catalogue as it lies there now */
export function saveBoard(
  content: ContentStore,
  catalogue: Catalogue,
  request: BoardRequest,
  { lang, nowMs }: { readonly lang: Lang; readonly nowMs: number },
): SaveAnswer {
  const { design, digest } = request;
  const key = { kind: 'piece', id: design.id } as const;
  const answer = (saved: Saved): SaveAnswer => answerOf(saved, content, design.id, lang);
  if (digest === null)
    return answer(content.create(key, newPiece(request, nowMs, catalogue.shop.rules.currency)));
  const opened = content.open(key);
  if (opened === null) return answer({ ok: false, code: 'gone' });
  return answer(content.save({ key, digest }, changesOf(opened, design, catalogue)));
}

function changesOf({ data, key }: Opened, design: Design, catalogue: Catalogue): FieldChange[] {
  const before = designIn(key.id, data, catalogue);
  return pieceChanges(data as PlainMap, before, namedDesign(design));
}

/** Everything as it would be read if what lies on the board were saved. Nothing is written. */
export function readingWithBoard(
  content: ContentStore,
  catalogue: Catalogue,
  request: BoardRequest,
  nowMs: number,
): Reading {
  const { design } = request;
  const key = { kind: 'piece', id: design.id } as const;
  const opened = content.open(key);
  const whole = opened === null ? null : content.readingWith(key, changesOf(opened, design, catalogue));
  return whole ?? content.readingWithNew(key, newPiece(request, nowMs, catalogue.shop.rules.currency));
}
