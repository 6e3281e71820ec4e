/**
 * Which pieces have a value of a filter: one bit for each, in the index's own order. The index could hold
 * this, but writes a piece's number in two or three bytes and all values of a filter in one file. Here they
 * are spread over as many files whatever is in them, so that what no piece has leads to a file as well.
 */
import type { Pair } from './reading/vocabulary.ts';

/** A prime, so that keys spread evenly; far more values than a shop has would still be few a file. */
export const LIST_FILES = 61;

/** One file's: bits in Base64 by the keys of the values, the first piece's in the lowest bit. */
export type Lists = Readonly<Record<string, string>>;

/** Name of a file, beside the figures. */
export const listName = (file: number): string => `${file}.json`;

export const listKey = ([name, value]: Pair): string => `${name}:${value}`;

/** Number of the file that holds a value's list, if any piece has it. */
export const listFile = (pair: Pair): number =>
  Array.from(listKey(pair)).reduce(
    (sum, letter) => (sum * 31 + (letter.codePointAt(0) ?? 0)) % LIST_FILES,
    0,
  );

/** @param pieces values of each, in the index's order */
export function listsOf(pieces: readonly (readonly Pair[])[]): readonly Lists[] {
  const bits = new Map<string, { readonly file: number; readonly bytes: Uint8Array }>();
  for (const [place, pairs] of pieces.entries()) {
    for (const pair of pairs) {
      const key = listKey(pair);
      const { bytes } = bits.get(key) ?? { bytes: new Uint8Array(Math.ceil(pieces.length / 8)) };
      bytes[place >> 3] = (bytes[place >> 3] ?? 0) | (1 << (place & 7));
      bits.set(key, { file: listFile(pair), bytes });
    }
  }
  return Array.from({ length: LIST_FILES }, (_, number) =>
    Object.fromEntries(
      [...bits]
        .filter(([, { file }]) => file === number)
        .map(([key, { bytes }]) => [
          key,
          btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')),
        ]),
    ),
  );
}

/** Tells of a place in the index's order whether the piece there has the value. */
export function readList(lists: Lists, pair: Pair): (place: number) => boolean {
  const bytes = atob(lists[listKey(pair)] ?? '');
  return (place) => ((bytes.charCodeAt(place >> 3) >> (place & 7)) & 1) === 1;
}
