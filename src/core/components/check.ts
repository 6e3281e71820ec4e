/** Whether a design can be computed and strung at all. */
import type { DesignProblem } from '../sizing/sizing.ts';
import type { Design } from '../strand/design.ts';
import { checkCounts } from './check/counts.ts';
import { designShape } from './check/designShape.ts';
import { checkHoles } from './check/holes.ts';
import { checkMeasures } from './check/measures.ts';
import { checkNames } from './check/names.ts';

/**
 * Every problem of a design, not only the first. Total: any JSON value may be
 * handed in; what isn't a design at all comes back as `bad-shape`.
 *
 * Each stage trusts the one before: figures of another type aren't compared,
 * names that don't exist aren't looked up. The doubled wire of the tail
 * depends on the counts and the shop's tail: see `ends/tail.ts`.
 */
export function checkDesign(design: Design): DesignProblem[] {
  const problems: DesignProblem[] = [];
  designShape(design, '', problems);
  if (problems.length > 0) return problems;
  checkMeasures(design, problems);
  const known = checkNames(design, problems);
  checkCounts(design, problems);
  if (known) checkHoles(design, problems);
  return problems;
}
