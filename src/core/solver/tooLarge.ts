/** A search ran into its cap: no answer is claimed. Thrown inside `core` only; `unlessTooLarge` makes a refusal of it. */
export class TooLarge extends Error {}
