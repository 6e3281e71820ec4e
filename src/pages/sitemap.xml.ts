/** Every public page, for search engines. */
import type { APIRoute } from 'astro';
import { readWhole } from '#catalogue/collections.ts';
import { requireSite } from '#ui/machines/requireSite.ts';
import { sitemap } from '#ui/machines/sitemap.ts';
import { publicPaths } from '#ui/machines/publicPaths.ts';

export const GET: APIRoute = async ({ site }) => {
  const text = sitemap(publicPaths(await readWhole()), requireSite(site));
  return new Response(text, { headers: { 'content-type': 'application/xml; charset=utf-8' } });
};
