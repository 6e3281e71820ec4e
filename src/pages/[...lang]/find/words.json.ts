/** What the search understands, one file a language; fetched by whoever searches. */
import type { APIRoute } from 'astro';
import { readWhole } from '#catalogue/collections.ts';
import { inEachLang } from '#ui/site/addresses.ts';
import { buildVocabulary } from '#ui/search/vocabulary/build.ts';
import type { Lang } from '#words/lang.ts';

export const getStaticPaths = () => inEachLang(() => [{ params: {}, props: {} }]);

export const GET: APIRoute<{ lang: Lang }> = async ({ props }) =>
  new Response(JSON.stringify(buildVocabulary(await readWhole(), props.lang)), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
