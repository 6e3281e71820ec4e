/** Everything that sizing a piece comes back to, worked out once. */
import { fittedOf, type Fitted } from '../design/choice.ts';
import type { Design } from '../design/design.ts';
import type { Rules } from '../design/rules.ts';
import { jointProblem, type JointProblem } from '../solver/jointProblem.ts';
import { measureOf } from '../solver/measureOf.ts';
import { nestingOf, type Nesting } from './nest.ts';

export type Job = {
  readonly design: Design;
  readonly fitted: Fitted;
  readonly toleranceMm: number;
  /** Pieces that the stock is shared out over. */
  readonly pieces: number;
  readonly joint: JointProblem;
  readonly nesting: Nesting;
};

export function jobOf(design: Design, rules: Rules, pieces: number): Job {
  const fitted = fittedOf(design.kind);
  return {
    design,
    fitted,
    toleranceMm: rules.toleranceMm[design.kind],
    pieces,
    joint: jointProblem(design, pieces, (strand) => measureOf(design, strand, fitted)),
    nesting: nestingOf(design),
  };
}
