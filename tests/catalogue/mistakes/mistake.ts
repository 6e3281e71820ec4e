/** One mistake of the maker's: what she did, and what she is told. */
import type { ValidationError } from '#core/design/validationError.ts';
import type { CatalogueError } from '#words/catalogueCodes.ts';
import type { Edit } from '../contentFolder.ts';

export type Mistake = {
  /** The core's own code where it found it. */
  readonly code: Exclude<CatalogueError['code'], 'design'> | ValidationError['code'];
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

/** The beads of the plain piece, to be put in another way. */
export const sections =
  'mirrored: no\nsections:\n  - name: Run\n    beads: ball-8\n    usual: 22\n    fewest: 18\n    most: 27\n';
