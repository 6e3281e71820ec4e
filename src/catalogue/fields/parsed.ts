/** One value of an entry as read, or what is wrong with it. */
import type { CatalogueError } from '#words/catalogueCodes.ts';

type Refused = { readonly ok: false; readonly error: CatalogueError };

export type Parsed<T> = { readonly ok: true; readonly value: T } | Refused;

export const refuse = (error: CatalogueError): Refused => ({ ok: false, error });
