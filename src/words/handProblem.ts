/** What is wrong with an order that is entered by hand, in codes. */
import type { PieceKind } from '#core/design/design.ts';
import type { LengthProblem } from '#core/units/length.ts';
import type { FormProblem } from './orderFacts.ts';

export type HandProblem =
  | { readonly code: 'piece-missing' }
  | { readonly code: 'size'; readonly problem: LengthProblem }
  /** Nothing can be strung in that size; the sizing says why. */
  | { readonly code: 'cannot-be-made' }
  | { readonly code: 'measure-of-kind'; readonly kind: PieceKind }
  /** The piece's file says that none lies finished. */
  | { readonly code: 'not-ready' }
  /** One lies finished, and more were asked for. */
  | { readonly code: 'one-ready' }
  /** What lies finished has its clasp and pendant. */
  | { readonly code: 'closed-already' }
  /** The piece's file doesn't offer that part. */
  | { readonly code: 'part-not-offered' }
  | { readonly code: 'buyer'; readonly problem: FormProblem }
  /** Neither an e-mail address nor a telephone number. */
  | { readonly code: 'no-way-back' }
  | { readonly code: 'way-missing' }
  | { readonly code: 'line-missing' | 'town-missing' | 'country-missing' }
  /** The order document takes it in no form: `field` is its path there. */
  | { readonly code: 'not-taken'; readonly field: string };
