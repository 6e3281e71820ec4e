/** A piece's picture for the bench's lists, drawn as the shop draws it, past pieces too. */
import type { APIRoute } from 'astro';
import { readWhole } from '#catalogue/collections.ts';
import { cardSvg } from '#ui/pictures/cardDrawing.ts';

export const prerender = false;

export const GET: APIRoute = async ({ params }) => {
  const { pieces } = await readWhole();
  const piece = pieces.find(({ id }) => id === params.piece);
  if (piece === undefined) return new Response(null, { status: 404 });
  return new Response(cardSvg(piece), { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
};
