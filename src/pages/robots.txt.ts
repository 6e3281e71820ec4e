/**
 * Robots are welcome in the shop. What a passphrase guards isn't named here: this file is
 * read by anybody, and those pages say `noindex` by themselves.
 */
import { underBase } from '#ui/site/base.ts';
import type { APIRoute } from 'astro';
import { requireSite } from '#ui/machines/requireSite.ts';

export const GET: APIRoute = ({ site }) => {
  const lines = [
    'User-agent: *',
    `Disallow: ${underBase('/slip/')}`,
    '',
    `Sitemap: ${new URL(underBase('/sitemap.xml'), requireSite(site)).href}`,
    '',
  ];
  return new Response(lines.join('\n'), { headers: { 'content-type': 'text/plain; charset=utf-8' } });
};
