/** A part drawn as it is typed: its fields stand in the address. An empty picture where they aren't enough. */
import type { APIRoute } from 'astro';
import { contentPlace } from '#bench/contentPages.ts';
import { EMPTY_PICTURE, typedPicture } from '#bench/models/content/partPicture.ts';
import { svgResponse } from '#bench/http/svg.ts';

export const prerender = false;

export const GET: APIRoute = async ({ url, request }) => {
  const { catalogue } = await contentPlace(request);
  const svg = catalogue === null ? null : typedPicture(url.searchParams, catalogue);
  return svgResponse(svg ?? EMPTY_PICTURE);
};
