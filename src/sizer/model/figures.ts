/** The figures of one piece that the buyer reads. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { strandLengthsMm } from '#core/sizing/strandLengths.ts';

export type PieceFigures = {
  /** Of every strand. */
  readonly lengthsMm: readonly number[];
  readonly insideGirthMm: number;
  readonly priceMinor: number;
  readonly massG: number;
  /** Beads and findings, clasp and ring not counted. */
  readonly parts: number;
};

/** Reads them off a candidate. */
export function figuresOf(design: Design, candidate: Candidate): PieceFigures {
  const { sequences, insideGirthMm, priceMinor, massG } = candidate;
  return {
    lengthsMm: strandLengthsMm(design, candidate),
    insideGirthMm,
    priceMinor,
    massG,
    parts: sequences.reduce((sum, sequence) => sum + sequence.length, 0),
  };
}
