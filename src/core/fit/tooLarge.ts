/** A search ran into its cap: no answer is claimed. Thrown inside `core` only; `size` and `range` turn it into a problem. */
export class TooLarge extends Error {}
