/** Codes of stock that the bench makes sentences of. */

/** What an amount may be entered in; which of them a thing has depends on how it is sold. */
export const STOCK_UNITS = ['piece', 'strand', 'pack', 'bag', 'g', 'm', 'cm', 'ft', 'in', 'spool'] as const;
export type StockUnit = (typeof STOCK_UNITS)[number];

/** Why an amount could not be read; `text` as it was typed. */
export type AmountProblem =
  | { readonly code: 'amount-missing' }
  | { readonly code: 'amount-unreadable'; readonly text: string }
  /** Half a bead. */
  | { readonly code: 'amount-not-whole'; readonly text: string }
  | { readonly code: 'amount-nothing' | 'amount-too-much' }
  | { readonly code: 'unit-unknown'; readonly text: string; readonly units: readonly StockUnit[] };

/** Why stock was not changed; what was typed is shown again. */
export type StockProblem =
  | AmountProblem
  | { readonly code: 'not-there'; readonly have: number; readonly wire: boolean }
  | { readonly code: 'note-too-long'; readonly most: number }
  | { readonly code: 'stock-changed' }
  /** What a line brought is used since. */
  | { readonly code: 'line-used' }
  | { readonly code: 'no-such-line' };
