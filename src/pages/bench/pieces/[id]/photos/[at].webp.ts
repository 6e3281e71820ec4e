/** One of a piece's photographs, whole and no wider than a screen: to choose a part of. */
import type { APIRoute } from 'astro';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { content } from '#bench/content/content.ts';
import { photosOf } from '#bench/photos/photoList.ts';
import { cached, keyOf } from '#ui/pictures/cache.ts';
import { encode } from '#ui/pictures/encode.ts';
import { contentFolder } from '#ui/site/contentFolder.ts';

export const prerender = false;

const WIDTH_PX = 960;

export const GET: APIRoute = async ({ params }) => {
  const opened = content().open({ kind: 'piece', id: params.id ?? '' });
  const path = opened === null ? null : (photosOf(opened)[Number(params.at)]?.path ?? null);
  if (path === null) return new Response(null, { status: 404 });
  try {
    const bytes = readFileSync(join(contentFolder(), path));
    const webp = await cached(`${keyOf(bytes, 'whole')}-${WIDTH_PX}.webp`, () =>
      encode(bytes, WIDTH_PX, 'webp', null),
    );
    return new Response(new Uint8Array(webp), { headers: { 'content-type': 'image/webp' } });
  } catch {
    return new Response(null, { status: 404 });
  }
};
