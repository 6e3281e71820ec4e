/** A piece laid on a body, and the lengths that reach a place on it. */
import { figureOf, type Figure } from '#core/body/figure.ts';
import { lieOf, type Lie } from '#core/body/lie.ts';
import { loadOf } from '#core/body/load.ts';
import { lengthForDrop } from '#core/body/place.ts';
import { sizeChecked } from '#core/sizing/sizeChecked.ts';
import type { Candidate } from '#core/sizing/sizing.ts';
import { askedOf } from '#core/sizing/target.ts';
import type { WornStrand } from '#draw/drawings/body.ts';
import type { PieceForSizer } from '../../model/input.ts';

export type Laid = {
  readonly strands: readonly WornStrand[];
  /** Of the first strand; the one that a pendant hangs on. */
  readonly first: Lie;
  /** What hangs lowest of the first strand, below the pit of the neck, mm; null where it can't be laid. */
  readonly lowestMm: number | null;
};

const canBeDrawn = (lie: Lie): lie is WornStrand['lie'] => lie.status !== 'too-short';

/** Lays every strand of a candidate. Strands too short for that neck are left out. */
export function layOn(piece: PieceForSizer, candidate: Candidate, figure: Figure): Laid {
  const laid = candidate.sequences.map((sequence, index) => ({
    sequence,
    lie: lieOf(loadOf(piece.design, sequence, index), figure),
  }));
  const strands = laid.flatMap(({ sequence, lie }) => (canBeDrawn(lie) ? [{ sequence, lie }] : []));
  const first: Lie = laid[0]?.lie ?? { status: 'too-short', neckBaseMm: figure.neckBase.mm };
  const lowestMm = canBeDrawn(first) ? (first.pendantDropMm ?? first.dropMm) : null;
  return { strands, first, lowestMm };
}

/**
 * The neck that a collar closes round with an easy sit, whole mm: a typical
 * one may be too thick for it. Null for all else, and where no neck is like it.
 */
export function collarNeckMm(piece: PieceForSizer, candidate: Candidate): number | null {
  if (piece.design.kind !== 'collar') return null;
  const neckGirthMm = Math.floor(askedOf(piece.rules, 'collar', 'neck', candidate.insideGirthMm, 'easy'));
  return figureOf({ sex: 'unstated', neckGirthMm, heightMm: null }).ok ? neckGirthMm : null;
}

/** The nearest piece that can be made for a finished length; null where the piece can't be sized by length. */
export function nearestTo(piece: PieceForSizer, lengthMm: number): Candidate | null {
  const sizing = sizeChecked(piece.design, piece.rules, piece.listedMinor, {
    measure: { of: 'length', mm: lengthMm },
    sit: 'easy',
    hand: 'right',
    pick: 'best',
    quantity: 1,
  });
  if (sizing.status === 'refused') return null;
  return sizing.status === 'outside' ? sizing.nearest : sizing.best;
}

/**
 * Finished length whose lowest point (the pendant's middle, where one hangs)
 * lies at a place below the pit of the neck, mm; null where none reaches there.
 */
export function lengthAt(
  piece: PieceForSizer,
  candidate: Candidate,
  figure: Figure,
  dropMm: number,
): number | null {
  const sequence = candidate.sequences[0];
  if (sequence === undefined) return null;
  const aim = piece.design.hanging === null ? 'strand' : 'pendant';
  return lengthForDrop(loadOf(piece.design, sequence, 0), figure, dropMm, aim);
}

/** A finished length that still closes round that neck, however far within its tolerance the piece comes out short. */
export function leastRound(piece: PieceForSizer, candidate: Candidate, figure: Figure): number {
  const sequence = candidate.sequences[0];
  const acrossMm = sequence === undefined ? 0 : loadOf(piece.design, sequence, 0).acrossMm;
  return figure.neckGirth.mm + Math.PI * acrossMm + piece.rules.toleranceMm[piece.design.kind];
}

/** Steps that are looked ahead for another piece: with an eighth of an inch, five inches. */
const MOST_STEPS = 40;
/** Lengths closer than this are the same piece. */
const SAME_MM = 0.005;

/**
 * The next longer (`way` 1) or shorter (-1) length, in whole steps from
 * `wantedMm`, that asks for another piece than `candidate`: a tolerance may
 * hold the same piece over many steps. Null at the end of what it can be.
 */
export function nextLength(
  piece: PieceForSizer,
  candidate: Candidate,
  wantedMm: number,
  way: 1 | -1,
  stepMm: number,
): number | null {
  const from = Math.round(wantedMm / stepMm);
  for (let step = 1; step <= MOST_STEPS; step += 1) {
    const lengthMm = (from + way * step) * stepMm;
    const next = nearestTo(piece, lengthMm);
    if (next === null) return null;
    if ((next.fittedMm - candidate.fittedMm) * way > SAME_MM) return lengthMm;
  }
  return null;
}
