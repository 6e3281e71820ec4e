/** What a pair of hands says when a step can't be done as the card has it. */
export class Cannot extends Error {}

/** Stops where something doesn't hold that hands need. */
export function need(holds: boolean, why: string): asserts holds {
  if (!holds) throw new Cannot(why);
}

/** What is cut, set and measured by hand agrees to a thousandth of a millimetre, or the card is wrong. */
const SAME_MM = 0.001;

export const same = (one: number, other: number): boolean => Math.abs(one - other) < SAME_MM;
