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

/** Why a table gives nothing at all. `line` from 1, the heading's being the first. */
export type TableProblem =
  | { readonly code: 'table-empty' | 'table-not-utf8' }
  | { readonly code: 'table-too-large'; readonly most: number }
  | { readonly code: 'table-broken'; readonly line: number }
  | { readonly code: 'heading-missing'; readonly names: readonly string[] }
  | { readonly code: 'heading-twice'; readonly name: string };

/** Why one line of a table can't be entered. */
export type RowProblem =
  | StockProblem
  | { readonly code: 'row-unnamed' }
  /** `near`: what it may be meant to be; '' for nothing. */
  | { readonly code: 'row-unknown'; readonly text: string; readonly near: string }
  | { readonly code: 'row-differs'; readonly thing: string; readonly number: string }
  | { readonly code: 'row-kind'; readonly text: string }
  /** Counted in that line already. */
  | { readonly code: 'row-twice'; readonly line: number };

/** What is bought: a metre of wire where nothing is said of spools. */
export type SoldUnit = Extract<StockUnit, 'piece' | 'strand' | 'pack' | 'bag' | 'spool' | 'm'>;
