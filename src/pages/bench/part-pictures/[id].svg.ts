/** A part of the trays, drawn as the shop draws it. */
import type { APIRoute } from 'astro';
import { contentPlace } from '#bench/contentPages.ts';
import { partPicture } from '#bench/models/content/partPicture.ts';
import { svgResponse } from '#bench/http/svg.ts';

export const prerender = false;

export const GET: APIRoute = async ({ params, request }) => {
  const { catalogue } = await contentPlace(request);
  const svg = catalogue === null ? null : partPicture(catalogue, params.id ?? '');
  return svg === null ? new Response(null, { status: 404 }) : svgResponse(svg);
};
