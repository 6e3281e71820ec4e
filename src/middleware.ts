/** Before every page made on demand: who may come in; after it: the headers it carries. */
import type { MiddlewareNext } from 'astro';
import { defineMiddleware } from 'astro:middleware';
import { bench } from '#bench/context/bench.ts';
import { rule } from '#bench/access/guard.ts';
import { guardHeaders } from '#bench/access/headers.ts';
import { hasPassphrase } from '#bench/access/passphrase.ts';
import { asPreview, isPreview } from '#bench/access/previewPage.ts';
import { bookTroubleResponse, refusalResponse, troubleResponse } from '#bench/access/refusal.ts';
import { ruleTablet } from '#bench/access/tabletRule.ts';
import { deviceOf, noteSeen, type Device } from '#bench/book/devices.ts';
import type { Book } from '#bench/book/open.ts';
import { BookError } from '#bench/book/problem.ts';
import { isVisiting } from '#bench/access/visit.ts';
import { asHostName } from '#bench/tablets/addresses.ts';
import { tabletDoor } from '#bench/tablets/door.ts';
import { visitorOf, type Visitor } from '#bench/access/visitor.ts';

export const onRequest = defineMiddleware(async (context, next) => {
  if (context.isPrerendered) return next();
  const { request, clientAddress } = context;
  const visitor = visitorOf(request, clientAddress, bench().settings.proxies);
  context.locals.visitor = visitor;
  context.locals.device = null;
  const response =
    visitor.door === 'tablets'
      ? await answerTablet(request, visitor, context.locals, next)
      : await answer(request, visitor, next);
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

/** A book that can't be written just now is no reason to keep a page from her hands. */
function note(book: Book, device: Device, nowMs: number): void {
  try {
    noteSeen(book, device, nowMs);
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
  }
}

/** By the tablets' door: what is allowed there, and to whom, is another list. */
async function answerTablet(
  request: Request,
  visitor: Visitor,
  locals: App.Locals,
  next: MiddlewareNext,
): Promise<Response> {
  const { book, nowMs, unknownThrottle } = bench();
  try {
    const state = tabletDoor()?.state();
    const device = visitor.deviceToken === null ? null : deviceOf(book(), visitor.deviceToken);
    if (visitor.deviceToken !== null && device === null) {
      const seconds = unknownThrottle.take(visitor.address, nowMs());
      if (seconds > 0) return troubleResponse({ code: 'too-many-tries', seconds }, 429, request);
    }
    const names = state?.open === true ? state.names.map(asHostName) : [];
    const ruling = ruleTablet(visitor, { names, knows: () => device !== null });
    if (!ruling.admit) return refusalResponse(ruling.refusal, request);
    if (device !== null) note(book(), device, nowMs());
    locals.device = device;
    return await next();
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    return bookTroubleResponse(error.problem, request);
  }
}
