/** The shop's mark: nine pins as they are set up, seen from above, within a square of 24. */
export const MARK_SPOTS = [
  [12, 3],
  [7.5, 7.5],
  [16.5, 7.5],
  [3, 12],
  [12, 12],
  [21, 12],
  [7.5, 16.5],
  [16.5, 16.5],
  [12, 21],
] as const;
