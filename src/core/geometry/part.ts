/** What the loop knows of a component: its outline seen from the side. Millimetres. */
export type Part = {
  readonly alongMm: number;
  /** Its diameter square to the wire. */
  readonly acrossMm: number;
  /** Corner radius, at most half of either measure. */
  readonly roundingMm: number;
};
