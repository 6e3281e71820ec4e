/** Whole-number division that rounds up, exact where both numbers are whole. */
export function over(amount: number, unit: number): number {
  // A remainder has the sign of its amount: below nothing, what is left of it is rounded up already.
  const rest = amount % unit;
  return (amount - rest) / unit + (rest > 0 ? 1 : 0);
}
