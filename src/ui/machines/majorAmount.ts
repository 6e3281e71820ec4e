/** Money as machines write it: a decimal point, as many decimals as the currency has, no sign. */
export function majorAmount(minor: number, currency: string): string {
  const digits =
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  return (minor / 10 ** digits).toFixed(digits);
}
