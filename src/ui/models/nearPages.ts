/**
 * Which page numbers to show: the first, the last and those beside the current
 * one, ascending; null stands for those left out between.
 */
export function nearPages(page: number, of: number): (number | null)[] {
  const shown = [1, page - 1, page, page + 1, of].filter((one) => one >= 1 && one <= of);
  const sorted = [...new Set(shown)].sort((a, b) => a - b);
  return sorted.flatMap((one, index) => {
    const before = sorted[index - 1];
    return before !== undefined && one - before > 1 ? [null, one] : [one];
  });
}
