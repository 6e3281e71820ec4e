/** The finished length of every strand of one piece. */
import type { Design } from '../design/design.ts';
import { finishedLengthMm } from '../design/loopParts.ts';
import type { Candidate } from './sizing.ts';

/** Millimetres, in the order of the design's strands, the chain let out as far as the candidate uses it. */
export function strandLengthsMm(
  design: Design,
  { sequences, chainUsedMm }: Pick<Candidate, 'sequences' | 'chainUsedMm'>,
): number[] {
  return sequences.map((sequence) => finishedLengthMm(design, sequence, chainUsedMm));
}
