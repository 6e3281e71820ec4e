/** Why the desk doesn't take an order, in codes. */
export type DeskProblem =
  | { readonly code: 'origin-not-allowed' }
  | { readonly code: 'method-not-allowed' }
  | { readonly code: 'content-type' }
  | { readonly code: 'too-large'; readonly mostBytes: number }
  | { readonly code: 'not-utf8' }
  | { readonly code: 'not-json' }
  | { readonly code: 'not-an-order' }
  | { readonly code: 'newer-version'; readonly version: number }
  | { readonly code: 'unknown-version'; readonly version: string }
  | { readonly code: 'wrong-field'; readonly field: string }
  | { readonly code: 'robot' }
  | { readonly code: 'number-taken'; readonly number: string }
  /** The piece that lay finished is promised to another buyer. */
  | { readonly code: 'ready-gone'; readonly piece: string }
  | { readonly code: 'too-many'; readonly seconds: number }
  /** Another program holds the book. */
  | { readonly code: 'book-locked' }
  | { readonly code: 'book-full' }
  /** The book can't be opened or read. */
  | { readonly code: 'book-closed' };
