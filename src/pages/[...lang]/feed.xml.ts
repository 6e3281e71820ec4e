/** New pieces as an Atom feed, one a language. */
import type { APIRoute } from 'astro';
import { readPieces, readShop } from '#catalogue/collections.ts';
import { inEachLang } from '#ui/site/addresses.ts';
import { atomFeed } from '#ui/machines/atomFeed.ts';
import { requireSite } from '#ui/machines/requireSite.ts';
import type { Lang } from '#words/lang.ts';

export const getStaticPaths = () => inEachLang(() => [{ params: {}, props: {} }]);

export const GET: APIRoute<{ lang: Lang }> = async ({ props, site }) => {
  const [pieces, shop] = await Promise.all([readPieces(), readShop()]);
  const text = atomFeed({ pieces, shop, lang: props.lang, site: requireSite(site) });
  return new Response(text, { headers: { 'content-type': 'application/atom+xml; charset=utf-8' } });
};
