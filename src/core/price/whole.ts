/** Whole-number division that rounds up, exact where both numbers are whole. */
export function over(amount: number, unit: number): number {
  const rest = ((amount % unit) + unit) % unit;
  return (amount - rest) / unit + (rest > 0 ? 1 : 0);
}
