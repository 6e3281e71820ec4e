/** The photographs of a piece, each looked at. */
import { join, posix } from 'node:path';
import type { Picture } from '../model/catalogue.ts';
import { readCrop } from '../model/crop.ts';
import type { Entry } from '../read/entry.ts';
import { lookAtPicture } from '../read/picture.ts';
import type { Problem } from '../read/problem.ts';
import type { AuthoredPiece } from '../schemas/piece.ts';

const faults = {
  missing: 'picture-missing',
  broken: 'picture-broken',
  'no-picture': 'picture-format',
} as const;

/** Those that are whole, and what is wrong with the others. */
export type Photographs = { readonly pictures: readonly Picture[]; readonly problems: readonly Problem[] };

/** Picture names are relative to the piece's own file, and can't leave the content folder. */
export function buildPictures(folder: string, entry: Entry<AuthoredPiece>): Photographs {
  const pictures: Picture[] = [];
  const problems: Problem[] = [];
  (entry.value.pictures ?? []).forEach((written, index) => {
    const path = ['pictures', index, 'file'];
    const file = posix.normalize(posix.join(posix.dirname(entry.file), written.file));
    if (file.startsWith('../') || posix.isAbsolute(written.file) || written.file.includes('\\')) {
      problems.push(entry.problemAt(path, { code: 'picture-outside', file: written.file }));
      return;
    }
    const crop = written.crop === undefined ? null : readCrop(written.crop);
    if (written.crop !== undefined && crop === null) {
      const error = { code: 'picture-crop', value: written.crop } as const;
      problems.push(entry.problemAt(['pictures', index, 'crop'], error));
      return;
    }
    const seen = lookAtPicture(join(folder, file));
    if (seen.state === 'whole') {
      const alt = { en: written.alt, de: written['alt-de'] ?? null };
      pictures.push({ file, format: seen.format, alt, crop });
    } else {
      problems.push(entry.problemAt(path, { code: faults[seen.state], file: written.file }));
    }
  });
  return { pictures, problems };
}
