/**
 * Checks an answer of the sizing against the design. What is stated of every
 * piece is worked out anew, apart from the search, and so is the claim that
 * nothing one repeat away is better. Laying out, girth and costs share nothing
 * with the solver. It says what is broken.
 */
import type { Candidate, Sizing } from '../sizing/sizing.ts';
import type { Design } from '../strand/design.ts';
import {
  allowed,
  checkStock,
  CLOSE_MM,
  lengthOf,
  near,
  verifyCandidate,
  type Fault,
} from './verifyCandidate.ts';
import { girthByRelaxing } from './verifyGirth.ts';
import { costOfCounts, strung, verifierParts } from './verifyParts.ts';

/** A hundredth, in which answers are compared, mm. */
const HUNDREDTH_MM = 0.01;

type Sized = Exclude<Sizing, { status: 'refused' }>;

/** Error and tolerance as the answer states them, for a piece of one strand. */
function checkStated(
  sizing: Sized,
  candidate: Candidate,
  hold: (right: boolean, code: Fault['code']) => void,
): void {
  const off = candidate.fittedMm - sizing.targetMm;
  hold(near(Math.abs(off), Math.abs(candidate.errorMm), HUNDREDTH_MM), 'error');
  const within = Math.round(Math.abs(candidate.errorMm) * 100) <= Math.round(sizing.toleranceMm * 100);
  hold(candidate.withinTolerance === within, 'tolerance');
}

/** Excess over the tolerance in hundredths, then what the change costs. */
function standing(design: Design, counts: readonly number[], sizing: Sized): readonly [number, number] {
  const strand = design.strands[0]!;
  const measured =
    sizing.fitted === 'length'
      ? lengthOf(design, strung(strand, counts), 0)
      : girthByRelaxing(verifierParts(design, strand, counts, 0));
  const error = Math.round(Math.abs(measured - sizing.targetMm) * 100);
  return [Math.max(0, error - Math.round(sizing.toleranceMm * 100)), costOfCounts(strand, counts)];
}

/** Whether a repeat more or less of one section would be preferred. One strand without an extender only. */
function beatenNextDoor(design: Design, best: Candidate, sizing: Sized): boolean {
  const strand = design.strands[0]!;
  const counts = best.counts[0] ?? [];
  const [excess, cost] = standing(design, counts, sizing);
  return counts.some((count, index) =>
    [count - 1, count + 1].some((other) => {
      const next = counts.with(index, other);
      if (!allowed(strand, next) || !checkStock(design, { counts: [next] }, sizing.choice.quantity))
        return false;
      const [itsExcess, itsCost] = standing(design, next, sizing);
      // A hundredth either way is rounding's, not the solver's.
      return itsExcess < excess - 1 || (itsExcess === 0 && excess === 0 && itsCost < cost);
    }),
  );
}

/**
 * What is broken in an answer; empty where nothing is. A refusal is passed
 * over. Of several strands the figures are checked, but not each one's target.
 */
export function verifySizing(design: Design, sizing: Sizing): Fault[] {
  if (sizing.status === 'refused') return [];
  const pieces = sizing.choice.quantity;
  const faults: Fault[] = [];
  const hold = (right: boolean, code: Fault['code'], at = sizing.status): void => {
    if (!right) faults.push({ code, at });
  };
  const single = design.strands.length === 1;
  const { leastMm, mostMm } = sizing.limits;
  hold(leastMm <= mostMm + CLOSE_MM, 'limits');
  const candidates =
    sizing.status === 'outside'
      ? [sizing.nearest]
      : [sizing.best, sizing.chosen, sizing.below, sizing.above].filter((one) => one !== null);
  for (const candidate of candidates) {
    faults.push(...verifyCandidate(design, candidate, pieces));
    if (single) checkStated(sizing, candidate, hold);
    if (single)
      hold(
        candidate.fittedMm > leastMm - HUNDREDTH_MM && candidate.fittedMm < mostMm + HUNDREDTH_MM,
        'limits',
      );
  }
  if (sizing.status === 'outside') {
    hold(sizing.side === 'below' || sizing.targetMm > leastMm, 'side');
    hold(sizing.side === 'above' || sizing.targetMm < mostMm, 'side');
    return faults;
  }
  hold(sizing.status === 'fits' ? sizing.best.withinTolerance : !sizing.best.withinTolerance, 'tolerance');
  if (sizing.status === 'fits') hold(sizing.below === null && sizing.above === null, 'side');
  const { below, above, best } = sizing;
  if (single && below !== null) hold(below.fittedMm <= sizing.targetMm + CLOSE_MM, 'side');
  if (single && above !== null) hold(above.fittedMm >= sizing.targetMm - CLOSE_MM, 'side');
  if (single && design.ends.extenderMm === 0) hold(!beatenNextDoor(design, best, sizing), 'better');
  for (const other of [below, above]) {
    const error = (one: Candidate): number => Math.round(Math.abs(one.errorMm) * 100);
    if (single && other !== null) hold(error(other) >= error(best), 'better');
  }
  return faults;
}
