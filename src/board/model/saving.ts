/** What the board sends to be saved, and what may come back. */
import type { Design } from '#core/design/design.ts';

/** Asked once, of a piece that has no file yet. Empty texts are missing. */
export type About = {
  readonly name: string;
  readonly price: string;
  readonly summary: string;
  readonly story: string;
};

/** A design that names its wire, and components by their ids. */
export type SentDesign = Omit<Design, 'wire' | 'components'> & { readonly wire: string };

export type SaveRequest = {
  /** Of the file that the design was read from; null for a piece without one. */
  readonly digest: string | null;
  readonly design: SentDesign;
  readonly about: About | null;
};

/** A problem in two sentences: what, and how to mend it. `at`: strand, section and run where it is of one. */
export type SavedProblem = {
  readonly what: string;
  readonly fix: string;
  readonly at: { readonly strand: number; readonly section: number; readonly part: number } | null;
};

export type SaveAnswer =
  | { readonly ok: true; readonly digest: string }
  | {
      readonly ok: false;
      readonly code: 'changed-meanwhile';
      /** The whole file with this save in it, and as it is now; null where there is none any more. */
      readonly yours: string;
      readonly now: string | null;
      /** Of the file as it is now. */
      readonly digest: string | null;
    }
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly SavedProblem[] }
  | { readonly ok: false; readonly code: 'not-writable'; readonly why: string };

export function requestFor(design: Design, digest: string | null, about: About | null): SaveRequest {
  const { components: _components, wire, ...rest } = design;
  return { digest, design: { ...rest, wire: wire.id }, about };
}
