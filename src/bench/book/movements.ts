/**
 * Stock as the book keeps it: lines of what came in and went out. What there is
 * is the sum of a thing's lines and stands nowhere else. A thing is a component
 * by its short name, or a wire by its key; amounts are pieces, or whole
 * millimetres of wire.
 */
import type { MovementKind, StockHand } from '#words/benchCodes.ts';
import type { Row } from './entry.ts';
import { keeping, vouch } from './keptDigest.ts';
import { inOneWrite, prepared, type Book } from './open.ts';
import { named } from './problem.ts';
import { noteWritten } from './writtenStock.ts';

export type Movement = {
  readonly id: number;
  readonly thing: string;
  readonly kind: MovementKind;
  /** Below 0 what went out. */
  readonly amount: number;
  /** Of wire: the length of the offcut it is about, mm; null for the reel, and for all else. */
  readonly offcut: number | null;
  /** What a count found; null for all else. */
  readonly counted: number | null;
  /** As it was entered, `3 strands`; '' where an order took it. */
  readonly entered: string;
  /** The order that took it; null where none did. */
  readonly number: string | null;
  /** The line that it takes back. */
  readonly strikes: number | null;
  /** The line that takes it back; null while it counts. */
  readonly struckBy: number | null;
  /** ISO 8601, by the maker's clock. */
  readonly at: string;
  readonly who: StockHand;
  readonly note: string;
};

/** When, and at which machine. */
export type Moment = { readonly at: string; readonly who: StockHand };

/** How a thing stands. */
export type Balance = {
  /** All of it, offcuts too; below 0 where more was strung than was there. */
  readonly amount: number;
  /** Pieces of wire that lie apart, mm each, the longest first. Their lengths are within `amount`. */
  readonly offcuts: readonly number[];
  /** Its last line: what a count that she enters was made of. */
  readonly lastId: number;
};

/** What is entered by hand of one thing. `amount`: above 0; of a count what was found, 0 or more. */
export type StockEntry = {
  readonly thing: string;
  readonly kind: 'received' | 'counted' | 'broken' | 'sold' | 'put-aside';
  readonly amount: number;
  /** Of wire: the offcut that is gone, mm; null for the reel. */
  readonly offcut?: number | null;
  readonly entered: string;
  readonly note: string;
  /** The thing's last line that she saw, where the entry means nothing without it; null: it adds to whatever is there. */
  readonly seen: number | null;
};

/** `changed-meanwhile`: something moved since she looked. `not-there`: more is to go than there is. */
export type StockOutcome =
  | { readonly outcome: 'done' }
  | { readonly outcome: 'changed-meanwhile'; readonly thing: string }
  | { readonly outcome: 'not-there'; readonly thing: string; readonly have: number };

/** What files said before anything was entered here, by thing: the first count of what is entered for the first time. */
export type FileStock = (thing: string) => number | null;

/** Longest note, and most of one thing: a million beads, ten kilometres of wire. */
export const STOCK_CAPS = { note: 200, pieces: 1_000_000, mm: 10_000_000 } as const;

/** Everything that has a line, by thing. Throws BookError. */
export function balances(book: Book): ReadonlyMap<string, Balance> {
  return named(() => {
    const found = new Map<string, { amount: number; offcuts: number[]; lastId: number }>();
    const rows = prepared(
      book,
      `SELECT thing, offcut, sum(amount) AS amount, max(id) AS last FROM movement GROUP BY thing, offcut`,
    ).all();
    for (const row of rows) {
      const thing = String(row.thing);
      const amount = Number(row.amount);
      const one = found.get(thing) ?? { amount: 0, offcuts: [], lastId: 0 };
      one.amount += amount;
      one.lastId = Math.max(one.lastId, Number(row.last));
      if (row.offcut !== null) {
        const mm = Number(row.offcut);
        for (let left = amount; left >= mm; left -= mm) one.offcuts.push(mm);
      }
      found.set(thing, one);
    }
    for (const { offcuts } of found.values()) offcuts.sort((a, b) => b - a);
    return found;
  });
}

const NOTHING: Balance = { amount: 0, offcuts: [], lastId: 0 };

/** Lines of one thing, the newest first whatever the clock said. `most`: how many. Throws BookError. */
export function movementsOf(book: Book, thing: string, most = 200): Movement[] {
  return named(() =>
    prepared(book, `${SELECT} WHERE one.thing = ? ORDER BY one.id DESC LIMIT ?`)
      .all(thing, most)
      .map((row) => toMovement(row as Row)),
  );
}

