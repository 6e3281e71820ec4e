/** Codes of what can go wrong with a photograph at the bench. */
import type { CatalogueError } from './catalogueCodes.ts';

/** As the check of the content gives it. */
type ContentProblem = {
  readonly file: string;
  readonly line: number;
  readonly field: string;
  readonly error: CatalogueError;
};

export type PhotoProblem =
  | { readonly code: 'photo-missing' | 'photo-broken' | 'photo-moves' }
  | { readonly code: 'photo-kind'; readonly kind: 'drawing' | 'document' | 'archive' | 'film' | 'unknown' }
  /** Megapixels, both. */
  | { readonly code: 'photo-pixels'; readonly megapixels: number; readonly most: number }
  | { readonly code: 'photo-small'; readonly width: number; readonly height: number; readonly least: number };

export type PhotoTrouble =
  | PhotoProblem
  | { readonly code: 'photo-too-large'; readonly mostMb: number }
  | { readonly code: 'alt-missing' | 'crop-unreadable' | 'no-such-photo' }
  | { readonly code: 'photo-changed-meanwhile' | 'photo-not-writable' }
  /** What the catalogue's checks say of the piece with it. */
  | { readonly code: 'photo-problems'; readonly problems: readonly ContentProblem[] };
