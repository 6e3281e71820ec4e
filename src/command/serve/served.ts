/** Which release is served: asked anew at every request, so that a publishing is seen at the next one. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { currentId } from '#catalogue/released/place.ts';
import { PARTS } from '#release/files.ts';
import { readRecord } from '#release/record.ts';
import { readHeaders, type HeaderRule } from './fileHeaders.ts';

export type Served = {
  readonly id: string;
  readonly folder: string;
  /** Mark of the program that it was made by. */
  readonly code: string;
  /** Where its public files lie. */
  readonly client: string;
  /** The same of other releases, the newest first: a page that was open before may still ask for its pictures. */
  readonly others: readonly string[];
  readonly rules: readonly HeaderRule[];
};

/** So many releases besides are looked through. */
const OTHERS = 3;

function read(folder: string, id: string): Served | null {
  const release = join(folder, id);
  const record = readRecord(release);
  if (record === null) return null;
  const client = join(release, PARTS.client);
  const headers = join(client, '_headers');
  const others = readdirSync(folder)
    .filter((name) => name !== id && readRecord(join(folder, name)) !== null)
    .sort()
    .reverse()
    .slice(0, OTHERS)
    .map((name) => join(folder, name, PARTS.client));
  return {
    id,
    folder: release,
    code: record.code,
    client,
    others,
    rules: existsSync(headers) ? readHeaders(readFileSync(headers, 'utf8')) : [],
  };
}

/**
 * Follows the file that names the served release.
 * @param folder of all releases
 * @returns asked, the release of this moment; the last one that could be read, where the named one can't
 * @throws Error where there is none yet
 */
export function follow(folder: string): () => Served {
  let last: Served | null = null;
  return () => {
    const id = currentId(folder);
    if (id !== null && id !== last?.id) last = read(folder, id) ?? last;
    if (last === null) throw new Error('Nothing has been built yet. Fix: npm run build, or npm start.');
    return last;
  };
}
