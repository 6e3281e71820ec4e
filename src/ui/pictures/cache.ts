/** Encoded pictures kept between builds, by what went into them. */
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { digest } from '../site/digest.ts';

/** Where they lie. */
export const CACHE = join('.cache', 'pictures');

/** Sixteen hexadecimal digits of everything that shapes a picture. */
export const keyOf = (...inputs: readonly (string | Buffer)[]): string => digest(16, inputs);

/** The bytes under a name; made and kept where they aren't there yet. */
export async function cached(name: string, make: () => Promise<Buffer>): Promise<Buffer> {
  const file = join(CACHE, name);
  try {
    return await readFile(file);
  } catch {
    const bytes = await make();
    await mkdir(CACHE, { recursive: true });
    // Renamed into place whole: a build that is stopped leaves no half picture.
    const fresh = `${file}.${process.pid}.part`;
    await writeFile(fresh, bytes);
    await rename(fresh, file);
    return bytes;
  }
}
