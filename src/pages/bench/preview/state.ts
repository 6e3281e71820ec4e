/** Tells an open preview whether the files are still those that it shows. */
import type { APIRoute } from 'astro';
import { content } from '#bench/content/content.ts';
import { readingMark } from '#bench/models/preview.ts';

export const prerender = false;

export const GET: APIRoute = () =>
  new Response(readingMark(content().reading()), {
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
