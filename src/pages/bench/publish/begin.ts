/** `POST`: begins a publishing, which goes on by itself. */
import type { APIRoute } from 'astro';
import { seeOther } from '#bench/http/readForm.ts';
import { beginPublishing } from '#bench/publish/run.ts';

export const prerender = false;

export const POST: APIRoute = async () => {
  await beginPublishing('--quick');
  return seeOther('/bench/publish/');
};
