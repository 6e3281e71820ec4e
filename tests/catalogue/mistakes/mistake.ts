/** One mistake of the maker's: what she did, and what she is told. */
import type { CatalogueCode } from '#words/catalogueCodes.ts';
import type { Edit } from '../contentFolder.ts';

export type Mistake = {
  readonly code: CatalogueCode;
  readonly edits: readonly Edit[];
  /** `file:line`, then the field, if any. */
  readonly at: string;
  /** The first sentence, whole. */
  readonly what: string;
  /** A part of the second that says what to do. */
  readonly fix: string;
  /** A remark: the build goes on. */
  readonly note?: true;
};

export const parts = 'components/parts.yaml';
export const row = 'pieces/row.yaml';

export const change = (file: string, from: string, to: string): Edit => ({ file, from, to });
export const write = (file: string, text: string | Uint8Array | null): Edit => ({ file, write: text });
