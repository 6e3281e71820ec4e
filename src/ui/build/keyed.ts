/** Paths of pages that a later build may take over unchanged. */
import type { Lang } from '#words/lang.ts';
import { contentFolder } from '../site/contentFolder.ts';
import { shopFrame } from '../models/frame.ts';
import { MAKES_PIXELS } from '../pictures/settings.ts';
import { codeMark } from './codeMark.ts';
import { pageKeys } from './pageKey.ts';

/** What a page is made with: its code, the settings of the build, the versions of the libraries. */
export const CODE = ['src', 'astro.config.mjs', 'package-lock.json'] as const;

let keys: ReturnType<typeof pageKeys> | null = null;

/** The same for a whole build: its code doesn't change while it runs. */
function keysOfBuild(): ReturnType<typeof pageKeys> {
  keys ??= pageKeys({
    everywhere: `${codeMark(CODE)} ${MAKES_PIXELS}`,
    contentFolder: contentFolder(),
  });
  return keys;
}

/**
 * Gives each path its key. Only for pages that are made from their properties
 * and the frame: one that reads more of the catalogue would be kept too long.
 */
export async function keyed<Path extends { readonly props: { readonly lang: Lang } }>(
  paths: readonly Path[],
): Promise<(Path & { readonly cacheKey: string })[]> {
  const keyOf = keysOfBuild();
  return Promise.all(
    paths.map(async (path) => ({ ...path, cacheKey: keyOf(await shopFrame(path.props.lang), path.props) })),
  );
}
