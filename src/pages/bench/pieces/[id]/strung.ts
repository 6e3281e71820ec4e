/** `POST`: a piece was strung that nobody ordered. The address says of which size. */
import type { APIRoute } from 'astro';
import { strungPage } from '#bench/stockPages.ts';

export const prerender = false;

export const POST: APIRoute = ({ request, locals, params }) =>
  strungPage(request, locals.visitor, params.id ?? '');
