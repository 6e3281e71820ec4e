/** `POST`: ends a visit from elsewhere. */
import type { APIRoute } from 'astro';
import { bench } from '#bench/context/bench.ts';
import { endVisit, visitCookie } from '#bench/access/visit.ts';
import { visitorOf } from '#bench/access/visitor.ts';
import { seeOther } from '#bench/http/readForm.ts';

export const prerender = false;

export const POST: APIRoute = ({ request, clientAddress }) => {
  const { token } = visitorOf(request, clientAddress);
  if (token !== null) endVisit(bench().book(), token);
  const response = seeOther('/bench/enter/');
  response.headers.set('set-cookie', visitCookie(''));
  return response;
};
