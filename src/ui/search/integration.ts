/** Makes the search index over the built pages, as the last step of a build. */
import { close, createIndex } from 'pagefind';
import { join } from 'node:path';
import { readdirSync, rmSync } from 'node:fs';
import type { AstroIntegration } from 'astro';
import { fileURLToPath } from 'node:url';

export function searchIndex(): AstroIntegration {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const { pages, ms } = await indexSite(fileURLToPath(dir));
        logger.info(`${pages} pages indexed in ${ms} ms`);
      },
    },
  };
}

/** Where the index lies in the site. */
const FOLDER = 'pagefind';
/** Where those pages stand, in any language; beside them, a list's further pages. */
const PAGES = '**/pieces/*/index.html';
/** Files of Pagefind's own look, which the shop doesn't use. */
const UNUSED = /^pagefind-(ui|modular-ui|component-ui|highlight)\./;

/**
 * @param site folder of the built pages
 * @throws Error with Pagefind's own words where the index can't be made
 */
async function indexSite(site: string): Promise<{ pages: number; ms: number }> {
  const started = performance.now();
  const { index, errors } = await createIndex();
  if (index === undefined) throw new Error(errors.join('; '));
  const added = await index.addDirectory({ path: site, glob: PAGES });
  const written = await index.writeFiles({ outputPath: join(site, FOLDER) });
  const problems = [...added.errors, ...written.errors];
  if (problems.length > 0) throw new Error(problems.join('; '));
  await close();
  const unused = readdirSync(join(site, FOLDER)).filter((name) => UNUSED.test(name));
  for (const name of unused) rmSync(join(site, FOLDER, name));
  return { pages: added.page_count, ms: Math.round(performance.now() - started) };
}
