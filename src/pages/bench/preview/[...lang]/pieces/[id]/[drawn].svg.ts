/** The drawings of a preview, of the files as they lie there now. */
import type { APIRoute } from 'astro';
import { content } from '#bench/content/content.ts';
import { isDrawn, pieceDrawingSvg } from '#ui/pictures/pieceDrawings.ts';
import { MEDIA_TYPES } from '#ui/pictures/settings.ts';
import { FIRST_LANG } from '#ui/site/addresses.ts';
import { isLang } from '#words/lang.ts';

export const prerender = false;

export const GET: APIRoute = ({ params: { lang = FIRST_LANG, id, drawn } }) => {
  const { catalogue } = content().reading();
  const piece = catalogue?.pieces.find((one) => one.id === id);
  if (catalogue === null || piece === undefined || !isLang(lang) || !isDrawn(drawn)) {
    return new Response(null, { status: 404 });
  }
  return new Response(pieceDrawingSvg(drawn, piece, catalogue.shop, lang), {
    headers: { 'content-type': MEDIA_TYPES.svg },
  });
};
