/** The roads of the pages of stock: request in, something to show or an answer out. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { readWhole } from '#catalogue/collections.ts';
import type { Lang } from '#words/lang.ts';
import type { StockProblem } from '#words/stockCodes.ts';
import { stockWords } from '#words/words.ts';
import { troubleResponse } from './access/refusal.ts';
import { whoIs, type Visitor } from './access/visitor.ts';
import {
  enterStock,
  strikeLine,
  type FileStock,
  type Moment,
  type StockEntry,
  type StockOutcome,
} from './book/movements.ts';
import type { Book } from './book/open.ts';
import { takeWithoutOrder } from './book/orderStock.ts';
import { content } from './content/content.ts';
import { bench } from './context/bench.ts';
import { readForm, seeOther } from './http/readForm.ts';
import { readCounts, readStockForm } from './intake/stockForm.ts';
import { frameFor, type Frame } from './models/frame.ts';
import { pieceSheet } from './models/pieceSheet.ts';
import { countSheet, type CountSheet } from './models/stock/countSheet.ts';
import { stockList, type StockList } from './models/stock/stockList.ts';
import { thingSheet, type ThingSheet } from './models/stock/thingSheet.ts';
import { fileStanding, type FileStanding } from './stock/files.ts';
import { stockNow, type StockNow } from './stock/stockNow.ts';
import { takesOfPiece } from './stock/takes.ts';
import { thingsOf, type Thing } from './stock/things.ts';
import { writeOutStock } from './stock/writeOut.ts';

/** What every page of stock is made of. */
export type StockPlace = {
  readonly frame: Frame;
  readonly book: Book;
  /** As it is published: what orders are sized by. */
  readonly catalogue: Catalogue;
  /** As the files say now, in the order of trays. */
  readonly things: readonly Thing[];
  readonly stock: StockNow;
  readonly moment: Moment;
  readonly inFile: FileStock;
};

/** Throws BookError. */
export async function stockPlace(request: Request, visitor: Visitor): Promise<StockPlace> {
  const { book, nowMs } = bench();
  const catalogue = await readWhole();
  const frame = frameFor(request, catalogue.shop, nowMs());
  const opened = book();
  const things = thingsOf(content().reading().catalogue ?? catalogue, frame.lang);
  const byKey = new Map(things.map((thing) => [thing.key, thing.inFile]));
  return {
    ...{ frame, catalogue, things, book: opened },
    stock: stockNow(opened, catalogue),
    moment: { at: frame.now, who: whoIs(visitor) },
    inFile: (key) => byKey.get(key) ?? null,
  };
}

/** What she reads where nothing was entered, and the answer's status. */
export function refusalOf(
  outcome: Exclude<StockOutcome, { readonly outcome: 'done' }>,
  things: readonly Thing[],
): { readonly problem: StockProblem; readonly status: 409 | 422 } {
  if (outcome.outcome === 'changed-meanwhile') return { problem: { code: 'stock-changed' }, status: 409 };
  const wire = things.find(({ key }) => key === outcome.thing)?.wire === true;
  return { problem: { code: 'not-there', have: outcome.have, wire }, status: 422 };
}

export type ListPage = StockPlace & {
  readonly list: StockList;
  readonly problem: 'not-written' | StockProblem | null;
};

/** The list, and its buttons: taking over what files say, and deciding about what was changed there by hand. */
export async function stockListPage(
  request: Request,
  visitor: Visitor,
): Promise<(ListPage & { readonly status: number }) | Response> {
  const place = await stockPlace(request, visitor);
  const { book, stock, things, frame, moment, inFile } = place;
  const query = new URL(request.url).searchParams;
  const shown = (problem: ListPage['problem'], status: number) => ({
    ...place,
    list: stockList(book, stockNow(book, place.catalogue), things, query, frame),
    ...{ problem, status },
  });
  if (request.method !== 'POST') return shown(null, 200);
  const form = await readForm(request);
  const key = form?.get('thing') ?? '';
  const { toBegin } = stockList(book, stock, things, query, frame).files;
  const counted = (thing: string, amount: number, seen: number): StockEntry => ({
    ...{ thing, kind: 'counted', amount, entered: String(amount), note: '', seen },
  });
  const enter = (entries: readonly StockEntry[]) => {
    const outcome = enterStock(book, moment, entries, inFile);
    if (outcome.outcome === 'done') return seeOther('/bench/stock/');
    const { problem, status } = refusalOf(outcome, things);
    return shown(problem, status);
  };
  switch (form?.get('do')) {
    case 'begin':
      return enter(toBegin.map((thing) => counted(thing.key, thing.inFile ?? 0, 0)));
    case 'count': {
      // What the file says is what is free: what is promised lies there besides.
      const said = Number(form.get('said') ?? '');
      const seen = Number(form.get('seen') ?? '');
      const known = things.find((thing) => thing.key === key && thing.inFile === said);
      if (known === undefined) return shown({ code: 'stock-changed' }, 409);
      const answer = enter([counted(key, said + stock.reserved(key), seen)]);
      if (answer instanceof Response) writeOutStock(book, content(), frame.now, [key]);
      return answer;
    }
    case 'ours':
      if (!things.some((thing) => thing.key === key && stock.balance(key) !== null)) break;
      return writeOutStock(book, content(), frame.now, [key]).failed.length > 0
        ? shown('not-written', 422)
        : seeOther('/bench/stock/');
  }
  return troubleResponse({ code: 'bad-form' }, 400, request);
}

