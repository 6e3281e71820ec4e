/** A table of what came or was counted (CSV, RFC 4180), read line by line against what the shop has. */
import { CsvError, parse } from 'csv-parse/sync';
import { near } from '#catalogue/read/near.ts';
import type { RowProblem, StockUnit, TableProblem } from '#words/stockCodes.ts';
import { STOCK_CAPS, type StockEntry } from '../book/movements.ts';
import { readAmount } from './amount.ts';
import type { StockNow } from './stockNow.ts';
import type { Thing } from './things.ts';

/** What a line may say that happened. */
export const TABLE_KINDS = ['received', 'counted', 'broken', 'sold'] as const;
export type TableKind = (typeof TABLE_KINDS)[number];

/** Far more than a shop has of different things. */
export const MOST_ROWS = 5000;

export type GoodRow = {
  /** In the file, from 1: the heading is the first. */
  readonly line: number;
  readonly thing: Thing;
  readonly entry: StockEntry;
  /** What there is once it and all good lines before it are entered. */
  readonly after: number;
};
/** `text`: how the line names what it is about. */
export type BadRow = { readonly line: number; readonly text: string; readonly problem: RowProblem };

export type ReadTable =
  | { readonly problem: TableProblem }
  | { readonly good: readonly GoodRow[]; readonly bad: readonly BadRow[]; readonly skipped: number };

const COLUMNS = ['thing', 'number', 'kind', 'amount', 'unit', 'note'] as const;
type Column = (typeof COLUMNS)[number];

/** Headings in German, for tables that were written by hand. */
const GERMAN: Readonly<Record<string, Column>> = {
  ...{ kurzname: 'thing', nummer: 'number', vorgang: 'kind', menge: 'amount', anzahl: 'amount' },
  ...{ einheit: 'unit', notiz: 'note' },
};

const KINDS: Readonly<Record<string, TableKind>> = {
  ...{ received: 'received', counted: 'counted', broken: 'broken', sold: 'sold' },
  ...{ eingegangen: 'received', gezählt: 'counted', zerbrochen: 'broken', verkauft: 'sold' },
};

const UNITS: Readonly<Record<string, StockUnit>> = {
  ...{
    pieces: 'piece',
    pcs: 'piece',
    stück: 'piece',
    strands: 'strand',
    strang: 'strand',
    stränge: 'strand',
  },
  ...{ packs: 'pack', packung: 'pack', packungen: 'pack', bags: 'bag', beutel: 'bag' },
  ...{ gram: 'g', grams: 'g', gramm: 'g', metre: 'm', metres: 'm', meter: 'm', meters: 'm' },
  ...{ feet: 'ft', inch: 'in', inches: 'in', zoll: 'in', spools: 'spool', rolle: 'spool', rollen: 'spool' },
};

/** What our own tables put before a text that a spreadsheet would run as a formula. */
const SHIELD = /^'(?=[=+\-@\t\r\n|%＝＋－＠])/u;

type Line = { readonly record: readonly string[]; readonly info: { readonly lines: number } };

/** The cells of each line; which sign stands between them is told by the heading. */
function cellsOf(text: string): readonly Line[] {
  const [heading = ''] = text.split(/\r?\n/, 1);
  const delimiter = [';', '\t', ','].find((sign) => heading.includes(sign)) ?? ',';
  const options = { bom: true, delimiter, info: true, relax_column_count: true, trim: true } as const;
  return parse(text, { ...options, skip_empty_lines: true }) as unknown as readonly Line[];
}

function columnsOf(heading: readonly string[]): ReadonlyMap<Column, number> | { readonly twice: Column } {
  const found = new Map<Column, number>();
  for (const [at, cell] of heading.entries()) {
    const name = cell.toLowerCase();
    const column = COLUMNS.find((one) => one === name) ?? GERMAN[name];
    if (column === undefined) continue;
    if (found.has(column)) return { twice: column };
    found.set(column, at);
  }
  return found;
}

/**
 * Reads a table. Nothing is entered by it.
 * @param kind of lines that say none
 */
