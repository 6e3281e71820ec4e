/** `POST`: shows the shop as it stood before the last publishing. */
import type { APIRoute } from 'astro';
import { readForm, seeOther } from '#bench/http/readForm.ts';
import { beginPublishing } from '#bench/publish/run.ts';

export const prerender = false;

export const POST: APIRoute = async ({ request }) => {
  const form = await readForm(request);
  if (form?.get('sure') === 'yes') await beginPublishing('--back');
  return seeOther('/bench/publish/');
};
