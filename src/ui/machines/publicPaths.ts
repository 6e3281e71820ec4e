/** Every page that is to be found, without its language. */
import type { Catalogue } from '#catalogue/model/catalogue.ts';
import { groupings } from '../models/groups.ts';
import { pagesOf, SHEET_SIZE } from '../models/lists.ts';
import { tutorialPages } from '../models/tutorial.ts';

const ALONE = [
  [],
  ['guides'],
  ['find'],
  ['data'],
  ['measuring-strip', 'a4'],
  ['measuring-strip', 'letter'],
] as const;

export function publicPaths(catalogue: Catalogue): readonly (readonly string[])[] {
  const { pieces, guides } = catalogue;
  const past = pieces.filter(({ status }) => status === 'past');
  const now = pieces.filter(({ status }) => status !== 'past');
  const listed = (path: readonly string[], some: typeof pieces, size?: number): string[][] =>
    pagesOf(some, size).map(({ params }) => (params.page === undefined ? [...path] : [...path, params.page]));
  const grouped = groupings(catalogue, 'en').flatMap(({ by, groups }) => [
    [by],
    ...groups.flatMap((group) => listed([by, group.key], group.pieces)),
  ]);
  return [
    ...ALONE,
    ...listed(['pieces'], now),
    ...listed(['past'], past),
    ...listed(['line-sheet'], now, SHEET_SIZE),
    ...pieces.map(({ id }) => ['pieces', id]),
    ...tutorialPages(pieces, catalogue.shop.rules).map(({ piece, sizeKey }) => [
      ...['pieces', piece.id, 'make'],
      ...(sizeKey === null ? [] : [sizeKey]),
    ]),
    ...[...new Set(guides.map(({ id }) => id))].map((id) => ['guides', id]),
    ...grouped,
  ];
}
