/** Pictures of a preview: of the files as they lie there now, made when they are asked for and kept for the next build. */
import type { APIRoute } from 'astro';
import { content } from '#bench/content/content.ts';
import { keptDrafts } from '#bench/content/drafts.ts';
import { findPicture } from '#ui/pictures/find.ts';

export const prerender = false;

export const GET: APIRoute = async ({ params }) => {
  const { catalogue } = content().reading();
  const name = params.file ?? '';
  const file =
    catalogue === null
      ? null
      : await findPicture([...keptDrafts(), ...catalogue.pieces], catalogue.shop, name);
  if (file === null) return new Response(null, { status: 404 });
  return new Response(new Uint8Array(await file.bytes()), { headers: { 'content-type': file.type } });
};