/** All lines, the oldest first, for an export. Throws BookError. */
export function allMovements(book: Book): Movement[] {
  return named(() =>
    prepared(book, `${SELECT} ORDER BY one.id`)
      .all()
      .map((row) => toMovement(row as Row)),
  );
}

/** What an order has taken and not given back, by thing. Throws BookError. */
export function takenBy(book: Book, number: string): ReadonlyMap<string, number> {
  return named(() => {
    const rows = prepared(
      book,
      'SELECT thing, -sum(amount) AS taken FROM movement WHERE number = ? GROUP BY thing',
    ).all(number);
    return new Map(
      rows.map((row) => [String(row.thing), Number(row.taken)] as const).filter(([, taken]) => taken !== 0),
    );
  });
}

/** When the last line was entered, ISO 8601; '' where there is none. Throws BookError. */
export function lastMovementAt(book: Book): string {
  return named(() => String(prepared(book, 'SELECT coalesce(max(at), ?) AS at FROM movement').get('')?.at));
}

const SELECT = `SELECT one.*, other.id AS struck_by FROM movement one LEFT JOIN movement other ON other.strikes = one.id`;

function toMovement(row: Row): Movement {
  const numberIn = (value: Row[string]): number | null => (value === null ? null : Number(value));
  return {
    id: Number(row.id),
    thing: String(row.thing),
    kind: row.kind as MovementKind,
    amount: Number(row.amount),
    offcut: numberIn(row.offcut ?? null),
    counted: numberIn(row.counted ?? null),
    entered: String(row.entered),
    number: row.number as string | null,
    strikes: numberIn(row.strikes ?? null),
    struckBy: numberIn(row.struck_by ?? null),
    at: String(row.at),
    who: row.who as StockHand,
    note: String(row.note),
  };
}

type Line = Pick<Movement, 'thing' | 'kind' | 'amount'> &
  Partial<Pick<Movement, 'offcut' | 'counted' | 'entered' | 'number' | 'strikes' | 'note'>>;

