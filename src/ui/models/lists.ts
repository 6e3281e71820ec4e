/** Long lists cut into pages. */
import type { Piece } from '#catalogue/model/catalogue.ts';

/** Pieces a page: eight rows of three, or twelve of two. */
export const PAGE_SIZE = 24;
/** Pieces of a line sheet: eight sheets of paper, as many as a buyer leafs through. */
export const SHEET_SIZE = 72;

export type ListPart = {
  readonly pieces: readonly Piece[];
  /** From 1. */
  readonly page: number;
  readonly of: number;
  readonly total: number;
};

/** Route parameters of every page of a list; the first has no number in its address. An empty list has one page. */
export function pagesOf(
  pieces: readonly Piece[],
  size = PAGE_SIZE,
): { params: { page: string | undefined }; props: { part: ListPart } }[] {
  const of = Math.max(1, Math.ceil(pieces.length / size));
  return Array.from({ length: of }, (_, index) => {
    const some = pieces.slice(index * size, (index + 1) * size);
    const part = { pieces: some, page: index + 1, of, total: pieces.length };
    return { params: { page: index === 0 ? undefined : String(index + 1) }, props: { part } };
  });
}

/**
 * Which page numbers to show: the first, the last and those beside the current
 * one, ascending; null stands for those left out between.
 */
export function nearPages(page: number, of: number): (number | null)[] {
  const shown = [1, page - 1, page, page + 1, of].filter((one) => one >= 1 && one <= of);
  const sorted = [...new Set(shown)].sort((a, b) => a - b);
  return sorted.flatMap((one, index) => {
    const before = sorted[index - 1];
    return before !== undefined && one - before > 1 ? [null, one] : [one];
  });
}
