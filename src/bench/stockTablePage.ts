/** Bringing in a table of stock: looked at first, entered once she says so. */
import { troubleResponse } from './access/refusal.ts';
import type { Visitor } from './access/visitor.ts';
import { enterStock } from './book/movements.ts';
import { utf8 } from './http/readBody.ts';
import { readFileForm, seeOther } from './http/readForm.ts';
import { newestLine, type TableSheet } from './models/stock/tableSheet.ts';
import { readTable, TABLE_KINDS } from './stock/table.ts';
import { stockNow } from './stock/stockNow.ts';
import { refusalOf, stockPlace, type StockPlace } from './stockPages.ts';

/** Five thousand lines of two hundred letters. */
const MOST_BYTES = 1024 * 1024;

export type TablePage = StockPlace & { readonly sheet: TableSheet; readonly status: number };

/** The table of a form: the file that was chosen, else what was pasted; null for letters that can't be read. */
async function textOf(form: FormData): Promise<string | null> {
  const file = form.get('file');
  if (file instanceof File && file.size > 0) return utf8(new Uint8Array(await file.arrayBuffer()));
  const text = form.get('text');
  return typeof text === 'string' ? text : '';
}

export async function tablePage(request: Request, visitor: Visitor): Promise<TablePage | Response> {
  const place = await stockPlace(request, visitor);
  const { book, things, stock, moment, inFile, catalogue } = place;
  const [usual] = TABLE_KINDS;
  const blank: TableSheet = {
    ...{ text: '', kind: usual, problem: null, rows: null },
    ...{ seen: newestLine(book), done: null },
  };
  if (request.method !== 'POST') {
    const done = new URL(request.url).searchParams.get('done') ?? '';
    return { ...place, sheet: { ...blank, done: /^\d{1,4}$/.test(done) ? Number(done) : null }, status: 200 };
  }
  const form = await readFileForm(request, MOST_BYTES);
  if ('code' in form) return troubleResponse({ code: form.code }, form.status, request);
  const text = await textOf(form);
  const kind = TABLE_KINDS.find((one) => one === form.get('kind')) ?? usual;
  if (text === null) {
    return { ...place, sheet: { ...blank, kind, problem: { code: 'table-not-utf8' } }, status: 422 };
  }
  const shown = (problem: TableSheet['problem'], status: number): TablePage => {
    const now = stockNow(book, catalogue);
    const read = readTable(text, things, now, kind);
    const rows = 'problem' in read ? null : read;
    const why = 'problem' in read ? read.problem : problem;
    return {
      ...place,
      stock: now,
      sheet: { ...blank, text, kind, problem: why, rows, seen: newestLine(book) },
      status,
    };
  };
  const read = readTable(text, things, stock, kind);
  if ('problem' in read) return shown(null, 422);
  const wanted = form.get('do');
  if (wanted !== 'all' && wanted !== 'good') return shown(null, 200);
  // Another window, an order, or this very table sent twice.
  if (Number(form.get('seen')) !== newestLine(book)) return shown({ code: 'stock-changed' }, 409);
  if (read.good.length === 0 || (wanted === 'all' && read.bad.length > 0)) return shown(null, 422);
  const outcome = enterStock(
    book,
    moment,
    read.good.map(({ entry }) => entry),
    inFile,
  );
  if (outcome.outcome === 'done') return seeOther(`/bench/stock/in/?done=${read.good.length}`);
  const { problem, status } = refusalOf(outcome, things);
  return shown(problem, status);
}
