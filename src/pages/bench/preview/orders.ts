/** Where an order goes that is tried out in a preview: it is turned down with the reason, as a desk does. */
import type { APIRoute } from 'astro';
import { languageOf } from '#bench/models/frame.ts';
import { deskWords, previewWords } from '#words/words.ts';

export const prerender = false;

export const POST: APIRoute = ({ request }) => {
  const lang = languageOf(request);
  const status = 422;
  const body = {
    type: 'about:blank',
    title: deskWords(lang).title,
    status,
    detail: previewWords(lang).noOrders,
  };
  const headers = { 'content-type': 'application/problem+json', 'content-language': lang };
  return new Response(JSON.stringify(body), { status, headers });
};
