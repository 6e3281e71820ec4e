/** Every picture of the shop, as a file. */
import type { APIRoute, GetStaticPaths } from 'astro';
import { readPieces, readShop } from '#catalogue/collections.ts';
import { MADE_AGAIN } from '#catalogue/released/place.ts';
import { pictureFiles, type PictureFile } from '#ui/pictures/files.ts';

export const getStaticPaths = (async () => {
  // Where most are taken over from the release before, those that are new are made as they are asked for.
  const encodeNow = import.meta.env.PROD && process.env[MADE_AGAIN] === undefined;
  const files = await pictureFiles(await readPieces(), await readShop(), encodeNow);
  return files.map((file) => ({ params: { file: file.name }, props: { file }, cacheKey: file.key }));
}) satisfies GetStaticPaths;

export const GET: APIRoute<{ file: PictureFile }> = async ({ props }) =>
  new Response(new Uint8Array(await props.file.bytes()), { headers: { 'content-type': props.file.type } });
