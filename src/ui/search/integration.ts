/** Makes the search index over the built pages, as the last step of a build. */
import type { AstroIntegration } from 'astro';
import { fileURLToPath } from 'node:url';
import { indexSite } from './index/indexSite.ts';

export function searchIndex(): AstroIntegration {
  return {
    name: 'search-index',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const started = performance.now();
        const pages = await indexSite(fileURLToPath(dir));
        logger.info(`${pages} pages indexed in ${Math.round(performance.now() - started)} ms`);
      },
    },
  };
}
