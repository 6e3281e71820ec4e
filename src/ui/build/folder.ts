/** The folder of its host that the shop stands in, where a build has to know it beside the pages. */
import type { AstroIntegration } from 'astro';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { contentFiles } from '#catalogue/read/files.ts';
import { onDisk } from '#catalogue/read/folder.ts';
import { readShop } from '#catalogue/load/readShop.ts';
import { contentFolder } from '../site/contentFolder.ts';

/** Stands in for an address that can't be read: the build stops at it, and names every mistake at once. */
const UNREAD = 'https://unread.invalid/';

/** `site` and `base` of Astro's settings, from the address in the shop's file. */
export function siteAndBase(): { readonly site: string; readonly base: string } {
  const folder = contentFolder();
  const { shop } = readShop(onDisk(folder), contentFiles(onDisk(folder)).shop);
  const { origin, pathname } = new URL(shop?.address ?? UNREAD);
  return { site: origin, base: pathname };
}

/** A `_headers` file speaks of paths of the whole host. */
export const headersUnder = (text: string, base: string): string => text.replace(/^\//gm, base);

/** Writes the folder into what serves the files: `_headers` for static hosts, a note for the shop's own server. */
export function folderOfHost(): AstroIntegration {
  let base = '/';
  let server: URL | null = null;
  return {
    name: 'folder-of-host',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base;
        server = config.build.server;
      },
      'astro:build:done': ({ dir }) => {
        const headers = new URL('_headers', dir);
        if (existsSync(headers)) writeFileSync(headers, headersUnder(readFileSync(headers, 'utf8'), base));
        if (server !== null) writeFileSync(new URL('base.json', server), JSON.stringify({ base }));
      },
    },
  };
}
