/** Sections can be counted as written. */
import type { AuthoredStrand } from '../build/design.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

/** Fewest ≤ usual ≤ most in every section. */
export function assertCountsInOrder(
  entry: Entry<AuthoredPiece>,
  strands: readonly AuthoredStrand[],
): Problem[] {
  return strands.flatMap(({ sections, path }) =>
    sections.flatMap(({ usual, fewest = usual, most = usual }, index) =>
      fewest <= usual && usual <= most
        ? []
        : [entry.problemAt([...path, index], { code: 'counts-order', fewest, usual, most })],
    ),
  );
}

/** A focal section comes first in a mirrored strand, once, and never changes. */
export function assertFocalPlace(entry: Entry<AuthoredPiece>, strands: readonly AuthoredStrand[]): Problem[] {
  return strands.flatMap(({ sections, path, mirrored }) =>
    sections.flatMap((section, index) => {
      if (section.role !== 'focal') return [];
      const once = section.usual === 1 && (section.fewest ?? 1) === 1 && (section.most ?? 1) === 1;
      return mirrored && index === 0 && once
        ? []
        : [entry.problemAt([...path, index], { code: 'focal-place' })];
    }),
  );
}
