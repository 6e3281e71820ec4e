/** Before every page made on demand: who may come in; after it: the headers it carries. */
import type { MiddlewareNext } from 'astro';
import { defineMiddleware } from 'astro:middleware';
import { bench } from '#bench/context/bench.ts';
import { rule } from '#bench/access/guard.ts';
import { guardHeaders } from '#bench/access/headers.ts';
import { hasPassphrase } from '#bench/access/passphrase.ts';
import { asPreview, isPreview } from '#bench/access/previewPage.ts';
import { bookTroubleResponse, refusalResponse } from '#bench/access/refusal.ts';
import { BookError } from '#bench/book/problem.ts';
import { isVisiting } from '#bench/access/visit.ts';
import { visitorOf, type Visitor } from '#bench/access/visitor.ts';

export const onRequest = defineMiddleware(async (context, next) => {
  if (context.isPrerendered) return next();
  const { request, clientAddress } = context;
  const visitor = visitorOf(request, clientAddress, bench().settings.proxies);
  context.locals.visitor = visitor;
  const response = await answer(request, visitor, next);
  guardHeaders(response.headers, visitor.path, !import.meta.env.DEV);
  return response;
});

async function answer(request: Request, visitor: Visitor, next: MiddlewareNext): Promise<Response> {
  const { settings, book, nowMs } = bench();
  try {
    const ruling = rule(visitor, {
      hosts: settings.hosts,
      hasPassphrase: () => hasPassphrase(book()),
      knows: (token) => isVisiting(book(), token, nowMs()),
    });
    if (!ruling.admit) return refusalResponse(ruling.refusal, request);
    const response = await next();
    return isPreview(visitor.path) ? await asPreview(response) : response;
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    return bookTroubleResponse(error.problem, request);
  }
}
