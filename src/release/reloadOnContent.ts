/** While developing: pages load again when the content changes. */
import type { AstroIntegration } from 'astro';
import { resolve, sep } from 'node:path';
import { contentFolder } from '#ui/site/contentFolder.ts';

export function reloadOnContent(): AstroIntegration {
  return {
    name: 'reload-on-content',
    hooks: {
      'astro:server:setup': ({ server }) => {
        const folder = resolve(contentFolder());
        server.watcher.add(folder);
        server.watcher.on('all', (_event, path) => {
          if (resolve(path).startsWith(folder + sep)) server.hot.send({ type: 'full-reload' });
        });
      },
    },
  };
}
