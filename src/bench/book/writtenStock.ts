/** What files said of stock when book and file were last in step: what tells a number that she wrote by hand. */
import { prepared, type Book } from './open.ts';
import { named } from './problem.ts';

/** By component; null where its file said nothing. Throws BookError. */
export function writtenStock(book: Book): ReadonlyMap<string, number | null> {
  return named(
    () =>
      new Map(
        prepared(book, 'SELECT thing, said FROM written_stock')
          .all()
          .map((row) => [String(row.thing), row.said === null ? null : Number(row.said)] as const),
      ),
  );
}

/** Notes that a file and the book are in step. Call inside a write. */
export function noteWritten(book: Book, thing: string, said: number | null, at: string): void {
  prepared(
    book,
    `INSERT INTO written_stock (thing, said, at) VALUES (?, ?, ?)
     ON CONFLICT (thing) DO UPDATE SET said = excluded.said, at = excluded.at`,
  ).run(thing, said, at);
}
