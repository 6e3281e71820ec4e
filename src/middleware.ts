/** Before every page made on demand: who may come in; after it: the headers it carries. */
import { defineMiddleware } from 'astro:middleware';
import { bench } from '#bench/bench.ts';
import { rule } from '#bench/access/guard.ts';
import { guardHeaders } from '#bench/access/headers.ts';
import { hasPassphrase } from '#bench/access/passphrase.ts';
import { refusalResponse } from '#bench/access/refusal.ts';
import { isVisiting } from '#bench/access/visit.ts';
import { visitorOf } from '#bench/access/visitor.ts';

export const onRequest = defineMiddleware(async (context, next) => {
  if (context.isPrerendered) return next();
  const { settings, book, nowMs } = bench();
  const visitor = visitorOf(context.request, context.clientAddress);
  const ruling = rule(visitor, {
    hosts: settings.hosts,
    hasPassphrase: () => hasPassphrase(book()),
    knows: (token) => isVisiting(book(), token, nowMs()),
  });
  const response = ruling.admit ? await next() : refusalResponse(ruling.refusal, visitor);
  guardHeaders(response.headers, visitor.path, !import.meta.env.DEV);
  return response;
});
