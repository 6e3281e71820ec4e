/** The worker that lets the slip page open without a network. */
import type { APIRoute } from 'astro';
import worker from '#sizer/slip/slipWorker.js?raw';

export const GET: APIRoute = () =>
  new Response(worker, { headers: { 'content-type': 'text/javascript; charset=utf-8' } });
