/** Sections can be counted as written. */
import type { AuthoredStrand } from '../build/design.ts';
import { sectionsIn } from '../build/naming.ts';
import type { Entry } from '../read/entry.ts';
import type { Problem, WrittenPiece } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

/** Fewest ≤ usual ≤ most in every section, as far as they can be read. */
export function assertCountsInOrder({ value, problemAt }: WrittenPiece): Problem[] {
  return sectionsIn(value).flatMap(({ value: section, path }) => {
    if (typeof section !== 'object' || section === null) return [];
    const { usual = 1, fewest = usual, most = usual } = section as Readonly<Record<string, unknown>>;
    if (![fewest, usual, most].every(Number.isInteger)) return [];
    const counts = { fewest: Number(fewest), usual: Number(usual), most: Number(most) };
    const inOrder = counts.fewest <= counts.usual && counts.usual <= counts.most;
    return inOrder ? [] : [problemAt(path, { code: 'counts-order', ...counts })];
  });
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
