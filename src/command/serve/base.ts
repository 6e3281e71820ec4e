/** In which folder of its host a built shop stands: what the build left word of (src/ui/build/folder.ts). */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @param release its folder
 * @returns path with a slash at both ends; `/` where the build says nothing
 */
export function baseOf(release: string): string {
  const file = join(release, 'server', 'base.json');
  if (!existsSync(file)) return '/';
  const { base } = JSON.parse(readFileSync(file, 'utf8')) as { readonly base: string };
  return base;
}
