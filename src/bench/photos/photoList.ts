/** A piece's photographs as its file names them, whether they are there or not. */
import { posix } from 'node:path';
import { isFields, isList, type Plain, type PlainMap } from '#catalogue/write/plain.ts';
import type { Opened } from '../content/entry.ts';

/** The fields of one photograph as they are written. */
export type WrittenPhoto = PlainMap;

export type Photo = {
  /** Path within the content folder; null where the name leads out of it. */
  readonly path: string | null;
  readonly file: string;
  readonly alt: string;
  readonly altDe: string;
  /** As it is written; '' for the whole picture. */
  readonly crop: string;
};

const textIn = (fields: PlainMap, name: string): string => {
  const value = fields[name];
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
};

/** The written list; what isn't a list of fields counts as none. */
export function writtenPhotos({ data }: Pick<Opened, 'data'>): readonly WrittenPhoto[] {
  const entry = data as Plain | undefined;
  const list = isFields(entry) ? entry.pictures : undefined;
  return isList(list) ? list.filter(isFields) : [];
}

/** Names are relative to the piece's own file. */
export function photosOf(opened: Pick<Opened, 'data' | 'file'>): readonly Photo[] {
  return writtenPhotos(opened).map((fields) => {
    const file = textIn(fields, 'file');
    const path = posix.normalize(posix.join(posix.dirname(opened.file), file));
    const leaves = path.startsWith('../') || posix.isAbsolute(file) || file.includes('\\') || file === '';
    return {
      path: leaves ? null : path,
      file,
      alt: textIn(fields, 'alt'),
      altDe: textIn(fields, 'alt-de'),
      crop: textIn(fields, 'crop'),
    };
  });
}
