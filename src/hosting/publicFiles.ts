/** The public files of a release, as they go to a host. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { filesBelow, PARTS } from '#release/files.ts';

/** SHA-256 in hexadecimal, by path below the public files. */
export type Digests = Readonly<Record<string, string>>;

/** Files whose name changes with what is in them, so that one that lies there already is never another. */
const NAMED_BY_CONTENT =
  /^(?:pictures|_astro)\/|^pagefind\/[\w-]+\/(?:fragment|index|filter|lists)\/|^pagefind\/[\w-]+\/pagefind\.[\w-]+\.pf_meta$/;

export const isNamedByContent = (path: string): boolean => NAMED_BY_CONTENT.test(path);

export const isPage = (path: string): boolean => path.endsWith('.html');

/** Names that mean the same place below a folder on every system, and never one beside it. */
export const isSafePath = (path: string): boolean =>
  path !== '' &&
  path.length <= 1024 &&
  !/[\u0000-\u001f\u007f\\:]/.test(path) &&
  path.split('/').every((part) => part !== '' && part !== '.' && part !== '..');

/** Where the public files of a release lie. */
export const publicFolder = (release: string): string => join(release, PARTS.client);

/**
 * @param release its folder
 * @throws Error for a name that no host should be given
 */
export function publicPaths(release: string): string[] {
  const paths = filesBelow(publicFolder(release));
  const unsafe = paths.find((path) => !isSafePath(path));
  if (unsafe !== undefined) throw new Error(`${unsafe} has a name that can't go to a host. Fix: rename it.`);
  return paths;
}

/** What lies in a release, to be held against what lies on a host. */
export async function digestsOf(release: string): Promise<Digests> {
  const digests: Record<string, string> = {};
  for (const path of publicPaths(release)) {
    const bytes = await readFile(join(publicFolder(release), path));
    digests[path] = createHash('sha256').update(bytes).digest('hex');
  }
  return digests;
}
