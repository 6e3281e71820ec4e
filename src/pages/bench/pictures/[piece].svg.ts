/** A piece's picture for the bench's lists, drawn as the shop draws it, past pieces too. */
import type { APIRoute } from 'astro';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { readWhole } from '#catalogue/collections.ts';
import { cardSvg } from '#ui/pictures/cardDrawing.ts';

export const prerender = false;

/** Drawn once by a running bench: a list asks for up to fifty, each at some milliseconds. */
const drawn = new WeakMap<Piece, string>();

export const GET: APIRoute = async ({ params }) => {
  const { pieces } = await readWhole();
  const piece = pieces.find(({ id }) => id === params.piece);
  if (piece === undefined) return new Response(null, { status: 404 });
  const svg = drawn.get(piece) ?? cardSvg(piece);
  drawn.set(piece, svg);
  return new Response(svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
};
