/** The piece comes out at a size that a person could wear, all its strands alike. */
import { solveLoop } from '#core/geometry/loop.ts';
import { jobOf } from '#core/sizing/job.ts';
import { limitsOf } from '#core/sizing/limits.ts';
import { unlessSearchLimit } from '#core/sizing/refused.ts';
import type { Rules } from '#core/design/rules.ts';
import { usual } from '#core/sizing/usual.ts';
import type { Design, PieceKind } from '#core/design/design.ts';
import { expand } from '#core/design/expand.ts';
import { finishedLengthMm, loopParts } from '#core/design/loopParts.ts';
import type { Entry } from '../read/entry.ts';
import type { FieldPath, Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

/**
 * Finished length (necklaces) or inside girth, wide enough for a child of two
 * and for the largest adult (girths: 1st to 99th percentile of ANSUR II and of
 * Snyder 1977, with room to spare). Outside it a count or a unit has slipped.
 */
const wearable: Readonly<Record<PieceKind, readonly [leastMm: number, mostMm: number]>> = {
  necklace: [280, 2500],
  bracelet: [90, 300],
  anklet: [120, 400],
  collar: [200, 600],
};

/** Measures of each strand at its usual counts; 0 where it closes round nothing. */
function usualMeasures(design: Design): number[] {
  return expand(design, usual(design)).map((sequence) =>
    design.kind === 'necklace'
      ? finishedLengthMm(design, sequence)
      : solveLoop(loopParts(design, sequence)).insideGirthMm,
  );
}

/** A problem where the piece, at its usual counts, fits nobody; told at `path`. */
export function assertWearable(entry: Entry<AuthoredPiece>, design: Design, path: FieldPath = []): Problem[] {
  const { kind } = design;
  const [leastMm, mostMm] = wearable[kind];
  const slipped = usualMeasures(design).find((mm) => !(mm >= leastMm && mm <= mostMm));
  return slipped === undefined
    ? []
    : [entry.problemAt(path, { code: 'size-absurd', kind, mm: slipped, leastMm, mostMm })];
}

/** A problem where no size suits all strands; told at `path`. */
export function assertTogether(
  entry: Entry<AuthoredPiece>,
  design: Design,
  rules: Rules,
  path: FieldPath = ['strands'],
): Problem[] {
  if (design.strands.length < 2) return [];
  // In which measure and at which sit its limits are told changes nothing here.
  const reach = unlessSearchLimit(() => limitsOf(jobOf(design, rules, 1), rules, 'length', 'easy'));
  if (reach.status !== 'refused' || reach.problem.code !== 'strands-apart') return [];
  const { leastMm, mostMm, short } = reach.problem;
  // A tray that has run low is no mistake in the piece: the shop goes on, and says so there.
  if (short.length > 0) return [];
  return [entry.problemAt(path, { code: 'strands-apart', leastMm, mostMm })];
}
