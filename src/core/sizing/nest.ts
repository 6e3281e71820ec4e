/** Targets of several strands on one clasp. */
import type { Design } from '../strand/design.ts';
import { expand } from '../strand/expand.ts';
import { finishedLengthMm } from '../strand/parts.ts';
import { usual } from './usual.ts';

/**
 * What each strand is fitted to, mm, for a target of the first one. Strands
 * side by side share the target; nested ones keep the differences in length
 * that the maker gave them.
 */
export function strandTargetsMm(design: Design, targetMm: number): number[] {
  if (design.lie !== 'nested') return design.strands.map(() => targetMm);
  const lengths = expand(design, usual(design)).map((sequence) => finishedLengthMm(design, sequence));
  const first = lengths[0] ?? 0;
  return lengths.map((lengthMm) => targetMm + lengthMm - first);
}
