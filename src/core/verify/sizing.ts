/**
 * Checks an answer of the sizing against the design. What is stated of every
 * piece is worked out anew, apart from the search, and so is the claim that no
 * other choice is better, all strands together. Laying out, girth and costs share
 * nothing with the solver. It says what is broken.
 *
 * What nested strands are fitted to comes from where they lie on a body, which
 * is proven by itself (tests/core/sizing/nest.test.ts) and taken as given here.
 */
import { nestingOf, type Nesting } from '../sizing/nest.ts';
import type { Candidate, Sizing } from '../sizing/sizing.ts';
import type { Design } from '../design/design.ts';
import { betterChoice } from './better.ts';
import { allowed, near, verifyCandidate, type Fault } from './candidate.ts';
import { checkLimits } from './limits.ts';
import type { Priced } from './price.ts';
import { measured, offMm, worstOf } from './strand.ts';

/** A hundredth, in which answers are compared, mm. */
const HUNDREDTH_MM = 0.01;
/** A chain of unknown links isn't let out by less than half a millimetre, and so a piece may be off by as much. */
const CHAIN_MM = 0.51;

type Sized = Exclude<Sizing, { status: 'refused' }>;
type Hold = (right: boolean, code: Fault['code'], at?: string) => void;

/** An answer, the design it is for, and what each of its strands is fitted to, mm. */
type Case = {
  readonly design: Design;
  readonly sizing: Sized;
  readonly targetsMm: readonly number[];
  readonly hold: Hold;
};

const hundredths = (mm: number): number => Math.round(Math.abs(mm) * 100);

const targetsOf = (design: Design, nesting: Nesting, firstMm: number): readonly number[] =>
  design.strands.map((_, index) => nesting.targetMm(index, firstMm));

/** How far each strand is from what it is fitted to, mm. */
function offsOf({ design, sizing, targetsMm }: Case, candidate: Candidate): readonly number[] {
  const { fitted } = sizing;
  return targetsMm.map((targetMm, index) => {
    const counts = candidate.counts[index] ?? [];
    // In the link it is closed in: of a piece below its target the next one may come nearer, and lie above.
    return closesInLinks(design)
      ? measured(design, index, counts, fitted, candidate.chainUsedMm) - targetMm
      : offMm(design, index, counts, fitted, targetMm);
  });
}

const closesInLinks = ({ strands, ends }: Design): boolean =>
  strands.length === 1 && ends.linkMm !== undefined;

/** No other link brings these counts nearer by more than rounding. */
function checkLink(of: Case, candidate: Candidate): void {
  const { design, sizing, targetsMm, hold } = of;
  if (!closesInLinks(design)) return;
  const nearestMm = offMm(design, 0, candidate.counts[0] ?? [], sizing.fitted, targetsMm[0]!);
  hold(hundredths(offsOf(of, candidate)[0]!) <= hundredths(nearestMm) + 1, 'chain');
}

/** Error and tolerance as the answer states them: of several strands those of the one furthest off. */
function checkStated(of: Case, candidate: Candidate): void {
  const { design, sizing, hold } = of;
  const single = design.strands.length === 1;
  const offs = offsOf(of, candidate);
  const { extenderMm, linkMm } = design.ends;
  const byMm = single && extenderMm > 0 && linkMm === undefined ? CHAIN_MM : HUNDREDTH_MM;
  hold(near(Math.abs(worstOf(offs)), Math.abs(candidate.errorMm), byMm), 'error');
  if (single) {
    hold(near(candidate.fittedMm - sizing.targetMm, candidate.errorMm, HUNDREDTH_MM), 'error');
  }
  const most = Math.max(...offs.map(hundredths));
  const allows = hundredths(sizing.toleranceMm);
  // A hundredth from the tolerance rounding decides, and either is right.
  if (Math.abs(most - allows) > 1) hold(candidate.withinTolerance === most < allows, 'tolerance');
}

/** A piece offered below or above has every strand on that side that isn't within tolerance. */
function checkSide(of: Case, candidate: Candidate, side: -1 | 1): void {
  offsOf(of, candidate).forEach((off, index) => {
    const within = hundredths(off) <= hundredths(of.sizing.toleranceMm);
    of.hold(within || off * side > 0, 'side', `strands.${index}`);
  });
}

/**
 * What is broken in an answer; empty where nothing is. A refusal is passed over.
 * @param priced rules and listed price that it was asked with; null: prices aren't looked at
 */
export function verifySizing(design: Design, sizing: Sizing, priced: Priced | null = null): Fault[] {
  if (sizing.status === 'refused') return [];
  const faults: Fault[] = [];
  const hold: Hold = (right, code, at = sizing.status) => {
    if (!right) faults.push({ code, at });
  };
  const nesting = nestingOf(design);
  const of: Case = { design, sizing, targetsMm: targetsOf(design, nesting, sizing.targetMm), hold };
  const { leastMm, mostMm } = sizing.limits;
  // Of several strands each is fitted by itself: one may be a step beyond where another ends.
  const single = design.strands.length === 1;
  const candidates =
    sizing.status === 'outside'
      ? [sizing.nearest]
      : [sizing.best, sizing.chosen, sizing.below, sizing.above].filter((one) => one !== null);
  for (const candidate of candidates) {
    faults.push(...verifyCandidate(design, candidate, sizing.choice.quantity, priced));
    checkStated(of, candidate);
    const { fittedMm } = candidate;
    if (single) hold(fittedMm > leastMm - HUNDREDTH_MM && fittedMm < mostMm + HUNDREDTH_MM, 'limits');
  }
  hold((sizing.fitted === 'length') === (design.kind === 'necklace'), 'fitted');
  // What a tape round a body gives and what the piece must measure differ by one allowance throughout.
  const allowanceMm = sizing.targetMm - sizing.choice.measure.mm;
  hold(near(leastMm - sizing.limits.leastAskedMm, allowanceMm), 'limits');
  hold(near(mostMm - sizing.limits.mostAskedMm, allowanceMm), 'limits');
  hold(checkLimits(design, sizing, nesting), 'limits');
  const best = sizing.status === 'outside' ? sizing.nearest : sizing.best;
  checkLink(of, best);
  const whole = design.strands.every((strand, index) => allowed(strand, best.counts[index]));
  const wanted = { ...sizing, targetsMm: of.targetsMm, pieces: sizing.choice.quantity };
  // What isn't a choice of this design at all has been told above.
  const better = whole ? betterChoice(design, best.counts, wanted) : null;
  better?.forEach((counts, strand) => {
    hold(counts.join() === best.counts[strand]!.join(), 'better', `strands.${strand}`);
  });
  if (sizing.status === 'outside') {
    if (single) hold(sizing.side === 'below' || sizing.targetMm > leastMm, 'side');
    if (single) hold(sizing.side === 'above' || sizing.targetMm < mostMm, 'side');
    return faults;
  }
  hold(sizing.status === 'fits' ? sizing.best.withinTolerance : !sizing.best.withinTolerance, 'tolerance');
  if (sizing.status === 'fits') hold(sizing.below === null && sizing.above === null, 'side');
  const { below, above, chosen } = sizing;
  hold(chosen === ({ best, below, above }[sizing.choice.pick] ?? best) && sizing.proven, 'pick');
  if (below !== null) checkSide(of, below, -1);
  if (above !== null) checkSide(of, above, 1);
  for (const other of [below, above]) {
    if (other !== null) hold(hundredths(other.errorMm) >= hundredths(best.errorMm), 'better');
  }
  return faults;
}
