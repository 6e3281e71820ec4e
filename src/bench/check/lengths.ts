/** How long an order's piece comes out, strand by strand. */
import type { Design } from '#core/design/design.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { strandLengthsMm } from '#core/sizing/strandLengths.ts';
import type { OrderDocument } from '#order/document.ts';
import type { MeasuredFacts } from '#words/orderFacts.ts';
import type { Recheck } from './recheck.ts';

/**
 * Finished lengths, mm: of what would be strung, else as the buyer saw them.
 * Of several strands in an order before version 4 only the longest is known.
 */
export function lengthsOf(
  { shown }: Pick<OrderDocument, 'shown'>,
  checked: Pick<Recheck, 'copy' | 'candidate'> | null,
): readonly number[] {
  if (checked?.copy && checked.candidate) return strandLengthsMm(checked.copy.design, checked.candidate);
  return shown.strandsMm.length > 0 ? shown.strandsMm : [shown.lengthMm];
}

/** A candidate's figures, as an order tells them. */
export function measuredOf(design: Design, candidate: Candidate): MeasuredFacts {
  const { counts, finishedLengthMm, insideGirthMm } = candidate;
  const strandsMm = counts.length > 1 ? strandLengthsMm(design, candidate) : [];
  return { counts, lengthMm: finishedLengthMm, strandsMm, insideGirthMm };
}
