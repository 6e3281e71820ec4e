/** The shopping list's page, and the button that enters what came of it. */
import { troubleResponse } from './access/refusal.ts';
import type { Visitor } from './access/visitor.ts';
import { enterStock } from './book/movements.ts';
import { readForm, seeOther } from './http/readForm.ts';
import { readCame } from './intake/stockForm.ts';
import { shoppingSheet, type ShoppingAttempt, type ShoppingSheet } from './models/stock/shoppingSheet.ts';
import { stockNow } from './stock/stockNow.ts';
import { refusalOf, stockPlace, type StockPlace } from './stockPages.ts';

export type ShoppingPage = StockPlace & { readonly sheet: ShoppingSheet; readonly status: number };

export async function shoppingPage(request: Request, visitor: Visitor): Promise<ShoppingPage | Response> {
  const place = await stockPlace(request, visitor);
  const { book, things, moment, inFile, catalogue } = place;
  const query = new URL(request.url).searchParams;
  const shown = (attempt: ShoppingAttempt | null, status: number): ShoppingPage => {
    const stock = stockNow(book, catalogue);
    return { ...place, stock, sheet: shoppingSheet({ ...place, stock }, query, attempt), status };
  };
  if (request.method !== 'POST') return shown(null, 200);
  const form = await readForm(request);
  const read = form === null ? null : readCame(form, things);
  if (form === null || read === null) return troubleResponse({ code: 'bad-form' }, 400, request);
  if ('problem' in read) return shown({ form, problem: read.problem }, 422);
  const outcome = enterStock(book, moment, read.entries, inFile);
  if (outcome.outcome !== 'done') {
    const { problem, status } = refusalOf(outcome, things);
    return shown({ form, problem }, status);
  }
  const { query: kept } = shoppingSheet(place, query, null);
  return seeOther(`/bench/shopping/?${kept}${kept === '' ? '' : '&'}done=yes`);
}
