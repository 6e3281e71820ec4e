/** A photograph of a piece as the page needs it: files in every width and format, its shape and a placeholder. */
import { underBase } from '../site/base.ts';
import type { Picture } from '#catalogue/model/catalogue.ts';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { contentFolder } from '../site/contentFolder.ts';
import { cached, keyOf } from './cache.ts';
import { encode, placeholder, sizeOf, type Size } from './encode.ts';
import { ENCODING, FORMATS, MEDIA_TYPES, WIDTHS, type Format } from './settings.ts';

export type PhotographFile = { readonly name: string; readonly width: number; readonly format: Format };

export type Photograph = Size & {
  readonly placeholder: string;
  readonly files: readonly PhotographFile[];
};

/** Last part of the file's path without its ending: a name that a person knows again. */
export const stemOf = (file: string): string => (file.split('/').at(-1) ?? file).replace(/\.\w+$/, '');

/** The widths a photograph can fill; at least its own. */
function widthsOf({ width }: Size): readonly number[] {
  const fitting = WIDTHS.filter((one) => one <= width);
  return fitting.length > 0 ? fitting : [width];
}

/** Reads a photograph's shape and names its files; nothing large is encoded yet. */
export async function photograph(picture: Picture): Promise<Photograph> {
  const bytes = await readFile(join(contentFolder(), picture.file));
  const key = keyOf(bytes, JSON.stringify(ENCODING), JSON.stringify(picture.crop));
  const kept = await cached(`${key}.json`, async () => {
    const facts = {
      ...(await sizeOf(bytes, picture.crop)),
      placeholder: await placeholder(bytes, picture.crop),
    };
    return Buffer.from(JSON.stringify(facts));
  });
  const facts = JSON.parse(kept.toString()) as Size & { placeholder: string };
  const files = FORMATS.flatMap((format) =>
    widthsOf(facts).map((width) => ({
      name: `${stemOf(picture.file)}-${key}-${width}.${format}`,
      width,
      format,
    })),
  );
  return { ...facts, files };
}

/** The bytes of one file of a photograph. */
export function photographBytes(picture: Picture, file: PhotographFile): Promise<Buffer> {
  return cached(file.name, async () => {
    const bytes = await readFile(join(contentFolder(), picture.file));
    return encode(bytes, file.width, file.format, picture.crop);
  });
}

/** `source` elements of a picture, best format first. */
export function sourcesOf({ files }: Photograph): { readonly type: string; readonly srcset: string }[] {
  return FORMATS.map((format) => ({
    type: MEDIA_TYPES[format],
    srcset: files
      .filter((file) => file.format === format)
      .map((file) => `${underBase(`/pictures/${file.name}`)} ${file.width}w`)
      .join(', '),
  }));
}
