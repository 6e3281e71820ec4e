/** What the page of a piece's photographs shows. */
import type { Size } from '#ui/pictures/encode.ts';
import type { PhotoTrouble } from '#words/photoCodes.ts';
import type { Photo } from '../photos/photoList.ts';
import type { Frame } from './frame.ts';

/** What was typed into a form that could not be done, and which: a photograph's place, or 'new'. */
export type PhotoAttempt = {
  readonly of: number | 'new';
  readonly trouble: PhotoTrouble;
  readonly form: URLSearchParams;
};

export type PhotoSheet = {
  readonly id: string;
  readonly name: string;
  readonly photos: readonly (Photo & { readonly size: Size | null })[];
  /** What a form bears, so that nothing is overwritten that was changed in another window. */
  readonly digest: string;
  readonly attempt: PhotoAttempt | null;
  readonly frame: Frame;
};
