/** Whether a design can be computed and strung at all. */
import type { ValidationError } from '../validationError.ts';
import type { Design } from '../design.ts';
import { validateChain } from './chain.ts';
import { validateCounts } from './counts.ts';
import { designShape } from './designShape.ts';
import { validateHoles } from './holes.ts';
import { validateMeasures } from './measures.ts';
import { validateNames } from './names.ts';

/**
 * Every problem of a design, not only the first. Total: any JSON value may be
 * handed in; what isn't a design at all comes back as `bad-shape`.
 *
 * Each stage trusts the one before: figures of another type aren't compared,
 * names that don't exist aren't looked up. The doubled wire of the tail
 * depends on the counts and the shop's tail: see `ends/tail.ts`.
 */
export function validateDesign(design: Design): ValidationError[] {
  const problems: ValidationError[] = [];
  designShape(design, '', problems);
  if (problems.length > 0) return problems;
  validateMeasures(design, problems);
  const known = validateNames(design, problems);
  validateCounts(design, problems);
  validateChain(design, problems);
  if (known) validateHoles(design, problems);
  return problems;
}