export type ThingPage = StockPlace & { readonly sheet: ThingSheet; readonly status: number };

/** @param page address of the page itself */
export async function thingPage(
  request: Request,
  visitor: Visitor,
  key: string,
  page: `/${string}`,
): Promise<ThingPage | Response> {
  const place = await stockPlace(request, visitor);
  const { book, things, moment, inFile, catalogue } = place;
  const thing = things.find((one) => one.key === key);
  if (thing === undefined) return troubleResponse({ code: 'no-such-entry' }, 404, request);
  const shown = (attempt: ThingSheet['attempt'], status: number): ThingPage => {
    const done = new URL(request.url).searchParams.get('done') === 'yes' && attempt === null;
    const stock = stockNow(book, catalogue);
    return { ...place, stock, sheet: thingSheet(book, stock, thing, { attempt, done }), status };
  };
  if (request.method !== 'POST') return shown(null, 200);
  const form = await readForm(request);
  const read = form === null ? null : readStockForm(form, thing);
  if (form === null || read === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  if ('problem' in read) return shown({ form, problem: read.problem }, 422);
  if ('strike' in read) {
    const struck = strikeLine(book, moment, read.strike, read.note);
    if (struck === 'done') return seeOther(`${page}?done=yes`);
    const code = struck === 'not-there' ? 'line-used' : 'no-such-line';
    return shown({ form, problem: { code } }, struck === 'not-there' ? 422 : 409);
  }
  const outcome = enterStock(book, moment, [read.entry], inFile);
  if (outcome.outcome === 'done') return seeOther(`${page}?done=yes`);
  const { problem, status } = refusalOf(outcome, things);
  return shown({ form, problem }, status);
}

/** Things whose numbers a publishing would write out, with what is free; none where the book can't be used. */
export function stockWaiting(catalogue: Catalogue, lang: Lang): FileStanding['toWrite'] {
  const book = bench().usable();
  const lying = content().reading().catalogue;
  if (book === null || lying === null) return [];
  return fileStanding(book, stockNow(book, catalogue), thingsOf(lying, lang)).toWrite;
}

export type CountPage = StockPlace & { readonly sheet: CountSheet; readonly status: number };

/** The count sheet: all that was filled in is entered, or nothing. */
export async function countPage(request: Request, visitor: Visitor): Promise<CountPage | Response> {
  const place = await stockPlace(request, visitor);
  const { book, things, moment, inFile, catalogue } = place;
  const query = new URL(request.url).searchParams;
  const shown = (sent: Parameters<typeof countSheet>[3], status: number): CountPage => ({
    ...place,
    sheet: countSheet(stockNow(book, catalogue), things, query, sent),
    status,
  });
  if (request.method !== 'POST') return shown(null, 200);
  const form = await readForm(request);
  if (form === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  const { entries, problems } = readCounts(form, things);
  if (Object.keys(problems).length > 0) return shown({ form, problems }, 422);
  const outcome = enterStock(book, moment, entries, inFile);
  if (outcome.outcome !== 'done') {
    const { problem, status } = refusalOf(outcome, things);
    return shown({ form, problems: { [outcome.thing]: problem } }, status);
  }
  const tray = query.get('tray');
  const only = tray === null ? '' : `&tray=${encodeURIComponent(tray)}`;
  return seeOther(`/bench/stock/count/?done=${entries.length}${only}`);
}

/** Most pieces that are strung at once without an order. */
const MOST_STRUNG = 99;

/** Takes what a piece of the card's page takes out of the trays. The address says of which size. */
export async function strungPage(request: Request, visitor: Visitor, id: string): Promise<Response> {
  const { book, stock, frame, catalogue, moment } = await stockPlace(request, visitor);
  const query = new URL(request.url).searchParams;
  const sheet = pieceSheet(catalogue, id, query, { frame, there: stock.thereFor(null), book });
  const form = await readForm(request);
  if (sheet === null) return troubleResponse({ code: 'no-such-piece' }, 404, request);
  const many = Number(form?.get('many') ?? '');
  query.delete('strung');
  const answer = (strung: string): Response => {
    query.set('strung', strung);
    return seeOther(`/bench/pieces/${id}/?${query.toString()}`);
  };
  if (!Number.isInteger(many) || many < 1 || many > MOST_STRUNG || sheet.card === null)
    return answer('wrong');
  const { copy, candidate } = sheet.card;
  const takes = takesOfPiece(copy, candidate, many, frame.shop.stock.offcutMm);
  const note = stockWords(frame.lang).strung.note(many, sheet.piece.name);
  const taken = takeWithoutOrder(book, moment, takes, note);
  return answer(taken === 0 ? 'nothing' : String(many));
}