export function readTable(
  text: string,
  things: readonly Thing[],
  stock: StockNow,
  kind: TableKind,
): ReadTable {
  if (text.trim() === '') return { problem: { code: 'table-empty' } };
  let records: readonly Line[];
  try {
    records = cellsOf(text);
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { problem: { code: 'table-broken', line: Number(error.lines ?? 1) } };
  }
  const [heading, ...rows] = records;
  if (heading === undefined) return { problem: { code: 'table-empty' } };
  if (rows.length > MOST_ROWS) return { problem: { code: 'table-too-large', most: MOST_ROWS } };
  const columns = columnsOf(heading.record);
  if ('twice' in columns) return { problem: { code: 'heading-twice', name: columns.twice } };
  const missing = [
    ...(columns.has('thing') || columns.has('number') ? [] : ['thing']),
    ...(columns.has('amount') ? [] : ['amount']),
  ];
  if (missing.length > 0) return { problem: { code: 'heading-missing', names: missing } };
  const reader = rowReader(things, stock, kind);
  const good: GoodRow[] = [];
  const bad: BadRow[] = [];
  let skipped = 0;
  for (const { record, info } of rows) {
    const cell = (column: Column): string => {
      const at = columns.get(column);
      return at === undefined ? '' : (record[at] ?? '').replace(SHIELD, '').trim();
    };
    if (cell('amount') === '') {
      skipped += 1;
      continue;
    }
    const read = reader(info.lines, cell);
    if ('problem' in read) {
      bad.push({ line: info.lines, text: cell('thing') || cell('number'), problem: read.problem });
    } else good.push({ line: info.lines, ...read });
  }
  return { good, bad, skipped };
}

type ReadRow = Omit<GoodRow, 'line'> | { readonly problem: RowProblem };

/** Reads one line after another: what is there goes on from line to line. */
function rowReader(things: readonly Thing[], stock: StockNow, usual: TableKind) {
  const byKey = new Map(things.map((thing) => [thing.key, thing]));
  const byNumber = new Map(
    things.flatMap((thing) =>
      [thing.number, thing.sold?.number ?? null].flatMap((number) =>
        number === null ? [] : [[number.toLowerCase(), thing] as const],
      ),
    ),
  );
  const there = new Map<string, number>();
  const countedIn = new Map<string, number>();
  const find = (key: string, number: string): Thing | RowProblem => {
    const named = key === '' ? undefined : byKey.get(key.toLowerCase());
    const numbered = number === '' ? undefined : byNumber.get(number.toLowerCase());
    if (key === '' && number === '') return { code: 'row-unnamed' };
    if (key !== '' && named === undefined) {
      return { code: 'row-unknown', text: key, near: near(key.toLowerCase(), [...byKey.keys()]) };
    }
    if (key === '' && numbered === undefined) {
      return { code: 'row-unknown', text: number, near: near(number.toLowerCase(), [...byNumber.keys()]) };
    }
    if (named !== undefined && numbered !== undefined && named !== numbered) {
      return { code: 'row-differs', thing: key, number };
    }
    return named ?? numbered!;
  };
  return (line: number, cell: (column: Column) => string): ReadRow => {
    const thing = find(cell('thing'), cell('number'));
    if ('code' in thing) return { problem: thing };
    const { key, wire } = thing;
    const said = cell('kind').toLowerCase();
    const kind = said === '' ? usual : KINDS[said];
    if (kind === undefined) return { problem: { code: 'row-kind', text: cell('kind') } };
    const note = cell('note');
    if (note.length > STOCK_CAPS.note) return { problem: { code: 'note-too-long', most: STOCK_CAPS.note } };
    const unit = cell('unit').toLowerCase();
    const read = readAmount(cell('amount'), UNITS[unit] ?? unit, thing, kind === 'counted' ? 0 : 1);
    if (!read.ok) return { problem: read.problem };
    const { amount, entered } = read;
    const before = there.get(key) ?? stock.onHand(key) ?? 0;
    if (kind === 'counted') {
      const first = countedIn.get(key);
      if (first !== undefined) return { problem: { code: 'row-twice', line: first } };
      countedIn.set(key, line);
    }
    const out = kind === 'broken' || kind === 'sold';
    if (out && amount > before) return { problem: { code: 'not-there', have: Math.max(0, before), wire } };
    // A count of wire is of the reel; what lies apart is there besides.
    const apart = (stock.balance(key)?.offcuts ?? []).reduce((sum, mm) => sum + mm, 0);
    const after = kind === 'counted' ? amount + apart : out ? before - amount : before + amount;
    there.set(key, after);
    return { thing, after, entry: { thing: key, kind, amount, entered, note, seen: null } };
  };
}
