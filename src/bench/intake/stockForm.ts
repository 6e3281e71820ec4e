/** A form of a thing's stock, read. */
import type { SoldUnit, StockProblem } from '#words/stockCodes.ts';
import { STOCK_CAPS, type StockEntry } from '../book/movements.ts';
import { readAmount } from '../stock/amount.ts';
import type { Thing } from '../stock/things.ts';

/** What she may enter of a thing; wire may be put aside besides. */
export const ENTERED_KINDS = ['received', 'counted', 'broken', 'sold'] as const;
export type EnteredKind = (typeof ENTERED_KINDS)[number] | 'put-aside';

export const kindsOf = ({ wire }: Pick<Thing, 'wire'>): readonly EnteredKind[] =>
  wire ? [...ENTERED_KINDS, 'put-aside'] : ENTERED_KINDS;

export type ReadEntry =
  | { readonly entry: StockEntry }
  | { readonly problem: StockProblem }
  | { readonly strike: number; readonly note: string };

/** Reads a form of the thing's page; null for one that it doesn't send. */
export function readStockForm(form: URLSearchParams, thing: Thing): ReadEntry | null {
  const note = (form.get('note') ?? '').replace(/\s+/g, ' ').trim();
  if (note.length > STOCK_CAPS.note) return { problem: { code: 'note-too-long', most: STOCK_CAPS.note } };
  const wanted = form.get('kind');
  if (wanted === 'strike') {
    const strike = wholeIn(form, 'line');
    return strike === null ? null : { strike, note };
  }
  if (wanted === 'offcut-gone') {
    const mm = wholeIn(form, 'mm');
    if (mm === null || !thing.wire) return null;
    const gone = { thing: thing.key, kind: 'broken', amount: mm, offcut: mm } as const;
    return { entry: { ...gone, entered: `${mm} mm`, note, seen: null } };
  }
  const kind = kindsOf(thing).find((one) => one === wanted);
  if (kind === undefined) return null;
  // A count means nothing beside figures that are others by now; all else would be entered twice if it is sent twice.
  const seen = seenIn(form);
  if (seen === null) return null;
  const least = kind === 'counted' ? 0 : 1;
  const read = readAmount(form.get('amount') ?? '', form.get('unit') ?? '', thing, least);
  if (!read.ok) return { problem: read.problem };
  return { entry: { thing: thing.key, kind, amount: read.amount, entered: read.entered, note, seen } };
}

const wholeIn = (form: URLSearchParams, name: string): number | null => {
  const value = Number(form.get(name) ?? '');
  return Number.isSafeInteger(value) && value > 0 ? value : null;
};

/** The thing's last line that the page showed; 0 for none. */
function seenIn(form: URLSearchParams): number | null {
  const text = form.get('seen') ?? '';
  return /^\d{1,15}$/.test(text) ? Number(text) : null;
}

/** Names of the count sheet's fields. */
export const countField = {
  amount: (key: string) => `amount:${key}`,
  unit: (key: string) => `unit:${key}`,
  seen: (key: string) => `seen:${key}`,
} as const;

export type ReadCounts = {
  readonly entries: readonly StockEntry[];
  /** By the thing's key. */
  readonly problems: Readonly<Record<string, StockProblem>>;
};

/** Reads the count sheet: what was left empty stays as it is. */
export function readCounts(form: URLSearchParams, things: readonly Thing[]): ReadCounts {
  const entries: StockEntry[] = [];
  const problems: Record<string, StockProblem> = {};
  for (const thing of things) {
    const { key } = thing;
    const typed = (form.get(countField.amount(key)) ?? '').trim();
    const seen = form.get(countField.seen(key)) ?? '';
    if (typed === '' || !/^\d{1,15}$/.test(seen)) continue;
    const read = readAmount(typed, form.get(countField.unit(key)) ?? '', thing, 0);
    if (!read.ok) problems[key] = read.problem;
    else {
      const { amount, entered } = read;
      entries.push({ thing: key, kind: 'counted', amount, entered, note: '', seen: Number(seen) });
    }
  }
  return { entries, problems };
}

/** Names of the shopping list's fields. */
export const cameField = {
  amount: (key: string) => `came:${key}`,
  seen: (key: string) => `seen:${key}`,
} as const;

/** What a thing is bought in: as it is sold, else the piece or the metre. */
export const boughtIn = ({ sold, wire }: Pick<Thing, 'sold' | 'wire'>): SoldUnit =>
  sold?.by ?? (wire ? 'm' : 'piece');

/**
 * Reads what came of a shopping list; what was left empty didn't come. Each thing bears the line that the list was
 * made by: sent twice, it would be entered twice.
 * @returns null where nothing came
 */
export function readCame(
  form: URLSearchParams,
  things: readonly Thing[],
): { readonly entries: readonly StockEntry[] } | { readonly problem: StockProblem } | null {
  const entries: StockEntry[] = [];
  for (const thing of things) {
    const { key } = thing;
    const typed = (form.get(cameField.amount(key)) ?? '').trim();
    const seen = form.get(cameField.seen(key)) ?? '';
    if (typed === '' || !/^\d{1,15}$/.test(seen)) continue;
    const read = readAmount(typed, boughtIn(thing), thing, 1);
    if (!read.ok) return { problem: read.problem };
    const { amount, entered } = read;
    entries.push({ thing: key, kind: 'received', amount, entered, note: '', seen: Number(seen) });
  }
  return entries.length === 0 ? null : { entries };
}
