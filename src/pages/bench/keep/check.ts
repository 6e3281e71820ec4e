/** `POST`: begins a check of the whole book, which goes on in the background. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { seeOther } from '#bench/http/readForm.ts';

export const prerender = false;

export const POST: APIRoute = () => {
  bench().check.start();
  return seeOther('/bench/keep/#check');
};
