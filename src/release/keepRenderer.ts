/**
 * Keeps what makes the pages. Astro throws it away at the end of a build; with
 * it, a later release whose code is the same is made in seconds (renderAgain.ts).
 */
import type { AstroIntegration } from 'astro';
import { cpSync, existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PARTS } from './files.ts';
import { fileOfPage, keysOf, writeKept, type Kept } from './pages.ts';
import { pathsOf, type BuildApp } from './buildApp.ts';

/** Where Astro has it while it builds, within the server's folder. */
const IN_THE_BUILD = '.prerender';
const ENTRY = /^prerender-entry.*\.mjs$/;

type PageData = { readonly styles: Kept['styles'][number][1] };

export function keepRenderer(): AstroIntegration {
  let styled: ReadonlyMap<string, PageData> = new Map();
  let folder = '';

  const keep = async (): Promise<void> => {
    const from = join(folder, PARTS.server, IN_THE_BUILD);
    const entry = readdirSync(from).find((name) => ENTRY.test(name));
    if (entry === undefined) return;
    // The very module that has just made the pages.
    const { app } = (await import(join(from, entry))) as { app: BuildApp };
    const paths = await pathsOf(app);
    // Where Astro has come to name things otherwise, better built whole each time than pages in wrong places.
    if (paths.some((path) => !existsSync(join(folder, PARTS.client, fileOfPage(path))))) return;
    const to = join(folder, PARTS.render);
    cpSync(from, to, { recursive: true });
    const styles = [...styled].map(([key, data]) => [key, data.styles] as const);
    writeKept(to, { entry, styles, pages: keysOf(paths) });
  };

  return {
    name: 'keep-renderer',
    hooks: {
      'astro:config:done': ({ config }) => {
        folder = fileURLToPath(config.outDir);
      },
      'astro:build:setup': ({ pages }) => {
        styled = pages as unknown as ReadonlyMap<string, PageData>;
      },
      'astro:build:generated': keep,
    },
  };
}
