/** The drawings further down a piece's page. */
import type { APIRoute } from 'astro';
import { readPieces, readShop } from '#catalogue/collections.ts';
import type { Piece } from '#catalogue/model/catalogue.ts';
import { keyed } from '#ui/build/keyed.ts';
import { DRAWN, pieceDrawingSvg, type Drawn } from '#ui/pictures/pieceDrawings.ts';
import { MEDIA_TYPES } from '#ui/pictures/settings.ts';
import { inEachLang } from '#ui/site/addresses.ts';
import type { Lang } from '#words/lang.ts';

type Props = { readonly lang: Lang; readonly piece: Piece; readonly drawn: Drawn };

export const getStaticPaths = async () => {
  const pieces = await readPieces();
  return keyed(
    inEachLang(() =>
      pieces.flatMap((piece) =>
        DRAWN.map((drawn) => ({ params: { id: piece.id, drawn }, props: { piece, drawn } })),
      ),
    ),
  );
};

export const GET: APIRoute<Props> = async ({ props: { lang, piece, drawn } }) =>
  new Response(pieceDrawingSvg(drawn, piece, await readShop(), lang), {
    headers: { 'content-type': MEDIA_TYPES.svg },
  });
