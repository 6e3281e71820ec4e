/** Where an entry stands, and what it says there now. */
import type { z } from 'zod';
import { idOfFile } from '#catalogue/read/collect.ts';
import { contentFiles } from '#catalogue/read/files.ts';
import { fileText } from '#catalogue/read/fileText.ts';
import { onDisk } from '#catalogue/read/folder.ts';
import type { FieldPath } from '#catalogue/read/problem.ts';
import { componentSchema } from '#catalogue/schemas/component.ts';
import { fieldOrder } from '#catalogue/schemas/fieldOrder.ts';
import { guideSchema } from '#catalogue/schemas/guide.ts';
import { pieceSchema } from '#catalogue/schemas/piece.ts';
import { shopSchema } from '#catalogue/schemas/shop.ts';
import { wireSchema } from '#catalogue/schemas/wire.ts';
import { guideText } from '#catalogue/write/edit.ts';
import { isFields, valueAt, type Plain, type PlainMap } from '#catalogue/write/plain.ts';
import { EditError, plainOf, type OrderOf } from '#catalogue/write/rewrite.ts';
import { textDigest } from '#catalogue/write/saveFile.ts';
import type { EntryKey, EntryKind, Opened } from './entry.ts';

const SCHEMAS: Readonly<Record<EntryKind, z.ZodType>> = {
  piece: pieceSchema,
  component: componentSchema,
  wire: wireSchema,
  guide: guideSchema,
  shop: shopSchema,
};

/** The order of fields in a file that holds entries of a kind, those below `base`. */
export function orderIn(kind: EntryKind, base: FieldPath): OrderOf {
  return (path) => (path.length < base.length ? [] : fieldOrder(SCHEMAS[kind], path.slice(base.length)));
}

/** What a file says: its fields, and of a guide what follows them. */
export type FileData = { readonly data: PlainMap; readonly body?: string };

/** Reads a text by its file's ending; null where it can't be read. */
export function dataIn(file: string, text: string): FileData | null {
  try {
    const guide = file.endsWith('.md') ? guideText(text) : null;
    const data = plainOf(guide?.head ?? text);
    if (!isFields(data)) return null;
    return guide === null ? { data } : { data, body: guide.body };
  } catch (error) {
    if (error instanceof EditError) return null;
    throw error;
  }
}

/** The file's text now; null where there is none, or it can't be read. */
export const textNow = (folder: string, file: string): string | null => fileText(onDisk(folder), file).text;

/** What tells two states of an entry apart, whatever else its file holds. */
export const entryDigest = (data: unknown, body = ''): string => textDigest(JSON.stringify([data, body]));

/** Files that an entry may stand in. */
function candidates(folder: string, { kind, id, lang }: EntryKey): readonly string[] {
  const files = contentFiles(onDisk(folder));
  switch (kind) {
    case 'piece':
      return files.pieces.filter((file) => idOfFile(file) === id);
    case 'guide':
      return files.guides.filter((file) => idOfFile(file) === id && file.split('/').at(-2) === lang);
    case 'component':
      return files.components;
    case 'wire':
      return files.wires;
    case 'shop':
      return [files.shop];
  }
}

/** True for kinds of which several stand in one file. */
export const sharesFile = (kind: EntryKind): boolean => kind === 'component' || kind === 'wire';

function openIn(folder: string, file: string, key: EntryKey): Opened | null {
  const text = textNow(folder, file);
  const read = text === null ? null : dataIn(file, text);
  if (text === null || read === null) return null;
  const base: FieldPath = sharesFile(key.kind) ? [key.id] : [];
  const data: Plain | undefined = valueAt(read.data, base);
  if (data === undefined) return null;
  const found = { key, file, base, text, digest: entryDigest(data, read.body), data };
  return read.body === undefined ? found : { ...found, body: read.body };
}

/** The entry as it stands in its file now; null where there is none, or its file can't be read. */
export function locate(folder: string, key: EntryKey): Opened | null {
  for (const file of candidates(folder, key)) {
    const opened = openIn(folder, file, key);
    if (opened !== null) return opened;
  }
  return null;
}

/** Files of components that can be read, each with the short names in it. */
export const componentFiles = (
  folder: string,
): { readonly file: string; readonly ids: readonly string[] }[] =>
  contentFiles(onDisk(folder)).components.flatMap((file) => {
    const data = dataIn(file, textNow(folder, file) ?? '')?.data;
    return data === undefined ? [] : [{ file, ids: Object.keys(data) }];
  });

/** How well a new component fits into a file: by how many of its kind and material are in there. */
function fitIn(folder: string, file: string, entry: PlainMap): number {
  const others = Object.values(dataIn(file, textNow(folder, file) ?? '')?.data ?? {}).filter(isFields);
  const alike = others.filter((one) => (one.kind ?? 'bead') === (entry.kind ?? 'bead'));
  return alike.length + 1000 * alike.filter((one) => one.material === entry.material).length;
}

/** The file that a new entry goes to. */
export function fileForNew(folder: string, { kind, id, lang }: EntryKey, data: PlainMap): string {
  const files = contentFiles(onDisk(folder));
  switch (kind) {
    case 'piece':
      return `pieces/${id}.yaml`;
    case 'guide':
      return `guides/${lang ?? 'en'}/${id}.md`;
    case 'shop':
      return files.shop;
    case 'wire':
      return files.wires[0] ?? 'wires/wires.yaml';
    case 'component': {
      const ranked = files.components.map((file) => ({ file, fit: fitIn(folder, file, data) }));
      const best = ranked.sort((one, other) => other.fit - one.fit)[0];
      return best === undefined || best.fit === 0 ? 'components/more.yaml' : best.file;
    }
  }
}
