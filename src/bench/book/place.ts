/** How far stringing has come, and the time it took where she let the clock run. */
import { dayOf } from '#words/day.ts';
import { keeping } from './keptDigest.ts';
import { inOneWrite, type Book } from './open.ts';
import { named } from './problem.ts';

/** Where somebody left off. */
export type Place = {
  /** Ticks done, from 0. */
  readonly place: number;
  /** Of the steps that were gone by. */
  readonly digest: string;
  /** Goes up with every save. */
  readonly version: number;
  /** Name of the paired device; '' at the bench itself. */
  readonly who: string;
  /** ISO 8601. */
  readonly at: string;
};

/** Time that a save brings along. */
export type TimeSave = {
  /** Made up by the device for this one save. */
  readonly save: string;
  readonly at: string;
  /** Seconds at the board since the last save, and the order of each piece that they are for, in even shares. */
  readonly seconds: number;
  readonly numbers: readonly string[];
};

export type PlaceSave = TimeSave & {
  readonly place: number;
  readonly digest: string;
  /** The version that was seen; 0 where there was none. */
  readonly version: number;
  readonly who: string;
};

/** `elsewhere`: another window or device was first; the place was not changed, and `kept` is what that other left. */
export type PlaceOutcome = { readonly outcome: 'done' | 'elsewhere'; readonly kept: Place };

/** Where stringing was left off; null where it wasn't begun. Throws BookError. */
export function findPlace(book: Book, subject: string): Place | null {
  return named(() => {
    const row = book.db.prepare('SELECT * FROM place WHERE subject = ?').get(subject);
    return row === undefined
      ? null
      : {
          place: Number(row.place),
          digest: String(row.digest),
          version: Number(row.version),
          who: String(row.who),
          at: String(row.at),
        };
  });
}

/**
 * Keeps a place, and the time that comes with it: that never stands against another's, so it counts in any case. The
 * same save sent again, since its answer was lost on the way, is done once. Throws BookError.
 */
export function keepPlace(book: Book, subject: string, save: PlaceSave): PlaceOutcome {
  return inOneWrite(book, () => {
    addTime(book, save);
    const known = findPlace(book, subject);
    if (known !== null && lastSave(book, subject) === save.save) return { outcome: 'done', kept: known };
    if (known !== null && known.version !== save.version) return { outcome: 'elsewhere', kept: known };
    const { place, digest, who, at } = save;
    const version = (known?.version ?? 0) + 1;
    book.db
      .prepare(
        'INSERT OR REPLACE INTO place (subject, digest, place, version, save, who, at) VALUES (?, ?, ?, ?, ?, ?, ?)',
      )
      .run(subject, digest, place, version, save.save, who, at);
    return { outcome: 'done', kept: { place, digest, version, who, at } };
  });
}

/** Keeps the time alone, where the place is of steps that are others now. Throws BookError. */
export function keepTime(book: Book, save: TimeSave): void {
  inOneWrite(book, () => addTime(book, save));
}

function lastSave(book: Book, subject: string): string | null {
  const row = book.db.prepare('SELECT save FROM place WHERE subject = ?').get(subject);
  return row === undefined ? null : String(row.save);
}

/** Call inside a write. */
function addTime(book: Book, { save, seconds, numbers, at }: TimeSave): void {
  for (const [number, share] of sharesOf(seconds, numbers)) {
    if (share <= 0) continue;
    keeping(book, 'order', number, () =>
      book.db
        .prepare('INSERT OR IGNORE INTO board_time (number, save, day, seconds) VALUES (?, ?, ?, ?)')
        .run(number, save, dayOf(at), share),
    );
  }
}

/** To whole seconds; what doesn't divide goes to the first. */
function sharesOf(seconds: number, numbers: readonly string[]): ReadonlyMap<string, number> {
  const each = Math.floor(seconds / Math.max(1, numbers.length));
  const shares = new Map<string, number>();
  for (const [index, number] of numbers.entries()) {
    const share = index === 0 ? seconds - each * (numbers.length - 1) : each;
    shares.set(number, (shares.get(number) ?? 0) + share);
  }
  return shares;
}

/** Time at the board on one day. */
export type DayTime = { readonly day: string; readonly seconds: number };

/** Days on which the clock ran for an order, in their order. Throws BookError. */
export function timeAtBoard(book: Book, number: string): DayTime[] {
  return named(() =>
    book.db
      .prepare(
        'SELECT day, sum(seconds) AS seconds FROM board_time WHERE number = ? GROUP BY day ORDER BY day',
      )
      .all(number)
      .map((row) => ({ day: String(row.day), seconds: Number(row.seconds) })),
  );
}

/** Seconds that the clock ran for an order; 0 where it never did. */
export const secondsAtBoard = (book: Book, number: string): number =>
  timeAtBoard(book, number).reduce((sum, { seconds }) => sum + seconds, 0);

/** Subjects that were begun, by when they were last left. Throws BookError. */
export function begunSubjects(book: Book): ReadonlyMap<string, Place> {
  return named(
    () =>
      new Map(
        book.db
          .prepare('SELECT subject FROM place')
          .all()
          .flatMap(({ subject }) => {
            const place = findPlace(book, String(subject));
            return place === null ? [] : [[String(subject), place] as const];
          }),
      ),
  );
}
