/** A buyer's choice in, the piece she would get out. */
import { validateDesign } from '../design/validate/validateDesign.ts';
import type { Design } from '../design/design.ts';
import type { Choice } from '../design/choice.ts';
import { refuse } from './refused.ts';
import type { Rules } from '../design/rules.ts';
import { sizeChecked } from './sizeChecked.ts';
import type { Sizing } from './sizing.ts';

/**
 * Sizes a piece for a buyer.
 *
 * Necklaces are fitted to a finished length (the one asked for, or the
 * neck-base girth expected for a neck with what the sit adds), all others to
 * an inside girth (the body's girth with what the sit adds).
 * @param listedMinor price of the piece with its usual counts.
 * @param listed the piece that the listed price is for, where `design` has
 *   another clasp or pendant than it (`withEnds`, `withHanging`).
 * @returns the proven optimum, or why there is none; nothing is thrown for any
 *   design or choice.
 */
export function size(
  design: Design,
  rules: Rules,
  listedMinor: number,
  choice: Choice,
  listed: Design = design,
): Sizing {
  const problems = [...validateDesign(design), ...(listed === design ? [] : validateDesign(listed))];
  if (problems.length > 0) return refuse({ code: 'design', problems });
  return sizeChecked(design, rules, listedMinor, choice, listed);
}
