/** Robots are welcome in the shop; the bench and the desk are none of their business. */
import type { APIRoute } from 'astro';
import { requireSite } from '#ui/machines/requireSite.ts';

export const GET: APIRoute = ({ site }) => {
  const lines = [
    'User-agent: *',
    'Disallow: /bench/',
    'Disallow: /desk/',
    'Disallow: /slip/',
    '',
    `Sitemap: ${new URL('/sitemap.xml', requireSite(site)).href}`,
    '',
  ];
  return new Response(lines.join('\n'), { headers: { 'content-type': 'text/plain; charset=utf-8' } });
};
