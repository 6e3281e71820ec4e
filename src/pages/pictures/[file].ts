/** Every picture of the shop, as a file. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { readPieces, readShop } from '#catalogue/collections.ts';
import { pictureFiles, type PictureFile } from '#ui/pictures/files.ts';
import { MEDIA_TYPES } from '#ui/pictures/settings.ts';

export const getStaticPaths = (async () => {
  const files = await pictureFiles(await readPieces(), await readShop(), import.meta.env.PROD);
  return files.map((file) => ({
    params: { file: file.name },
    props: { file },
    // Named by what is in it. Pixels have a cache of their own, and needn't lie in two.
    ...(file.type === MEDIA_TYPES.svg && { cacheKey: file.name }),
  }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<{ file: PictureFile }> = async ({ props }) =>
  new Response(new Uint8Array(await props.file.bytes()), { headers: { 'content-type': props.file.type } });
