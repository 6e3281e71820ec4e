/** A sitemap (sitemaps.org, version 0.9) with the languages of each page. */
import { LANGS } from '#words/lang.ts';
import { address, FIRST_LANG } from '../site/addresses.ts';
import { xml } from './xml.ts';

/** @param paths pages without their language: `['pieces', 'ford']` */
export function sitemap(paths: readonly (readonly string[])[], site: URL): string {
  const absolute = (path: string): string => xml(new URL(path, site).href);
  const urls = paths.flatMap((path) => {
    const links = [...LANGS.map((lang) => [lang, lang] as const), ['x-default', FIRST_LANG] as const]
      .map(([name, lang]) => {
        const href = absolute(address(lang, ...path));
        return `<xhtml:link rel="alternate" hreflang="${name}" href="${href}"/>`;
      })
      .join('');
    return LANGS.map((lang) => `  <url><loc>${absolute(address(lang, ...path))}</loc>${links}</url>`);
  });
  return [
    '<?xml version="1.0" encoding="utf-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9" xmlns:xhtml="http://www.w3.org/1999/xhtml">',
    ...urls,
    '</urlset>',
    '',
  ].join('\n');
}
