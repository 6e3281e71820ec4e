/** A search ran into its cap: no answer is claimed. Thrown inside `core` only; `unlessSearchLimit` makes a refusal of it. */
export class SearchLimit extends Error {}
