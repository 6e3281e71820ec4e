/** The ways between the pages of one piece at the bench. */
import { underBase } from '#ui/site/base.ts';
import type { PreviewWords } from '#words/words.ts';

const PAGES = ['words', 'board', 'price', 'photos', 'preview', 'tutorial', 'card'] as const;

export type PiecePageName = (typeof PAGES)[number];

/** Address of one of them. */
export function pageOfPiece(page: PiecePageName, id: string): `/${string}` {
  if (page === 'preview') return `/bench/preview/pieces/${id}/`;
  return page === 'card' ? `/bench/pieces/${id}/` : `/bench/pieces/${id}/${page}/`;
}

/** Links to all pages of the piece but `at`, the one they stand on; null where that is none of them. */
export function PieceWays({
  id,
  at,
  words,
}: {
  readonly id: string;
  readonly at: PiecePageName | null;
  readonly words: PreviewWords;
}) {
  return (
    <p class="row">
      {PAGES.filter((page) => page !== at).map((page) => (
        <a key={page} href={underBase(pageOfPiece(page, id))}>
          {words.ways[page]}
        </a>
      ))}
    </p>
  );
}
