/**
 * Keys by which Astro knows a page of the last build again: where everything
 * that the page is made from is the same, its file is taken over.
 */
import type { Piece } from '#catalogue/model/catalogue.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { digest } from '../site/digest.ts';

const DIGITS = 24;

/** A piece and the bytes of its photographs. */
function pieceMark(piece: Piece, contentFolder: string): string {
  const photographs = piece.pictures.map(({ file }) => readFileSync(join(contentFolder, file)));
  return digest(DIGITS, [JSON.stringify(piece), ...photographs]);
}

/** What all pages of a build share: the code, the shop's frame, how pictures are made. */
export type Common = { readonly everywhere: string; readonly contentFolder: string };

/**
 * Keys for the pages of one build.
 * @returns a function from a page's properties and the frame around it to its
 *   key. Pieces may stand anywhere in them; each is read once.
 */
export function pageKeys({ everywhere, contentFolder }: Common): (frame: unknown, props: object) => string {
  const marks = new WeakMap<object, string>();
  const isPiece = (value: object): value is Piece => 'design' in value && 'pictures' in value;
  const short = (_: string, value: unknown): unknown => {
    if (typeof value !== 'object' || value === null || !isPiece(value)) return value;
    const mark = marks.get(value) ?? pieceMark(value, contentFolder);
    marks.set(value, mark);
    return mark;
  };
  return (frame, props) => digest(DIGITS, [everywhere, JSON.stringify(frame), JSON.stringify(props, short)]);
}