/** Writes one line. Call inside a write. */
export function addLine(book: Book, { at, who }: Moment, line: Line): void {
  const { thing, kind, amount, offcut = null, counted = null, entered = '' } = line;
  const { number = null, strikes = null, note = '' } = line;
  keeping(book, 'stock', thing, () =>
    prepared(
      book,
      `INSERT INTO movement (thing, kind, amount, offcut, counted, entered, number, strikes, at, who, note)
       VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    ).run(thing, kind, amount, offcut, counted, entered, number, strikes, at, who, note),
  );
}

/** Thrown within a write, so that what was entered before it in the same list is taken back too. */
class Refused extends Error {
  readonly outcome: StockOutcome;
  constructor(outcome: StockOutcome) {
    super(outcome.outcome);
    this.outcome = outcome;
  }
}

/**
 * Enters some things at once: all of them, or none.
 * @param inFile what begins a thing that has no line yet
 * @throws BookError; RangeError for an amount that no form sends
 */
export function enterStock(
  book: Book,
  moment: Moment,
  entries: readonly StockEntry[],
  inFile: FileStock = () => null,
): StockOutcome {
  for (const { amount, kind, note } of entries) {
    const least = kind === 'counted' ? 0 : 1;
    if (!Number.isSafeInteger(amount) || amount < least || amount > STOCK_CAPS.mm)
      throw new RangeError('amount');
    if (note.length > STOCK_CAPS.note) throw new RangeError('note');
  }
  try {
    return inOneWrite(book, () => {
      for (const entry of entries) {
        const refused = enterOne(book, moment, entry, inFile);
        if (refused !== null) throw new Refused(refused);
      }
      return { outcome: 'done' };
    });
  } catch (error) {
    if (error instanceof Refused) return error.outcome;
    throw error;
  }
}

function enterOne(book: Book, moment: Moment, entry: StockEntry, inFile: FileStock): StockOutcome | null {
  const { thing, kind, amount, entered, note, seen, offcut = null } = entry;
  if (seen !== null && seen !== balanceOf(book, thing).lastId) return { outcome: 'changed-meanwhile', thing };
  begin(book, moment, entry, inFile(thing));
  const balance = balanceOf(book, thing);
  const onReel = onReelOf(balance);
  switch (kind) {
    case 'received':
      addLine(book, moment, { thing, kind, amount, entered, note });
      return null;
    case 'counted':
      addLine(book, moment, { thing, kind, amount: amount - onReel, counted: amount, entered, note });
      // What is counted is right again, whatever the lines before it say.
      vouch(book, 'stock', thing);
      return null;
    case 'broken':
    case 'sold': {
      const have = offcut === null ? onReel : balance.offcuts.includes(offcut) ? offcut : 0;
      if (amount > have || (offcut !== null && amount !== offcut)) {
        return { outcome: 'not-there', thing, have: Math.max(0, have) };
      }
      addLine(book, moment, { thing, kind, amount: -amount, offcut, entered, note });
      return null;
    }
    case 'put-aside':
      if (amount > onReel) return { outcome: 'not-there', thing, have: Math.max(0, onReel) };
      addLine(book, moment, { thing, kind, amount: -amount, entered, note });
      addLine(book, moment, { thing, kind, amount, offcut: amount, entered, note });
      return null;
  }
}

/** All of it but what lies apart: of a component everything, of wire what is on the reel. */
export const onReelOf = ({ amount, offcuts }: Balance): number =>
  amount - offcuts.reduce((sum, mm) => sum + mm, 0);

/** What the file said is where a thing begins that nobody has counted here; from then on the book is asked. */
function begin(book: Book, moment: Moment, { thing, kind }: StockEntry, inFile: number | null): void {
  if (isCounted(book, thing)) return;
  noteWritten(book, thing, inFile, moment.at);
  if (inFile === null || kind === 'counted') return;
  addLine(book, moment, { thing, kind: 'counted', amount: inFile, counted: inFile, entered: String(inFile) });
}

function balanceOf(book: Book, thing: string): Balance {
  return balances(book).get(thing) ?? NOTHING;
}

const isCounted = (book: Book, thing: string): boolean =>
  prepared(book, 'SELECT 1 FROM movement WHERE thing = ? LIMIT 1').get(thing) !== undefined;

/**
 * Takes a line back that she entered by mistake, with the other half of an offcut that was put aside.
 * @returns `no-such-line` where there is none that she entered, or it is taken back already;
 *   `not-there` where what it brought is gone since
 */
export function strikeLine(
  book: Book,
  moment: Moment,
  id: number,
  note: string,
): 'done' | 'no-such-line' | 'not-there' {
  if (note.length > STOCK_CAPS.note) throw new RangeError('note');
  return inOneWrite(book, () => {
    const row = prepared(book, `${SELECT} WHERE one.id = ?`).get(id);
    if (row === undefined) return 'no-such-line';
    const line = toMovement(row as Row);
    if (line.struckBy !== null || line.kind === 'struck' || line.number !== null) return 'no-such-line';
    const halves = line.kind === 'put-aside' ? halvesOf(book, line) : [line];
    if (halves.some((half) => isGone(book, half))) return 'not-there';
    for (const half of halves) takeBack(book, moment, half, note);
    return 'done';
  });
}

/** True where what a line brought isn't there any more: only stringing may leave less than nothing. */
function isGone(book: Book, { thing, amount, offcut }: Movement): boolean {
  const balance = balanceOf(book, thing);
  if (amount <= 0) return false;
  return offcut === null ? onReelOf(balance) < amount : !balance.offcuts.includes(offcut);
}

/** What was put aside stands in two lines that follow each other: off the reel, and beside it. */
function halvesOf(book: Book, line: Movement): Movement[] {
  const other = prepared(book, `${SELECT} WHERE one.id = ?`).get(line.id + (line.amount < 0 ? 1 : -1));
  const half = other === undefined ? null : toMovement(other as Row);
  return half?.kind === 'put-aside' && half.thing === line.thing ? [line, half] : [line];
}

/** Writes what takes a line back. Call inside a write. */
export function takeBack(book: Book, moment: Moment, line: Movement, note = ''): void {
  const { thing, amount, offcut, number, id } = line;
  addLine(book, moment, { thing, kind: 'struck', amount: -amount, offcut, number, strikes: id, note });
}

/** Lines of an order that count still. */
export function linesOf(book: Book, number: string): Movement[] {
  return prepared(book, `${SELECT} WHERE one.number = ? AND one.kind <> 'struck' ORDER BY one.id`)
    .all(number)
    .map((row) => toMovement(row as Row))
    .filter(({ struckBy }) => struckBy === null);
}
