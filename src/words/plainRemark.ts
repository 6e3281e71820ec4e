/** What could not be read in a plain e-mail, or was taken for granted, in codes. */
export type PlainRemark =
  /** Nothing was pasted. */
  | { readonly code: 'empty' }
  | { readonly code: 'piece' | 'size' | 'hand' | 'name' | 'email' }
  /** The words and the bracket behind them name two sizes: one was changed. */
  | { readonly code: 'two-sizes'; readonly first: string; readonly second: string }
  /** The piece has been changed since. */
  | { readonly code: 'revision' }
  | { readonly code: 'address' | 'quantity' | 'sit' };
