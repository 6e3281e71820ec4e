/** A piece's picture for the bench's lists, drawn as the shop draws it, past pieces too. */
import type { APIRoute } from 'astro';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { content } from '#bench/content/content.ts';
import { readWhole } from '#catalogue/collections.ts';
import { cardSvg } from '#ui/pictures/cardDrawing.ts';

export const prerender = false;

/** Drawn once by a running bench: a list asks for up to fifty, each at some milliseconds. */
const drawn = new WeakMap<Piece, string>();

export const GET: APIRoute = async ({ params }) => {
  const isIt = ({ id }: Piece): boolean => id === params.piece;
  // As it lies in the files; where its file can't be read, as it is published.
  const piece = content().reading().catalogue?.pieces.find(isIt) ?? (await readWhole()).pieces.find(isIt);
  if (piece === undefined) return new Response(null, { status: 404 });
  const svg = drawn.get(piece) ?? cardSvg(piece);
  drawn.set(piece, svg);
  return new Response(svg, { headers: { 'content-type': 'image/svg+xml; charset=utf-8' } });
};
