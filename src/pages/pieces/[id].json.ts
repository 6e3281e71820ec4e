/** One piece as data for other programs; the page `/data/` says what each field means. */
import type { APIRoute, GetStaticPaths } from 'astro';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { readPieces, readShop } from '#catalogue/collections.ts';
import { FIRST_LANG } from '#ui/site/addresses.ts';
import { keyed } from '#ui/build/keyed.ts';
import { pieceJson } from '#ui/machines/pieceJson.ts';
import { requireSite } from '#ui/machines/requireSite.ts';

export const getStaticPaths = (async () => {
  const pieces = await readPieces();
  // All its languages stand in the one file.
  return keyed(pieces.map((piece) => ({ params: { id: piece.id }, props: { lang: FIRST_LANG, piece } })));
}) satisfies GetStaticPaths;

export const GET: APIRoute<{ piece: Piece }> = async ({ props, site }) => {
  const data = pieceJson(props.piece, await readShop(), requireSite(site));
  return new Response(`${JSON.stringify(data, null, 2)}\n`, {
    headers: { 'content-type': 'application/json' },
  });
};
