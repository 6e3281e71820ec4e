/** The figures of one piece that the buyer reads. */
import type { Candidate } from '#core/sizing/sizing.ts';
import type { Design } from '#core/design/design.ts';
import { finishedLengthMm } from '#core/design/loopParts.ts';

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
  const { sequences, chainUsedMm, insideGirthMm, priceMinor, massG } = candidate;
  return {
    lengthsMm: sequences.map((sequence) => finishedLengthMm(design, sequence, chainUsedMm)),
    insideGirthMm,
    priceMinor,
    massG,
    parts: sequences.reduce((sum, sequence) => sum + sequence.length, 0),
  };
}
