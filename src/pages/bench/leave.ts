/** `POST`: ends a visit from elsewhere. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { endVisit, visitCookie } from '#bench/access/visit.ts';
import { seeOther } from '#bench/http/readForm.ts';

export const prerender = false;

export const POST: APIRoute = ({ locals }) => {
  const { token } = locals.visitor;
  if (token !== null) endVisit(bench().book(), token);
  const response = seeOther('/bench/enter/');
  response.headers.set('set-cookie', visitCookie(''));
  return response;
};
